package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;

/** A message at a word that is worked out names the lines that say its numbers. */
class SaidByTest {

	private static final String CALLS = """
			O0001
			G21 G90
			T1 M6 (DRILL 6.8)
			S2000 M3
			G43 Z50. H1
			G81 X0 Y0 Z-30. R2. F300
			X20.
			X40.
			G80
			T2 M6 (M8X1.25 TAP)
			G43 Z50. H2
			G65 P8022 X0 Z-20. S400 F1.25
			G65 P8022 X20. Z-20. S400 F1.5
			G65 P8022 X40. Z-20. S400 F1.25
			M30
			O8022
			M3 S#19
			#5=#9*#19
			G84 X#24 Y0 Z#26 R5. F#5
			G80
			M99
			""";

	@Test
	void theCallWhoseArgumentIsWrong() {
		assertThat(Samples.heard(CALLS)).singleElement().asString().startsWith("feed-off-pitch F#5 at S400 advances 1.500 mm a turn")
				.endsWith("; F500; see S400 F1.5 in line 13");
	}

	@Test
	void theArgumentOfANamedCall() {
		assertThat(Samples.heard("""
				o<thread> sub
				g0 x#1
				z4
				g33.1 z-10 k#2
				o<thread> endsub
				g21 g90
				t1 m6 (drill 4.2)
				s2000 m3
				g81 x0 y0 z-20 r2 f200
				x20
				g80
				t2 m6 (M5X0.8 tap)
				s500 m3
				o<thread> call [0] [0.8]
				o<thread> call [20] [.7]
				m30
				""")).singleElement().asString().endsWith("; K0.8; see [.7] in line 15");
	}

	private static String tapped(String... head) {
		return String.join("\n", head) + """

				G21 G90
				T1 M6 (DRILL 6.8)
				S2000 M3
				G43 Z50. H1
				G81 X0 Y0 Z-30. R2. F300
				G80
				T2 M6 (M8X1.25 TAP)
				S#101 M3
				G43 Z50. H2
				G84 X0 Y0 Z-20. R5. F[#101*#102]
				G80
				M30
				""";
	}

	@Test
	void theNearestValueAbove() {
		assertThat(Samples.heard(tapped("#101=400", "#102=1.25", "#102=1.0 (PITCH)"))).singleElement().asString()
				.endsWith("; F500; see #101=400 in line 1, #102=1.0 in line 3");
	}

	/** Which of them counts depends on the way that the program goes. */
	@Test
	void ofTwoBranchesNeitherIsNamed() {
		assertThat(Samples.heard(tapped("#100=1", "#101=400", "IF[#100EQ1]GOTO5", "#102=1.25", "GOTO6", "N5 #102=1.", "N6")))
				.singleElement().asString().endsWith("; F500");
	}

	@Test
	void whereACountingVariableStartsIsNotNamed() {
		assertThat(Samples.heard("""
				G21 G90
				T1 M6 (DRILL 6.8)
				S2000 M3
				#1=0
				WHILE[#1LT3]DO1
				G81 X[#1*20.] Y0 Z-30. R2. F300
				#1=#1+1
				END1
				G80
				T2 M6 (M8X1.25 TAP)
				S400 M3
				#1=0
				#2=20.
				#3=.5
				WHILE[#1LT3]DO1
				G84 X[#1*#2+#3] Y0 Z-20. R5. F[500+0*#1+#2]
				#1=#1+1
				END1
				G80
				M30
				""")).filteredOn(said -> said.startsWith("feed-off-pitch")).singleElement().asString()
				.endsWith("; F500; see #2=20. in line 13");
	}

	/** The places stand beside the message too, for whoever goes there. */
	@Test
	void thePlacesAreRelated() {
		List<Finding> findings = Samples.loud(CALLS);
		assertThat(findings.get(0).related()).extracting(Related::what).contains("says a value of it");
	}

	/** One block for two taps: what is right for one is wrong for the other. */
	@Test
	void aWordThatTwoTapsShare() {
		assertThat(Samples.heard("""
				G21 G90
				T1 M6 (DRILL 6.8)
				S2000 M3
				G43 Z50. H1
				G81 X0 Y0 Z-30. R2. F300
				G80
				T3 M6 (DRILL 5.0)
				S2000 M3
				G43 Z50. H3
				G81 X40. Y0 Z-30. R2. F300
				G80
				T2 M6 (M8X1.25 TAP)
				S400 M3
				G43 Z50. H2
				G0 X0 Y0
				M98 P100
				T4 M6 (M6X1 TAP)
				S400 M3
				G43 Z50. H4
				G0 X40. Y0
				M98 P100
				M30
				O100
				G84 Z-15. R5. F500
				G80
				M99
				""")).singleElement().asString().startsWith("feed-off-pitch F500 at S400 advances 1.250 mm a turn, M6x1 needs 1.000")
				.endsWith("; F400 for T4 alone, the word is that of another tap too");
	}

	/** The word of the helix says its lead, and not how deep it begins. */
	@Test
	void theCallThatGoesTooDeep() {
		assertThat(Samples.heard("""
				O0001
				G21 G90 G17
				T1 M6 (DRILL 18.5)
				S900 M3
				G43 Z50. H1
				G81 X0 Y0 Z-32. R2. F120
				X60.
				G80
				T2 M6 (THREAD MILL D12, M20X1.5)
				S2000 M3
				G43 Z50. H2
				G65 P9130 X0 Y0 Z-20. Q1.5
				G65 P9130 X60. Y0 Z-30. Q1.5
				M30
				O9130
				G0 X#24 Y#25
				Z2.
				Z#26
				G91 G3 X4. I2. Z[#17/4] F200
				#1=#26+.375
				WHILE[#1LT0]DO1
				G3 I-4. Z#17
				#1=#1+#17
				END1
				G3 X-4. I-2. Z.375
				G90 G0 Z2.
				M99
				""")).filteredOn(said -> said.startsWith("cutter-hits-bottom")).singleElement().asString().doesNotContain("see ")
				.endsWith("; called in line 13");
	}
}
