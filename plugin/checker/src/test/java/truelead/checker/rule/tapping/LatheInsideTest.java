package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;

/**
 * Threads inside that a lathe cuts by a single point: bar machines whose Z grows towards the chuck, threads cut from the ground outwards,
 * taper bores, infeeds along the flank.
 */
class LatheInsideTest {

	/** M12x1 of class 6H has a minor diameter of 10.917 to 11.153 mm (ISO 965-2). */
	private static final String SLIDING = """
			G21
			M3 S1800
			T2100 (DRILL 10.5)
			G0 X0 Z-1. T21
			G1 Z18. F.06
			G0 Z-1.
			T2200 (BORE)
			G0 X11.05 Z-1. T22
			G1 Z16. F.03
			G0 X10.4
			Z-1.
			T2300 (THREAD INSIDE M12X1)
			M3 S1200
			G0 X10.4 Z-4. T23
			G92 X11.3 Z13. F1.
			X11.5
			X11.7
			X11.85
			X11.95
			X12.
			G0 Z-10.
			M30
			""";

	@Test
	void onABarMachineZMayGrowTowardsTheChuck() {
		assertThat(said(SLIDING)).isEmpty();
		assertThat(said(SLIDING.replace("G0 X11.05", "G0 X11.45"))).singleElement().asString()
				.startsWith("drill-too-big the hole is bored 11.45 mm");
		assertThat(said(SLIDING.replace("G0 X11.05", "G0 X10.7"))).singleElement().asString()
				.startsWith("drill-too-small the hole is bored 10.7 mm");
		assertThat(said(SLIDING.replace("G1 Z16.", "G1 Z11."))).singleElement().asString()
				.startsWith("drill-too-shallow the bore of 11.05 mm ends at Z11, the thread at Z13");
		assertThat(said(SLIDING.replace("M3 S1200", "M4 S1200"))).singleElement().asString()
				.startsWith("spindle-wrong-way M4 and passes towards the chuck");
		assertThat(said(SLIDING.replace("X10.4 Z-4. T23", "X10.4 Z-.3 T23"))).singleElement().asString().startsWith("start-too-close")
				.endsWith("begin at Z-2");
	}

	@Test
	void aBoringBarThatFeedsBackOutBoresNothing() {
		String out = SLIDING.replace("G1 Z16. F.03\nG0 X10.4", "G1 Z16. F.03\nX11.0\nZ-1. F.2\nG0 X10.4");
		assertThat(said(out)).isEmpty();
	}

	/** M20x1.5 LH: under M3 it is cut from the ground outwards. */
	@Test
	void aThreadCutOutwardsBeginsWhereItIsDeepest() {
		String pulled = """
				G21 G99
				T0303 (BORE 18.5)
				G97 S900 M3
				G0 X18.5 Z2.
				G1 Z-34. F.1
				G0 X17.
				Z60.
				T0505 (M20X1.5 LH INTERNAL)
				G97 S500 M3
				G0 X17. Z5.
				Z-30.5
				G92 X18.9 Z3. F1.5
				X19.2
				X19.5
				X19.7
				X19.85
				X20.
				G0 Z60.
				M30
				""";
		assertThat(said(pulled)).isEmpty();
		assertThat(said(pulled.replace("Z-30.5", "Z-38."))).singleElement().asString()
				.startsWith("drill-too-shallow the bore of 18.5 mm ends at Z-34, the thread at Z-38: 4 mm");
	}

