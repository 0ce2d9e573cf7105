package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.text.ITextSelection;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.texteditor.ITextEditor;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A reviewer audits a project: verdicts, a way to the block, acceptance with a reason, a report. */
class AuditViewTest {

	private static final String OURS = "truelead.editor.finding";

	private IProject project;

	@BeforeEach
	void twoPrograms() throws CoreException {
		project = OpenProgram.file("good.nc", Programs.GOOD).getProject();
		empty();
		OpenProgram.file("good.nc", Programs.GOOD);
		OpenProgram.file("slow.nc", Programs.WRONG_FEED);
	}

	@AfterEach
	void close() throws CoreException {
		OpenProgram.closeAll();
		empty();
		AuditScreen.close();
	}

	private void empty() throws CoreException {
		for (IResource other : project.members()) {
			if (other instanceof IFile && !other.getName().startsWith(".")) {
				other.delete(true, null);
			}
		}
	}

	@Test
	void aProjectIsAuditedByAKeyAndTheEnterKeyLeadsToTheBlock() {
		AuditScreen.audit(project, 2);
		assertThat(AuditScreen.programs()).satisfiesExactly(good -> assertThat(good).startsWith("shop/good.nc \u2013 Nothing found"),
				slow -> assertThat(slow).startsWith("shop/slow.nc \u2013 Do not run: 1 error"));
		assertThat(AuditScreen.said()).contains("2 programs, 2 threading operations: 1 error, ");
		AuditScreen.goTo("slow.nc", "feed-off-pitch");
		Screen.press(0, SWT.CR, '\r');
		Screen.waitUntil("the program", () -> page().getActiveEditor() instanceof ITextEditor);
		ITextEditor editor = (ITextEditor) page().getActiveEditor();
		assertThat(editor.getEditorInput().getName()).isEqualTo("slow.nc");
		assertThat(((ITextSelection) editor.getSelectionProvider().getSelection()).getText()).isEqualTo("F500");
	}

	@Test
	void findingsStandByProgramAndRuleAndAreOpenedByKeys() throws CoreException {
		OpenProgram.file("slow.nc", Programs.WRONG_FEED.replace("G83 Z-19.", "G83 Z-15."));
		AuditScreen.audit(project, 2);
		Tree tree = AuditScreen.tree();
		tree.setFocus();
		tree.setSelection(tree.getItem(0));
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.press(SWT.SHIFT, SWT.ARROW_RIGHT);
		Screen.waitUntil("the rules", () -> tree.getItem(1).getExpanded());
		assertThat(texts(tree.getItem(1))).startsWith("drill-too-shallow (1)", "feed-off-pitch (1)");
		Screen.press(0, SWT.ARROW_DOWN);
		Screen.press(SWT.SHIFT, SWT.ARROW_RIGHT);
		Screen.waitUntil("the findings", () -> tree.getItem(1).getItem(0).getExpanded());
		assertThat(texts(tree.getItem(1).getItem(0))).singleElement().asString().startsWith("line 20 error: the tap goes 14.5 mm deep");
	}

	@Test
	void aFindingIsAcceptedByANoteAtItsOperation() throws IOException {
		AuditScreen.audit(project, 2);
		AuditScreen.goTo("slow.nc", "feed-off-pitch");
		AuditScreen.accept("floating holder", false);
		Screen.waitUntil("the verdict without the finding",
				() -> AuditScreen.verdict("slow.nc").startsWith("shop/slow.nc \u2013 Nothing found"));
		assertThat(text(project.getFile("slow.nc"))).contains("H3\n(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER)\nG99 G84 Z-14.5 R5. F500");
	}

	@Test
	void aFindingIsAcceptedInTheAcceptFileAndTheProgramStaysAsItIs() throws IOException {
		AuditScreen.audit(project, 2);
		AuditScreen.goTo("slow.nc", "feed-off-pitch");
		AuditScreen.accept("floating holder", true);
		Screen.waitUntil("the verdict without the finding",
				() -> AuditScreen.verdict("slow.nc").startsWith("shop/slow.nc \u2013 Nothing found"));
		assertThat(text(project.getFile("slow.nc"))).isEqualTo(Programs.WRONG_FEED);
		assertThat(text(project.getFile("accepted-findings.csv"))).contains(",feed-off-pitch,slow.nc,floating holder,");
	}

	@Test
	void whatIsAcceptedCountsInTheSentenceAndTheNextFindingIsChosen() {
		OpenProgram.file("slow.nc", Programs.WRONG_FEED.replace("G83 Z-19.", "G83 Z-15."));
		AuditScreen.audit(project, 2);
		assertThat(AuditScreen.said()).contains(": 2 errors, ").contains(", 0 accepted.");
		AuditScreen.goTo("slow.nc", "drill-too-shallow");
		AuditScreen.accept("soft stock", true);
		Screen.waitUntil("the sentence, not: " + AuditScreen.said(), () -> AuditScreen.said().contains(": 1 error, ")
				&& AuditScreen.said().contains(", 1 accepted."));
		assertThat(AuditScreen.tree().getSelection()[0].getText()).startsWith("line 20 error: F500");
		assertThat(AuditScreen.button("Accept").isEnabled()).isTrue();
	}

	@Test
	void aReportInAProjectIsSeenInTheExplorer() {
		AuditScreen.audit(project, 2);
		AuditScreen.write("Lines of text", project.getLocation().append("threads.txt").toOSString());
		Screen.waitUntil("the file", () -> project.getFile("threads.txt").exists());
	}

