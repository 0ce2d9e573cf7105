package truelead.checker.rule.tapping;

import java.util.stream.IntStream;

/** How likely a number was meant where another one is typed: as a slip of the hand on the keys. */
final class Typed {

	/** Nothing in common. */
	static final int UNLIKE = 0;
	/** One digit is another. */
	static final int ANOTHER_DIGIT = 1;
	/** Two digits are swapped, or one is lost, or typed twice: no chance makes that. */
	static final int SLIP = 2;

	private Typed() {
	}

	/** How alike a number typed and the one that is right are, by their digits and points; both not negative. */
	static int alike(double typed, double right) {
		String one = digits(typed);
		String other = digits(right);
		if (one.equals(other)) {
			return one.equals("0") ? UNLIKE : SLIP;
		}
		if (one.length() != other.length()) {
			String longer = one.length() > other.length() ? one : other;
			String shorter = one.length() > other.length() ? other : one;
			return longer.length() == shorter.length() + 1 && lost(longer, shorter) ? SLIP : UNLIKE;
		}
		int[] off = IntStream.range(0, one.length()).filter(i -> one.charAt(i) != other.charAt(i)).toArray();
		boolean swapped = off.length == 2 && off[1] == off[0] + 1 && one.charAt(off[0]) == other.charAt(off[1])
				&& one.charAt(off[1]) == other.charAt(off[0]);
		return swapped ? SLIP : off.length == 1 ? ANOTHER_DIGIT : UNLIKE;
	}

	/** Whether a digit was typed twice, or lost where it stands twice or is a zero: any digit more or less is no slip by itself. */
	private static boolean lost(String longer, String shorter) {
		return IntStream.range(0, longer.length()).filter(i -> longer.charAt(i) == '0' || i > 0 && longer.charAt(i) == longer.charAt(i - 1))
				.anyMatch(i -> (longer.substring(0, i) + longer.substring(i + 1)).equals(shorter));
	}

	/** The digits of a number to four decimals, without the zeros before and the decimals that say nothing. */
	private static String digits(double value) {
		return String.valueOf(Math.round(value * 10_000)).replaceFirst("0{1,4}$", "");
	}
}