	/**
	 * 1/2-14 NPT: pitch diameter 0.77843 in at the gauge plane, height 0.8 P (ASME B1.20.1), so the minor diameter at the face is 0.7213
	 * in.
	 */
	@Test
	void aTaperBoreIsHeldToTheThreadAtTheFace() {
		String fitting = """
				G20 G99
				T0202 (DRILL 45/64)
				G97 S900 M3
				G0 X0 Z.2
				G1 Z-1.3 F.007
				G0 Z2.
				T0404 (TAPER BORE)
				G97 S900 M3
				G0 X.68 Z.1
				G90 X.6619 Z-.95 R.0328 F.005
				G0 Z2.
				T0606 (1/2-14 NPT ID)
				G97 S800 M3
				G0 X.65 Z.2
				G92 X.72 Z-.8 R.03125 F.0714
				X.735
				X.748
				X.76
				X.77
				X.778
				X.7838
				X.7856
				G0 Z2.
				M30
				""";
		assertThat(said(fitting)).isEmpty();
		assertThat(said(fitting.replace("X.6619 Z-.95", "X.7219 Z-.95"))).singleElement().asString()
				.startsWith("drill-too-big the hole is bored 0.7813 in, the minor diameter of 1/2-14 NPT at the gauge plane is 0.7213 in");
		assertThat(said(fitting.replace("X.72 Z-.8 R.03125", "X.72 Z-1.35 R.03125")))
				.containsExactly("drill-too-shallow the hole ends at Z-1.0888, the thread at Z-1.35: 0.261 in of it are cut into the full, "
						+ "and the point breaks; drill on behind the thread, or end it before");
	}

	/** tan 30 of the infeed on the radius is 0.577 of it: M33x2 fed in along the flank. */
	@Test
	void anInfeedAlongTheFlankStaysInTheGroove() {
		StringBuilder text =
				new StringBuilder("G21 G99\nT0303 (BORING BAR 31.)\nG97 S900 M3\nG0 X31. Z2.\nG1 Z-25. F.12\nG0 X29.\nZ100.\n"
						+ "T0505 (THREAD M33X2 ID)\nG97 S500 M3\nG0 X29. Z6.\n");
		for (String pass : List.of("X31.6 Z5.827", "X32. Z5.712", "X32.3 Z5.625", "X32.55 Z5.553", "X32.8 Z5.481", "X33. Z5.423")) {
			text.append(pass).append("\nG32 Z-22. F2.\nG0 X29.\nZ6.\n");
		}
		String thread = text + "Z100.\nM30\n";
		assertThat(said(thread)).isEmpty();
		assertThat(said(thread.replace("Z5.553", "Z5.053")))
				.containsExactly("helix-uneven the pass to diameter 32.55 mm begins 0.37 mm beside the groove of that to 33 mm, an infeed "
						+ "along the flank " + "explains 0.13 mm: it cuts a flank away; begin at Z5.423, or beside it by no "
						+ "more than that");
		assertThat(said(thread.replace("Z5.423", "Z4.923"))).singleElement().asString()
				.startsWith("helix-uneven the pass to diameter 33 mm begins 0.558 mm beside the groove of that to 32.8 mm");
	}

	/** Three starts of M40x6 P2, 120 degrees apart: one angle typed wrong lies no farther beside than an infeed by turns would. */
	@Test
	void oneAngleOfASeveralStartThread() {
		StringBuilder text =
				new StringBuilder("G21 G99\nT0202 (BORE 38.)\nG97 S700 M3\nG0 X38. Z3.\nG1 Z-40. F.12\nG0 X36.\nZ60.\n"
						+ "T0404 (M40X6 (P2) INTERNAL)\nG97 S200 M3\nG0 X36. Z14.\n");
		for (String start : List.of("0", "120000", "240000")) {
			for (String pass : List.of("X38.6", "X39.2", "X39.7", "X40.")) {
				text.append("G0 ").append(pass).append("\nG32 Z-36. F6. Q").append(start).append("\nG0 X36.\nZ14.\n");
			}
		}
		String thread = text + "G0 Z100.\nM30\n";
		assertThat(said(thread)).isEmpty();
		assertThat(said(thread.replace("X39.2\nG32 Z-36. F6. Q120000", "X39.2\nG32 Z-36. F6. Q210000"))).singleElement().asString()
				.startsWith("helix-uneven the pass to diameter 39.2 mm begins 0.5 mm beside").endsWith("turn it by the angle of its start");
	}

