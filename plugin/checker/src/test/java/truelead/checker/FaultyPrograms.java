package truelead.checker;

import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Programs of parts far from each other, by seeds, some of which have a slip that a programmer has before him while he types: what is found
 * of it stands through edits of the other parts, though it may depend on these.
 */
final class FaultyPrograms {

	/** A thread with its drill, by diameter, pitch and speed; its feed is the pitch times the speed. */
	private enum Size {
		M5("M5X0.8", "4.2", "320.", "4.6", 400), M6("M6X1", "5.0", "500.", "5.5", 500), M8("M8X1.25", "6.8", "500.", "6.0", 400),
				M10("M10X1.5", "8.5", "450.", "9.2", 300);

		private final String thread;
		private final String drill;
		private final String feed;
		private final String wrong;
		private final int speed;

		Size(String thread, String drill, String feed, String wrong, int speed) {
			this.thread = thread;
			this.drill = drill;
			this.feed = feed;
			this.wrong = wrong;
			this.speed = speed;
		}
	}

	/** What may be wrong with a part. */
	private enum Slip {
		NOTHING, WRONG_DRILL, OTHERS_DRILL, SHALLOW, NO_FEED, NO_SPEED, SPINDLE_STANDS, NO_CANCEL, HOLE_MISSING, ALL_MISSING, HOLE_LEFT,
				SEVERAL_LEFT, PER_TURN, OTHER_MODE, OTHER_OFFSET,
		NO_LENGTH_OFFSET, IDLE_DRILL, DRILLING_CYCLE, FEED_OUT_CYCLE, OTHER_PLANE, TURNED_OVER, FIRST_PLACE_LEFT_OUT, PLAIN_HOLES, TWICE,
				SWAPPED_TOOLS }

	/** Most of the faults of a program are alike: they are what is counted and compared with each other. */
	private static final int ALIKE = 3;

	private final Random random;
	private final StringBuilder text = new StringBuilder();

	private FaultyPrograms(Random random) {
		this.random = random;
	}

	/** A program. */
	static String of(Random random) {
		FaultyPrograms program = new FaultyPrograms(random);
		program.line("O100 (PLATE%s)", program.oneIn(3) ? ", " + (4 + random.nextInt(20)) + "X M6" + (program.oneIn(2)
				? " 12 DEEP" : "") : "");
		program.line("%sG90 G17 G40 G49 G80%s", program.oneIn(3) ? "" : "G21 ", program.oneIn(2) ? " G94" : "");
		int parts = 4 + random.nextInt(10);
		Slip often = program.slip();
		boolean oneThread = program.oneIn(2);
		for (int part = 0; part < parts; part++) {
			program.part(part * 80, oneThread ? Size.M6 : Size.values()[random.nextInt(Size.values().length)], program.oneIn(2)
					? Slip.NOTHING : program.oneIn(ALIKE) ? program.slip() : often);
		}
		program.line("M30");
		return program.text.toString();
	}

	private Slip slip() {
		return Slip.values()[random.nextInt(Slip.values().length)];
	}