	@Test
	void withoutAReasonNothingIsAccepted() throws IOException {
		AuditScreen.audit(project, 2);
		AuditScreen.goTo("slow.nc", "feed-off-pitch");
		Dialogs.inDialog("Accept", () -> {
			Screen.type("  ");
			Screen.press(0, SWT.CR, '\r');
			Screen.idle(300);
			assertThat(Dialogs.find(Dialogs.shell("Accept"), Button.class)).filteredOn(button -> button.getText().equals("OK"))
					.noneMatch(Button::isEnabled);
			Screen.press(0, SWT.ESC, SWT.ESC);
		}, () -> AuditScreen.press("Accept"));
		assertThat(text(project.getFile("slow.nc"))).isEqualTo(Programs.WRONG_FEED);
		assertThat(project.getFile("accepted-findings.csv").exists()).isFalse();
	}

	@Test
	void whatTheAcceptFileAcceptsStandsInOpenProgramsAndProblemsNoLonger() {
		IFile slow = project.getFile("slow.nc");
		OpenProgram program = OpenProgram.open(slow);
		program.waitFor("F500");
		Screen.waitUntil("a marker", () -> OpenProgram.markers(slow, OURS).stream().anyMatch(message -> message.contains("F500")));
		AuditScreen.audit(project, 2);
		AuditScreen.goTo("slow.nc", "feed-off-pitch");
		AuditScreen.accept("floating holder", true);
		program.waitGone("F500");
		Screen.waitUntil("no marker", () -> OpenProgram.markers(slow, OURS).stream().noneMatch(message -> message.contains("F500")));
	}

	@Test
	void aReportIsWrittenWhereThePersonSays(@TempDir Path folder) throws IOException {
		Path report = folder.resolve("threads.sarif");
		AuditScreen.audit(project, 2);
		AuditScreen.write("SARIF", report.toString());
		assertThat(AuditScreen.said()).startsWith(report + " written. 2 programs");
		assertThat(Files.readString(report)).contains("\"uri\": \"shop/slow.nc\"", "feed-off-pitch");
	}

	@Test
	void aReportIsAskedForInTheMenuByKeys(@TempDir Path folder) throws IOException {
		OpenProgram program = OpenProgram.open(project.getFile("slow.nc"));
		program.waitFor("F500");
		Path report = folder.resolve("sheet.csv");
		AuditScreen.write("Gauge sheet, CSV table", report.toString(), () -> {
			List<String> at = new ArrayList<>();
			Listener arms = armed -> at.add(((MenuItem) armed.widget).getText());
			Display.getCurrent().addFilter(SWT.Arm, arms);
			Screen.press(SWT.ALT, 0, 'g');
			for (int key = 0; key < 30 && (at.isEmpty() || !at.get(at.size() - 1).startsWith("Thread Audit Report\u2026")); key++) {
				Screen.press(0, SWT.ARROW_DOWN);
			}
			Display.getCurrent().removeFilter(SWT.Arm, arms);
			Screen.press(0, SWT.CR, '\r');
			Screen.waitUntil("the report, after the places " + at, () -> Files.exists(report));
		});
		assertThat(AuditScreen.said()).startsWith(report + " written. 1 program");
		assertThat(Files.readString(report)).contains("slow.nc", "M6");
	}

	@Test
	void aLongAuditTellsHowFarItIsAndIsStoppedInTheMiddleOfAProgram() {
		String endless = """
				O1
				G21 G90
				#1=0
				N10 #1=#1+1
				G1 X#1 F100.
				IF [#1 LT 2900000] GOTO 10
				M30
				""";
		List.of("slow-1.nc", "slow-2.nc", "slow-3.nc", "slow-4.nc", "slow-5.nc", "slow-6.nc")
				.forEach(name -> OpenProgram.file(name, endless));
		AuditScreen.start(project);
		Screen.waitUntil("how far it is, not: " + AuditScreen.said(), () -> AuditScreen.said().endsWith(" of 8 programs"));
		AuditScreen.press("Stop");
		assertThat(AuditScreen.said()).matches("Stopped after [0-7] of 8 programs\\.");
		Screen.waitUntil("another audit can begin", () -> AuditScreen.button("Audit Again").isEnabled());
		assertThat(AuditScreen.button("Stop").isEnabled()).isFalse();
	}

	@Test
	void theProgramInTheEditorIsAuditedBesideWhatIsChosenElsewhere() {
		OpenProgram program = OpenProgram.open(project.getFile("slow.nc"));
		program.waitFor("F500");
		Screen.chord(SWT.CTRL | SWT.ALT, 'a');
		Screen.waitUntil("the end of the audit, not: " + AuditScreen.said(),
				() -> AuditScreen.said().startsWith("1 program, 1 threading operation: 1 error, "));
		assertThat(AuditScreen.programs()).singleElement().asString().startsWith("shop/slow.nc \u2013 Do not run");
	}

	@Test
	void whereThereIsNoProgramTheViewSaysHowToChooseSome() throws CoreException {
		empty();
		AuditScreen.start(project);
		Screen.waitUntil("what to do, not: " + AuditScreen.said(),
				() -> AuditScreen.said().startsWith("There is no program in shop. Choose programs"));
	}

	private static List<String> texts(TreeItem item) {
		return Arrays.stream(item.getItems()).map(TreeItem::getText).toList();
	}

	private static String text(IFile file) throws IOException {
		return Files.readString(file.getLocation().toFile().toPath(), StandardCharsets.UTF_8);
	}

	private static IWorkbenchPage page() {
		return PlatformUI.getWorkbench().getActiveWorkbenchWindow().getActivePage();
	}
}
