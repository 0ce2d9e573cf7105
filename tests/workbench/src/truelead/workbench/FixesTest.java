package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ProjectScope;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.ide.IDE;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.osgi.service.prefs.BackingStoreException;

/** Findings are removed by a key, and by the Problems view. */
class FixesTest {

	private static final String OURS = "truelead.editor.finding";

	/** A second tap with a wrong feed. */
	private static final String WRONG_FEEDS = Programs.WRONG_FEED.replace("M30",
			"G0 Z25.\nT4 M6 (M6X1 TAP)\nG0 X20. Y20. S400 M3\nG43 Z25. H4\nG99 G84 Z-12. R5. F380\nG80\nM30");

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void theQuickFixKeyCorrectsTheFeedAndOneUndoTakesItBack() {
		OpenProgram program = atFeed("fix.nc", Programs.WRONG_FEED);
		assertThat(Proposals.at(SWT.CTRL, '1')).contains("Change F500 to F520");
		Proposals.take("F520");
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
		Screen.chord(SWT.CTRL, 'z');
		program.waitFor("F500");
		assertThat(program.document().get()).isEqualTo(Programs.WRONG_FEED);
	}

	@Test
	void allOfAKindAreCorrectedAtOnceAndOneUndoTakesAllBack() {
		OpenProgram program = atFeed("all.nc", WRONG_FEEDS);
		program.waitFor("F380");
		Proposals.at(SWT.CTRL, '1');
		Proposals.take("Fix every feed-off-pitch in this program");
		program.waitGone("F500");
		program.waitGone("F380");
		assertThat(program.document().get()).isEqualTo(WRONG_FEEDS.replace("F500", "F520").replace("F380", "F400"));
		Screen.chord(SWT.CTRL, 'z');
		Screen.waitUntil("both as they were", () -> program.document().get().equals(WRONG_FEEDS));
	}

