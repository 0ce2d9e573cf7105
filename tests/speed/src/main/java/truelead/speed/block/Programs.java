package truelead.speed.block;

import java.util.Locale;
import java.util.Random;

/**
 * Programs of any length as a CAM system writes them, the same for the same seed: surfacing, also with five axes, pockets, paths with words
 * of several letters, holes drilled and tapped, helices, and a shaft turned down.
 */
final class Programs {

	/** Distance of holes and threads, mm. */
	private static final int PITCH = 30;

	private final Random random;
	private final StringBuilder text = new StringBuilder();
	private int blocks;

	private Programs(long seed) {
		random = new Random(seed);
	}

	/** Long runs of G1 blocks with coordinates alone, and a pattern of tapped holes at the end. */
	private static String surfacing(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		while (program.blocks < blocks - 20) {
			program.pass(Math.min(400, blocks - 20 - program.blocks));
		}
		return program.tapped();
	}

	/** Pockets with round corners, cut ring by ring and level by level in numbered blocks, and a pattern of tapped holes at the end. */
	private static String pockets(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		for (int part = 0; program.blocks < blocks - 90; part++) {
			program.pocket(part);
		}
		return program.tapped();
	}

	/** Ends with a pattern of tapped holes; the whole text. */
	private String tapped() {
		drill("T2 M6 (DRILL 5.0)", "G81 X0. Y0. Z-18. R2. F60.", 3, 0);
		drill("T3 M6 (M6X1 TAP)", "G84 X0. Y0. Z-12. R4. F500.", 3, 0);
		line("M30");
		return text.toString();
	}

	/** Surfacing whose every block turns two rotary axes as well. */
	private static String axes(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		program.line("G1 F1200.");
		for (int i = 0; i < blocks - 22; i++) {
			program.line("X%.3f Y%.3f Z%.3f A%.3f C%.3f", i % 300 * 0.5, program.random.nextDouble() * 80, -program.random.nextDouble(),
					program.random.nextDouble() * 60 - 30, program.random.nextDouble() * 360);
		}
		program.line("G0 Z25. A0. C0.");
		return program.tapped();
	}

	/** Rounded paths in words of several letters, flat ones and ramps. */
	private static String named(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		while (program.blocks < blocks - 90) {
			program.rounded();
		}
		return program.tapped();
	}

	/** A shaft turned down pass by pass, and its face tapped. */
	private static String turning(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.line("%%");
		program.line("O1201 (SHAFT)");
		program.line("G21 G18 G40 G80 G99");
		program.line("T0101 (ROUGHING)");
		program.line("G97 S1000 M3");
		for (int pass = 0; program.blocks < blocks - 20; pass++) {
			double x = 60 - pass % 500 * 0.05;
			program.line("G0 X%.2f Z2.", x);
			program.line("G1 Z%.3f F0.25", -30 - program.random.nextDouble());
			program.line("X%.2f", x + 1);
			program.line("G0 Z2.");
		}
		program.line("G0 X100. Z50.");
		program.line("T0303 (DRILL 8.5)");
		program.line("G97 S800 M3");
		program.line("G0 X0. Z5.");
		program.line("G83 Z-28. R-3. Q5000 F0.12");
		program.line("G80");
		program.line("T0404 (TAP M10X1.5)");
		program.line("G97 S300 M3");
		program.line("G0 X0. Z5.");
		program.line("G84 Z-20. R0. F1.5");
		program.line("G80");
		program.line("G0 X100. Z50.");
		program.line("M30");
		return program.text.toString();
	}

	/** A program of a kind: surfacing, axes, pockets, named, holes, cycles, mills, mixed or turning. */
	static String of(String kind, int blocks, long seed) {
		return switch (kind) {
			case "surfacing" -> surfacing(blocks, seed);
			case "axes" -> axes(blocks, seed);
			case "pockets" -> pockets(blocks, seed);
			case "named" -> named(blocks, seed);
			case "holes" -> holes(blocks, seed);
			case "cycles" -> cycles(blocks, seed);
			case "mills" -> mills(blocks, seed);
			case "mixed" -> mixed(blocks, seed);
			case "turning" -> turning(blocks, seed);
			default -> throw new IllegalArgumentException("no such kind of program: " + kind);
		};
	}

	/** One drill and one tap over all holes of a plate, a hole a block. */
	private static String holes(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		program.drill("T2 M6 (DRILL 5.0)", "G81 X0. Y0. Z-18. R2. F60.", (blocks - 20) / 2, 0);
		program.drill("T3 M6 (M6X1 TAP)", "G84 X0. Y0. Z-12. R4. F500.", (blocks - 20) / 2, 0);
		program.line("M30");
		return program.text.toString();
	}

	/** The same with the whole cycle written at each hole. */
	private static String cycles(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		program.drillAnew("T2 M6 (DRILL 5.0)", "G98 G81 X%d. Y%d. Z-18. R2. F60.", (blocks - 20) / 2);
		program.drillAnew("T3 M6 (M6X1 TAP)", "G98 G84 X%d. Y%d. Z-12. R4. F500.", (blocks - 20) / 2);
		program.line("M30");
		return program.text.toString();
	}

	private static int row(int holes) {
		return Math.max(12, (int) Math.ceil(Math.sqrt(holes)));
	}

	private void drillAnew(String tool, String cycle, int holes) {
		int row = row(holes);
		tool(tool);
		for (int i = 0; i < holes; i++) {
			line(cycle, i % row * PITCH, i / row * PITCH);
		}
		line("G80");
	}

	private void tool(String tool) {
		line(tool);
		line("S500 M3");
		line("G43 H%c Z25.", tool.charAt(1));
	}

