package truelead.checker.rule.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Severity;

/** The bore of a thread that a lathe cuts by a single point: M30x2 of class 6H has a minor diameter of 27.835 to 28.210 mm (ISO 965-2). */
class ChasedBoreTest {
	private static final String CYCLE = "G0 X26 Z6\nG76 P020060 Q50 R0.03\nG76 X30 Z-28 P1080 Q250 F2.0";
	private static final String PASSES = "G0 X26 Z6\nG92 X28.5 Z-28 F2.0\nX29.2\nX29.7\nX30";
	private static final String MOVES = """
			G0 X28.6
			G32 Z-28 F2.0
			G0 X26
			Z6
			X29.4
			G32 Z-28
			G0 X26
			Z6
			X30
			G32 Z-28
			G0 X26
			Z6""";

	@ParameterizedTest
	@ValueSource(strings = {CYCLE, PASSES, MOVES})
	void aBoreThatLeavesTooMuchOrTooLittle(String thread) {
		assertThat(found("27.84", "-32", thread)).isEmpty();
		assertThat(found("28.2", "-32", thread)).isEmpty();
		assertThat(found("26.4", "-32", thread))
				.containsExactly("ERROR drill-too-small the hole is bored 26.4 mm, the smallest minor diameter of M30x2 (6H, assumed) is "
						+ "27.835 mm: " + "1.435 mm too small, and the screw does not go in or the point cuts crests that it has no edge "
						+ "for; bore 27.835 mm to 28.21 mm");
		assertThat(found("28.6", "-32", thread))
				.containsExactly("ERROR drill-too-big the hole is bored 28.6 mm, the largest minor diameter of M30x2 (6H, assumed) "
						+ "is 28.21 mm: " + "0.39 mm too big, 54 % of thread left; bore 27.835 mm to 28.21 mm");
	}

	@Test
	void aPointWithTheWholeProfileIsLeftTheCrests() {
		assertThat(found("27.65", "-32", CYCLE)).isEmpty();
		assertThat(found("27.5", "-32", CYCLE)).singleElement().asString().startsWith("WARNING drill-too-small");
	}

	@Test
	void aThreadThatGoesOnWhereTheBoreEnds() {
		assertThat(found("28", "-28.4", CYCLE)).isEmpty();
		assertThat(found("28", "-24", CYCLE)).containsExactly("ERROR drill-too-shallow the bore of 28 mm ends at Z-24, the thread at Z-28: "
				+ "4 mm of it are cut into the full, and the point breaks; bore on behind the thread, or end it before");
	}

	@Test
	void aThreadOutsideHasNoBore() {
		assertThat(found("20", "-32", "G0 X32 Z6\nG76 P020060 Q50 R0.03\nG76 X27.55 Z-28 P1227 Q250 F2.0")).isEmpty();
	}

	@Test
	void aReliefBehindTheBoreIsNotItsDiameter() {
		String relief = "27.84 Z-2.6\nZ-27\nX30.4\nZ-30";
		assertThat(found(relief, "-30", PASSES)).as("turned by the bar that bores").isEmpty();
		assertThat(found(relief.replace("27.84", "28.6"), "-30", PASSES)).singleElement().asString()
				.startsWith("ERROR drill-too-big the hole is bored 28.6 mm");
		assertThat(found(relief, "-30", PASSES.replace("Z-28", "Z-34"))).singleElement().asString()
				.startsWith("ERROR drill-too-shallow the bore of 27.84 mm ends at Z-30, the thread at Z-34");
		String groove = """
				T0404 (GROOVE)
				G97 S500 M3
				G0 X25 Z3
				Z-28
				G1 X31 F.06
				X25
				G0 Z50
				T0505 (THREAD M30X2 INTERNAL)
				G97 S500 M3
				""";
		assertThat(found("27.84", "-27", groove + PASSES)).as("plunged by a groover of nobody knows what width").isEmpty();
		assertThat(found("27.84", "-27", groove + PASSES.replace("Z-28", "Z-36"))).singleElement().asString()
				.startsWith("ERROR drill-too-shallow");
	}

	/** The bar goes in again along the bore, and is fed out where the thread ends. */
	@Test
	void aReliefThatTheBarIsFedOutToIsNotItsDiameter() {
		String fedOut = "T0303 (BORING BAR)\nG97 S700 M3\nG0 X25 Z3\nZ-27\nG1 X30.6 F.05\nZ-31\nX25 F.3\nG0 Z50\n"
				+ "T0505 (THREAD M30X2 INTERNAL)\nG97 S500 M3\n";
		assertThat(found("27.84", "-30", fedOut + PASSES)).isEmpty();
		assertThat(found("28.6", "-30", fedOut + PASSES)).singleElement().asString()
				.startsWith("ERROR drill-too-big the hole is bored 28.6 mm");
	}

