package truelead.checker.machine;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Setting;

/** The initial level, the R plane and the bottom of the canned cycle in force, in programmed coordinates, mm. */
final class CycleLevels {

	private static final char[] LETTERS = {'X', 'Y', 'Z'};
	private static final char[] INCREMENTS = {'U', 'V', 'W'};

	private final MachineState state;
	private final Motion motion;
	private double initial;
	private double r;
	private double bottom;
	/** Axis that they lie along; a change of the plane makes them void. */
	private int axis;
	private boolean hasR;
	private boolean hasBottom;
	/** Whether the bottom was said by I, see {@link #byDepthWord}. */
	private boolean depthWord;

	CycleLevels(MachineState state, Motion motion) {
		this.state = state;
		this.motion = motion;
	}

	/** All that later blocks depend on. */
	record Kept(double initial, double r, double bottom, int axis, boolean hasR, boolean hasBottom, boolean depthWord) {

		/** Where no cycle is in force. */
		static final Kept NONE = new Kept(0, 0, 0, 0, false, false, false);
	}

	Kept kept() {
		return new Kept(initial, r, bottom, axis, hasR, hasBottom, depthWord);
	}

	/** Goes on with what was kept. */
	void resume(Kept kept) {
		initial = kept.initial();
		r = kept.r();
		bottom = kept.bottom();
		axis = kept.axis();
		hasR = kept.hasR();
		hasBottom = kept.hasBottom();
		depthWord = kept.depthWord();
	}

	/** A cycle begins along an axis, where the tool stands. */
	void begin(int along) {
		axis = along;
		initial = state.place.programmed().along(along);
		hasR = false;
		hasBottom = false;
		depthWord = false;
	}

	/** Goes on along an axis, which begins anew where it is another one. */
	void along(int now) {
		if (now != axis) {
			begin(now);
		}
	}

	/** The levels of a cycle along Z that was defined before; NaN where one is not said. */
	void define(double rSaid, double bottomSaid) {
		begin(2);
		r = Double.isNaN(rSaid) ? initial : rSaid;
		bottom = bottomSaid;
		hasBottom = !Double.isNaN(bottomSaid);
	}

	/** X, Y and Z are 0, 1 and 2. */
	int axis() {
		return axis;
	}

	double initial() {
		return initial;
	}

	double r() {
		return r;
	}

	double bottom() {
		return bottom;
	}

	/** Whether a block has said how deep the cycle goes. */
	boolean hasBottom() {
		return hasBottom;
	}

	/** Letter of the axis that they lie along. */
	char letter() {
		return LETTERS[axis];
	}

	/** Where the tool stands behind a stroke along the axis, of the two levels it may go back to: the one it begins at, and the R plane. */
	double behind(double start, double atR) {
		return state.returnToInitial && !(initial < r) ? start : atR;
	}

	/** Takes R and the bottom of a block: both absolute, or R from the initial level and the bottom from R. */
	void read(Words words) {
		if (words.has('R')) {
			motion.checkKnown(words, 'R');
			double said = state.mm(words, 'R');
			boolean fromInitial = !state.absolute || state.profile.is(ProfileKey.CYCLE_R, "from-initial");
			r = fromInitial ? initial + said : said;
			hasR = true;
		} else if (!hasR) {
			r = initial;
		}
		if (words.has(letter())) {
			motion.checkKnown(words, letter());
			double depth = state.mm(words, letter()) * half();
			bottom = words.incremental(letter(), !state.absolute) ? r + depth : depth;
			hasBottom = true;
		} else if (state.profile.yes(ProfileKey.INCREMENTAL_WORDS) && words.has(INCREMENTS[axis])) {
			bottom = r + state.mm(words, INCREMENTS[axis]) * half();
			hasBottom = true;
		} else if (!hasBottom) {
			bottom = Double.NaN;
		}
	}

	private double half() {
		return axis == 0 && state.profile.yes(ProfileKey.DIAMETER) ? 0.5 : 1;
	}

	/**
	 * Some controls have the R plane in the axis word and the bottom in I, absolute, and R for other things or not at all (from memory): so
	 * are read an I below the axis word in a cycle of drilling or tapping that names no other plane; elsewhere I is the size of a first
	 * peck, above zero.
	 *
	 * @return the words of the cycle as if they stood in R and in the axis word; empty where the block says its levels as usual, and
	 *         nothing is taken
	 */
	Optional<Map<Character, Setting>> byDepthWord(Words words, Cycle cycle) {
		if (pecks(words, cycle)) {
			// so deep a peck, and so many (from memory)
			say(state.mm(words, letter()), state.mm(words, letter()) + state.mm(words, 'I') * words.value('J'));
			return Optional.of(cycle.words());
		}
		boolean other = words.has('R') && !rigidFlag(words, cycle) || hasR && !depthWord || words.has('Q') || words.has('J');
		boolean drills = cycle.kind().taps() || cycle.kind() == Cycle.Kind.DRILL || cycle.kind() == Cycle.Kind.PECK_DRILL;
		if (!state.absolute || !drills || other || !words.has('I') || !words.has(letter())
				|| !(words.value('I') < Math.min(0, words.value(letter())))) {
			return Optional.empty();
		}
		Map<Character, Setting> said = new HashMap<>(cycle.words());
		for (char plain : new char[] {'F', 'S', 'P', 'K', 'L'}) {
			if (words.has(plain)) {
				said.put(plain, words.setting(plain));
			}
		}
		said.put('R', words.setting(letter()));
		said.put(letter(), words.setting('I'));
		say(state.mm(words, letter()), state.mm(words, 'I'));
		depthWord = true;
		return Optional.of(said);
	}

	private void say(double plane, double end) {
		r = plane;
		bottom = end;
		hasR = true;
		hasBottom = true;
	}

	private boolean pecks(Words words, Cycle cycle) {
		boolean count = words.has('J') && words.value('J') >= 1 && words.value('J') == Math.rint(words.value('J'));
		return state.absolute && cycle.kind() == Cycle.Kind.PECK_DRILL && words.has(letter()) && words.has('I') && words.value('I') < 0
				&& count && !words.has('R') && !words.has('Q');
	}

	/** Whether R says how a tap is held, 0 or 1, since a plane that it could be would lie below the axis word. */
	private boolean rigidFlag(Words words, Cycle cycle) {
		double said = words.value('R');
		return cycle.kind().taps() && (said == 0 || said == 1 && words.value(letter()) > said);
	}
}