	/** A cycle at the places of a square, or of one row of twelve. */
	private void drill(String tool, String cycle, int holes, int part) {
		int row = row(holes);
		tool(tool);
		line(cycle, part * PITCH);
		for (int i = 1; i < holes; i++) {
			line("X%d. Y%d.", i % row * PITCH, (part + i / row) * PITCH);
		}
		line("G80");
	}

	/** Threads milled one beside the other in holes drilled before, eleven blocks each. */
	private static String mills(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		int threads = Math.max(1, (blocks - 30) / 12);
		program.drill("T2 M6 (DRILL 18.5)", "G81 X0. Y0. Z-25. R2. F200.", threads, 0);
		program.line("T4 M6 (THREAD MILL 12, M20X1.5)");
		program.line("S2500 M3");
		program.line("G43 H4 Z25.");
		int row = row(threads);
		for (int i = 0; i < threads; i++) {
			program.thread(i % row * PITCH, i / row * PITCH);
		}
		program.line("M30");
		return program.text.toString();
	}

	/** Surfacing, a row of holes drilled and tapped, and a milled thread by turns, each time further along the part. */
	private static String mixed(int blocks, long seed) {
		Programs program = new Programs(seed);
		program.head();
		for (int part = 0; program.blocks < blocks - 70; part++) {
			program.line("T1 M6 (BALL MILL 6)");
			program.line("S8000 M3");
			program.line("G43 H1 Z25.");
			program.pass(Math.min(300, blocks - 70 - program.blocks));
			program.drill("T2 M6 (DRILL 5.0)", "G81 X0. Y%d. Z-18. R2. F60.", 12, part);
			program.drill("T3 M6 (M6X1 TAP)", "G84 X0. Y%d. Z-12. R4. F500.", 12, part);
			program.drill("T5 M6 (DRILL 18.5)", "G81 X-30. Y%d. Z-25. R2. F200.", 1, part);
			program.line("T4 M6 (THREAD MILL 12, M20X1.5)");
			program.line("S2500 M3");
			program.line("G43 H4 Z25.");
			program.thread(-30, part * PITCH);
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

	private void numbered(String format, Object... values) {
		line("N" + 10 * (blocks % 9_000 + 1) + " " + format, values);
	}

	/** Levels of rings from the middle outwards: down along a slope, round, out by a quarter arc, and up in two steps. */
	private void pocket(int part) {
		double x = part % 12 * 60 + random.nextInt(1000) / 1000.0;
		double y = part / 12 * 60 + random.nextInt(1000) / 1000.0;
		double radius = 2 + random.nextInt(3000) / 1000.0;
		for (int level = 1; level <= 3; level++) {
			numbered("G0 X%.3f Y%.3f", x, y);
			numbered("Z%.1f", 2.0 - 3 * (level - 1));
			numbered("G1 X%.3f Z%.3f F800.", x + 4, -3.0 * level);
			for (int ring = 1; ring <= 2; ring++) {
				double half = 8.0 * ring;
				numbered("G1 X%.3f Y%.3f%s", x + half, y - half + radius, ring == 1 ? " F1500." : "");
				numbered("Y%.3f", y + half - radius);
				numbered("G3 X%.3f Y%.3f I%.3f J0.", x + half - radius, y + half, -radius);
				numbered("G1 X%.3f", x - half + radius);
				numbered("G3 X%.3f Y%.3f I0. J%.3f", x - half, y + half - radius, -radius);
				numbered("G1 Y%.3f", y - half + radius);
				numbered("G3 X%.3f Y%.3f I%.3f J0.", x - half + radius, y - half, radius);
				numbered("G1 X%.3f", x + half - radius);
				numbered("G3 X%.3f Y%.3f I0. J%.3f", x + half, y - half + radius, radius);
			}
			numbered("X%.3f Y%.3f I-1. J0.", x + 15, y - 15 + radius);
			numbered("G1 Z%.3f", 0.5 - 3 * level);
			numbered("G0 Z25.");
		}
	}

	/** Thirty straight moves with a rounded corner behind each, on one level or a little further down each time. */
	private void rounded() {
		boolean ramp = random.nextInt(4) == 0;
		double z = -1;
		line("G0 X=%.3f Y=%.3f", random.nextDouble() * 9, random.nextDouble() * 9);
		line("G1 Z=%.3f F800.", z);
		for (int i = 0; i < 30; i++) {
			double x = 10 + i * 7 + random.nextInt(1000) / 1000.0;
			double y = i % 2 * 60 + random.nextInt(1000) / 1000.0;
			double radius = 1 + random.nextInt(2000) / 1000.0;
			line("G1 X%.3f Y%.3f", x, y);
			if (ramp) {
				z -= 0.05;
				line("G2 X%.3f Y%.3f Z%.3f I%.3f J0. TURN=0", x + radius, y + radius, z, radius);
			} else {
				line("G2 X%.3f Y%.3f CR=%.3f", x + radius, y + radius, radius);
			}
		}
		line("G0 Z25.");
	}

	/** Half an arc in, four turns up, half an arc out. */
	private void thread(int x, int y) {
		line("G0 X%d. Y%d.", x, y);
		line("G1 Z-6.75 F800.");
		line("G41 D4 X%d.", x + 1);
		line("G3 X%d. Z-6. I1.5 J0. F150.", x + 4);
		for (int turn = 0; turn < 4; turn++) {
			line("G3 X%d. Y%d. Z%.3f I-4. J0.", x + 4, y, -6 + 1.5 * (turn + 1));
		}
		line("G3 X%d. Z0.75 I-1.5 J0.", x + 1);
		line("G40 G1 X%d.", x);
		line("G0 Z25.");
	}

}
