package truelead.checker.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static truelead.checker.Samples.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;

class HolesTest {

	@Test
	void twoHolesDrilledByACycle() {
		Work work = work("G21 G17 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50. M8", "G81 Z-20. R2. F200.", "X30.",
				"G80", "M30");
		assertThat(work.holes()).hasSize(2).allMatch(Hole::made);
		Cut cut = work.holes().iterator().next().cuts().get(0);
		assertThat(cut.kind()).isEqualTo(Cut.Kind.DRILL);
		assertThat(cut.start()).isEqualTo(2);
		assertThat(cut.tip()).isEqualTo(-20);
		assertThat(cut.diameter().orElseThrow().value()).isEqualTo(5);
		// 2.5 / tan 59 degrees = 1.502 above the tip
		assertThat(cut.shoulder()).isCloseTo(-18.498, within(0.001));
	}

	@Test
	void ofThousandsOfDepthsAtOnePlaceTheFirstAndTheLastAreKept() {
		List<String> lines = new ArrayList<>(List.of("G21 G17 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50. M8"));
		for (int peck = 1; peck <= 2000; peck++) {
			lines.add("G81 X10. Y10. Z-" + peck / 100.0 + " R2. F200.");
		}
		lines.addAll(List.of("G80", "M30"));
		assertThat(work(lines.toArray(String[]::new)).holes()).singleElement().satisfies(hole -> {
			assertThat(hole.cuts()).hasSizeBetween(300, 310);
			assertThat(hole.cuts().get(0).tip()).isEqualTo(-0.01);
			assertThat(hole.cuts().get(hole.cuts().size() - 1).tip()).isEqualTo(-20);
		});
	}

	@Test
	void whatALatheBoresIsAHoleAndWhatItTurnsOutsideIsNone() {
		String[] turned = {"G21 G99", "G50 S2000", "T0202 (DRILL 20)", "G0 X0 Z3.", "G1 Z-40. F0.2", "G0 Z5.", "T0404", "G0 X22.5 Z2.",
				"G1 Z-38. F0.12", "X20.", "G0 Z5.", "T0606", "G0 X60. Z2.", "G1 Z-10. F0.2", "G28 U0 W0", "T0808", "G0 X50. Z2.",
				"X10.", "M30"};
		assertThat(work(MachineProfile.named("turning"), Job.EMPTY, turned).holes()).singleElement()
				.satisfies(hole -> assertThat(hole.cuts()).extracting(cut -> cut.diameter().orElseThrow().value())
						.as("T6 went home from the outside, and T8 moved towards the axis").containsExactly(20.0, 22.5));
	}

	@Test
	void atA360TheWorkStandsAsAtA0() {
		Work work = work("G21 G17 G90", "T1 M6 (DRILL 4.2)", "G54 G0 X10. Y0 A0 S2000 M3", "G43 H1 Z50.", "G81 Z-20. R2. F200.",
				"G91 A90. K3", "G90 G80", "T2 M6 (M5 TAP)", "G0 X10. Y0 A360. S800 M3", "G43 H2 Z50.", "G84 Z-12. R4. F640", "G91 A-90. K3",
				"G90 G80", "M30");
		assertThat(work.holes()).hasSize(4);
		assertThat(work.tappings().get(0).holes()).hasSize(4).allMatch(Hole::made);
	}

	@Test
	void onAMillAHoleAtAYThatNobodySaidIsNowhereAndNotAtZero() {
		Work work = work("G21 G17 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. S2000 M3", "G43 H1 Z50.", "G81 Z-20. R2. F200.", "G80", "M30");
		assertThat(work.holes()).isEmpty();
		assertThat(work.cutsAtUnknownPlaces()).isTrue();
	}

	@Test
	void aHoleFartherAwayThanAnyNumberCounts() {
		Work work = work("G21 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X99999999999999999999. Y-99999999999999999999. S2000 M3", "G43 H1 Z50.",
				"G81 Z-20. R2. F200.", "X30.", "G80", "M30");
		assertThat(work.holes()).hasSize(2);
	}