	@Test
	void aFixThatIsNotSafeUnreadSaysSoAndWhy() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("look.nc", Programs.GOOD.replace("G83 Z-19.", "G83 Z-15.")));
		program.waitFor("14.5 mm deep");
		program.caretBehind("G99 G84 Z-1");
		assertThat(Proposals.at(SWT.CTRL, '1')).anyMatch(text -> text.startsWith("Change Z-15. to Z-")
				&& text.endsWith(" in line 14 (look first)"));
		assertThat(Proposals.told("(look first)")).contains("14.5 mm deep")
				.endsWith("Look first: see that wall and drawing allow the deeper hole");
	}

	@ParameterizedTest
	@CsvSource({ "R5. F5, Change F500 to F520", "G99 G84 Z-1, Change Z-15. to Z-" })
	void theFixOfTheFindingAtTheCaretComesBeforeThoseOfItsLine(String caret, String fix) {
		OpenProgram program = atFeed("two.nc", Programs.WRONG_FEED.replace("G83 Z-19.", "G83 Z-15."));
		program.waitFor("14.5 mm deep");
		program.caretBehind(caret);
		assertThat(Proposals.at(SWT.CTRL, '1')).first().asString().startsWith(fix);
	}

	@Test
	void aDirtyProgramIsCorrectedWhereTheFindingIsNow() {
		OpenProgram program = atFeed("dirty.nc", Programs.WRONG_FEED);
		program.widget().setSelection(2);
		Screen.type("(FIRST SIDE)");
		Screen.press(0, SWT.CR, '\r');
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		Proposals.at(SWT.CTRL, '1');
		Proposals.take("F520");
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo("%\n(FIRST SIDE)\n" + Programs.GOOD.substring(2));
	}

	@Test
	void aValueIsWrittenAsTheProgrammerWritesThem() {
		OpenProgram program =
				OpenProgram.open(OpenProgram.file("inch.nc",
						"%\no5 (quarter twenty)\ng17 g20 g40 g80 g90 g94\ng54\nt1 m6 (drill .201)\ng0 x1. y1. s1200 m3\ng43 z1. h1\n"
						+ "g99 g81 z-1. r.1 f6.\ng80\nt2 m6 (1/4-20 unc tap)\ng0 x1. y1. s500 m3\ng43 z1. h2\ng99 g84 z-.6 r.2  f20.\n"
						+ "g80\nm30\n%\n"));
		program.waitFor("1/4-20");
		program.caretBehind("r.2  f2");
		Proposals.at(SWT.CTRL, '1');
		Proposals.take("F25.");
		Screen.waitUntil("lower case, a point and the spaces as they were, not " + program.document().get(),
				() -> program.document().get().contains("z-.6 r.2  f25.\n"));
	}

	@Test
	void aClickOnTheSignAtTheRulerOffersTheSameFix() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("click.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Mouse.clickRuler(program, "G99 G84", 0);
		Screen.waitUntil("proposals", () -> Proposals.shown().contains("Change F500 to F520"));
		Proposals.take("F520");
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void aClickOnTheSignOfAFoldedToolOpensItAtItsFinding() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("click-fold.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		program.caretBehind("T3 M6");
		Screen.press(SWT.CTRL, SWT.KEYPAD_SUBTRACT, '-');
		Screen.waitUntil("the tap folded", () -> !program.widget().getText().contains("G84"));
		Mouse.clickRuler(program, "T3 M6", 0);
		Screen.waitUntil("proposals", () -> Proposals.shown().contains("Change F500 to F520"));
		assertThat(program.widget().getText()).isEqualTo(Programs.WRONG_FEED);
	}

	@Test
	void aClickOnTheRulerWhereNothingIsFoundOrAtAFoldOffersNothing() {
		OpenProgram program = OpenProgram.open(OpenProgram.file("click-else.nc", Programs.WRONG_FEED));
		program.waitFor("F500");
		Mouse.clickRuler(program, "G99 G83", 0);
		Screen.idle(800);
		assertThat(Proposals.shown()).isEmpty();
		Mouse.clickRuler(program, "G99 G84", Mouse.columns(program).size() - 1);
		Screen.waitUntil("the cycle folded", () -> !program.widget().getText().contains("X80.\nG80\nM30"));
		Screen.idle(800);
		assertThat(Proposals.shown()).isEmpty();
	}

	@Test
	void theHoverAtAKeyOffersTheSameFix() {
		OpenProgram program = atFeed("told.nc", Programs.WRONG_FEED);
		Screen.press(0, SWT.F2);
		Screen.waitUntil("the fix", () -> links().stream().anyMatch(link -> link.getText().equals("<a>Change F500 to F520</a>")));
		Screen.press(0, SWT.CR, '\r');
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void theProblemsViewOffersTheSameFix() throws CoreException {
		IFile file = OpenProgram.file("problem.nc", Programs.WRONG_FEED);
		OpenProgram program = OpenProgram.open(file);
		program.waitFor("F500");
		Screen.waitUntil("a marker", () -> OpenProgram.markers(file, OURS).stream().anyMatch(message -> message.contains("F500")));
		IMarker marker = Arrays.stream(file.findMarkers(OURS, true, IResource.DEPTH_ZERO))
				.filter(found -> found.getAttribute(IMarker.MESSAGE, "").contains("F500")).findFirst().orElseThrow();
		IMarkerResolution fix = Arrays.stream(IDE.getMarkerHelpRegistry().getResolutions(marker))
				.filter(found -> found.getLabel().contains("F520")).findFirst().orElseThrow();
		fix.run(marker);
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
		assertThat(program.editor().isDirty()).as("saving is left to the person").isTrue();
	}

	@Test
	void aFindingIsAcceptedByANoteFromTheFindingAndOneUndoTakesItBack() {
		OpenProgram program = atFeed("allow.nc", Programs.WRONG_FEED);
		accept("floating holder", false);
		program.waitGone("F500");
		assertThat(program.document().get())
				.isEqualTo(Programs.WRONG_FEED.replace("G99 G84", "(ALLOW: FEED-OFF-PITCH, FLOATING HOLDER)\nG99 G84"));
		program.focus();
		Screen.chord(SWT.CTRL, 'z');
		program.waitFor("F500");
		assertThat(program.document().get()).isEqualTo(Programs.WRONG_FEED);
	}

	@Test
	void aFindingIsAcceptedInTheAcceptFileFromTheFinding() throws CoreException {
		OpenProgram program = atFeed("listed.nc", Programs.WRONG_FEED);
		IFile list = OpenProgram.file("other.nc", "").getProject().getFile("accepted-findings.csv");
		accept("floating holder", true);
		program.waitGone("F500");
		assertThat(program.document().get()).isEqualTo(Programs.WRONG_FEED);
		list.delete(true, null);
		program.waitFor("F500");
	}

	/** By keys, at the caret. */
	private static void accept(String reason, boolean inTheAcceptFile) {
		Proposals.at(SWT.CTRL, '1');
		Dialogs.inDialog("Accept", () -> {
			Screen.type(reason);
			if (inTheAcceptFile) {
				Screen.chord(SWT.ALT, 'f');
			}
			Screen.press(0, SWT.CR, '\r');
		}, () -> Proposals.take("Accept feed-off-pitch"));
	}

	@Test
	void theSeverityOfAFindingsRuleIsSetFromTheFinding() throws BackingStoreException {
		OpenProgram program = atFeed("softer.nc", Programs.WRONG_FEED);
		severity(program, "information", 'p');
		Screen.waitUntil("information", () -> program.waitFor("F500").type().equals("information"));
		forget(new ProjectScope(OpenProgram.file("other.nc", "").getProject()).getNode("truelead.editor"));
		Screen.waitUntil("an error again", () -> program.waitFor("F500").type().equals("error"));
		severity(program, "warning", 'w');
		Screen.waitUntil("a warning in the workspace", () -> program.waitFor("F500").type().equals("warning"));
		forget(InstanceScope.INSTANCE.getNode("truelead.editor"));
	}

	/** By keys: the word by the arrow keys, the place by its letter. */
	private static void severity(OpenProgram program, String word, char place) {
		program.focus();
		program.caretBehind("R5. F5");
		Proposals.at(SWT.CTRL, '1');
		Dialogs.inDialog("Severity of feed-off-pitch", () -> {
			Screen.chord(SWT.ALT, place);
			Screen.chord(SWT.ALT, 'v');
			Combo severity = Dialogs.find(Dialogs.shell("Severity of feed-off-pitch"), Combo.class).get(0);
			for (int key = 0; key < 5 && !severity.getText().equals(word); key++) {
				Screen.press(0, SWT.ARROW_DOWN);
			}
			Screen.press(0, SWT.CR, '\r');
		}, () -> Proposals.take("Set the severity of feed-off-pitch"));
	}

	private static void forget(IEclipsePreferences node) throws BackingStoreException {
		node.clear();
		node.flush();
	}

	private static OpenProgram atFeed(String name, String text) {
		OpenProgram program = OpenProgram.open(OpenProgram.file(name, text));
		program.waitFor("F500");
		program.caretBehind("R5. F5");
		return program;
	}

	private static List<Link> links() {
		List<Link> links = new ArrayList<>();
		Arrays.stream(Display.getCurrent().getShells()).filter(shell -> shell.isVisible() && shell.getText().isEmpty())
				.forEach(shell -> links.addAll(Dialogs.find(shell, Link.class)));
		return links;
	}
}
