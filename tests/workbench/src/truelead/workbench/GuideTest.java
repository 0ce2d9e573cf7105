package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.help.HelpSystem;
import org.eclipse.help.IToc;
import org.eclipse.help.ITopic;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import truelead.help.BookProducer;

/** F1 leads from a finding to the page of its rule, inside the workbench. */
class GuideTest {

	private static final String VIEW = "truelead.editor.guide.view";
	private static final String LESSON = "truelead.editor.lesson.view";
	private static final String PROBLEMS = "org.eclipse.ui.views.ProblemView";
	private static final String OURS = "truelead.editor.finding";

	@AfterEach
	void close() {
		OpenProgram.closeAll();
		Stream.of(VIEW, LESSON).forEach(view -> page().hideView(page().findView(view)));
		Screen.settle();
	}

	@Test
	void theHelpKeyOnAFindingOpensItsRule() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("ask.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the guide", () -> page().findView(VIEW) != null);
		assertThat(shown()).startsWith("feed-off-pitch").contains("F500 at S520 advances 0.962 mm a turn", "What happens at the spindle",
				"G84 Z-12 R5 F520", "When to accept it", "Kinematics.");
		assertThat(shown()).as("what only the tests of the page read").doesNotContain("^^^^", "```");
	}

	@Test
	void itsLinkShowsWhyWithTheNumbersOfTheFinding() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("ask-why.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the guide with the focus", () -> page().findView(VIEW) != null && text().isFocusControl());
		Screen.press(0, SWT.TAB, '\t');
		assertThat(text().getSelectionText()).isEqualTo("Show me why: A tap led off its pitch");
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the lesson", () -> page().findView(LESSON) != null);
		assertThat(Dialogs.find(window(), Text.class))
				.anyMatch(said -> said.getText().startsWith("The feed falls behind: -0.0385 mm a turn"));
	}

	@Test
	void whereNothingIsFoundTheHelpKeyOpensTheOverview() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("ask-good.nc", Programs.GOOD));
		program.caretBehind("G17");
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the guide", () -> page().findView(VIEW) != null);
		assertThat(shown()).startsWith("Truelead\n").contains("Ctrl+1", "prove a program out at reduced rapid")
				.doesNotContain("sh feature/truelead");
	}

	@Test
	void theListIsSearchedByWordsOfThePage() {
		show(VIEW);
		Text search = Dialogs.find(guide(), Text.class).get(0);
		search.setFocus();
		Screen.type("helix hand");
		assertThat(pages()).anyMatch(page -> page.startsWith("helix-wrong-hand"));
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("a page of what was searched", () -> !shown().startsWith("Truelead"));
		assertThat(shown().toLowerCase(Locale.ROOT)).contains("helix", "hand");
	}

	@Test
	void samplesMarkWhatIsFoundAsTheEditorDoes() {
		show(VIEW);
		Text search = Dialogs.find(guide(), Text.class).get(0);
		search.setFocus();
		Screen.type("feed-in-wrong-mode");
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the page", () -> shown().startsWith("feed-in-wrong-mode"));
		assertThat(Arrays.stream(text().getStyleRanges())).anyMatch((StyleRange style) -> style.underline
				&& style.underlineStyle == SWT.UNDERLINE_ERROR);
	}

	@Test
	void aMarkersHelpAndLesson() throws CoreException {
		IFile file = OpenProgram.file("asked.nc", Programs.WRONG_FEED);
		file.getProject().deleteMarkers(OURS, true, IResource.DEPTH_INFINITE);
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		Screen.waitUntil("a marker", () -> OpenProgram.markers(file, OURS).stream().anyMatch(message -> message.contains("F500")));
		IMarker marker = Arrays.stream(file.findMarkers(OURS, true, IResource.DEPTH_ZERO))
				.filter(found -> found.getAttribute(IMarker.MESSAGE, "").contains("F500")).findFirst().orElseThrow();
		IMarkerResolution why = Arrays.stream(IDE.getMarkerHelpRegistry().getResolutions(marker))
				.filter(found -> found.getLabel().startsWith("Show me why")).findFirst().orElseThrow();
		why.run(marker);
		Screen.waitUntil("the lesson", () -> page().findView(LESSON) != null);
		assertThat(Dialogs.find(window(), Text.class))
				.anyMatch(said -> said.getText().startsWith("The feed falls behind: -0.0385 mm a turn"));

		chooseProblem("F500");
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the guide", () -> page().findView(VIEW) != null);
		assertThat(shown()).startsWith("feed-off-pitch\n\nF500 at S520");
	}

	@Test
	void theGuideNamesTheLessonOfTheThreadThatAProblemIsAbout() throws CoreException {
		IFile file = OpenProgram.file("asked-turned.nc", Programs.TURNED.replace("F1.5", "F1.25"));
		file.getProject().deleteMarkers(OURS, true, IResource.DEPTH_INFINITE);
		OpenProgram.open(file);
		Screen.waitUntil("a marker", () -> OpenProgram.markers(file, OURS).stream().anyMatch(message -> message.startsWith("F1.25")));
		chooseProblem("F1.25");
		Screen.press(0, SWT.F1);
		Screen.waitUntil("the guide", () -> page().findView(VIEW) != null);
		assertThat(shown()).startsWith("feed-off-pitch").contains("Show me why: A thread turned in passes")
				.doesNotContain("A tap led off its pitch");
	}

	/** Selects the first row of the Problems view, which begins so. */
	private static void chooseProblem(String words) {
		IViewPart problems = show(PROBLEMS);
		Screen.waitUntil("focus in the problems", () -> Display.getCurrent().getFocusControl() instanceof Tree,
				() -> Screen.toFront(problems));
		Screen.idle(500);
		Tree rows = (Tree) Display.getCurrent().getFocusControl();
		Screen.waitUntil("a category", () -> rows.getItemCount() > 0);
		((TreeViewer) problems.getSite().getSelectionProvider()).expandAll();
		Screen.waitUntil("a row", () -> rows.getItem(0).getItemCount() > 0 && rows.getItem(0).getItem(0).getText().startsWith(words));
		rows.setSelection(rows.getItem(0).getItem(0));
		Event chosen = new Event();
		chosen.item = rows.getItem(0).getItem(0);
		rows.notifyListeners(SWT.Selection, chosen);
		Screen.idle(300);
	}

	@Test
	void thePlatformsHelpHasTheSamePages() throws IOException {
		IToc book = Arrays.stream(HelpSystem.getTocs()).filter(toc -> "Truelead".equals(toc.getLabel())).findFirst().orElseThrow();
		List<ITopic> pages = Arrays.stream(book.getTopics()).flatMap(group -> Arrays.stream(group.getSubtopics())).toList();
		assertThat(pages).extracting(ITopic::getLabel).contains("Overview", "The machine", "feed-off-pitch", "helix-off-size");
		for (ITopic topic : pages) {
			try (InputStream in = new BookProducer().getInputStream("truelead.help", topic.getHref().substring("/truelead.help/".length()),
					Locale.ROOT)) {
				assertThat(new String(in.readAllBytes(), StandardCharsets.UTF_8)).as(topic.getHref()).startsWith("<!DOCTYPE html>")
						.contains("<h1>").doesNotContain("<p>|");
			}
		}
	}

	private static IViewPart show(String view) {
		try {
			IViewPart part = page().showView(view);
			Screen.toFront();
			Screen.settle();
			return part;
		} catch (PartInitException cannot) {
			throw new AssertionError(cannot);
		}
	}

	private static String shown() {
		return text().getText();
	}

	private static StyledText text() {
		return Dialogs.find(guide(), StyledText.class).get(0);
	}

	private static List<String> pages() {
		return Arrays.stream(Dialogs.find(guide(), Tree.class).get(0).getItems()).flatMap(group -> Arrays.stream(group.getItems()))
				.map(TreeItem::getText).toList();
	}

	/** The view's controls, told by the field to search in. */
	private static Composite guide() {
		return Dialogs.find(window(), Text.class).stream().filter(text -> text.getMessage().startsWith("Search rules"))
				.map(Control::getParent).findFirst().orElseThrow();
	}

	private static Composite window() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell();
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
