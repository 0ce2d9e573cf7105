package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;

/** Tapping in step by G77 and G78 with the lead I or the threads an inch J, tools by G100, as small machining centres have it. */
class TappingCentreTest {

	private static final String BRACKET = """
			O0100(BRACKET)
			G21
			G90G0G54X0Y0
			G100T3X20.Y20.Z50.G43H3S2000M3 (SPOT DRILL 10.)
			G81G99Z-2.8R2.F200.
			X40.
			G80
			G100T1X20.Y20.Z50.G43H1S2500M3 (DRILL 4.2)
			G81G99Z-18.R2.F300.
			X40.
			G80
			G100T2X20.Y20.Z50.G43H2 (TAP M5X0.8)
			G77G99Z-12.R5.I0.8S1200L3000
			X40.
			G80
			M30
			""";

	@Test
	void theCycleTurnsAndLeadsByItself() {
		assertThat(Samples.heard(BRACKET)).isEmpty();
		CheckResult result = Samples.check(MachineProfile.generic(), Job.EMPTY, BRACKET.split("\n"));
		assertThat(result.work().tappings()).singleElement()
				.satisfies(tapping -> assertThat(tapping.strokes().holes()).as("L is no count").hasSize(2));
		assertThat(result.findings()).allMatch(finding -> finding.rule().equals("no-check-stop"));
		assertThat(result.assumptions()).contains("no machine is named: generic milling is assumed; G77 and G78 are taken for tapping with "
				+ "the lead I or J, G100 for a tool change");
	}

	@Test
	void aWrongLeadIsTold() {
		Samples.one(BRACKET.replace("I0.8", "I0.75"), "feed-off-pitch", "I0.75 advances 0.750 mm a turn, M5x0.8 needs 0.800: 0.75 mm "
				+ "behind after 15 turns at 2 holes; I0.80");
	}

	@Test
	void threadsAnInchAreALead() {
		String inch = BRACKET.replace("DRILL 4.2", "DRILL 5.1").replace("TAP M5X0.8", "TAP 1/4-20").replace("I0.8", "J20");
		assertThat(Samples.heard(inch)).isEmpty();
		Samples.one(inch.replace("J20", "J28"), "feed-off-pitch", "J28 advances 0.907 mm a turn, 1/4-20 UNC needs 1.270: 3.43 mm behind "
				+ "after 9.4 turns at 2 holes; J20");
	}

	@Test
	void aLeadOfNothingIsToldByItsOwnLetter() {
		Samples.one(BRACKET.replace("I0.8", "I0"), "feed-missing", "I0 does not move the tap: M5x0.8 needs 0.800 mm a turn; I0.8");
	}

	@Test
	void noThreadsAnInchAreNoLead() {
		Samples.one(BRACKET.replace("I0.8", "J0"), "not-followed", "a count of threads an inch is above 0");
	}

	@Test
	void aLeftHandTapTurnsTheOtherWay() {
		String left = BRACKET.replace("TAP M5X0.8", "TAP M5X0.8 LH").replace("G77", "G78");
		assertThat(Samples.heard(left)).isEmpty();
		assertThat(Samples.heard(left.replace("G78", "G77"))).singleElement().asString().contains("spindle-wrong-way");
	}

	@Test
	void elsewhereToolsAreChangedByM6() {
		String mixed = BRACKET.replace("G100T1X20.Y20.Z50.G43H1S2500M3", "T1M6\nG0X20.Y20.S2500M3\nG43Z50.H1");
		assertThat(Samples.heard(mixed)).isEmpty();
		assertThat(Samples.check(MachineProfile.generic(), Job.EMPTY, mixed.split("\n")).work().tappings()).singleElement()
				.satisfies(tapping -> assertThat(tapping.tool().number()).isEqualTo(2));
	}

	@Test
	void boringBackwardsIsNoTapping() {
		assertThat(Samples.check(MachineProfile.generic(), Job.EMPTY, "G21", "T1 M6 (BACK BORING BAR)", "G0 X0 Y0 S500 M3", "G43 H1 Z50.",
				"G77 Z-20. R-35. I5. F40.", "G80", "M30").work().tappings()).isEmpty();
	}
}
