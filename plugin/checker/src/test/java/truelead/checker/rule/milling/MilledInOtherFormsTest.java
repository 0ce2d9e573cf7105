package truelead.checker.rule.milling;

import static org.assertj.core.api.Assertions.assertThat;
import static truelead.checker.Samples.loud;
import static truelead.checker.Samples.one;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The same threads as another system or another shop writes them: circles in quarters, metric threads in inch programs. */
class MilledInOtherFormsTest {

	private static final Pattern CIRCLE = Pattern.compile("G3 I-([0-9.]+)(?: Z-?[0-9.]+)?");
	private static final Pattern LEVEL = Pattern.compile("Z(-?[0-9.]+)");

	/** A bore behind a counterbore of many quarters was taken for a boss that is come to from outside, and its hole for the drill's. */
	@Test
	void circlesInQuartersAreCircles() {
		for (String way : List.of("G1 X0\nG1 X3.25", "G1 X3.25")) {
			String stepped = MilledByManyHandsTest.STEPPED.replace("G1 X3.25", way);
			String quarters = quarters(stepped);
			assertThat(quarters).contains("G3 X0.000 Y8.000 Z-0.375 I-8.000 J0.000");
			assertThat(loud(quarters)).isEmpty();
			one(quarters(stepped.replace("3.25", "2.75")), "drill-too-small", "the hole is milled 21.5 mm");
			one(quarters(stepped.replace("G3 I-3.5 Z-22.5", "G3 I-3.5 Z-22")), "helix-off-pitch", "the helix advances 2.000 mm a turn");
		}
	}

	/** Nobody has a cutter of 17 in for M24, nor one with a tooth every 1.5 in, nor a wall of 20 in (common practice, no source). */
	@Test
	void sizesOfAMetricThreadInAnInchProgramAreInMillimetresWhereInchesAreAbsurd() {
		String inch = inches(MilledByManyHandsTest.STEPPED).replace("17 M24X1.5 COMB", "17 P1.5 M24X1.5 COMB");
		assertThat(loud(inch)).isEmpty();
		one(inch.replace("P1.5", "P1"), "cutter-pitch-mismatch", "the cutter has a pitch of 0.03937");
		String small = """
				G20 G90 G17 G40
				T1 M6 (DRILL 2.5MM)
				G54 G0 X0 Y0 S2000 M3
				G43 H1 Z.4
				G81 Z-.4 R.08 F4.
				G80
				T2 M6 (COMB THREAD MILL 1.8 P0.5 M3X0.5 THRU WALL 6)
				G0 X0 Y0 S9000 M3
				G43 H2 Z.4
				G1 Z-.2608 F40.
				G3 X.02362 Y0 Z-.25591 I.01181 F2.
				G3 I-.02362 Z-.23622
				G3 X0 Y0 Z-.2313 I-.01181
				G0 Z.4
				M30
				""";
		assertThat(loud(small)).isEmpty();
		one(small.replace("P0.5 M3", "P0.7 M3"), "cutter-pitch-mismatch", "the cutter has a pitch of 0.02756");
	}

	/**
	 * A post that knows no helix writes the bore in chords; the last circle at the floor is an arc again, and the bore is as wide as both.
	 */
	@Test
	void aBoreInChordsThatEndsInAnArcIsABore() {
		StringBuilder bore =
				new StringBuilder("G21 G90 G17 G40\nT1 M6 (DRILL 26)\nG54 G0 X0 Y0 S700 M3\nG43 H1 Z10\nG81 Z-42.4 R2 F100\nG80\n"
						+ "T2 M6 (END MILL D12)\nG0 X0 Y0 S3000 M3\nG43 H2 Z10\nG1 Z0 F800\nX10.5\n");
		for (int chord = 1; chord <= 600; chord++) {
			double angle = Math.toRadians(3 * chord);
			bore.append(String.format(Locale.ROOT, "X%.4f Y%.4f Z%.4f\n", 10.5 * Math.cos(angle), 10.5 * Math.sin(angle), -0.05 * chord));
		}
		String text =
				bore + "G3 I-10.5\nG1 X0\nG0 Z10\nT3 M6 (THREAD MILL D22 M36X3 SINGLE)\nG0 X0 Y0 S2000 M3\nG43 H3 Z10\nG0 Z-26.75\n"
				+ "G3 X7 Y0 Z-26 I3.5 F150\nG3 I-7 Z-23\nG3 X0 Y0 Z-22.25 I-3.5\nG0 Z50\nM30\n";
		assertThat(loud(text)).isEmpty();
		one(text.replace("END MILL D12", "END MILL D10"), "drill-too-small", "the hole is milled 31 mm");
	}

	/** Each whole circle from the right of its centre, in four blocks. */
	private static String quarters(String text) {
		double level = 0;
		StringBuilder all = new StringBuilder();
		for (String line : text.split("\n")) {
			Matcher circle = CIRCLE.matcher(line);
			Matcher to = LEVEL.matcher(line);
			double end = to.find() ? Double.parseDouble(to.group(1)) : level;
			if (circle.matches()) {
				double r = Double.parseDouble(circle.group(1));
				double[][] ends = {{0, r, -r, 0}, {-r, 0, 0, -r}, {0, -r, r, 0}, {r, 0, 0, r}};
				for (int quarter = 0; quarter < ends.length; quarter++) {
					all.append(String.format(Locale.ROOT, "G3 X%.3f Y%.3f Z%.3f I%.3f J%.3f\n", ends[quarter][0], ends[quarter][1],
							level + (end - level) * (quarter + 1) / 4, ends[quarter][2], ends[quarter][3]));
				}
			} else {
				all.append(line).append('\n');
			}
			level = end;
		}
		return all.toString();
	}

	private static String inches(String text) {
		Matcher words = Pattern.compile("(?m)(?<=[XYZIRF])-?[0-9.]+(?![^(]*\\))").matcher(text.replace("G21", "G20"));
		return words.replaceAll(word -> String.format(Locale.ROOT, "%.5f", Double.parseDouble(word.group()) / 25.4));
	}
}
