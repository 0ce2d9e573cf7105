package truelead.faults;

import java.util.List;

/** Threaded holes of one kind, as the drawing wants them; millimetres, depths below the surface. */
final class Feature {
	enum Method { CUT, FORM, MILL }

	enum Way { LIST, REPEAT, LOOP, SUB, MACRO }

	final Size size;
	final Method method;
	final Pattern pattern;
	boolean left;
	boolean through;
	double surface;
	double wall;
	double depth;
	double tip;
	double drillTip;
	double lead;
	boolean surfaceNoted;
	boolean wallNoted;
	boolean depthNoted;
	boolean named;
	Way way = Way.LIST;
	List<Integer> offsets = List.of(54);
	/** What the operation says of the thread, and the note that stands before the cycle. */
	String callout = "";
	String note = "";

	Feature(Size size, Method method, Pattern pattern) {
		this.size = size;
		this.method = method;
		this.pattern = pattern;
	}

	/** Diameter of the hole to be made before threading. */
	double hole() {
		return method == Method.FORM ? size.formHole() : size.drill();
	}

	String holeName() {
		return method == Method.FORM ? size.formName() : size.drillName();
	}

	boolean known() {
		return !callout.isEmpty() || !note.isEmpty();
	}

	/** True where the program lets one know the height of the surface. */
	boolean surfaceKnown() {
		return surface == 0 || surfaceNoted;
	}

	int holes() {
		return pattern.count() * offsets.size();
	}
}
