package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** A finding leads to its lesson, keys move its numbers, and an exercise is done when nothing is left to find. */
class LessonViewTest {

	private static final String VIEW = "truelead.editor.lesson.view";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
		page().zoomOut();
		page().hideView(page().findView(VIEW));
		Screen.settle();
	}

	@Test
	void theQuickFixKeyShowsWhyAndTheArrowKeyMovesTheNumbers() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("why.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Proposals.at(SWT.CTRL, '1');
		Proposals.take("Show me why");
		Screen.waitUntil("the lesson", () -> page().findView(VIEW) != null && !find(Spinner.class).isEmpty());

		assertThat(said()).startsWith("The feed falls behind: -0.0385 mm a turn");
		assertThat(program.document().get()).isEqualTo(Programs.WRONG_FEED);
		page().toggleZoom(page().findViewReference(VIEW));
		Spinner feed = field("feed");
		Screen.toFront();
		Screen.focus("the feed", feed);
		for (int i = 0; i < 20; i++) {
			Screen.press(0, SWT.ARROW_UP);
		}
		Screen.waitUntil("F520, not " + said(), () -> said().startsWith("F fits: 1.0000 mm a turn"));
		assertThat(find(Table.class).get(0).getItem(5).getText(1)).isEqualTo("0.000 mm");
	}

	@Test
	void anExerciseOpensItsProgramAndIsDoneWhenItIsMended() {
		show();
		Combo exercises = find(Combo.class).get(1);
		exercises.select(1);
		exercises.notifyListeners(SWT.Selection, new Event());
		Screen.waitUntil("what is left, not " + state(), () -> state().contains("Left: line 24: feed-off-pitch"));
		ITextEditor editor = (ITextEditor) page().getActiveEditor();
		assertThat(editor.getEditorInput().getName()).isEqualTo("exercise-feed-1.nc");
		OpenProgram program = new OpenProgram(editor);
		program.focus();
		program.caretBehind("R5. F500");
		Screen.press(0, SWT.BS, '\b');
		Screen.press(0, SWT.BS, '\b');
		Screen.type("20");
		IDocument document = program.document();
		Screen.waitUntil("the end of the exercise, not " + state() + " with " + document.get(), () -> state().startsWith("Done"));
	}

	private static void show() {
		try {
			page().showView(VIEW);
		} catch (org.eclipse.ui.PartInitException cannot) {
			throw new AssertionError(cannot);
		}
		Screen.settle();
	}

	private static String said() {
		return find(Text.class).stream().filter(text -> (text.getStyle() & SWT.MULTI) != 0).map(Text::getText).findFirst().orElse("");
	}

	private static String state() {
		return find(Label.class).get(0).getText();
	}

	private static Spinner field(String name) {
		return find(Spinner.class).stream().filter(spinner -> name.equals(spinner.getData())).findFirst().orElseThrow();
	}

	/** Controls of a kind in the view, which is told by its list of lessons. */
	private static <C extends Control> List<C> find(Class<C> kind) {
		List<C> found = new ArrayList<>();
		Composite window = PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
		List<Combo> lists = new ArrayList<>();
		collect(window, Combo.class, lists);
		lists.stream().filter(list -> Arrays.asList(list.getItems()).contains("A tap led off its pitch")).findFirst()
				.ifPresent(list -> collect(list.getParent(), kind, found));
		return found;
	}

	private static <C extends Control> void collect(Composite in, Class<C> kind, List<C> found) {
		for (Control child : in.getChildren()) {
			if (kind.isInstance(child)) {
				found.add(kind.cast(child));
			}
			if (child instanceof Composite composite) {
				collect(composite, kind, found);
			}
		}
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
