package truelead.checker;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Programs of a few hundred blocks as shops write them, by seeds: holes, milled threads, surfaces between them, lathes, loops and calls;
 * and edits of them.
 */
final class ShopPrograms {

	private static final String[] TYPED = {"X1.5", "Z-3.", " ", "\n", "G91\n", "G0 Z5.\n", "G80\n", "F77.", "(M6X1 TAP)", "G20\n",
			"G84 X3. Y3. Z-9. R2. F500.\n", "M98 P9\n",
			"#1=2\n", "X#1", "G16\n", "7", ".", "-", "M30\n", "O5\n", "%\n", "/", "(", "G3 X2. Y2. I1. J0\n", "T3 M6\n", "M6\n", "G43 H2\n",
			"G55\n", "M8\n", "M29 S500\n", "G95\n",
			"G99\n", "S600 M3\n", "M5\n", "(THREAD: M6X1-6H, DEPTH 12)\n", "(ALLOW: edge-not-broken, DEBURRED BY HAND)\n",
			"G68 X0 Y0 R30.\n", "M77\n", "G41 D4\n", "G40\n", "K3", "L0",
			"G18\n", "G17\n", "M1\n", "G54.1 P2\n", "G92 X0 Y0\n", "(4X M6)", "M0\n", "M0 (LOAD M6 TAP)\n", "M0 (FLIP)\n"};

	private final Random random;
	private final StringBuilder text = new StringBuilder();

	private ShopPrograms(Random random) {
		this.random = random;
	}

	/** A program. */
	static String of(Random random) {
		ShopPrograms program = new ShopPrograms(random);
		switch (random.nextInt(10)) {
			case 0 -> program.lathe();
			case 1 -> program.calls();
			default -> program.mill();
		}
		return program.text.toString();
	}

	/**
	 * A program of some thousand blocks whose holes are all one tool's, or one tool's for each step, so that an edit is far from its
	 * changes.
	 */
	static String ofFewTools(Random random) {
		ShopPrograms program = new ShopPrograms(random);
		program.line("G21 G90 G17 G40 G49 G80");
		if (program.oneIn(2)) {
			program.surface();
		}
		int pitch = program.oneIn(4) ? 4 : 15;
		if (program.oneIn(3)) {
			program.plateOfThreads(200 + random.nextInt(150));
		} else {
			int holes = 1100 + random.nextInt(1400);
			program.plate(2, "DRILL 5.0", program.oneIn(2) ? "G81 X0. Y0. Z-18. R2. F400." : "G83 X0. Y0. Z-18. R2. Q3. F200.",
					holes, pitch);
			program.plate(3, "M6X1 TAP", program.oneIn(9) ? "G84 X0. Y0. Z-12. R4." : "G84 X0. Y0. Z-12. R4. F500.", holes, pitch);
		}
		if (program.oneIn(3)) {
			program.part(-60);
		}
		program.line("M30");
		return program.text.toString();
	}

	/**
	 * A program of parts far from each other, each faced, drilled, tapped and thread milled by itself, so that an edit concerns its own
	 * part alone.
	 */
	static String ofManyParts(Random random) {
		ShopPrograms program = new ShopPrograms(random);
		program.line("G21 G90 G17 G40 G49 G80");
		int parts = 4 + random.nextInt(6);
		for (int y = 0; y < parts * 100; y += 100) {
			program.surface();
			for (String tool : List.of("T2 M6 (DRILL 5.0)", "T3 M6 (M6X1 TAP)", "T5 M6 (DRILL 18.5)", "T4 M6 (THREAD MILL 12, M20X1.5)")) {
				program.line(tool + "\nG54 S500 M3\nG43 H" + tool.charAt(1) + " Z25.");
				switch (tool.charAt(1)) {
					case '2' -> program.line("G81 X0. Y%d. Z-18. R2. F400.\nX15.\nX30.\nG80", y);
					case '3' -> program.line("G84 X0. Y%d. Z-12. R4. F500.\nX15.\nX30.\nG80", y);
					case '5' -> program.line("G81 X-30. Y%d. Z-25. R2. F200.\nG80", y);
					default -> program.helix(-30, y);
				}
			}
		}
		program.line("M30");
		return program.text.toString();
	}

	/**
	 * A program of some thousand blocks that mills threads, with all that goes with it now and then: drills, roughing, other radii and
	 * depths, a second callout.
	 */
	static String ofMilledThreads(Random random) {
		ShopPrograms program = new ShopPrograms(random);
		program.line("G21 G90 G17 G40 G49 G80%s", program.oneIn(2) ? " G94" : "");
		if (program.oneIn(3)) {
			program.surface();
		}
		program.plateOfThreads(200 + random.nextInt(400));
		if (program.oneIn(3)) {
			program.part(-60);
		}
		program.line("M30");
		return program.text.toString();
	}

