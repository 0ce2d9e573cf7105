package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.program.FeedMode;

/** Drilling and tapping cycles called by name with arguments in their order. */
class NamedCyclesTest {

	private static final String AT = "G0 X10. Y5. Z50.";

	@Test
	void aTapLeadsItsSpindleByPitchAndSpeedOfTheCall() {
		Followed run = Followed.milling("T1 M6", AT, "CYCLE84(50,0,4,-15,,,3,,1.25,0,400,500)");
		Step.Stroke tap = run.stroke(0);
		assertThat(run.lost()).isEmpty();
		assertThat(tap.cycle().kind()).isEqualTo(Cycle.Kind.TAP);
		assertThat(tap.modal().feed().value()).isEqualTo(1.25);
		assertThat(tap.modal().feedMode()).isEqualTo(FeedMode.PER_REVOLUTION);
		assertThat(tap.modal().speed().value()).isEqualTo(400);
		assertThat(tap.modal().spindle()).isEqualTo(SpindleTurn.CLOCKWISE);
		assertThat(List.of(tap.initial(), tap.rLevel(), tap.bottom())).containsExactly(50.0, 4.0, -15.0);
		assertThat(run.end().z()).isEqualTo(50);
	}

	@Test
	void aNegativePitchCutsALeftHandThread() {
		Step.Stroke tap = Followed.milling(AT, "CYCLE84(50,0,4,-15,,,3,,-1.25,0,400)").stroke(0);
		assertThat(tap.cycle().kind()).isEqualTo(Cycle.Kind.TAP_LEFT);
		assertThat(tap.modal().spindle()).isEqualTo(SpindleTurn.COUNTERCLOCKWISE);
		assertThat(tap.modal().feed().value()).isEqualTo(1.25);
	}

	@Test
	void theDepthFromTheReferencePlaneGoesFirst() {
		assertThat(Followed.milling(AT, "CYCLE81(50,-2,3,,20)").stroke(0).bottom()).isEqualTo(-22);
		assertThat(Followed.milling(AT, "CYCLE81(50,-2,3,,20)").stroke(0).rLevel()).isEqualTo(1);
	}

	/** M10 has 1.5 and M6 has 1.0 by ISO 261. */
	@Test
	void aSizeStandsForItsCoarsePitchAndItsSignForTheHand() {
		assertThat(Followed.milling(AT, "CYCLE84(50,0,4,-15,,,3,10,,0,400)").stroke(0).modal().feed().value()).isEqualTo(1.5);
		Step.Stroke left = Followed.milling("G20", AT, "CYCLE84(2,0,.1,-.5,,,3,-6,,0,400)").stroke(0);
		assertThat(left.cycle().kind()).isEqualTo(Cycle.Kind.TAP_LEFT);
		assertThat(left.modal().feed().value() * 25.4).isCloseTo(1.0, org.assertj.core.data.Offset.offset(1e-9));
		assertThat(Followed.milling("S300 M3", AT, "CYCLE840(50,0,4,-15,,,4,3,0,10)").stroke(0).modal().feed().value()).isEqualTo(1.5);
	}

	@Test
	void threadsAnInchAreAPitchToo() {
		Step.Stroke tap = Followed.milling(AT, "CYCLE84(50,0,4,-15,,,3,,20,0,400,400,0,2)").stroke(0);
		assertThat(tap.modal().feed().value()).isEqualTo(1.27);
	}

	/** Nothing that is left out becomes zero. */
	@Test
	void whatIsLeftOutIsNotFollowed() {
		for (String call : List.of("CYCLE84(,0,4,-15,,,3,,1,0,400)", "CYCLE84(50,,4,-15,,,3,,1,0,400)", "CYCLE84(50,0,,-15,,,3,,1,0,400)",
				"CYCLE84(50,0,4,,,,3,,1,0,400)", "CYCLE84(50,0,4,-15,,,3,9,,0,400)", "CYCLE84(50,0,4,-15,,,3,,1,0)",
				"CYCLE84(50,0,4,-15,,,3,,1,0,400,400,1)", "CYCLE840(50,0,4,-15,,,4,3,0,,1)")) {
			assertThat(Followed.milling(AT, call).lost()).as(call)
					.containsExactly(call + " makes threads in a way that is not followed: check them by hand");
		}
	}

	@Test
	void behindEveryMotionUntilTheCallEnds() {
		Followed run = Followed.milling(AT, "MCALL CYCLE84(50,0,4,-15,,,3,,1,0,400)", "X20.", "X30.", "MCALL", "X40.");
		assertThat(run.strokes()).extracting(stroke -> stroke.place().x()).containsExactly(20.0, 30.0);
		assertThat(run.events(Step.EventKind.CYCLE_CANCELLED)).hasSize(1);
	}

