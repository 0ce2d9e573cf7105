package truelead.checker.profile;

import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * Which of three ways a lathe's control is set to read its G codes, told from a program. The usual one has feed by G98 and G99 and passes
 * by G90, G92 and G94. The second has feed by G94 and G95, passes by G77, G78 and G79, and G98 and G99 for the level that cycles return to.
 * The third is as the second with passes by G20, G21 and G24, and units by G70 and G71 (common practice, no source). G70 and G71 are units
 * in richer languages as well.
 */
final class CodeSystem {

	private static final int TURN = 20;
	private static final int CHASE = 21;
	private static final int FACE = 24;

	private boolean secondFeeds;
	private boolean passes;
	private boolean units;
	private boolean contours;
	/** Whether G92 cuts threads all the same, as where both are mixed. */
	private boolean chases;

	/** Takes what a block says of it. */
	void look(Block block) {
		boolean axes = false;
		boolean contour = false;
		boolean feed = false;
		boolean turns = false;
		boolean pass = false;
		boolean unit = false;
		boolean chase = false;
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				switch (word.address()) {
					case 'G' -> {
						double code = word.value() instanceof Expression.Number number ? number.value() : Double.NaN;
						secondFeeds |= code == 95;
						turns |= code == 77 || code == 78 || code == 79;
						pass |= code == TURN || code == CHASE || code == FACE;
						unit |= code == 70 || code == 71;
						chase |= code == 92;
					}
					case 'X', 'Z', 'U', 'W' -> axes = true;
					case 'P', 'Q', 'D', 'R' -> contour = true;
					case 'F' -> feed = true;
					default -> {
						// Says nothing of it.
					}
				}
			}
		}
		secondFeeds |= turns && axes;
		passes |= pass && axes && feed;
		units |= unit && !axes && !contour;
		contours |= unit && (axes || contour);
		chases |= chase && axes && feed;
	}

	/** The profile of turning as this way reads it. */
	MachineProfile of(MachineProfile turning) {
		MachineProfile profile = turning;
		if (units && !contours) {
			profile = profile.with("G70", "inch").with("G71", "millimetre");
		}
		if (third()) {
			profile = profile.with("G20", "turning-pass").with("G21", "threading-pass").with("G24", "facing-pass");
		}
		if (third() || secondFeeds) {
			profile = profile.with("G90", "absolute").with("G94", "feed-per-minute").with("G98", "return-initial")
					.with("G99", "return-r-level");
			profile = chases ? profile : profile.with("G92", "speed-limit");
		}
		return profile;
	}

	private boolean third() {
		return passes && units && !contours;
	}

	/** What a sentence about the machine says of it; empty for the usual one. */
	String said() {
		return third() ? "; G20, G21 and G24 are taken for its passes, G98 and G99 for levels" : secondFeeds
				? "; G98 and G99 are taken for levels" : "";
	}
}
