package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ForeignLanguageTest {

	@Test
	void aConversationalProgramGetsOneSentence() {
		Followed run = Followed.milling("0 BEGIN PGM 17 MM", "1 TOOL CALL 5 Z S2000", "2 L X+10 Y+5 R0 FMAX M3", "3 CYCL DEF 207 TAPPING",
				"4 L Z+100 R0 FMAX", "5 END PGM 17 MM");
		assertThat(run.steps()).hasSize(1);
		assertThat(run.lost()).containsExactly("this is not a program of words such as G84 Z-10, but another language or plain text");
	}

	@Test
	void aConversationalProgramWithoutLineNumbersGetsOneSentenceToo() {
		Followed run = Followed.milling("L X+10 Y+20 R0 FMAX M3", "L Z-5 F200", "CC X+50 Y+50", "C X+90 Y+50 DR+", "LBL 1",
				"L Z+100 R0 FMAX M2");
		assertThat(run.steps()).hasSize(1);
		assertThat(Followed.milling("10 L X+10 Y+20", "20 L Z-5", "30 L X+20 Y+20", "40 L X+30").steps()).hasSize(1);
	}

	@Test
	void cyclesThatAreDefinedByParametersAndCalledByM99GetOneSentence() {
		String[] cover = { "%COVER G71 *", "N10 T2 G17 S400*", "N20 G00 G40 G90 Z+50 M3*", "N30 G207 TAPPING Q200=4 Q201=-15 Q239=+1.25*",
				"N40 X+20 Y+20 M99*", "N50 Z+100 M2*" };
		Followed run = Followed.milling(cover);
		assertThat(run.steps()).hasSize(1);
		assertThat(run.lost()).singleElement().asString()
				.startsWith("the cycles of this program are defined by parameters and called by M99 behind a place");
		cover[0] = "%";
		assertThat(Followed.milling(cover).steps()).as("a subprogram may end behind a place").hasSizeGreaterThan(1);
	}

	@Test
	void aDamagedProgramOfWordsIsFollowed() {
		assertThat(Followed.milling("G0 X Y5", "GO X5", "X- Y2", "G1 Z-5 F100", "L X5").steps()).hasSizeGreaterThan(1);
	}
}
