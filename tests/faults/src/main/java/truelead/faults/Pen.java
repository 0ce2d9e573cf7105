package truelead.faults;

/**
 * Writes positions in the program's unit and decimals, absolute or incremental, and remembers where the tool is: lengths come in
 * as millimetres, increments are taken between rounded positions so that they add up.
 */
final class Pen {
	final boolean inch;
	final int decimals;
	boolean incremental;
	private double x;
	private double y;
	private double z;

	Pen(boolean inch) {
		this.inch = inch;
		this.decimals = inch ? 4 : 3;
	}

	/** Millimetres in the program's unit, rounded to the program's decimals. */
	double unit(double mm) {
		return Figures.round(inch ? mm / 25.4 : mm, decimals);
	}

	/** Where the tool is, program's unit. */
	double x() {
		return x;
	}

	double y() {
		return y;
	}

	double z() {
		return z;
	}

	Word x(double mm) {
		double to = unit(mm);
		Word word = coordinate('X', to, x);
		x = to;
		return word;
	}

	Word y(double mm) {
		double to = unit(mm);
		Word word = coordinate('Y', to, y);
		y = to;
		return word;
	}

	Word z(double mm) {
		double to = unit(mm);
		Word word = coordinate('Z', to, z);
		z = to;
		return word;
	}

	Word coordinate(char axis, double to, double from) {
		return Word.of(axis, incremental ? Figures.round(to - from, decimals) : to, decimals);
	}

	/** A distance that is no position: I, J, R of an arc, Q. */
	Word length(char letter, double mm) {
		return Word.of(letter, unit(mm), decimals);
	}

	/** The tool stands here now, whatever brought it there; program's unit for none of them: millimetres. */
	void stands(double xmm, double ymm, double zmm) {
		x = unit(xmm);
		y = unit(ymm);
		z = unit(zmm);
	}

	void height(double zmm) {
		z = unit(zmm);
	}
}