	@Test
	void aDiameterTypedForARadius() {
		String radii = """
				(BORE 33)
				G21 G99
				T0202 (BORE 33)
				G97 S800 M3
				G0 X33. Z2.
				G1 Z-42. F.12
				G0 X30.
				Z100.
				T0303 (INTERNAL M36X3)
				G97 S350 M3
				G0 X32. Z9.
				G92 X33.5 Z-38. F3.
				X34.
				X34.4
				X34.8
				X35.2
				X35.6
				X35.9
				X36.
				G0 Z100.
				M30
				""";
		assertThat(said(radii)).isEmpty();
		assertThat(said(radii.replace("X36.\n", "X72.\n"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread inside goes to diameter 72 mm");
	}

	/** M28x1.5 at both ends: minor diameter 26.376 to 26.676 mm (ISO 965-2). The drill goes through, the bores are of one end each. */
	@Test
	void behindAStopTheOtherEndHasABoreOfItsOwn() {
		String end = """
				T0202 (BORING BAR)
				G97 S900 M3
				G0 X26.5 Z2.
				G1 Z-24. F.12
				G0 X21.
				Z150.
				T0303 (M28X1.5 INSIDE)
				G97 S600 M3
				G0 X25. Z6.
				G92 X26.9 Z-20. F1.5
				X27.3
				X27.6
				X27.8
				X28.
				G0 Z150.
				""";
		String start = """
				G21 G99
				T0101 (DRILL 22)
				G97 S600 M3
				G0 X0 Z5.
				G1 Z-62. F.2
				G0 Z150.
				""";
		String turn = "M0 (TURN PART AROUND)\n";
		assertThat(said(start + end + turn + end + "M30\n")).isEmpty();
		assertThat(said(start + end.replace("X26.5", "X27.1") + turn + end + "M30\n")).as("the first end").singleElement().asString()
				.startsWith("drill-too-big the hole is bored 27.1 mm");
		assertThat(said(start + end + turn + end.replace("Z-24.", "Z-18.") + "M30\n")).as("the second end").singleElement().asString()
				.startsWith("drill-too-shallow the bore of 26.5 mm ends at Z-18");
		assertThat(said(start + end.replace("X28.\n", "X29.\n") + turn + end + "M30\n")).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of the thread inside goes to diameter 29 mm");
		assertThat(said(start + end.replace("X26.5", "X27.1") + end + "M30\n")).as("nobody turns the part").singleElement().asString()
				.endsWith("the same at 1 more block");
	}

	/** M10 behind a seat of 22.5 that is deeper than half of the hole. */
	@Test
	void aTapBelowADeepSeatHasItsOwnDrill() {
		String seat = """
				G21 G99
				T0101 (DRILL 8.5)
				G97 S1200 M3
				G0 X0 Z5.
				G1 Z-40. F.15
				G0 Z50.
				T0303 (BORING BAR)
				G97 S900 M3
				G0 X22.5 Z2.
				G1 Z-22. F.1
				G0 X9.
				Z50.
				T0505 (M10 TAP)
				G97 S300 M3
				G0 X0 Z5.
				G84 Z-32. F1.5
				G80
				G0 Z50.
				M30
				""";
		assertThat(said(seat)).isEmpty();
		assertThat(said(seat.replace("G84 Z-32.", "G84 Z-38."))).singleElement().asString()
				.startsWith("drill-too-shallow the tap goes 16 mm deep, the hole has its full diameter down to 15.45 mm");
	}

	/** In the other channel the holes lie across: they say nothing of the plane here. */
	@Test
	void aChannelHasThePlaneOfItsOwnHoles() {
		String two = """
				$1
				G21 G99
				T3100 (CROSS DRILL 2.5)
				M3 S3500
				G0 X10. Z6.
				G1 X-6. F.05
				G0 X10.
				M2
				$2
				G21 G99
				T4100 (BACK DRILL 3.3)
				M3 S3000
				G0 X0 Z2.
				Z10.
				T4200 (BACK TAP M4)
				M3 S700
				G0 X0 Z3.
				G84 Z-8. F.7
				G80
				G0 Z10.
				M2
				""";
		assertThat(said(two)).singleElement().asString().startsWith("hole-missing");
	}

	private static List<String> said(String program) {
		return Samples.heard(MachineProfile.named("turning"), program);
	}
}
