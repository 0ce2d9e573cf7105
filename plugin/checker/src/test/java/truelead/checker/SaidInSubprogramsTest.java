package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;
import static truelead.checker.Samples.one;

import org.junit.jupiter.api.Test;

/** What is said in the subprogram that does a tool's work: its title names the tool, and each callout its own threads. */
class SaidInSubprogramsTest {

	/** The tap hole of M10 is 8.5 (ISO 2306, from memory). */
	private static final String TITLED = """
			O1
			G21 G90 G17 G40 G80
			T1 M6
			M98 P1001
			T2 M6
			M98 P1002
			M30
			O1001 (DRILL 8.5)
			G54 G0 X20 Y20 S1200 M3
			G43 H1 Z20
			M98 P1003
			G0 Z50
			M99
			O1002
			(TAP M10)
			G54 G0 X20 Y20 S400 M3
			G43 H2 Z20
			M29 S400
			G84 X20 Y20 Z-20 R5 F600
			G80
			G0 Z50
			M99
			O1003 (DEEP HOLE)
			G83 X20 Y20 Z-28 R2 Q4 F200
			G80
			M99
			""";

	/**
	 * Two threads by one cutter, each under its callout; 18.5 and 28.5 are the tap holes of M20x1.5 and M30x1.5 (ISO 2306, from memory).
	 */
	private static final String CALLED = """
			O1
			G21 G90 G17 G40 G80
			T1 M6 (DRILL 18.5)
			G54 G0 X0 Y0 S800 M3
			G43 H1 Z20
			G81 X0 Y0 Z-30 R2 F140
			G80
			T3 M6 (BORING BAR 28.5)
			G54 G0 X60 Y0 S800 M3
			G43 H3 Z20
			G85 X60 Y0 Z-30 R2 F140
			G80
			T2 M6 (THREAD MILL D12)
			M98 P1002
			M30
			O1002
			G54 G0 X0 Y0 S2600 M3
			G43 H2 Z20
			(M20X1.5)
			G1 Z-20.375 F800
			G3 X4 Y0 Z-20 I2 F160
			G3 I-4 Z-18.5
			G3 X0 Y0 Z-18.125 I-2
			G0 Z10
			(M30X1.5)
			G0 X60 Y0
			G1 Z-20.375 F800
			G3 X69 Y0 Z-20 I4.5 F160
			G3 I-9 Z-18.5
			G3 X60 Y0 Z-18.125 I-4.5
			G0 Z10
			M99
			""";

	@Test
	void theTitleOfASubprogramNamesTheToolThatWorksThere() {
		assertThat(loud(TITLED)).isEmpty();
		one(TITLED.replace("(DRILL 8.5)", "(DRILL 9.0)"), "drill-too-big", "the hole is drilled 9 mm");
		one(TITLED.replace("F600", "F500"), "feed-off-pitch", "M10x1.5");
	}

	/** A title says nothing of one tool where another one works there too. */
	@Test
	void theTitleOfASubprogramOfSeveralToolsNamesNone() {
		String shared = TITLED.replace("M98 P1001\n", "#1=1\nM98 P1001\nT3 M6 (CENTRE DRILL)\n#1=3\nM98 P1001\n")
				.replace("G43 H1 ", "G43 H#1 ");
		assertThat(loud(shared.replace("(DRILL 8.5)", "(DRILL 9.0)"))).isEmpty();
	}

	@Test
	void eachCalloutInASubprogramIsHeldToItsOwnThread() {
		assertThat(loud(CALLED)).isEmpty();
		one(CALLED.replace("G3 I-9 Z-18.5", "G3 I-9 Z-18"), "helix-off-pitch", "M30x1.5 needs 1.5");
	}
}
