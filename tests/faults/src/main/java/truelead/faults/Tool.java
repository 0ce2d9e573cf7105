package truelead.faults;

/** A tool in its pocket; {@code h} is its length offset, {@code d} its radius offset, diameter in millimetres. */
final class Tool {
	enum Kind { FACE_MILL, END_MILL, SPOT, DRILL, CHAMFER, TAP, FORM_TAP, THREAD_MILL, TURNING, BORING }

	final int number;
	final Kind kind;
	double diameter;
	int h;
	int d;
	String name;

	Tool(int number, Kind kind, double diameter, String name) {
		this.number = number;
		this.kind = kind;
		this.diameter = diameter;
		this.h = number;
		this.d = number;
		this.name = name;
	}
}
