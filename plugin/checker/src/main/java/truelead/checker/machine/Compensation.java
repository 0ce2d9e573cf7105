package truelead.checker.machine;

/** Cutter radius compensation: off, cutter to the left of the path (G41), to the right (G42). */
public enum Compensation {
	OFF, LEFT, RIGHT
}
