package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** A tap that is led in and out by blocks of its own, G63 with a floating holder and G331 with the spindle's angle. */
class LedByMovesTest {

	private static List<Finding> loud(String... blocks) {
		List<String> program = new ArrayList<>(List.of("N10 G17 G71 G90 G94", "N20 T=\"GEWINDEBOHRER_M8\" M6", "N30 D1 S300 M3",
				"N40 G0 X20 Y20 Z8"));
		program.addAll(List.of(blocks));
		program.add("N99 M30");
		return Samples.findings(program.toArray(String[]::new)).stream().filter(f -> f.severity() != Severity.INFORMATION).toList();
	}

	@Test
	void aWrongFeedOnTheWayInIsNotUnevenToo() {
		assertThat(loud("N50 G63 Z-18 F300", "N60 G63 Z8 F375 M4")).singleElement()
				.satisfies(f -> assertThat(f.rule()).isEqualTo("feed-off-pitch"));
		assertThat(loud("N50 G63 Z-18 F375", "N60 G63 Z8 F300 M4")).singleElement()
				.satisfies(f -> assertThat(f.rule()).isEqualTo("override-open"));
		assertThat(loud("N50 G63 Z-18 F375", "N60 G63 Z8 F375 M4")).isEmpty();
	}

	@Test
	void aWayOutWithoutTheReversalOfTheOthers() {
		assertThat(loud("N50 G63 Z-18 F375", "N60 G63 Z8 F375", "N70 G0 X60 M3", "N80 G63 Z-18 F375", "N90 G63 Z8 F375 M4")).singleElement()
				.satisfies(f -> {
			assertThat(f.rule()).isEqualTo("spindle-wrong-way");
			assertThat(f.severity()).isEqualTo(Severity.ERROR);
		});
		assertThat(loud("N50 G63 Z-18 F375", "N60 G63 Z8 F375")).as("a head that reverses by itself").isEmpty();
	}

	@Test
	void aTapThatIsTurnedBackHalfWayIsTornOutOfTheRest() {
		String program = """
				G21 G90 G94 G17
				T2 M6 (DRILL 6.8)
				G54 G0 X10 Y10 S1500 M3
				G43 H2 Z10
				G81 Z-22 R3 F200
				G80
				T3 M6 (M8 TAP)
				G54 G0 X10 Y10 S400 M3
				G43 H3 Z5
				G331 Z-15 K1.25 S400
				G332 Z5 K1.25
				G0 Z50
				M30
				""";
		assertThat(Samples.heard(program)).isEmpty();
		for (String next : List.of("G0 Z50", "G0 X50 Y50\nG0 Z50")) {
			assertThat(Samples.heard(program.replace("G332 Z5", "G332 Z-5").replace("G0 Z50", next))).singleElement().asString()
					.startsWith("tap-in-drilling-cycle the tap comes back to Z-5 only, 5 mm deep in its hole, and what comes next pulls it "
							+ "out of the rest: the thread is torn out; Z5, where it began");
		}
	}

	/** It opens at the end of the thread and is pulled back. */
	@Test
	void aHeadOfRollsIsFedAtTheLeadAndComesBackAtRapid() {
		String stud = """
				G21 G99
				T0505 (AXIALROLLKOPF M10X1.5)
				G97 S500 M3
				G0 X0 Z6.
				G1 Z-25. F1.5
				G4 X.2
				G0 Z6.
				X100. Z100.
				M30
				""";
		MachineProfile lathe = MachineProfile.named("turning");
		assertThat(Samples.heard(lathe, stud)).isEmpty();
		assertThat(Samples.heard(lathe, stud.replace("F1.5", "F1.47"))).as("held back a little").isEmpty();
		assertThat(Samples.heard(lathe, stud.replace("F1.5", "F1.25"))).singleElement().asString().startsWith("feed-off-pitch");
		assertThat(Samples.heard(lathe, stud.replace("M3", "M4"))).singleElement().asString().startsWith("spindle-wrong-way");
	}

	@Test
	void theSignOfTheLeadTurnsTheSpindle() {
		assertThat(loud("N50 G331 Z-18 K-1.25 S300", "N60 G332 Z8 K-1.25")).singleElement().satisfies(f -> {
			assertThat(f.message()).startsWith("K-1.25 turns counter-clockwise, M8x1.25 is right-hand")
					.endsWith("; the lead without a minus sign");
			assertThat(f.at().line()).isEqualTo(4);
		});
	}
}