	/** Nothing is drilled there, and Z grows towards the chuck. */
	@Test
	void theBoreOfASecondSpindleIsItsThreads() {
		String program = """
				G21 G40 G99
				T0101 (BORING BAR)
				G96 S180 M3
				G0 X24. Z-2.
				X27.9
				G1 Z25. F.12
				X24.
				G0 Z-50.
				T0505 (THREAD M30X2 INTERNAL)
				G97 S500 M3
				G0 X25. Z-6.
				G76 P010060 Q40 R-.02
				G76 X30. Z22. P1083 Q220 F2.
				G0 Z-50.
				M30
				""";
		assertThat(Samples.heard(MachineProfile.named("turning"), program)).isEmpty();
		assertThat(Samples.heard(MachineProfile.named("turning"), program.replace("Z22.", "Z28."))).singleElement().asString()
				.startsWith("drill-too-shallow the bore of 27.9 mm ends at Z25, the thread at Z28");
		assertThat(Samples.heard(MachineProfile.named("turning"), program.replace("X27.9", "X26."))).singleElement().asString()
				.startsWith("drill-too-small");
	}

	@Test
	void aThreadBehindItsBoreIsHeldToTheWiderOne() {
		String step = "27.84 Z-2.6\nZ-25\nX24\nZ-40";
		assertThat(found(step, "-40", PASSES.replace("Z-28", "Z-23"))).isEmpty();
		assertThat(found(step, "-40", PASSES)).singleElement().asString()
				.startsWith("ERROR drill-too-shallow the bore of 27.84 mm ends at Z-25, the thread at Z-28");
	}

	@Test
	void anotherThreadThanTheCommentNamesIsNotHeldToIt() {
		assertThat(found("34", "-32", "G0 X32 Z6\nG76 P020060 Q50 R0.03\nG76 X36 Z-28 P1080 Q250 F2.0")).isEmpty();
	}

	private static List<String> found(String bore, String floor, String thread) {
		String program =
				"(NUT)\nG21 G40 G99\nT0101 (DRILL 20)\nG97 S600 M3\nG0 X0 Z5\nG74 R1\nG74 Z-45 Q10000 F0.18\nG0 Z50\nT0303 (BORING BAR)\n"
				+ "G97 S900 M3\nG0 X19 Z2\nG71 U1.5 R0.5\n" + "G71 P10 Q20 U-0.3 W0.05 F0.2\nN10 G0 X33\nG1 Z0\nX"
				+ (bore.contains("Z") ? bore : bore + " Z-2.6") + "\nZ"
				+ floor + "\nN20 X19\nG70 P10 Q20 F0.1\nG0 Z50\nT0505 (THREAD M30X2 INTERNAL)\nG97 S500 M3\n" + thread + "\nG0 Z50\nM30\n";
		return Samples.findings(MachineProfile.named("turning"), program).stream().filter(f -> f.severity() != Severity.INFORMATION)
				.map(f -> f.severity() + " " + f.rule() + " " + f.message()).toList();
	}

	/** 2G is a class of trapezoids alone, whatever stands between ACME and the size; behind the bore the drill goes on. */
	@ParameterizedTest
	@ValueSource(strings = {"ACME NUT 3/4-6 2G BRONZE", "NUT 3/4-6 2G"})
	void aTrapezoidByItsClass(String title) {
		String program = """
				(TITLE)
				G20 G99 G40
				T0202 (DRILL 9/16)
				G97 S800 M3
				G0 X0 Z.3
				G83 Z-1.85 Q2500 F.009
				G80
				G0 Z4.
				T0303 (BORING BAR)
				G97 S900 M3
				G0 X.585 Z.1
				G1 Z-1.65 F.006
				X.56
				G0 Z4.
				T0404 (BAR 29 DEG)
				G97 S350 M3
				G0 X.55 Z.5
				G76 P020029 Q25 R15
				G76 X.77 Z-1.7 P925 Q90 F.166667
				G0 Z4.
				M30
				""".replace("TITLE", title);
		assertThat(Samples.heard(MachineProfile.named("turning"), program)).isEmpty();
		assertThat(Samples.heard(MachineProfile.named("turning"), program.replace("X.585", "X.685"))).singleElement().asString()
				.startsWith("drill-too-big the hole is bored 0.685 in, the largest minor diameter of 3/4-6 ACME (2G) is");
	}
}