	@Test
	void aPlaceDrilledAThousandTimesIsStillOneHoleMadeByTheFirst() {
		Work work = work("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G43 H1 Z50.", "G81 X10. Y10. Z-20. R2. F200. K1000", "Z-22.",
				"G80", "M30");
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.cuts().size()).isLessThan(200);
			assertThat(hole.making().get(0).tip()).isEqualTo(-20);
			assertThat(hole.deepestBefore(Integer.MAX_VALUE).orElseThrow().tip()).isEqualTo(-22);
		});
	}

	@Test
	void ofAThousandCutsAlikeTheLastIsKeptToo() {
		Work work = work("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G43 H1 Z50.", "G81 X10. Y10. Z-20. R2. F200. K1000", "G80",
				"T2 M6 (M6 TAP)", "S500 M3", "G43 H2 Z50.", "G84 X10. Y10. Z-12. R4. F500.", "G80", "T1 M6", "S2000 M3", "G43 H1 Z50.",
				"G81 X10. Y10. Z-20. R2. F200. K1000", "G80", "M30");
		int tapped = work.tappings().get(0).firstOrder();
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.cuts().size()).isLessThan(200);
			assertThat(hole.cuts()).isSortedAccordingTo(Comparator.comparingInt(Cut::order)).last()
					.satisfies(cut -> assertThat(cut.order()).isGreaterThan(tapped));
		});
	}

	@Test
	void allHolesWithinAnyDistanceAreFoundNearestFirst() {
		Work work = work("G21 G90", "T1 M6 (DRILL 5.0)", "S2000 M3", "G43 H1 Z50.", "G81 X30. Y0. Z-20. R2. F200.", "X0.", "X10.",
				"G80", "M30");
		Place middle = work.holes().iterator().next().place().at(1, 0);
		assertThat(work.holesNear(middle, 1e9)).extracting(hole -> hole.place().u()).containsExactly(0.0, 10.0, 30.0);
		assertThat(work.holesNear(middle, 2)).extracting(hole -> hole.place().u()).containsExactly(0.0);
	}

	@Test
	void spottingMakesNoHole() {
		Work work = work("G21 G90", "T1 M6 (SPOT DRILL)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.", "G81 Z-2. R2. F200.", "G80", "M30");
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.made()).isFalse();
			assertThat(hole.edgeBefore(Integer.MAX_VALUE)).hasSize(1);
		});
	}

	/** A drill drills there as in a cycle; of a tool that nobody names no more is known than that it went in. */
	@ParameterizedTest
	@CsvSource({"T1 M6 (DRILL 5.0), DRILL", "T1 M6, PLUNGE"})
	void aPlungeByFeedAndBackInRapidIsAHole(String change, Cut.Kind kind) {
		Work work = work("G21 G90", change, "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z2.", "G1 Z-12. F200.", "G0 Z2.", "X50.", "M30");
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.place().u()).isEqualTo(10);
			assertThat(hole.cuts().get(0).kind()).isEqualTo(kind);
			assertThat(hole.cuts().get(0).tip()).isEqualTo(-12);
		});
	}

	@Test
	void peckingByHandIsOneCut() {
		Work work = work("G21 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z2.", "G1 Z-4. F200.", "G0 Z2.", "G0 Z-3.5",
				"G1 Z-8.", "G0 Z2.", "X50.", "M30");
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.cuts()).hasSize(1);
			assertThat(hole.cuts().get(0).kind()).isEqualTo(Cut.Kind.PECK);
			assertThat(hole.cuts().get(0).tip()).isEqualTo(-8);
		});
	}

	@Test
	void aPlungeThatGoesOnSidewaysIsNoHole() {
		Work work = work("G21 G90", "T1 M6 (END MILL 10 DIA)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z2.", "G1 Z-3. F200.", "X50.",
				"G0 Z2.", "M30");
		assertThat(work.holes()).isEmpty();
	}

	@Test
	void aFullCircleMillsAHoleOfTwoRadiiAndTheCutter() {
		Work work = work("G21 G90 G17", "T1 M6 (END MILL 10 DIA)", "G54 G0 X0 Y0 S2000 M3", "G43 H1 Z2.", "G1 Z-10. F200.", "G1 X4. F400.",
				"G3 I-4. J0", "G1 X0", "G0 Z2.", "M30");
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.place().u()).isEqualTo(0);
			assertThat(hole.cuts().get(0).kind()).isEqualTo(Cut.Kind.MILL);
			assertThat(hole.cuts().get(0).diameter().orElseThrow().value()).isEqualTo(18);
			assertThat(hole.cuts().get(0).tip()).isEqualTo(-10);
		});
	}

	@Test
	void aCircleRoundABossIsNoHole() {
		Work work = work("G21 G90 G17", "T1 M6 (END MILL 10 DIA)", "G54 G0 X40. Y0 S2000 M3", "G43 H1 Z2.", "G1 Z-10. F200.",
				"G1 X25. F400.", "G2 I-25. J0", "G1 X40.", "G0 Z2.", "M30");
		assertThat(work.holes()).isEmpty();
	}

	@Test
	void aHelicalBoreIsOneCutToItsDepth() {
		Work work = work("G21 G90 G17", "T1 M6 (END MILL 10 DIA)", "G54 G0 X4. Y0 S2000 M3", "G43 H1 Z0.", "G3 X4. Y0 I-4. J0 Z-2. F300.",
				"G3 I-4. J0 Z-4.", "G3 I-4. J0", "G1 X0", "G0 Z2.", "M30");
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.cuts()).hasSize(1);
			assertThat(hole.cuts().get(0).tip()).isEqualTo(-4);
			assertThat(hole.cuts().get(0).diameter().orElseThrow().value()).isEqualTo(18);
		});
	}

	@Test
	void holesInTwoWorkOffsetsAreTwo() {
		Work work = work("G21 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X10. Y10. S2000 M3", "G43 H1 Z50.", "G81 Z-20. R2. F200.", "G80",
				"G55 X10. Y10.", "G81 Z-20. R2. F200.", "G80", "M30");
		assertThat(work.holes()).hasSize(2);
	}

	@Test
	void tenThousandHolesAreFoundAtOnce() {
		List<String> blocks = new ArrayList<>(List.of("G21 G90", "T1 M6 (DRILL 5.0)", "G54 G0 X0 Y0 S2000 M3", "G43 H1 Z50.",
				"G81 Z-20. R2. F200. L0"));
		for (int i = 0; i < 10_000; i++) {
			blocks.add("X" + (i % 100) * 6 + ". Y" + i / 100 * 6 + ".");
		}
		blocks.addAll(List.of("G80", "M30"));
		Work work = work(blocks.toArray(String[]::new));
		assertThat(work.holes()).hasSize(10_000);
		Place place = work.holes().iterator().next().place();
		assertThat(work.holesNear(place.at(594.01, 594), 0.02)).hasSize(1);
		assertThat(work.holesNear(place.at(300, 300), 7)).hasSize(5);
	}

	@Test
	void aCountersinkNamedByItsAngleLeavesACone() {
		Work work = work("G21 G90", "T1 M6 (COUNTERSINK 90)", "G54 G0 X10. Y10. S800 M3", "G43 H1 Z50.", "G82 Z-3. R2. F100.",
				"G80", "M30");
		assertThat(work.holes()).singleElement().satisfies(hole -> {
			assertThat(hole.made()).isFalse();
			// 2 x 3 mm x tan 45 degrees
			assertThat(hole.cuts().get(0).diameter().orElseThrow().value()).isCloseTo(6, within(1e-9));
		});
	}
}
