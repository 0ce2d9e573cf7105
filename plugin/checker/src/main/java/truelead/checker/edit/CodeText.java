package truelead.checker.edit;

import java.util.List;
import java.util.stream.Collectors;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;

/** What a machine profile says of codes, in words. */
final class CodeText {

	/** What a code is that the profile knows and that does nothing for a thread. */
	static final String NO_CONCERN = "known, and of no concern to a thread";

	private CodeText() {
	}

	/** A code as written: G84 for 840, G54.1 for 541. */
	static String code(char letter, int tenfold) {
		return letter + (tenfold % 10 == 0 ? Integer.toString(tenfold / 10) : tenfold / 10 + "." + tenfold % 10);
	}

	/**
	 * What a G or M code does: {@code tap}, {@code spindle clockwise, coolant on}; empty text for a code that the profile does not know.
	 */
	static String meaning(MachineProfile machine, char letter, int tenfold) {
		List<Meaning> meanings = letter == 'G' ? machine.gCode(tenfold) : machine.mCode(tenfold);
		return meanings.stream().map(meaning -> meaning == Meaning.NONE ? NO_CONCERN : meaning.key().replace('-', ' '))
				.collect(Collectors.joining(", "));
	}

	/** What an address says in a block under a kind of motion, see {@link Situation#motionAfter()}. */
	static String role(char address, String motion) {
		boolean cycle = motion.startsWith("cycle");
		boolean arc = motion.equals("arc");
		return switch (address) {
			case 'X', 'Y' -> cycle ? "place of the hole along " + address : "where to along " + address;
			case 'Z' -> cycle ? "bottom of the hole" : "where to along Z";
			case 'R' -> cycle ? "level where the feed starts" : arc ? "radius of the arc" : "radius or level";
			case 'Q' -> cycle ? "depth of a peck" : "a value of the code beside it";
			case 'P' -> cycle ? "dwell at the bottom" : "a value of the code beside it";
			case 'I', 'J', 'K' -> arc ? "centre of the arc along " + "XYZ".charAt(address - 'I') : "a value of the code beside it";
			case 'A', 'B', 'C' -> "angle of the rotary axis " + address;
			case 'U', 'V', 'W' -> "where to along the axis " + address;
			case 'F' -> "feed";
			case 'S' -> "spindle speed";
			case 'T' -> "tool";
			case 'H' -> "number of the length offset";
			case 'D' -> "number of the radius offset";
			case 'L' -> "how many times";
			case 'N' -> "number of this block";
			case 'O' -> "number of the program";
			default -> "";
		};
	}
}
