package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.eclipse.swt.SWT;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The completion key proposes what may stand at the caret, and enter puts it there. */
class CompletionTest {

	@AfterEach
	void close() {
		OpenProgram.closeAll();
	}

	@Test
	void theFeedThatFitsTheTapIsProposedAndTaken() {
		OpenProgram program = open(Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("R5. F500");
		for (int i = 0; i < 3; i++) {
			Screen.press(0, SWT.BS);
		}
		Screen.idle(400);
		assertThat(Proposals.at(SWT.CTRL, ' ').get(0)).isEqualTo("F520 — S520 × 1 for M6x1");
		Proposals.take("F520");
		assertThat(program.document().get()).isEqualTo(Programs.GOOD);
	}

	@Test
	void valuesInForceAreProposedForTheWordThatIsTyped() {
		OpenProgram program = open(Programs.GOOD);
		Screen.idle(500);
		program.caretBehind("G43 Z25. H3");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("S");
		assertThat(Proposals.at(SWT.CTRL, ' ').get(0)).isEqualTo("S520 \u2014 speed in force");
		Proposals.take("S520");
		Screen.type(" H");
		assertThat(Proposals.at(SWT.CTRL, ' ').get(0)).isEqualTo("H3 \u2014 length offset of the tool in the spindle");
		Proposals.take("H3");
		assertThat(program.document().get()).contains("H3\nS520 H3\nG99 G84");
	}

	@Test
	void placesToJumpToAreProposedBehindAJump() {
		OpenProgram program = open("N10 #1=0\nAGAIN:\nN20 #1=#1+1\nIF [#1 LT 3] GOTO \nM30\n");
		program.caretBehind("GOTO ");
		Screen.idle(500);
		assertThat(Proposals.at(SWT.CTRL, ' ')).contains("10 \u2014 block N10", "20 \u2014 block N20", "again \u2014 label");
		Proposals.take("20 ");
		assertThat(program.document().get()).contains("GOTO 20\n");
	}

	@Test
	void codesOfTheProfileAreProposedWithTheirMeaning() {
		OpenProgram program = open(Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("M6X1 TAP)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("G8");
		Screen.chord(SWT.CTRL, ' ');
		Screen.waitUntil("proposals", () -> Proposals.shown().contains("G84 — tap"));
	}

	@Test
	void aTemplatePutsInTheBlocksForTheCalloutAbove() {
		OpenProgram program = open(Programs.WRONG_FEED);
		program.waitFor("F500");
		program.caretBehind("(FOUR M6 HOLES)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("(M8X1.25 DEPTH 12)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("form");
		assertThat(program.document().get()).contains("HOLES)\n(M8X1.25 DEPTH 12)\nform\n");
		Screen.chord(SWT.CTRL, ' ');
		Screen.waitUntil("proposals, not " + Proposals.shown(),
				() -> Proposals.shown().stream().anyMatch(text -> text.startsWith("form-tap")));
		Proposals.take("form-tap");
		Screen.waitUntil("blocks", () -> program.document().get().contains("FORM TAP"));
		String text = program.document().get();
		assertThat(text).contains("T6 M6").contains("G84").contains("H6").doesNotContain("\nform");
	}

	@Test
	void threadsAndNotesAreProposedInAComment() {
		OpenProgram program = open(Programs.GOOD);
		program.caretBehind("(M6X1 TAP)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("(M10X");
		Screen.idle(400);
		assertThat(Proposals.at(SWT.CTRL, ' ')).anyMatch(text -> text.startsWith("M10x1.5: pitch 1.5"))
				.anyMatch(text -> text.startsWith("M10x1: pitch 1"));
		Proposals.take("M10x1.25");
		assertThat(program.document().get()).contains("(M10X1.25)");
		program.caretBehind("(M10X1.25)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("(TH");
		Screen.idle(400);
		assertThat(Proposals.at(SWT.CTRL, ' ')).anyMatch(text -> text.startsWith("THREAD:"));
	}

	@ParameterizedTest
	@CsvSource({ "drill-and-tap, G84, TAP M8X1.25", "thread-mill, G3, THREAD MILL" })
	void templatesComputeSpeedFeedDepthsAndHelixFromTheCallout(String template, String block, String tool) {
		OpenProgram program = open(Programs.GOOD);
		program.caretBehind("(FOUR M6 HOLES)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type("(M8X1.25 DEPTH 12)");
		Screen.press(0, SWT.CR, '\r');
		Screen.type(template.substring(0, 5));
		Proposals.at(SWT.CTRL, ' ');
		Proposals.take(template);
		Screen.waitUntil("blocks", () -> program.document().get().contains(tool));
		assertThat(program.document().get()).contains(block, "DIA 6.8");
		Screen.idle(1000);
		assertThat(program.findings()).as("our own check of what was put in").allMatch(finding -> finding.type().equals("information"));
	}

	private static OpenProgram open(String text) {
		return OpenProgram.open(OpenProgram.file("complete.nc", text));
	}
}
