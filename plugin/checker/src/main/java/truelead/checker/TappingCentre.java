package truelead.checker;

import truelead.checker.chunk.ChunkFacts;
import truelead.checker.profile.MachineProfile;
import truelead.grammar.Block;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/**
 * The code of small machining centres that tap in step by G77, and left-hand threads by G78: I is the lead a turn or J the threads an inch,
 * L the speed on the way back, and the cycle turns the spindle; G100 with a T word changes the tool on the way to the place that its block
 * says (from memory). Other mills bore backwards by G77, with F.
 */
final class TappingCentre {

	private static final int TAP = 770;
	private static final int TAP_LEFT = 780;
	private static final int TOOL = 1000;

	/** Made for the first program that speaks it: every start looks for the code, and few programs have it. */
	private static final class Made {
		static final MachineProfile PROFILE = MachineProfile.generic().with("G77", "tap").with("G78", "tap-left")
				.with("G100", "tool-change rapid").with("tapping-lead", "i-j").with("repeat-words", "K");
	}

	private TappingCentre() {
	}

	/** Whether a program of a mill speaks that code. */
	static boolean speaks(ProgramText text) {
		ChunkFacts.readAll(text);
		return text.chunks().stream().anyMatch(TappingCentre::speaks);
	}

	private static boolean speaks(Chunk chunk) {
		ChunkFacts facts = ChunkFacts.of(chunk);
		if (!facts.hasCode(code -> code == TAP || code == TAP_LEFT || code == TOOL)) {
			return false;
		}
		for (int line : facts.noted()) {
			if (speaks(chunk.block(line))) {
				return true;
			}
		}
		return false;
	}

	/** G77 or G78 with a depth and a lead by I or J and without F, or G100 with T. */
	private static boolean speaks(Block block) {
		StringBuilder letters = new StringBuilder();
		boolean tap = false;
		boolean change = false;
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				letters.append(word.address());
				int code = word.address() == 'G' && word.value() instanceof Expression.Number number
						? MachineProfile.tenfold(number.value()) : -1;
				tap |= code == TAP || code == TAP_LEFT;
				change |= code == TOOL;
			}
		}
		boolean lead = letters.indexOf("I") >= 0 != letters.indexOf("J") >= 0;
		return tap && lead && letters.indexOf("Z") >= 0 && letters.indexOf("F") < 0 || change && letters.indexOf("T") >= 0;
	}

	/** Generic milling with that code. */
	static MachineProfile profile() {
		return Made.PROFILE;
	}
}
