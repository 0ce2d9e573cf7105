package truelead.checker.rule.method;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;
import static truelead.checker.Samples.one;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A retract whose sign is lost. Invented programs, one slip each. */
class RapidIntoPartTest {

	private static final String FLANGE = """
			G21 G90 G94 G17 G40 G80
			T2 M6 (DRILL 6.8)
			G54 G0 X10. Y10. S2300 M3
			G43 H2 Z25.
			G99 G83 Z-24.5 R2.5 Q4. F260.
			X30.
			G80
			G0 Z50.
			T3 M6 (M8 TAP)
			G0 X10. Y10. S400 M3
			G43 H3 Z25.
			G99 G84 Z-17. R5. F500.
			X30.
			G80
			G0 Z60.
			X100. Y100.
			M30
			""";

	@ParameterizedTest
	@CsvSource({"G0 Z50., T2 goes to Z-50", "G0 Z60., T3 goes to Z-60"})
	void theRetractGoesDown(String retract, String message) {
		assertThat(heard(FLANGE)).isEmpty();
		one(FLANGE.replace(retract, retract.replace("Z", "Z-")), "rapid-into-part",
				message + " in rapid, below what it has cut, and cuts nothing there");
	}

	@Test
	void theHoleDrilledByHandBeforeItIsThereAllTheSame() {
		one(FLANGE.replace("G99 G83 Z-24.5 R2.5 Q4. F260.\nX30.\nG80\nG0 Z50.", "Z2.5\nG1 Z-24.5 F260.\nG0 Z25.\nX30.\nZ2.5\nG1 Z-24.5\n"
				+ "G0 Z25.\nG0 Z-50."), "rapid-into-part", "T2 goes to Z-50");
	}

	@Test
	void wayDownToALowerFaceIsNone() {
		assertThat(heard(FLANGE.replace("G80\nG0 Z50.", "G80\nG0 Z-10.\nG99 G81 X60. Z-40. R-20. F260.\nG80\nG0 Z50.")
				.replace("G80\nG0 Z60.", "X60. Z-35. R-16.\nG80\nG0 Z60."))).isEmpty();
	}

	/** Without its length the tool's Z counts from elsewhere. */
	@Test
	void withoutItsLengthTheLevelIsAnother() {
		assertThat(heard(FLANGE.replace("G0 Z50.", "G0 G49 Z-50."))).isEmpty();
	}

	/** Beside the part an angle head goes down to its hole. */
	@Test
	void anAngleHeadWorksAtDepth() {
		assertThat(heard("""
				G21 G90 G94 G17 G40 G80
				T2 M6 (DRILL 6.8)
				G54 G0 X10. Y60. S2300 M3
				G43 H2 Z-30.
				G18 G81 X10. Z-30. Y-24.5 R2.5 F260.
				G80
				G0 Y60.
				G17 Z100.
				T3 M6 (M8 TAP)
				G0 X10. Y60. S400 M3
				G43 H3 Z-30.
				G18 G84 X10. Z-30. Y-17. R5. F500.
				G80
				G0 Y60.
				G17 Z100.
				M30
				""")).isEmpty();
	}
}
