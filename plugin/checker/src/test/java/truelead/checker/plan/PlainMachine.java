package truelead.checker.plan;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Follows a planned program by itself, without the checker: plain words only, lengths in the program's unit. Whatever it does not know is a
 * fault.
 */
final class PlainMachine {
	private static final Set<String> KNOWN_G = Set.of("0", "1", "2", "3", "17", "18", "20", "21", "28", "40", "41", "42", "43", "49", "54",
			"74", "80", "81", "83", "84", "84.1", "90", "94", "95", "97", "98", "99");

	/** What one tool did. */
	static final class Use {
		final String number;
		final String comment;
		final Set<Double> places = new LinkedHashSet<>();
		final List<double[]> arcs = new ArrayList<>();
		double deepest;
		boolean offset;
		boolean coolant;
		int spindle;
		double speed;
		double feed;
		boolean perRev;
		double level = Double.NaN;
		String cycle = "";
		boolean leftHand;

		Use(String number, String comment) {
			this.number = number;
			this.comment = comment;
		}
	}

	final List<Use> tools = new ArrayList<>();
	boolean inch;
	boolean ended;
	int dwelling;
	boolean perRev;
	private final boolean lathe;
	private double x = Double.NaN;
	private double z = Double.NaN;
	private double initial;
	private String cycle = "";
	private double bottom;
	private double plane;
	private double feed;
	private Use use;

	PlainMachine(List<String> lines, boolean lathe) {
		this.lathe = lathe;
		for (String line : lines) {
			if (!line.equals("%")) {
				block(line);
			}
		}
	}

	private void block(String line) {
		if (ended) {
			throw new IllegalStateException("behind the end: " + line);
		}
		int open = line.indexOf('(');
		String comment = open < 0 ? "" : line.substring(open + 1, line.lastIndexOf(')'));
		Map<Character, String> words = new TreeMap<>();
		List<String> g = new ArrayList<>();
		List<String> m = new ArrayList<>();
		for (String word : (open < 0 ? line : line.substring(0, open)).strip().split(" ")) {
			if (!word.isEmpty()) {
				switch (word.charAt(0)) {
					case 'G' -> g.add(word.substring(1));
					case 'M' -> m.add(word.substring(1));
					default -> words.put(word.charAt(0), word.substring(1));
				}
			}
		}
		if (!KNOWN_G.containsAll(g)) {
			throw new IllegalStateException("unknown code: " + line);
		}
		if (words.containsKey('T')) {
			stopped(line);
			use = new Use(words.get('T'), comment);
			tools.add(use);
			x = Double.NaN;
		}
		modes(words, g, m, line);
		if (!m.isEmpty() && m.get(0).equals("30")) {
			stopped(line);
			ended = true;
			return;
		}
		boolean taps = g.contains("84") || g.contains("74") || g.contains("84.1");
		if (taps || g.contains("81") || g.contains("83")) {
			startCycle(words, g.get(g.size() - 1), taps);
		}
		if (g.contains("28")) {
			z = Double.POSITIVE_INFINITY;
		} else if (words.containsKey('X') || words.containsKey('Z') || words.containsKey('I')) {
			move(words, g, line);
		} else if (taps) {
			run();
		}
	}

	private void modes(Map<Character, String> words, List<String> g, List<String> m, String line) {
		if (g.contains("20")) {
			inch = true;
		}
		boolean perRevCode = g.contains(lathe ? "99" : "95");
		if (perRevCode || g.contains(lathe ? "98" : "94")) {
			perRev = perRevCode;
		}
		if (g.contains("80")) {
			cycle = "";
		}
		if (use == null) {
			return;
		}
		if (words.containsKey('S')) {
			use.speed = number(words, 'S');
		}
		if (words.containsKey('F')) {
			feed = number(words, 'F');
		}
		for (String code : m) {
			switch (code) {
				case "3", "4" -> use.spindle = code.equals("3") ? 1 : -1;
				case "5" -> use.spindle = 0;
				case "8" -> use.coolant = true;
				case "6", "9", "30", "29" -> dwelling++;
				default -> throw new IllegalStateException("unknown M code: " + line);
			}
		}
		if (g.contains("43")) {
			use.offset = words.get('H').equals(use.number);
		}
	}

	private void stopped(String line) {
		if (use != null && (use.spindle != 0 || z < (inch ? 0.9 : 20))) {
			throw new IllegalStateException("not clear, or the spindle turns: " + line);
		}
	}

	private void startCycle(Map<Character, String> words, String code, boolean taps) {
		initial = z;
		cycle = code;
		bottom = number(words, 'Z');
		plane = words.containsKey('R') ? number(words, 'R') : z;
		words.remove('Z');
		use.cycle = code;
		use.level = plane;
		if (taps) {
			use.feed = feed;
			use.perRev = perRev;
			use.leftHand = !code.equals("84");
		}
		if (!taps || lathe) {
			use.feed = feed;
		}
		if (!lathe) {
			run();
		}
	}

	private void run() {
		if (use.spindle == 0 || !use.offset && !lathe || !use.coolant || feed <= 0 || plane <= 0) {
			throw new IllegalStateException("cycle without spindle, offset, coolant, feed or room");
		}
		use.places.add(x);
		use.deepest = Math.min(use.deepest, bottom);
		z = initial;
	}

	private void move(Map<Character, String> words, List<String> g, String line) {
		double fromX = x;
		double fromZ = z;
		x = words.containsKey('X') ? number(words, 'X') : x;
		z = words.containsKey('Z') ? number(words, 'Z') : z;
		if (!cycle.isEmpty() && !lathe) {
			run();
			return;
		}
		boolean rapid = g.contains("0") || g.contains("43");
		if (z < 0 && rapid && !lathe && z < fromZ) {
			throw new IllegalStateException("rapid into the part: " + line);
		}
		if (z < 0) {
			if (use.spindle == 0 || !use.offset && !lathe || !use.coolant || feed <= 0) {
				throw new IllegalStateException("cut without spindle, offset, coolant or feed: " + line);
			}
			use.deepest = Math.min(use.deepest, z);
			use.places.add(lathe ? x : Math.abs(x - Math.rint(x)) >= 0 && g.contains("1") && !g.contains("41") && !g.contains("42") ? x
					: firstPlace(fromX));
			use.feed = feed;
		}
		if (g.contains("2") || g.contains("3")) {
			use.arcs.add(new double[] {g.contains("3") ? 1 : -1, fromX, x, fromX + number(words, 'I'), fromZ, z});
		}
	}

	private double firstPlace(double other) {
		double last = other;
		for (double place : use.places) {
			last = place;
		}
		return last;
	}

	private static double number(Map<Character, String> words, char letter) {
		return Double.parseDouble(words.get(letter));
	}
}
