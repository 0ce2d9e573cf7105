package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Programs of one thread mill over rows of holes as many hands write them, for tests of what comes again and again; here and there
 * something is in the way.
 */
public final class HelixPrograms {

	private final Random random;
	private final List<String> lines = new ArrayList<>();
	private final boolean numbered;
	private final boolean incremental;
	private final boolean compensated;
	private final boolean modalRapid;
	private final boolean omitting;
	private final boolean halves;
	private final boolean byRadius;
	private final boolean clockwise;
	private final int roughing;
	private final double pitch;
	private double lastX = Double.NaN;
	private double lastY = Double.NaN;
	private boolean rapid;

	private HelixPrograms(Random random) {
		this.random = random;
		numbered = random.nextInt(3) == 0;
		incremental = random.nextInt(3) == 0;
		compensated = random.nextBoolean();
		modalRapid = random.nextBoolean();
		omitting = random.nextBoolean() && !incremental;
		halves = random.nextInt(3) == 0;
		byRadius = random.nextBoolean();
		clockwise = random.nextInt(4) == 0;
		roughing = random.nextInt(4) == 0 ? 1 : 0;
		pitch = random.nextInt(5) == 0 ? 1.4 : 1.5;
	}

	/** A program with {@code (THREAD MILL 12, M20X1.5)} in the spindle; some of its threads are wrong. */
	public static List<String> of(Random random, int threads) {
		HelixPrograms program = new HelixPrograms(random);
		program.all(threads);
		return program.lines;
	}

	private void all(int threads) {
		add("G21 G90 G17 G40 G80");
		int row = 3 + random.nextInt(6);
		double across = random.nextBoolean() ? 30 : 31.25;
		double along = random.nextBoolean() ? 30 : 28.333;
		add("T2 M6 (DRILL 18.5)");
		add("S800 M3");
		add("G43 H2 Z25.");
		for (int i = 0; i < threads; i++) {
			if (random.nextInt(40) > 0) {
				add((i == 0 ? "G81 Z-25. R2. F200. " : "") + "X" + number(i % row * across) + " Y"
						+ number(i / row * along + (random.nextInt(60) == 0 ? 0.4 : 0)));
			}
		}
		add("G80");
		add("T4 M6 (THREAD MILL 12, M20X1.5)");
		add("S2500 M3");
		add("G43 H4 Z25.");
		for (int i = 0; i < threads; i++) {
			int column = i % row;
			double x = (omitting && i / row % 2 == 1 ? row - 1 - column : column) * across;
			for (int pass = roughing; pass >= 0; pass--) {
				thread(x, i / row * along, 4 - 0.5 * pass);
			}
			if (random.nextInt(30) == 0) {
				lines.add(List.of("(NEXT)", "M8", "S2400", "G4 P100", "F140.", "G18", "G17 G3 X0 Y0 I2. J0", "M1").get(random.nextInt(8)));
			}
		}
		add("G0 Z100.");
		add("M30");
	}

	private void thread(double x, double y, double radius) {
		String turn = clockwise ? "G2" : "G3";
		double lead = radius / 4;
		double arc = (radius - lead) / 2;
		String place = (omitting && x == lastX ? "" : "X" + number(x)) + (omitting && y == lastY ? "" : " Y" + number(y));
		add((incremental ? "G90 " : "") + (modalRapid && rapid ? "" : "G0 ") + (place.isBlank() ? "X" + number(x) : place.strip()));
		lastX = x;
		lastY = y;
		add("G1 Z-12.375 F800.");
		String on = compensated ? clockwise ? "G42 D4 " : "G41 D4 " : "";
		double from = incremental ? 0 : x;
		if (incremental) {
			add("G91");
		}
		add("G1 " + on + "X" + number(from + lead));
		add(turn + " X" + number((incremental ? 0 : x + lead) + radius - lead) + " Y" + number(incremental ? 0 : y) + " Z"
				+ number(incremental ? 0.375 : -12) + " I" + number(arc) + " J0. F150.");
		double wrong = random.nextInt(50) == 0 ? 0.2 : 0;
		for (int i = 1; i <= 4; i++) {
			if (halves) {
				half(turn, x, y, -radius, -12 + pitch * (i - 0.5), incremental ? pitch / 2 : 0);
			}
			double level = incremental ? halves ? pitch / 2 : pitch : -12 + pitch * i;
			add(turn + " X" + number(incremental ? halves ? 2 * radius : 0 : x + radius) + " Y" + number(incremental ? 0 : y) + " Z"
					+ number(level + wrong) + (halves && byRadius ? " R" + number(radius)
							: " I" + number(halves ? radius : -radius) + " J0."));
		}
		add(turn + " X" + number(incremental ? lead - radius : x + lead) + " Y" + number(incremental ? 0 : y) + " Z"
				+ number(incremental ? 0.375 : -5.625) + " I" + number(-arc) + " J0.");
		add((compensated ? "G40 " : "") + "G1 X" + number(incremental ? -lead : x));
		add((incremental ? "G90 " : "") + "G0 Z25.");
		rapid = true;
	}

	private void half(String turn, double x, double y, double radius, double level, double step) {
		add(turn + " X" + number(incremental ? 2 * radius : x + radius) + " Y" + number(incremental ? 0 : y) + " Z"
				+ number(incremental ? step : level) + (byRadius ? " R" + number(-radius) : " I" + number(radius) + " J0."));
	}

	private void add(String line) {
		lines.add(numbered ? "N" + 10 * (lines.size() + 1) + " " + line : line);
	}

	private static String number(double value) {
		String text = String.format(Locale.ROOT, "%.3f", value);
		while (text.endsWith("0")) {
			text = text.substring(0, text.length() - 1);
		}
		return text.equals("-0.") ? "0." : text;
	}
}
