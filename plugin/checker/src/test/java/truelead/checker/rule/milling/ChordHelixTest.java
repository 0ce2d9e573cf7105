package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.heard;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;

/** Threads milled in straight chords, as posts without arcs and loops with sines write them: they are judged as helices of arcs are. */
class ChordHelixTest {

	private static final String DRILLED = """
			G21 G90 G17 G40
			T1 M6 (DRILL 18.5)
			G54 G0 X0 Y0 S700 M3
			G43 H1 Z20.
			G81 Z-32. R3. F100
			G80
			""";
	private static final String MILL = """
			T2 M6 (THREAD MILL D12 SINGLE)
			(M20X1.5-6H 18 DEEP)
			G0 X0 Y0 S2400 M3
			G43 H2 Z20.
			G0 Z-20.
			""";

	@Test
	void aRightHelixInChordsIsRight() {
		assertThat(heard(thread(4, 1.5, 5, 3))).isEmpty();
	}

	@Property(tries = 60)
	void howFineTheChordsAreDoesNotMatter(@ForAll @IntRange(min = 1, max = 45) int degrees,
			@ForAll @IntRange(min = 3, max = 4) int decimals, @ForAll @IntRange(min = 0, max = 2) int wrong) {
		double lead = 1.5 + wrong * 0.05;
		String program = thread(4, lead, degrees, decimals);
		assertThat(heard(program)).as(program).hasSize(Math.min(1, wrong)).allMatch(said -> said.startsWith("helix-off-pitch"));
	}

	@Property(tries = 30)
	void theSizeIsThatOfTheCircleThroughTheCorners(@ForAll @IntRange(min = 1, max = 45) int degrees,
			@ForAll @IntRange(min = 60, max = 79) int twentieths) {
		double radius = twentieths / 20.0;
		assertThat(heard(thread(radius, 1.5, degrees, 3))).singleElement().asString()
				.startsWith("helix-off-size 2 x R" + String.valueOf(radius).replaceAll("\\.0$", "") + " mm");
	}

	@Test
	void aHelixThatGoesTheOtherWayRoundIsLeftHand() {
		assertThat(heard(thread(4, 1.5, 5, 3).replace("Y", "Y-").replace("Y--", "Y"))).singleElement().asString()
				.startsWith("helix-wrong-hand the helix goes clockwise and up");
	}

	@Test
	void oneLevelTypedWrongIsUneven() {
		String program = thread(4, 1.5, 10, 3);
		String corner = corner(4, -18 + 3.75, 900, 3);
		assertThat(program).contains(corner);
		assertThat(heard(program.replace(corner, corner.replace("Z-14.250", "Z-14.750")))).singleElement().asString()
				.startsWith("helix-uneven this arc of 10 degrees advances -0.458 mm").endsWith("step Z 0.042 mm here");
	}

	@Test
	void oneCornerTypedWrongIsBesideTheCircle() {
		String program = thread(4, 1.5, 10, 3);
		String corner = corner(4, -18 + 3.75, 900, 3);
		assertThat(heard(program.replace(corner, corner.replace("X-4.000", "X-4.500")))).singleElement().asString()
				.startsWith("arc-not-closed this chord ends 0.5 mm beside the circle of the others, whose radius is 4 mm");
	}

	@Test
	void aHelixThatEndsEarlyIsTooShort() {
		String program = thread(4, 1.5, 5, 3);
		assertThat(heard(program.replace("18 DEEP", "24 DEEP"))).singleElement().asString().startsWith("helix-too-short");
	}

	@Test
	void aLoopWithSinesMakesAThread() {
		String loop = """
				#1=0
				WHILE[#1LE4320]DO1
				G1 X[4*COS[#1]] Y[4*SIN[#1]] Z[-18+#1*1.5/360] F150
				#1=#1+5
				END1
				G1 X0 Y0
				G0 Z20.
				M30
				""";
		String lead = """
				#2=0
				WHILE[#2LE180]DO1
				G1 X[2-2*COS[#2]] Y[-2*SIN[#2]] Z[-18.375+#2*0.375/180] F150
				#2=#2+10
				END1
				""";
		assertThat(heard(DRILLED + MILL + "G1 Z-18.375 F500\n" + lead + loop)).isEmpty();
		assertThat(heard(DRILLED + MILL + "G1 Z-18.375 F500\n" + lead + loop.replace("1.5/360", "1.25/360"))).singleElement().asString()
				.startsWith("helix-off-pitch the helix advances 1.250 mm a turn");
	}

	@Test
	void shortArcsAreOneHelix() {
		StringBuilder path = new StringBuilder("G3 X4. Y0 Z-18. I2. J0 F150\n");
		for (int i = 1; i <= 12 * 72; i++) {
			path.append(String.format(Locale.ROOT, "G3 X%.3f Y%.3f Z%.3f R4.\n", 4 * Math.cos(Math.toRadians(5 * i)),
					4 * Math.sin(Math.toRadians(5 * i)), -18 + i * 1.5 / 72));
		}
		String program = DRILLED + MILL + "G1 Z-18.375 F500\n" + path + "G3 X0 Y0 Z0.375 R2.\nG0 Z20.\nM30\n";
		assertThat(heard(program)).isEmpty();
	}

