package truelead.checker.machine;

/** Numbers of work offsets, as {@link Modal#workOffset()} has them. */
public final class WorkOffset {

	/** G54.1 without a known P; with one that many more. */
	static final int FURTHER = 5400;
	/** G59 point something: G59.1 is one more. */
	static final int POINT = 5900;

	private WorkOffset() {
	}

	/** The number of a code in tenths, 540 for G54 and 591 for G59.1; a plain number. */
	static int ofCode(int tenths) {
		return tenths % 10 == 0 ? tenths / 10 : POINT + tenths % 10;
	}

	/** The number of a P of G10 L2, a plain number: 1 to 6 for G54 to G59, 7 to 9 for G59.1 to G59.3. */
	static int ofData(int p) {
		return p <= 6 ? 53 + p : POINT - 6 + p;
	}

	/** How a program writes it: {@code G54}, {@code G54.1 P12}, {@code G59.1}. */
	public static String name(int number) {
		return number > POINT ? "G59." + (number - POINT) : number > FURTHER ? "G54.1 P" + (number - FURTHER) : number == FURTHER ? "G54.1"
				: "G" + number;
	}
}
