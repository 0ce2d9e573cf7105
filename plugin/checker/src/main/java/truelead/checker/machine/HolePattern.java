package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Places of holes round a circle, along an arc, in a row or in a grid, said by one block under a canned cycle: {@code G70 I50. J15. L8} of
 * some controls, {@code G34 X0 Y0 I50. J15. K8} and {@code BHC X0 Y0 I50 J15 K8} of others (from memory). Angles count from X,
 * anticlockwise. Without a count such a code is another one.
 */
final class HolePattern {

	private static final int MOST = 10_001;

	/** Codes times ten, by the names that some controls have for the same patterns. */
	private static final Map<String, Integer> NAMES = Map.of("BHC", 340, "LAA", 350, "ARC", 360, "GRDX", 371, "GRDY", 371);

	private HolePattern() {
	}

	/** The code of a pattern that is called by name, times ten; 0 where the name is none. */
	static int code(String name) {
		return NAMES.getOrDefault(name, 0);
	}

	/** Whether a block of these words can be one. */
	static boolean is(Words words) {
		for (int i = 0; i < words.gCount(); i++) {
			int code = words.gCode(i);
			if ((code == 700 || code == 710 || code == 720) && words.has('I') && words.has('L')
					|| (code >= 340 && code <= 360 && code % 10 == 0 || code == 371) && words.has('I') && words.has('K')) {
				return true;
			}
		}
		return false;
	}

	/** The places in programmed coordinates, mm; none where the block is no such pattern or a number in it is not known. */
	static List<Point> places(Words words, Point here, double mm) {
		for (int i = 0; i < words.gCount(); i++) {
			List<Point> places = switch (words.gCode(i)) {
				case 700 -> circle(words, here, mm, count(words, 'L'), 360 / count(words, 'L'));
				case 710 -> circle(words, here, mm, count(words, 'L'), number(words, 'K'));
				case 720 -> row(words, here, mm, count(words, 'L'));
				case 340 -> circle(words, here, mm, count(words, 'K'), 360 / count(words, 'K'));
				case 350 -> row(words, here, mm, count(words, 'K'));
				case 360 -> circle(words, here, mm, count(words, 'K'), number(words, 'P'));
				case 371 -> grid(words, here, mm);
				default -> List.<Point>of();
			};
			if (!places.isEmpty()) {
				return places;
			}
		}
		return List.of();
	}

	/** I radius, J angle of the first hole, degrees. */
	private static List<Point> circle(Words words, Point centre, double mm, double count, double step) {
		List<Point> places = new ArrayList<>();
		for (int i = 0; i < Math.min(count, MOST); i++) {
			double angle = Math.toRadians(number(words, 'J') + i * step);
			add(places, centre, number(words, 'I') * mm * Math.cos(angle), number(words, 'I') * mm * Math.sin(angle));
		}
		return places;
	}

	/** I distance between holes, J angle of the row, degrees; the first hole stands at the place in hand. */
	private static List<Point> row(Words words, Point first, double mm, double count) {
		List<Point> places = new ArrayList<>();
		double angle = Math.toRadians(number(words, 'J'));
		for (int i = 0; i < Math.min(count, MOST); i++) {
			add(places, first, i * number(words, 'I') * mm * Math.cos(angle), i * number(words, 'I') * mm * Math.sin(angle));
		}
		return places;
	}

	/** I distance along X, P how many, J distance along Y, K how many. */
	private static List<Point> grid(Words words, Point first, double mm) {
		List<Point> places = new ArrayList<>();
		double columns = count(words, 'P');
		double rows = count(words, 'K');
		for (int i = 0; columns * rows < MOST && i < columns * rows; i++) {
			int row = (int) (i / columns);
			int column = (int) (i - row * columns);
			add(places, first, (row % 2 == 0 ? column : columns - 1 - column) * number(words, 'I') * mm, row * number(words, 'J') * mm);
		}
		return places;
	}

	private static void add(List<Point> places, Point from, double x, double y) {
		if (!Double.isNaN(x) && !Double.isNaN(y)) {
			places.add(new Point(from.x() + x, from.y() + y, from.z()));
		}
	}

	private static double count(Words words, char letter) {
		double count = number(words, letter);
		return count == Math.rint(count) ? Math.abs(count) : Double.NaN;
	}

	private static double number(Words words, char letter) {
		return words.has(letter) ? words.value(letter) : 0;
	}
}
