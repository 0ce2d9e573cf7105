package truelead.speed.block;

import java.util.Locale;
import java.util.Random;

/** Programs of any length as a CAM system writes them, the same for the same seed: surfacing, holes drilled and tapped, helices. */
final class Programs {

	private final Random random;
	private final StringBuilder text = new StringBuilder();
	private int blocks;

	private Programs(long seed) {
		random = new Random(seed);
	}

	/** Long runs of G1 blocks with coordinates alone, and a pattern of tapped holes at the end. */
	static String surfacing(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		while (program.blocks < blocks - 20) {
			program.pass(Math.min(400, blocks - 20 - program.blocks));
		}
		program.holes(3);
		program.line("M30");
		return program.text.toString();
	}

	/** Surfacing, hole patterns and thread milling by turns. */
	static String mixed(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		while (program.blocks < blocks - 60) {
			program.pass(Math.min(300, blocks - 60 - program.blocks));
			program.holes(12);
			program.helix();
		}
		program.line("M30");
		return program.text.toString();
	}

	private void line(String format, Object... values) {
		text.append(String.format(Locale.ROOT, format, values)).append('\n');
		blocks++;
	}

	private void head() {
		line("%%");
		line("O1200 (COVER PLATE)");
		line("G21 G90 G17 G40 G49 G80 G54");
		line("T1 M6 (BALL MILL 6)");
		line("S8000 M3");
		line("G43 H1 Z25.");
	}

	private void pass(int length) {
		double x = random.nextDouble() * 100;
		double y = random.nextDouble() * 80;
		line("G0 X%.3f Y%.3f", x, y);
		line("G1 Z%.3f F1200.", -random.nextDouble());
		for (int i = 0; i < length; i++) {
			x += random.nextDouble();
			y += random.nextDouble() - 0.5;
			switch (random.nextInt(4)) {
				case 0 -> line("X%.3f", x);
				case 1 -> line("X%.3f Y%.3f", x, y);
				default -> line("X%.3f Y%.3f Z%.3f", x, y, -random.nextDouble());
			}
		}
		line("G0 Z25.");
	}

	private void holes(int count) {
		line("T2 M6 (DRILL 5.0)");
		line("S3000 M3");
		line("G43 H2 Z25.");
		line("G81 X10. Y10. Z-18. R2. F400.");
		for (int i = 1; i < count; i++) {
			line("X%d.", 10 + 12 * i);
		}
		line("G80");
		line("T3 M6 (M6X1 TAP)");
		line("S500 M3");
		line("G43 H3 Z25.");
		line("G84 X10. Y10. Z-12. R4. F500.");
		for (int i = 1; i < count; i++) {
			line("X%d.", 10 + 12 * i);
		}
		line("G80");
	}

	private void helix() {
		line("T4 M6 (THREAD MILL 12, M20X1.5)");
		line("S2500 M3");
		line("G43 H4 Z25.");
		line("G0 X50. Y50.");
		line("G1 Z-12. F800.");
		line("G41 D4 X54. Y50.");
		for (int turn = 0; turn < 4; turn++) {
			line("G3 X54. Y50. Z%.3f I-4. J0. F150.", -12 + 1.5 * (turn + 1));
		}
		line("G40 G1 X50.");
		line("G0 Z25.");
	}
}