	/** The text with the last digit of a number in a motion or a cycle typed anew. */
	static String retyped(String before, Random random) {
		while (true) {
			int at = random.nextInt(before.length());
			int start = before.lastIndexOf('\n', at - 1) + 1;
			char first = before.charAt(start);
			boolean number = Character.isDigit(before.charAt(at)) && !Character.isDigit(before.charAt(at + 1))
					&& "GHDTMN".indexOf(address(before, at)) < 0;
			if (number && "GXYZS".indexOf(first) >= 0 && (first == 'G' || random.nextInt(4) == 0)) {
				return before.substring(0, at) + random.nextInt(10) + before.substring(at + 1);
			}
		}
	}

	private static char address(String text, int at) {
		int letter = at;
		while (letter > 0 && "-.0123456789".indexOf(text.charAt(letter)) >= 0) {
			letter--;
		}
		return text.charAt(letter);
	}

	private void plate(int number, String name, String cycle, int holes, int pitch) {
		plate(number, name, cycle, holes, pitch, 30 + random.nextInt(30));
	}

	private void plate(int number, String name, String cycle, int holes, int pitch, int row) {
		tool(number, name, 500);
		line(cycle);
		int odd = 100 + random.nextInt(2000);
		String again = oneIn(3) ? cycle.replace(" X0. Y0.", "") + " " : "";
		for (int i = 1; i < holes; i++) {
			String more = i % odd == 0 ? random.nextBoolean() ? " Z-11." : " R3." : "";
			String said = more.isEmpty() ? again : again.replaceAll(" " + more.charAt(1) + "[-.0-9]+", "");
			line(i % row != 0 && random.nextInt(3) == 0 ? "%4$sX%1$d.%3$s" : "%4$sX%d. Y%d.%s", i % row * pitch,
					i / row * pitch, more, said);
			if (oneIn(700)) {
				line(oneIn(2) ? "M8" : "F%d.", 490 + random.nextInt(20));
			}
		}
		line("G80");
	}

	/**
	 * Threads milled by one tool: all at once or by a tool for each half, some of them roughed before, here and there one written
	 * otherwise.
	 */
	private void plateOfThreads(int threads) {
		int pitch = oneIn(4) ? 22 : 30;
		int row = 12 + random.nextInt(12);
		if (!oneIn(6)) {
			plate(5, "DRILL 18.5", "G81 X0. Y0. Z-25. R2. F200.", threads - (oneIn(5) ? 3 : 0), pitch, row);
		}
		boolean roughed = oneIn(4);
		boolean roughedBefore = oneIn(6);
		if (roughedBefore) {
			tool(8, "THREAD MILL 12, M20X1.5", 2500);
			helices(threads, row, pitch, false, 3.6);
		}
		tool(4, oneIn(4) ? "END MILL 12" : "THREAD MILL 12, M20X1.5", 2500);
		line(oneIn(3) ? "(M20X1.5)" : "");
		if (oneIn(6)) {
			helices(threads, row, pitch, roughed, 3.6);
		}
		helices(threads, row, pitch, roughed, 4);
		if (oneIn(5)) {
			line("(M20X1.5 ONCE MORE)");
			helices(threads / 4, row, pitch, false, 4);
		}
	}

	private void helices(int threads, int row, int pitch, boolean roughed, double radius) {
		int odd = 20 + random.nextInt(300);
		boolean decimals = oneIn(4);
		for (int i = 0; i < threads; i++) {
			double x = i % row * pitch + (decimals ? 0.125 : 0);
			double y = i / row * pitch;
			if (roughed) {
				helix(x, y, 3.6, 12);
			}
			if (i % odd == odd - 1) {
				otherwise(x, y);
			} else if (i % odd == odd - 2) {
				inChords(x, y, radius);
			} else {
				helix(x, y, radius, i == 7 && oneIn(3) ? 10 : 12);
			}
		}
	}

	/** A thread written by half arcs with R, without compensation. */
	private void otherwise(double x, double y) {
		line("G0 X%s Y%s", number(x), number(y));
		line("G1 Z-12. F800.");
		line("X%s F150.", number(x + 4));
		for (int half = 0; half < 6; half++) {
			line("G3 X%s Z%.3f R4.", number(x + (half % 2 == 0 ? -4 : 4)), -12 + 0.75 * (half + 1));
		}
		line("G1 X%s", number(x));
		line("G0 Z25.");
	}