	private void part(int y, Size size, Slip slip) {
		int holes = 2 + random.nextInt(5);
		Size other = Size.values()[(size.ordinal() + 1) % Size.values().length];
		String drill = slip == Slip.WRONG_DRILL ? size.wrong : slip == Slip.OTHERS_DRILL ? other.drill : size.drill;
		if (slip != Slip.ALL_MISSING) {
			tool(2, "DRILL " + drill, 2000, slip == Slip.NO_LENGTH_OFFSET && oneIn(2), false, false);
			if (slip == Slip.IDLE_DRILL) {
				line("G0 X0. Y%d.\nZ2.", y);
			} else {
				cycle(slip == Slip.SHALLOW ? "G81 Z-11. R2. F400." : oneIn(4) ? "G83 Z-18. R2. Q3. F200." : "G81 Z-18. R2. F400.", y,
						slip == Slip.HOLE_MISSING ? 1 : 0, holes);
				line("G80");
			}
		}
		if (slip == Slip.PLAIN_HOLES || oneIn(5)) {
			tool(6, "DRILL 9.0", 1500, false, false, false);
			cycle(oneIn(2) ? "G81 Z-19.2 R2. F300." : "G81 Z-18. R2. F300.", y + 20, 0, 2);
			line("G80");
		}
		line(slip == Slip.OTHER_PLANE ? "G18" : "");
		tool(3, size.thread + " TAP", size.speed, slip == Slip.NO_LENGTH_OFFSET, slip == Slip.NO_SPEED, slip == Slip.SPINDLE_STANDS
				|| slip == Slip.FIRST_PLACE_LEFT_OUT);
		line(slip == Slip.OTHER_OFFSET ? "G55" : slip == Slip.TURNED_OVER ? "G0 A180." : slip == Slip.PER_TURN ? "G95" : "");
		String code = slip == Slip.DRILLING_CYCLE ? "G81" : slip == Slip.FEED_OUT_CYCLE ? "G85" : "G84";
		String feed = slip == Slip.NO_FEED ? "" : slip == Slip.OTHER_MODE ? " F1." : slip == Slip.PER_TURN ? " F1." : " F" + size.feed;
		if (slip == Slip.FIRST_PLACE_LEFT_OUT) {
			line("%s Z-12. R4.%s", code, feed);
		} else {
			cycle(code + " Z-12. R4." + feed, y, slip == Slip.HOLE_LEFT ? 1 : slip == Slip.SEVERAL_LEFT ? 2 : 0, holes);
		}
		line(slip == Slip.TWICE ? "X15. Y%d." : slip == Slip.NO_CANCEL ? "" : "G80", y);
		line(slip == Slip.OTHER_OFFSET && !oneIn(3) ? "G54" : slip == Slip.TURNED_OVER ? "G0 A0." : slip == Slip.PER_TURN && oneIn(2)
				? "G94" : slip == Slip.OTHER_PLANE ? "G17" : "");
		if (slip == Slip.SWAPPED_TOOLS) {
			tool(8, "M8 TAP", 900, false, false, false);
			cycle("G81 Z-18. R2. F400.", y + 40, 0, holes);
			line("G80");
			tool(9, "DRILL 6.8", 400, false, false, false);
			cycle("G84 Z-12. R4. F500.", y + 40, 0, holes);
			line("G80");
		}
	}

	private void tool(int number, String name, int speed, boolean noOffset, boolean noSpeed, boolean stands) {
		line("T%d M6 (%s)", number, name);
		line(noSpeed ? stands ? "M5" : "M3" : stands ? "M5 S%d" : "S%d M3", speed);
		line(noOffset ? "G0 Z25." : "G43 H%d Z25.", number);
	}

	/** A cycle over a row of holes, the first ones of which may be left out. */
	private void cycle(String cycle, int y, int from, int holes) {
		line("%s%s X%d. Y%d.", oneIn(4) ? "G99 " : "", cycle, from * 15, y);
		for (int hole = from + 1; hole < Math.max(holes, from + 2); hole++) {
			line("X%d.", hole * 15);
		}
	}

	private void line(String format, Object... values) {
		if (!format.isEmpty()) {
			text.append(String.format(Locale.ROOT, format, values)).append('\n');
		}
	}

	private boolean oneIn(int many) {
		return random.nextInt(many) == 0;
	}

	/** The text with a digit typed anew or taken back, and now and then something else. */
	static String edited(String before, String right, Random random) {
		return random.nextInt(12) == 0 ? ShopPrograms.edited(before, random) : before.equals(right) || random.nextInt(5) == 0
				? ShopPrograms.retyped(before, random) : right;
	}

	/** Rules that the slips of some dozens of programs are found by, so that a test may see that it has had them. */
	static List<String> rules() {
		return List.of("drill-too-big", "drill-too-small", "drill-too-shallow", "feed-missing", "spindle-not-turning", "cycle-left-on",
				"hole-missing", "hole-skipped", "feed-in-wrong-mode", "length-offset-missing", "tap-in-drilling-cycle", "plane-wrong",
				"unit-unstated", "count-differs");
	}
}
