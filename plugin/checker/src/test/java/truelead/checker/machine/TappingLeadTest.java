package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.Samples;

/** Tapping cycles whose F is the lead by itself, or that say the lead by Q, as some controls have them. */
class TappingLeadTest {

	private static final String IN_STEP = """
			G21 G90 G17 G40 G80 G94
			T2 M6 (DRILL 6.8)
			G54 G0 X20. Y20. S1500 M3
			G43 H2 Z50.
			G81 Z-26. R5. F150.
			X40.
			G80
			T3 M6 (M8 TAP)
			G0 X20. Y20. S400 M3
			G43 H3 Z50.
			G84.2 Z-18. R5. F1.25
			X40.
			G80
			M30
			""";
	private static final String BY_Q = """
			G20 G90 G17 G40 G80 G94
			T2 M6 (DRILL .201)
			G0 X1. Y1. S1500 M3 E1
			H2 Z1.
			G81 G98 Z-1. R0+.1 F6.
			X2.
			G80
			T3 M6 (1/4-20 TAP)
			G0 X1. Y1. S500 M3
			H3 Z1.
			G84.2 G98 Z-.6 R0+.2 F500. Q.05 S500.1
			X2.
			G80
			M2
			""";

	@Test
	void theFeedOfACycleInStepIsItsLeadWhereItIsNoneByTheMinute() {
		assertThat(Samples.heard(IN_STEP)).isEmpty();
		Samples.one(IN_STEP.replace("F1.25", "F1.5"), "feed-off-pitch", "F1.5 advances 1.500 mm a turn, M8x1.25 needs 1.250: ");
		assertThat(Samples.heard(IN_STEP.replace("F1.25", "F500."))).as("a feed by the minute").isEmpty();
		Samples.one(IN_STEP.replace("G84.2", "G84"), "feed-in-wrong-mode", "F1.25 at S400 is read per minute");
	}

	@Test
	void qIsTheLeadWhereTheFeedSaysTheSpeedAgain() {
		assertThat(Samples.heard(BY_Q)).isEmpty();
		Samples.one(BY_Q.replace("Q.05", "Q.0357"), "feed-off-pitch", "Q.0357 advances 0.03570 in a turn, 1/4-20 UNC needs 0.05000: ");
		assertThat(Samples.heard(BY_Q.replace("F500. Q.05 S500.1", "F25. Q.1 S500"))).as("pecks of a tenth").isEmpty();
	}

	@Test
	void eIsThreadsAnInchWhereTheCycleAsksForSynchronousTapping() {
		String inch = IN_STEP.replace("DRILL 6.8", "DRILL 5.1").replace("M8 TAP", "1/4-20 TAP").replace("G84.2 Z-18. R5. F1.25",
				"G84 Z-15. R5. E20. ,R1");
		assertThat(Samples.heard(inch)).isEmpty();
		Samples.one(inch.replace("E20.", "E28."), "feed-off-pitch", "E28. advances 0.907 mm a turn, 1/4-20 UNC needs 1.270: ");
	}

	@Test
	void whichSpindleIsMeantIsNoLead() {
		String second = IN_STEP.replace("S400 M3", "S400 M3 $1").replace("G84.2 Z-18. R5. F1.25", "G84 Z-18. R5. F500. $1");
		assertThat(Samples.heard(second)).isEmpty();
		Samples.one(second.replace("F500. $1", "F400. $1"), "feed-off-pitch",
				"F400. at S400 advances 1.000 mm a turn, M8x1.25 needs 1.250: ");
	}
}