	/** A thread in straight chords, with a lead of half a turn. */
	private void inChords(double x, double y, double radius) {
		line("G0 X%s Y%s", number(x), number(y));
		line("G1 Z-12.375 F800.");
		int chords = 12 * (1 + random.nextInt(6));
		for (int i = 1; i <= chords / 2; i++) {
			double turned = 2 * Math.PI * i / chords;
			line("G1 X%.3f Y%.3f Z%.3f F150.", x + radius / 2 * (1 - Math.cos(turned)), y - radius / 2 * Math.sin(turned),
					-12.375 + 0.75 * i / chords);
		}
		for (int i = 1; i <= 2 * chords; i++) {
			double turned = 2 * Math.PI * i / chords;
			line("G1 X%.3f Y%.3f Z%.3f", x + radius * Math.cos(turned), y + radius * Math.sin(turned), -12 + 1.5 * i / chords);
		}
		line("G1 X%s Y%s", number(x), number(y));
		line("G0 Z25.");
	}

	/** The text with something typed, or with lines gone. */
	static String edited(String before, Random random) {
		int at = random.nextInt(before.length());
		StringBuilder now = new StringBuilder(before);
		switch (random.nextInt(12)) {
			case 0 -> now.insert(at, TYPED[random.nextInt(TYPED.length)]);
			case 1 -> now.deleteCharAt(at);
			case 2 -> {
				int start = before.lastIndexOf('\n', at) + 1;
				int end = before.indexOf('\n', at);
				now.delete(start, Math.max(start, end + random.nextInt(2)));
			}
			case 3 -> now.insert(before.lastIndexOf('\n', at) + 1, TYPED[random.nextInt(TYPED.length)]);
			default -> {
				while (!Character.isDigit(before.charAt(at))) {
					at = (at + 1) % before.length();
				}
				now.replace(at, at + 1, random.nextInt(4) == 0 ? random.nextInt(10) + "" + random.nextInt(10)
						: Integer.toString(random.nextInt(10)));
			}
		}
		return now.length() == 0 ? "M30" : now.toString();
	}

	private void line(String format, Object... values) {
		text.append(String.format(Locale.ROOT, format, values)).append('\n');
	}

	private boolean oneIn(int many) {
		return random.nextInt(many) == 0;
	}

	private void mill() {
		line("%%");
		line("O%d (COVER%s)", 1000 + random.nextInt(9), oneIn(3) ? ", 8X M6 12 DEEP" : "");
		line("%sG90 G17 G40 G49 G80%s", oneIn(8) ? "" : "G21 ", oneIn(4) ? " G94" : "");
		if (oneIn(4)) {
			line("(T2 DRILL 5.0)");
			line("(T3 M6X1 TAP)");
		}
		int parts = 2 + random.nextInt(4);
		boolean apart = oneIn(2);
		for (int part = 0; part < parts; part++) {
			part(apart ? part * 40 : part * 5);
		}
		line("M30");
		line("%%");
	}

	private void part(int y) {
		if (!oneIn(4)) {
			surface();
		}
		if (!oneIn(4)) {
			tool(2, "DRILL 5.0", 2000);
			holes(oneIn(3) ? "G83 X0. Y%d. Z-18. R2. Q3. F200." : "G81 X0. Y%d. Z-18. R2. F400.", y);
		}
		if (oneIn(4)) {
			tool(6, "90 DEG SPOT DRILL 10", 2500);
			holes("G82 X0. Y%d. Z-3.3 R2. P100 F250.", y);
		}
		if (!oneIn(5)) {
			tool(3, "M6X1 TAP", 500);
			if (oneIn(3)) {
				line("M29 S500");
			}
			holes(oneIn(9) ? "G84 X0. Y%d. Z-12. R4." : "G84 X0. Y%d. Z-12. R4. F500.", y);
		}
		if (oneIn(2)) {
			tool(5, "DRILL 18.5", 900);
			int threads = oneIn(2) ? 1 : 2 + random.nextInt(8);
			line("G81 X-30. Y%d. Z-25. R2. F200.", y);
			for (int i = 1; i < threads; i++) {
				line("X%d.", -30 - i * 25);
			}
			line("G80");
			tool(4, "THREAD MILL 12, M20X1.5", 2500);
			for (int i = 0; i < threads; i++) {
				helix(-30 - i * 25, y);
			}
		}
		if (oneIn(5)) {
			tool(7, "M5X0.8 TAP", 400);
			line("G0 X100. Y%d. Z3.", y);
			line("G1 Z-8. F320.");
			line("G1 Z3. M4");
			line("M3");
		}
	}