	@Test
	void rowsAndCirclesAreMadeUnderTheCall() {
		Followed row = Followed.milling(AT, "MCALL CYCLE82(50,0,4,-15,,0.5)", "HOLES1(0,60,90,5,20,3)", "MCALL");
		assertThat(row.strokes()).extracting(stroke -> Followed.text(stroke.place())).containsExactly("0,65,4", "0,85,4", "0,105,4");
		Followed circle = Followed.milling(AT, "MCALL CYCLE84(50,0,4,-15,,,3,,1,0,400)", "HOLES2(100,50,10,0,,4)", "MCALL");
		assertThat(circle.strokes()).extracting(stroke -> Followed.text(stroke.place()))
				.containsExactly("110,50,4", "100,60,4", "90,50,4", "100,40,4");
	}

	@Test
	void aRowThatIsNotKnownIsSaidWhereHolesWouldBeMade() {
		assertThat(Followed.milling(AT, "MCALL CYCLE84(50,0,4,-15,,,3,,1,0,400)", "HOLES1(0,60,,5,20,3)", "MCALL").lost())
				.containsExactly("the holes of HOLES1(0,60,,5,20,3) are placed in a way that is not followed: check them by hand");
	}

	@Test
	void anArgumentWithoutAValueIsNamed() {
		assertThat(Followed.milling(AT, "CYCLE84(50,0,4,-15,,,3,,R1,0,400)").lost())
				.containsExactly("CYCLE84(50,0,4,-15,,,3,,R1,0,400) makes threads and cannot be followed: R1 is not set in the program");
	}

	@Test
	void aGridGoesToAndFroAlongItsRows() {
		Followed grid = Followed.milling(AT, "MCALL CYCLE82(50,0,4,-15,,0.5)", "CYCLE801(10,20,0,30,40,2,2)", "MCALL");
		assertThat(grid.strokes()).extracting(stroke -> Followed.text(stroke.place()))
				.containsExactly("10,20,4", "40,20,4", "40,60,4", "10,60,4");
	}

	@Test
	void placesOneByOneAreMadeInTheirOrderWhereAllCountFromZero() {
		assertThat(Followed.milling(AT, "MCALL CYCLE82(50,0,4,-15,,0.5)", "CYCLE802(111111111,111111111,10,20,30,40,-5,2.5,,,,,0,0,1)",
				"MCALL").strokes()).extracting(stroke -> Followed.text(stroke.place()))
				.containsExactly("10,20,4", "30,40,4", "-5,2.5,4");
		for (String places : List.of("CYCLE802(121111111,111111111,10,20,30,40)", "CYCLE802(111111111,111111111,10,20,30)",
				"CYCLE802(111111111,111111111)")) {
			assertThat(Followed.milling(AT, "MCALL CYCLE82(50,0,4,-15,,0.5)", places, "MCALL").lost())
					.containsExactly("the holes of " + places + " are placed in a way that is not followed: check them by hand");
		}
	}

	@Test
	void aGridOfWhichSomethingIsLeftOutMakesNoneOfItsRows() {
		for (String grid : List.of("CYCLE801(10,20,0,30,,2,2)", "CYCLE801(10,,0,30,40,2,2)", "CYCLE801(10,,0,30,40,100000,100000)",
				"CYCLE801(10,20,0,30,40,-2,-2)")) {
			Followed followed = Followed.milling(AT, "MCALL CYCLE82(50,0,4,-15,,0.5)", grid, "MCALL");
			assertThat(followed.strokes()).as(grid).isEmpty();
			assertThat(followed.lost()).containsExactly("the holes of " + grid
					+ " are placed in a way that is not followed: check them by hand");
		}
		assertThat(Followed.milling(AT, "MCALL CYCLE82(50,0,4,-15,,0.5)", "CYCLE801(10,20,0,30,,2,1)", "MCALL").strokes())
				.as("one row needs no distance to the next").hasSize(2);
	}

	@Test
	void aFloatingHolderGoesTheWayTheSpindleTurns() {
		Step.Stroke tap = Followed.milling(AT, "S300 M4", "CYCLE840(50,0,4,-15,,,3,4,0,,1.5)").stroke(0);
		assertThat(tap.cycle().kind()).isEqualTo(Cycle.Kind.TAP_LEFT);
		assertThat(tap.modal().feed().value()).isEqualTo(1.5);
		assertThat(Followed.milling(AT, "S300 M3 F450", "CYCLE840(50,0,4,-15,,,4,3,1)").stroke(0).modal().feed().value()).isEqualTo(450);
	}
}
