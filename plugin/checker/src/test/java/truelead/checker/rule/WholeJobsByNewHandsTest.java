package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;

/** Jobs as shops run them, with probes, looks for broken tools, threads of several starts, nuts for spindles, tools that drill and mill. */
class WholeJobsByNewHandsTest {

	private static final String CHECKED = """
			(T99 %s)
			G21 G90 G17 G40 G80
			T99 M6
			G54 G0 X0 Y0
			G43 H99 Z80.
			G65 P8102 X0 Y0 D60.
			G49 G0 Z200.
			T21 M6 (DRILL 4.2)
			G54 G0 X-25. Y-25. S6000 M3
			G43 H21 Z40. M8
			G98 G83 Z-17. R2. Q5. F900
			X25.
			G80
			M98 P8900
			T22 M6 (TAP M5)
			G54 G0 X-25. Y-25. S1000 M3
			G43 H22 Z40. M8
			G98 G84 Z-12. R5. F800
			X25.
			G80
			M98 P8900
			M30
			""";

	@ParameterizedTest
	@ValueSource(strings = {"MESSTASTER", "TOUCH PROBE", "PALPEUR", "SONDA", "TASTATORE"})
	void aProbeAndALookForBrokenToolsMakeNoThreads(String probe) {
		assertThat(loud(CHECKED.formatted(probe))).isEmpty();
	}

	@Test
	void aProgramThatIsNotHereMayThreadWhereNothingSaysOtherwise() {
		String checked = CHECKED.formatted("PROBE");
		assertThat(loud(checked.replace("T99", "T20"))).as("probe all the same").isEmpty();
		assertThat(loud(checked.replace("PROBE", "DRILL 4.0"))).as("a drill").singleElement().asString().startsWith("6 not-followed");
		assertThat(loud(checked.replace("G80\nM98 P8900\nM30", "G80\nM30"))).as("with the drill alone").singleElement().asString()
				.startsWith("14 not-followed");
		assertThat(loud(checked.replace("G98 G84 Z-12. R5. F800\nX25.\nG80\n", ""))).as("the tap makes no thread here").anyMatch(said ->
				said.startsWith("18 not-followed"));
		assertThat(loud(checked.replace("X25.\nG80\n", "M98 P8900\nG80\n"))).as("places of the cycle").isNotEmpty()
				.allMatch(said -> said.contains("not-followed"));
	}

	private static final String TWO_STARTS = """
			(T9 THREAD MILL SINGLE TOOTH D12 %s)
			G21 G90 G17 G40 G80
			T9 M6
			G0 G54 X0 Y0 S2500 M3
			G43 H9 Z50. M8
			G0 Z-14.
			G1 G41 D9 X3. Y-7. F500
			G3 X10. Y0 Z-13.25 R7. F220
			G3 I-10. Z-10.25
			G3 I-10. Z-7.25
			G3 I-10. Z-4.25
			G3 X3. Y7. Z-3.5 R7.
			G1 G40 X0 Y0
			G0 Z-14.
			G1 G41 D9 X-3. Y7. F500
			G3 X-10. Y0 Z-13.25 R7. F220
			G3 I10. Z-10.25
			G3 I10. Z-7.25
			G3 I10. Z-4.25
			G3 X-3. Y-7. Z-3.5 R7.
			G1 G40 X0 Y0
			G0 Z50. M9
			M30
			""";

	@ParameterizedTest
	@ValueSource(strings = {"M20X1.5 2 START", "M20X1.5 TWO START", "M20X1.5 TWO STARTS LEAD 3", "M20X1.5 DOUBLE-START",
		"M20X1.5 ZWEIGAENGIG", "M20X1.5 ZWEIGÄNGIG", "M20X1.5 DOS ENTRADAS", "M20X1.5 DUE PRINCIPI",
		"M20X1.5 DVOUCHODY"})
	void theStartsOfAThreadAreReadAsWords(String thread) {
		assertThat(loud(TWO_STARTS.formatted(thread))).isEmpty();
	}

	@ParameterizedTest
	@ValueSource(strings = {"M20X1.5", "M20X1.5 DREIGAENGIG", "M20X1.5 TRIPLE START", "M20X1.5 START TWO HOLES"})
	void otherStartsHaveAnotherLead(String thread) {
		assertThat(loud(TWO_STARTS.formatted(thread))).isNotEmpty().allMatch(said -> said.contains("helix-"));
	}

