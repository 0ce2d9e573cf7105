package truelead.checker.machine;

import java.util.List;
import truelead.checker.arithmetic.Functions;
import truelead.checker.program.Plane;

/**
 * Polar words: under G16 the plane's first axis is a radius, the second an angle, about the program's zero or, under G91, about where it
 * was turned on; or the words {@code @} and {@code ^} of RS-274, about the program's zero; or those of richer languages, {@code AP} and
 * {@code RP} about a pole that a block of G110 to G112 sets (from memory).
 */
final class Polar {

	private static final char[] LETTERS = {'X', 'Y', 'Z'};
	/** Codes times ten. */
	static final int POLE_FROM_HERE = 1100;
	static final int POLE_FROM_ZERO = 1110;
	static final int POLE_FROM_POLE = 1120;

	private final MachineState state;
	private boolean on;
	private double centreFirst;
	private double centreSecond;
	private double radius;
	private double degrees;
	private double poleFirst;
	private double poleSecond;
	private double poleRadius = Double.NaN;
	private double poleDegrees = Double.NaN;

	Polar(MachineState state) {
		this.state = state;
	}

	List<Object> memory() {
		return List.of(on, centreFirst, centreSecond, radius, degrees, poleFirst, poleSecond, poleRadius, poleDegrees);
	}

	boolean on() {
		return on;
	}

	/** On; the present place is the centre under incremental distance. */
	void turnOn() {
		Point now = state.place.programmed();
		on = true;
		radius = 0;
		degrees = 0;
		centreFirst = state.absolute ? 0 : now.along(state.plane.first());
		centreSecond = state.absolute ? 0 : now.along(state.plane.second());
	}

	void turnOff() {
		on = false;
	}

	/**
	 * Where a radius {@code @} and an angle {@code ^} lead in XY; one that is left out, and an increment, goes by the place now.
	 * Millimetres.
	 */
	Point turned(Words words, Point now) {
		double out = Math.hypot(now.x(), now.y());
		double round = Math.toDegrees(Math.atan2(now.y(), now.x()));
		if (words.has('@')) {
			out = state.mm(words, '@') + (state.absolute ? 0 : out);
		}
		if (words.has('^')) {
			round = words.value('^') + (state.absolute ? 0 : round);
		}
		return now.with(0, out * Functions.cosine(round)).with(1, out * Functions.sine(round));
	}

	/** Sets the pole: from the place now (G110), from the program's zero (G111), from the pole before (G112). */
	void setPole(Words words, int code) {
		Point now = state.place.programmed();
		Plane plane = state.plane;
		double fromFirst = code == POLE_FROM_HERE ? now.along(plane.first()) : code == POLE_FROM_POLE ? poleFirst : 0;
		double fromSecond = code == POLE_FROM_HERE ? now.along(plane.second()) : code == POLE_FROM_POLE ? poleSecond : 0;
		char first = LETTERS[plane.first()];
		char second = LETTERS[plane.second()];
		double out = words.has('@') ? state.mm(words, '@') : 0;
		double round = words.has('^') ? words.value('^') : 0;
		poleFirst = fromFirst + (words.has(first) ? state.mm(words, first) : 0) + out * Functions.cosine(round);
		poleSecond = fromSecond + (words.has(second) ? state.mm(words, second) : 0) + out * Functions.sine(round);
	}

	/** Where radius and angle about the pole lead; one that is left out is as before. Millimetres. */
	Point aboutPole(Words words, Point now) {
		if (words.has('@')) {
			poleRadius = state.mm(words, '@') + (words.incremental('@', !state.absolute) ? poleRadius : 0);
		}
		if (words.has('^')) {
			poleDegrees = words.value('^') + (words.incremental('^', !state.absolute) ? poleDegrees : 0);
		}
		return now.with(state.plane.first(), poleFirst + poleRadius * Functions.cosine(poleDegrees))
				.with(state.plane.second(), poleSecond + poleRadius * Functions.sine(poleDegrees));
	}

	/** Where the block's words lead, in programmed coordinates, mm. */
	Point target(Words words, Point now) {
		Plane plane = state.plane;
		Point to = now;
		char first = LETTERS[plane.first()];
		char second = LETTERS[plane.second()];
		char axis = LETTERS[plane.axis()];
		if (words.has(first) || words.has(second)) {
			if (words.has(first)) {
				radius = state.mm(words, first);
			}
			if (words.has(second)) {
				degrees = words.value(second) + (words.incremental(second, !state.absolute) ? degrees : 0);
			}
			to = to.with(plane.first(), centreFirst + radius * Functions.cosine(degrees));
			to = to.with(plane.second(), centreSecond + radius * Functions.sine(degrees));
		}
		if (words.has(axis)) {
			double value = state.mm(words, axis);
			to = to.with(plane.axis(), words.incremental(axis, !state.absolute) ? now.along(plane.axis()) + value : value);
		}
		return to;
	}
}
