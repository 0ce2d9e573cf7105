package truelead.faults;

import java.util.List;

/**
 * The holes of one thread in a turned part: one on the centre line, or some by live tools on the face or on the outside. Millimetres,
 * depths below the surface; {@code across} is the diameter of the circle of holes on the face, or that of the part where the holes are on
 * its outside at the height {@code along}.
 */
final class Turned {
	enum At { CENTRE, FACE, SIDE }

	final Size size;
	final At at;
	boolean formed;
	double depth;
	double tip;
	double drillTip;
	double across;
	double along;
	List<Double> angles = List.of(0.0);
	boolean depthNoted;
	boolean left;
	boolean through;
	/** The drill's diameter is said. */
	boolean named;
	/** Bored to size, so that the drill is a smaller one. */
	boolean bored;
	String callout = "";

	Turned(Size size, At at) {
		this.size = size;
		this.at = at;
	}

	double hole() {
		return formed ? size.formHole() : size.drill();
	}

	String holeName() {
		return formed ? size.formName() : size.drillName();
	}

	boolean known() {
		return !callout.isEmpty();
	}

	boolean live() {
		return at != At.CENTRE;
	}
}