	private void tool(int number, String name, int speed) {
		line(oneIn(3) ? "N%d T%d M6 (%s)" : "N%d T%d M6%s", 100 + number, number, oneIn(2) ? name.isEmpty() ? "" : " (" + name + ")" : "("
				+ name + ")");
		if (!oneIn(12)) {
			line("%sS%d M3%s", oneIn(3) ? "G55 " : "G54 ", speed, oneIn(3) ? " M8" : "");
		}
		if (!oneIn(12)) {
			line("G43 H%d Z25.", number);
		}
		if (oneIn(6)) {
			line("G0 X0. Y0.");
		}
	}

	private void surface() {
		tool(1, "BALL MILL 6", 8000);
		line("G0 X%.3f Y1.", random.nextDouble() * 9);
		line("G1 Z-1. F1200.");
		int length = 20 + random.nextInt(60);
		for (int i = 0; i < length; i++) {
			switch (random.nextInt(12)) {
				case 0 -> line("Y%.3f F%d.", random.nextDouble() * 9, 900 + random.nextInt(300));
				case 1 -> line(oneIn(4) ? "G3 X%.3f Y%.3f I2. J0." : "X%.3f Y%.3f", random.nextDouble() * 9, random.nextDouble() * 9);
				default -> line(i % 2 == 0 ? "X%.3f" : "Y%.3f Z-%.3f", random.nextDouble() * 9, random.nextDouble());
			}
		}
		line("G0 Z25.");
	}

	private void holes(String cycle, int y) {
		line((oneIn(4) ? "G99 " : "") + cycle, y);
		int count = 2 + random.nextInt(9);
		String again = oneIn(4) ? cycle.replace(" X0. Y%d.", "") + " " : "";
		for (int i = 1; i < count; i++) {
			line(again + (oneIn(9) ? "X%d. Y%d." : "X%d."), i * 15, y + 15);
		}
		if (!oneIn(10)) {
			line("G80");
		}
		if (oneIn(6)) {
			line("M1");
		}
		if (oneIn(12)) {
			line(oneIn(2) ? "M0 (FLIP PART)" : oneIn(2) ? "M0" : "M0 (LOAD M8 TAP)");
		}
	}

	private void helix(double x, double y) {
		helix(x, y, 4, 12);
	}

	/** Half an arc in, four turns up, half an arc out. */
	private void helix(double x, double y, double radius, int depth) {
		line("G0 X%s Y%s", number(x), number(y));
		line("G1 Z-%s F800.", number(depth + 0.75));
		line("G41 D4 X%s", number(x + 1));
		line("G3 X%s Z-%d. I%s J0. F150.", number(x + radius), depth, number((radius - 1) / 2));
		for (int turn = 0; turn < 4; turn++) {
			line("G3 X%s Y%s Z%.3f I-%s J0.", number(x + radius), number(y), -depth + 1.5 * (turn + 1), number(radius));
		}
		line("G3 X%s Z%s I-%s J0.", number(x + 1), number(-depth + 6.75), number((radius - 1) / 2));
		line("G40 G1 X%s", number(x));
		line("G0 Z25.");
	}

	private static String number(double value) {
		return value == Math.rint(value) ? String.format(Locale.ROOT, "%.0f.", value) : String.format(Locale.ROOT, "%.3f", value);
	}

	private void lathe() {
		line("O0100 (BUSHING)");
		line("G50 S2500");
		line("T0101 (CENTRE DRILL)");
		line("G97 S1200 M3");
		line("G0 X0. Z5.");
		line("G1 Z-4. F0.1");
		line("G0 Z5.");
		line("T0202 (DRILL 8.5)");
		line("G97 S900 M3");
		line("G83 X0. Z-30. R3. Q5000 F0.15");
		line("G80");
		line("T0303 (M10 TAP)");
		line("G97 S300 M3");
		line("G84 X0. Z-20. R5. F1.5");
		line("G80");
		line("G96 S180 M3");
		line("M30");
	}

	private void calls() {
		line("O2000");
		line("G21 G90 G17 G54");
		line("T2 M6 (DRILL 5.0)");
		line("S2000 M3");
		line("G43 H2 Z25.");
		line("G81 Z-18. R2. F400. L0");
		line("M98 P2001");
		line("G80");
		line("#1=0");
		line("WHILE [#1 LT 3] DO1");
		line("T3 M6 (M6X1 TAP)");
		line("S500 M3");
		line("G43 H3 Z25.");
		line("G84 X[#1*20] Y0. Z-12. R4. F500.");
		line("G80");
		line("#1=#1+1");
		line("END1");
		line("M30");
		line("O2001");
		for (int i = 0; i < 4; i++) {
			line("X%d. Y0.", i * 20);
		}
		line("M99");
	}
}
