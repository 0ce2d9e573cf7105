package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Places of holes in a row, round a circle, in a grid and one by one, called by name with arguments in their order (from memory). */
final class NamedPlaces {

	private static final Set<String> NAMES = Set.of("HOLES1", "HOLES2", "CYCLE801", "CYCLE802");
	/** CYCLE802: nine digits for X and for Y, of which a 1 says that the place counts from zero. */
	private static final double ALL_FROM_ZERO = 111_111_111;
	private static final int SCATTERED = 9;
	/** One more than are followed, so that whoever follows them sees that there are more. */
	private static final int MOST = 10_001;

	private NamedPlaces() {
	}

	/** Whether that name is known. */
	static boolean of(String name) {
		return NAMES.contains(name);
	}

	/** The places in programmed coordinates, mm; none where an argument is left out or not known. */
	static List<Point> places(NamedArguments given, double mm, Point here) {
		return switch (given.name()) {
			case "HOLES1" -> row(given, mm, here);
			case "HOLES2" -> circle(given, mm, here);
			case "CYCLE802" -> scattered(given, mm, here);
			default -> grid(given, mm, here);
		};
	}

	/** How X and Y are said, then up to nine places, of which those behind the last are left out; none where one is said by half. */
	private static List<Point> scattered(NamedArguments given, double mm, Point here) {
		List<Point> places = new ArrayList<>();
		boolean known = given.number(0) == ALL_FROM_ZERO && given.number(1) == ALL_FROM_ZERO;
		for (int i = 2; known && i <= 2 * SCATTERED && (given.said(i) || given.said(i + 1)); i += 2) {
			known = !Double.isNaN(given.number(i) + given.number(i + 1));
			add(places, here, mm * given.number(i), mm * given.number(i + 1));
		}
		return known ? places : List.of();
	}

	/** Reference point, angle, distances between columns and between rows, numbers of columns and of rows; to and fro along the rows. */
	private static List<Point> grid(NamedArguments given, double mm, Point here) {
		double angle = Math.toRadians(given.number(2, 0));
		int columns = (int) Math.max(0, Math.min(given.number(5), MOST));
		int rows = (int) Math.max(0, Math.min(given.number(6), MOST));
		double apart = columns > 1 ? given.number(3) : 0;
		double next = rows > 1 ? given.number(4) : 0;
		double x = given.number(0);
		double y = given.number(1);
		List<Point> places = new ArrayList<>();
		if (Double.isNaN(x + y + angle + apart + next)) {
			return places;
		}
		for (int i = 0; i < Math.min((long) columns * rows, MOST); i++) {
			int row = i / columns;
			double along = (row % 2 == 0 ? i % columns : columns - 1 - i % columns) * apart;
			double across = row * next;
			add(places, here, mm * (x + along * Math.cos(angle) - across * Math.sin(angle)),
					mm * (y + along * Math.sin(angle) + across * Math.cos(angle)));
		}
		return places;
	}

	/** Reference point, angle, distance to the first hole, distance between holes, number. */
	private static List<Point> row(NamedArguments given, double mm, Point here) {
		double angle = Math.toRadians(given.number(2));
		double count = given.number(5);
		List<Point> places = new ArrayList<>();
		for (int i = 0; i < Math.min(count, MOST); i++) {
			double along = given.number(3) + i * given.number(4);
			add(places, here, mm * (given.number(0) + along * Math.cos(angle)), mm * (given.number(1) + along * Math.sin(angle)));
		}
		return places;
	}

	/** Centre, radius, angle of the first hole, angle between holes (0 or left out: all round), number. */
	private static List<Point> circle(NamedArguments given, double mm, Point here) {
		double count = given.number(5);
		double said = given.number(4, 0);
		double step = Math.toRadians(said == 0 ? 360 / count : said);
		List<Point> places = new ArrayList<>();
		for (int i = 0; i < Math.min(count, MOST); i++) {
			double angle = Math.toRadians(given.number(3)) + i * step;
			add(places, here, mm * (given.number(0) + given.number(2) * Math.cos(angle)),
					mm * (given.number(1) + given.number(2) * Math.sin(angle)));
		}
		return places;
	}

	private static void add(List<Point> places, Point here, double x, double y) {
		if (!Double.isNaN(x) && !Double.isNaN(y)) {
			places.add(new Point(x, y, here.z()));
		}
	}
}