	/** A tap for trapezoidal threads has a lead of many turns and goes through; one pitch below its end is no finding. */
	@Test
	void aNutForASpindleIsTappedThrough() {
		String nut = """
				G21 G90 G17 G54
				T3 M6 (DRILL 16.2)
				S600 M3
				G43 H3 Z10
				G83 G98 X0 Y0 Z-55 R2 Q8 F120
				G80
				T4 M6 (TAP TR20X4)
				S60 M3
				G43 H4 Z20
				G84 G98 X0 Y0 Z-46 R14 F240
				G80
				M30
				""";
		assertThat(loud(nut)).isEmpty();
		assertThat(loud(nut.replace("Z-46", "Z-56"))).singleElement().asString().contains("drill-too-shallow");
	}

	/** ALSI9 - M8: the number of the alloy counts no holes. */
	@Test
	void aNumberThatEndsAWordCountsNoHoles() {
		String cover = """
				(COVER)
				G21 G90 G17 G54
				T3 M6 (DRILL 6.8)
				S4000 M3
				G43 H3 Z10
				G83 G98 X0 Y0 Z-26 R2 Q8 F600
				X30
				G80
				T4 M6 (ALSI9 - M8 TAP)
				S600 M3
				G43 H4 Z20
				G84 G98 X0 Y0 Z-18 R5 F750
				X30
				G80
				M30
				""";
		assertThat(loud(cover)).isEmpty();
		assertThat(loud(cover.replace("ALSI9 - M8", "9X M8"))).singleElement().asString().contains("count-differs");
	}

	/** What the list calls a thread mill is one, though a remark says that it drills. */
	@Test
	void aToolThatDrillsAndMillsIsAThreadMill() {
		String both = """
				(COVER)
				(T08 DRILL THREAD MILL M8X1.25 D6.7)
				(DRILLS TO Z-18.5, BACK 2 TURNS, ONE TURN DOWN)
				G90 G21 G17 G40 G80
				T8 M6
				G54 G0 X0 Y0 S8000 M3
				G43 H8 Z20. M8
				G1 Z-18.5 F1600
				G0 Z-16.
				G91
				G1 G42 D8 X0.4 Y3.6 F900
				G2 X3.6 Y-3.6 Z-0.3125 I0 J-3.6 F450
				G2 I-4. J0 Z-%s
				G2 X-3.6 Y-3.6 Z-0.3125 I-3.6 J0
				G1 G40 X-0.4 Y3.6
				G90 G0 Z20.
				M30
				""";
		assertThat(loud(both.formatted("1.25"))).isEmpty();
		assertThat(loud(both.formatted("1.5"))).singleElement().asString().contains("helix-off-pitch");
	}

	/** One blank parts the numbers of the tools from their names: they are tools where the program calls them all and the taps tap. */
	@Test
	void aListMayHaveOneBlankBehindItsNumbers() {
		String bracket = """
				; bracket
				; %s center drill
				; 2 drill 6.8
				; 3 tap M8
				g21 g90 g17 g40 g94
				t1 m6
				g43 h1
				s1500 m3 f120
				g98 g81 x20 y15 z-3 r2
				g80
				t2 m6
				g43 h2
				s1200 m3 f180
				g98 g83 x20 y15 z-25 r2 q5
				g80
				t3 m6
				g43 h3
				s200 m3 f250
				g98 g84 x20 y15 z-17 r5
				g80
				m30
				""";
		for (String first : List.of("1", "tools: 1")) {
			String good = bracket.formatted(first);
			assertThat(loud(good)).isEmpty();
			assertThat(loud(good.replace("drill 6.8", "drill 7.8"))).singleElement().asString().contains("drill-too-big");
			assertThat(loud(good.replace("tap M8", "tap M8x1"))).isNotEmpty().anyMatch(said -> said.contains("feed-off"));
		}
		assertThat(loud(bracket.formatted("4").replace("drill 6.8", "drill 7.8"))).as("T1 is not in it").isEmpty();
	}

	private static List<String> loud(String program) {
		return Samples.findings(program).stream().filter(finding -> finding.severity() != Severity.INFORMATION)
				.map(finding -> (finding.at().line() + 1) + " " + finding.rule() + " " + finding.message()).toList();
	}
}
