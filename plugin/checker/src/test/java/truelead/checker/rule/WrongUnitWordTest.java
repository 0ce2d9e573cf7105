package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** G20 for G21 puts every length 25.4 times off: one finding at the word, and with the right word none. */
class WrongUnitWordTest {

	private static final String PROGRAM = """
			G21 G90 G94 G17
			T2 M6 (DRILL 5.0)
			G54 G0 X10 Y10 S2500 M3
			G43 H2 Z10
			G81 Z-20 R3 F300
			X30
			G80
			T3 M6 (M6X1 TAP, 9 DEEP)
			G0 X10 Y10 S520 M3
			G43 H3 Z10
			G84 Z-14 R5 F520
			X30
			G80
			M30
			""";

	@Test
	void oneFindingAtTheWord() {
		assertThat(SampleCheck.loud(PROGRAM)).isEmpty();
		assertThat(SampleCheck.loud(PROGRAM.replace("G21", "G20"))).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("inch-metric-mixup");
			assertThat(finding.at().line()).isZero();
			assertThat(finding.message()).startsWith("lengths are read in inches, and every thread of the program fits in mm: M6x1 "
					+ "needs 0.03937").endsWith("; G21");
			assertThat(finding.fixes()).singleElement().satisfies(fix -> {
				assertThat(fix.title()).isEqualTo("Change G20 to G21");
				assertThat(fix.edits()).singleElement().satisfies(edit -> assertThat(edit.text()).isEqualTo("G21"));
			});
		});
	}

	@Test
	void everyUnitWordIsMended() {
		assertThat(SampleCheck.loud(PROGRAM.replace("G21", "G20").replace("T3 M6", "G20\nT3 M6"))).singleElement()
				.satisfies(finding -> assertThat(finding.fixes().get(0).edits()).hasSize(2));
	}

	@Test
	void oneFeedInTheOtherUnitIsThatFeed() {
		assertThat(SampleCheck.loud(PROGRAM.replace("F520", "F20.472"))).singleElement().satisfies(finding -> {
			assertThat(finding.rule()).isEqualTo("inch-metric-mixup");
			assertThat(finding.at().line()).isEqualTo(10);
		});
	}
}
