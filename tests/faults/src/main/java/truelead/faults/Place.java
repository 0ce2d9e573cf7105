package truelead.faults;

/** Where a hole is, in millimetres of its work offset. */
record Place(double x, double y) {
	Place shifted(double dx, double dy) {
		return new Place(x + dx, y + dy);
	}
}