	@Test
	void aTaperThreadGrowsInChords() {
		assertThat(heard(taper(1, 1))).isEmpty();
		assertThat(heard(taper(1.1, 1))).singleElement().asString()
				.startsWith("helix-off-pitch the helix advances 1.996 mm a turn, Rc 1/2 needs 1.814");
		assertThat(heard(taper(1, 2))).singleElement().asString()
				.startsWith("taper-off the radius changes by 0.907 mm over 14.514 mm of advance, a taper of 1 in 16 needs 0.454 mm");
		assertThat(heard(taper(1, 0))).singleElement().asString().startsWith("taper-off the radius changes by 0 mm");
	}

	/** Rc 1/2 in chords of five degrees, whose lead and slope are so many times the right ones. */
	private static String taper(double leads, double slopes) {
		double pitch = leads * 25.4 / 14;
		StringBuilder path = new StringBuilder();
		double first = 4.5 - slopes * 15 / 32;
		for (int i = 0; i <= 8 * 72; i++) {
			double z = -15 + i * pitch / 72;
			double radius = 4.5 + slopes * z / 32;
			path.append(String.format(Locale.ROOT, "G1 X%.4f Y%.4f Z%.4f F120\n", radius * Math.cos(Math.toRadians(5 * i)),
					radius * Math.sin(Math.toRadians(5 * i)), z));
		}
		String mill = "T2 M6 (THREAD MILL D12 SINGLE)\n(RC1/2)\nG0 X0 Y0 S2400 M3\nG43 H2 Z20.\nG0 Z-15.453\n"
				+ lead(first, 10, 4, -15.453, -15);
		return DRILLED.replace("18.5", "18") + mill + path + "G1 X0 Y0\nG0 Z20.\nM30\n";
	}

	@Test
	void bendsOfASurfaceAreNoThreads() {
		StringBuilder ramp =
				new StringBuilder("T3 M6 (END MILL D10)\n(POCKET FOR M20X1.5 INSERT)\nG0 X50. Y0 S6000 M3\nG43 H3 Z5.\nG1 Z0 F500\n");
		for (int i = 0; i <= 3 * 36; i++) {
			ramp.append(String.format(Locale.ROOT, "X%.3f Y%.3f Z%.3f\n", 50 + 8 * Math.cos(Math.toRadians(10 * i)),
					8 * Math.sin(Math.toRadians(10 * i)), -i * 1.5 / 36));
		}
		assertThat(Samples.work((DRILLED + ramp + "G0 Z20.\nM30").split("\n")).threadMillings()).isEmpty();
	}

	@Test
	void aBoreInChordsIsTheHoleOfAThread() {
		StringBuilder bore =
				new StringBuilder("G21 G90 G17 G40\nT1 M6 (END MILL D12)\nG54 G0 X0 Y0 S3000 M3\nG43 H1 Z5.\nG1 Z0 F500\nX3.25\n");
		for (int i = 1; i <= 11 * 36; i++) {
			double turned = Math.toRadians(10 * i);
			bore.append(String.format(Locale.ROOT, "X%.3f Y%.3f Z%.3f\n", 3.25 * Math.cos(turned), 3.25 * Math.sin(turned),
					Math.max(-30, -i * 3.0 / 36)));
		}
		String program = bore + "G1 X0 Y0\nG0 Z20.\n" + thread(4, 1.5, 5, 3).substring(DRILLED.length());
		assertThat(heard(program)).isEmpty();
		assertThat(heard(program.replace("END MILL D12", "END MILL D10"))).singleElement().asString()
				.startsWith("drill-too-small the hole is milled 16.5 mm");
	}

	/** Twelve turns from a floor of -18 up with leads of half a turn in and out, in chords. */
	private static String thread(double radius, double lead, int degrees, int decimals) {
		StringBuilder path = new StringBuilder(DRILLED + MILL);
		path.append(lead(radius, Math.min(degrees, 10), decimals, -18 - lead / 4, -18));
		int chords = 12 * 360 / degrees;
		for (int i = 1; i <= chords; i++) {
			path.append(corner(radius, -18 + i * degrees * lead / 360, i * degrees, decimals));
		}
		return path + "G1 X0 Y0\nG0 Z20.\nM30\n";
	}

	private static String lead(double radius, int degrees, int decimals, double from, double to) {
		StringBuilder path = new StringBuilder(String.format(Locale.ROOT, "G1 Z%." + decimals + "f F150\n", from));
		int chords = 180 / degrees;
		for (int i = 1; i <= chords; i++) {
			double turned = Math.PI * i / chords;
			path.append(String.format(Locale.ROOT, "X%1$.4f Y%2$.4f Z%3$.4f\n".replace("4f", decimals + "f"),
					radius / 2 * (1 - Math.cos(turned)), -radius / 2 * Math.sin(turned), from + (to - from) * i / chords));
		}
		return path.toString();
	}

	private static String corner(double radius, double level, int degrees, int decimals) {
		return String.format(Locale.ROOT, "X%1$.4f Y%2$.4f Z%3$.4f\n".replace("4f", decimals + "f"),
				radius * Math.cos(Math.toRadians(degrees)), radius * Math.sin(Math.toRadians(degrees)), level);
	}
}
