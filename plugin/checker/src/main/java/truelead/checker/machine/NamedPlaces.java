package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Places of holes in a row and round a circle, called by name with arguments in their order (from memory). */
final class NamedPlaces {

	private static final Set<String> NAMES = Set.of("HOLES1", "HOLES2");
	private static final int MOST = 10_001;

	private NamedPlaces() {
	}

	/** Whether that name is known. */
	static boolean of(String name) {
		return NAMES.contains(name);
	}

	/** The places in programmed coordinates, mm; none where an argument is left out or not known. */
	static List<Point> places(NamedArguments given, double mm, Point here) {
		return given.name().equals("HOLES1") ? row(given, mm, here) : circle(given, mm, here);
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
			add(places, here, mm * (given.number(0) + given.number(2) * Math.cos(angle)), mm * (given.number(1) + given.number(2) * Math.sin(angle)));
		}
		return places;
	}

	private static void add(List<Point> places, Point here, double x, double y) {
		if (!Double.isNaN(x) && !Double.isNaN(y)) {
			places.add(new Point(x, y, here.z()));
		}
	}
}
