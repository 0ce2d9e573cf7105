package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The walk leads through the demo project and ticks what is done, by its links or without them. */
class WalkTest {

	private static final String VIEW = "truelead.editor.walk.view";

	@BeforeEach
	void open() throws CommandException {
		Screen.toFront();
		PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("truelead.editor.walk", null);
		Screen.settle();
		follow("Begin again");
	}

	@AfterEach
	void close() {
		OpenProgram.closeAll();
		Stream.of(VIEW, "truelead.editor.guide.view", "truelead.editor.lesson.view", "truelead.editor.thread.view")
				.forEach(view -> page().hideView(page().findView(view)));
		Screen.settle();
	}

	@Test
	void itsFirstLinkOpensTheDemoProgramAtAFinding() {
		assertThat(state()).isEqualTo("0 of 7 steps done");
		OpenProgram program = demo();
		Screen.waitUntil("a tick", () -> state().equals("1 of 7 steps done"));
		Screen.waitUntil("a finding selected",
				() -> program.findings().stream().anyMatch(finding -> finding.offset() == program.widget().getSelection().x));
	}

	@Test
	void itsLinksOpenRuleDrawingAndLesson() {
		demo();
		follow("Ask for the");
		Screen.waitUntil("the guide", () -> page().findView("truelead.editor.guide.view") != null);
		follow("See the");
		Screen.waitUntil("the drawing", () -> page().findView("truelead.editor.thread.view") != null);
		follow("Show me why");
		Screen.waitUntil("the lesson", () -> page().findView("truelead.editor.lesson.view") != null);
		Screen.waitUntil("four ticks, not " + state(), () -> state().equals("4 of 7 steps done"));
	}

	@Test
	void aFixTakenByTheKeyIsTickedToo() {
		OpenProgram program = demo();
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Screen.type("1");
		program.waitGone("F500");
		assertThat(state()).as("a digit typed is no fix taken").isEqualTo("1 of 7 steps done");
		Screen.press(0, SWT.BS);
		program.waitFor("F500");
		Proposals.at(SWT.CTRL, '1');
		Proposals.take("F520");
		Screen.waitUntil("a tick for the fix, not " + state(), () -> state().equals("2 of 7 steps done"));
		follow("Begin again");
		assertThat(state()).isEqualTo("0 of 7 steps done");
	}

	private static OpenProgram demo() {
		follow("Open ");
		Screen.waitUntil("the demo program", () -> page().getActiveEditor() != null
				&& page().getActiveEditor().getTitle().contains("bearing-cap-faults.nc"));
		OpenProgram program = new OpenProgram((ITextEditor) page().getActiveEditor());
		program.waitFor("F500");
		return program;
	}

	/** The guide may lie over the walk: whoever follows a link has its tab in front. */
	private static void follow(String words) {
		page().bringToTop(page().findView(VIEW));
		Link link = Dialogs.find(window(), Link.class).stream().filter(found -> found.getText().replace("<a>", "").startsWith(words))
				.findFirst().orElseThrow();
		link.notifyListeners(SWT.Selection, new Event());
		Screen.settle();
	}

	private static String state() {
		page().bringToTop(page().findView(VIEW));
		return Dialogs.find(window(), Label.class).stream().map(Label::getText).filter(text -> text.endsWith("steps done"))
				.findFirst().orElse("");
	}

	private static Composite window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
