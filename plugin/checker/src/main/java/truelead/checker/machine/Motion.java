package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Plane;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** Makes motions of axis words: straight, synchronised, homing; {@link ArcMotion} has the arcs. */
final class Motion {

	static final int AXES = Words.mask("XYZ");
	private static final int INCREMENTS = Words.mask("UVW");
	private static final int ROTARY = Words.mask("ABC");
	static final char[] LETTERS = {'X', 'Y', 'Z'};
	static final char[] INCREMENT_LETTERS = {'U', 'V', 'W'};
	static final char[] CENTRES = {'I', 'J', 'K'};

	private final MachineState state;
	private final Place place;
	private final Output out;
	private final UnsureThread unsure;
	private final Polar polar;
	private final boolean diameter;
	private final boolean incrementWords;
	/** Whether H is an increment of the main spindle's angle C, as on turning machines. */
	private final boolean turnWords;
	private Setting lead = Setting.NONE;
	/** The lead that E says; NONE where F or nothing does. */
	private Setting fineLead = Setting.NONE;

	Motion(MachineState state, Output out) {
		this.state = state;
		this.place = state.place;
		this.out = out;
		this.unsure = new UnsureThread(state, out);
		this.polar = new Polar(state);
		this.diameter = state.profile.yes(ProfileKey.DIAMETER);
		this.incrementWords = state.profile.yes(ProfileKey.INCREMENTAL_WORDS);
		this.turnWords = incrementWords && state.profile.isLathe();
	}

	Polar polar() {
		return polar;
	}

	/** What later blocks depend on. */
	List<Object> memory() {
		return List.of(lead, fineLead, polar.memory());
	}

	/** Whether the block has words of linear axes. */
	boolean linearWords(Words words) {
		return words.any(AXES) || incrementWords && words.any(INCREMENTS) || polarWords(words) || words.aboutPole();
	}

	/** Whether a radius or an angle leads somewhere; some old controls have commands that begin with the sign of a radius. */
	private static boolean polarWords(Words words) {
		return words.has('^') || words.has('@') && words.gCount() > 0;
	}

	/** Whether the block has words of any axis. */
	boolean axisWords(Words words) {
		return linearWords(words) || words.any(ROTARY) || turnWords && words.has('H');
	}

	/** Turns the rotary axes to where the block's words say. */
	void turnRotary(Words words) {
		Rotary to = place.rotary();
		for (int axis = 0; axis < 3; axis++) {
			char letter = (char) ('A' + axis);
			if (words.has(letter)) {
				double value = words.value(letter);
				to = to.with(axis, words.incremental(letter, !state.absolute) ? to.along(axis) + value : value);
			}
		}
		if (turnWords && words.has('H')) {
			to = to.with(2, to.along(2) + words.value('H'));
		}
		place.turnTo(to);
	}

	/** Where the axis words lead, in programmed coordinates, mm; a value that is not known is said so. */
	Point target(Words words) {
		Point programmed = place.programmed();
		if (polar.on() && words.any(AXES)) {
			return polar.target(words, programmed);
		}
		if (words.aboutPole() || polarWords(words)) {
			checkKnown(words, '@');
			checkKnown(words, '^');
			programmed = words.aboutPole() ? polar.aboutPole(words, programmed) : polar.turned(words, programmed);
		}
		double x = coordinate(words, 0, programmed.x());
		double y = coordinate(words, 1, programmed.y());
		double z = coordinate(words, 2, programmed.z());
		return new Point(x, y, z);
	}

	private double coordinate(Words words, int axis, double now) {
		char letter = LETTERS[axis];
		if (words.has(letter)) {
			double value = state.mm(words, letter) * (diameter && axis == 0 ? 0.5 : 1);
			checkKnown(words, letter);
			return words.incremental(letter, !state.absolute) ? now + value : value;
		}
		if (incrementWords && words.has(INCREMENT_LETTERS[axis])) {
			checkKnown(words, INCREMENT_LETTERS[axis]);
			return now + state.mm(words, INCREMENT_LETTERS[axis]) * (diameter && axis == 0 ? 0.5 : 1);
		}
		return now;
	}

	/** Says so where the value of a word is not known. */
	void checkKnown(Words words, char letter) {
		if (words.has(letter) && Double.isNaN(words.value(letter))) {
			out.notFollowed(words.block(), words.why(letter).behind(letter + " is not known"), Optional.of(words.ref(letter)));
		}
	}

	/**
	 * Half of the finest last decimal among some words, mm: in one block all words are meant to the same decimals, and noughts at the end
	 * are left out ({@code I-17.126 J0 Z-36.}). Computed words do not count; 0 where no other is there.
	 */
	double resolution(Words words, char[] letters) {
		double finest = 0;
		for (char letter : letters) {
			if (words.has(letter)) {
				finest = finer(finest, state.resolution(words, letter));
			}
		}
		return finest;
	}

	double resolution(Words words) {
		return incrementWords ? finer(resolution(words, LETTERS), resolution(words, INCREMENT_LETTERS)) : resolution(words, LETTERS);
	}

	/** The finer of two; 0 stands for none. */
	static double finer(double one, double other) {
		return one == 0 || other == 0 ? Math.max(one, other) : Math.min(one, other);
	}

	/**
	 * A subprogram by itself that moves in increments starts from a place that is not known: places are counted from there, in a frame of
	 * its own.
	 */
	void startSomewhere(Words words, Plane plane, boolean arc) {
		if (!state.alone) {
			return;
		}
		for (int axis : new int[] {plane.first(), plane.second()}) {
			boolean counts = !state.absolute && words.has(LETTERS[axis]) || arc && !words.has(LETTERS[axis]);
			if (counts) {
				place.startSomewhere(axis);
			} else if (state.absolute && words.has(LETTERS[axis]) && place.counts(axis)) {
				place.land(axis);
			}
		}
	}

	/** A straight motion to where the axis words lead. */
	void straight(Words words, boolean rapid, Modal modal) {
		Point from = place.here();
		Point to = place.frame().apply(target(words));
		place.moveTo(to);
		out.step(new Step.Move(words.block(), modal, rapid, from, to, resolution(words)));
	}

	/** A motion whose end is not known on the axes that have words: probing, machine coordinates. */
	void toUnknown(Words words, boolean rapid) {
		Point from = place.here();
		for (int axis = 0; axis < 3; axis++) {
			if (words.has(LETTERS[axis]) || incrementWords && words.has(INCREMENT_LETTERS[axis])) {
				place.lose(axis);
				if (axis == 1 && centred(words)) {
					place.moveTo(place.here().with(1, 0));
				}
			}
		}
		out.step(new Step.Move(words.block(), state.modal(), rapid, from, place.here(), resolution(words)));
	}

	/**
	 * Whether Y of a lathe stands on the spindle's axis behind a block, as it does at home and at nought of the machine's own coordinates
	 * (common practice, no source).
	 */
	private boolean centred(Words words) {
		char letter = words.has('Y') ? 'Y' : 'V';
		return turnWords && state.mm(words, letter) == 0;
	}

	/** Home by way of the point that the words say; without words all axes. */
	void home(Words words) {
		if (linearWords(words)) {
			straight(words, true, state.modal());
			toUnknown(words, true);
		} else if (!words.any(ROTARY) && !(turnWords && words.has('H'))) {
			Point from = place.here();
			for (int axis = 0; axis < 3; axis++) {
				if (axis != 1 || !turnWords) {
					place.lose(axis);
				}
			}
			out.step(new Step.Move(words.block(), state.modal(), true, from, place.here(), 0));
		}
		for (int axis = 0; axis < 3; axis++) {
			if (words.has((char) ('A' + axis))) {
				place.turnTo(place.rotary().with(axis, 0));
			}
		}
		if (turnWords && words.has('H')) {
			place.turnTo(place.rotary().with(2, 0));
		}
	}

	/**
	 * What the block counts from where an axis stands, in its word or in that for increments, mm; NaN where it says where to go, 0 where it
	 * says nothing.
	 */
	double increment(Words words, int axis) {
		if (!words.has(LETTERS[axis])) {
			return incrementWords && words.has(INCREMENT_LETTERS[axis]) ? state.mm(words, INCREMENT_LETTERS[axis]) : 0;
		}
		return words.incremental(LETTERS[axis], !state.absolute) ? state.mm(words, LETTERS[axis]) : Double.NaN;
	}

	/** A synchronised motion; the lead is K, or the letter along the axis that moves for codes that have it so, else F. */
	void synchronised(Words words, int code, Meaning kind) {
		boolean returns = kind == Meaning.SYNCHRONISED_TAP;
		Point from = place.here();
		Point to = place.frame().apply(target(words));
		lead = lead(words, from, to);
		if (!lead.known()) {
			out.notFollowed(words.block(), lead.why().behind("the lead of the synchronised motion is not known"), lead.word());
		}
		unsure.made(words.block(), Optional.empty());
		boolean locks = state.profile.yes(ProfileKey.SYNCHRONISED_LOCKS_OVERRIDES);
		Modal modal = kind == Meaning.SYNCHRONISED_IN || kind == Meaning.SYNCHRONISED_OUT
				? turning(lead.value() > 0 == (kind == Meaning.SYNCHRONISED_IN), lead.word(), locks) : locks ? state.lockedModal()
				: state.modal();
		double resolution = resolution(words);
		out.step(new Step.Synchronised(words.block(), modal, code, from, to, lead, returns, resolution).with(words.computed()));
		place.moveTo(returns ? from : to);
	}

	/**
	 * The lead that F says, or E, which old lathe controls have for leads of many decimals, until F is said again (common practice, no
	 * source).
	 */
	Setting feedAsLead(Words words) {
		if (words.has('E')) {
			fineLead = words.setting('E');
		} else if (words.has('F')) {
			fineLead = Setting.NONE;
		}
		Setting said = fineLead.isSet() ? fineLead : state.feed;
		return said.isSet() ? said : new Setting(Double.NaN, Optional.empty(), Reason.of("neither K nor F says it"));
	}

	/** The state in a motion that turns the spindle by itself, as the sign of its lead says. */
	private Modal turning(boolean clockwise, Optional<WordRef> lead, boolean locks) {
		SpindleTurn before = state.spindle;
		Optional<WordRef> wordBefore = state.spindleWord;
		state.spindle = clockwise ? SpindleTurn.CLOCKWISE : SpindleTurn.COUNTERCLOCKWISE;
		state.spindleWord = lead;
		state.changed();
		Modal modal = locks ? state.lockedModal() : state.modal();
		state.spindle = before;
		state.spindleWord = wordBefore;
		state.changed();
		return modal;
	}

	private Setting lead(Words words, Point from, Point to) {
		for (int axis : new int[] {2, 1, 0}) {
			if (words.has(CENTRES[axis]) && (axis == 2 || from.along(axis) != to.along(axis))) {
				return words.setting(CENTRES[axis]);
			}
		}
		if (words.has('F') || words.has('E') || lead == Setting.NONE || lead.word().map(word -> word.address() == 'F'
				|| word.address() == 'E').orElse(false)) {
			return feedAsLead(words);
		}
		return lead;
	}
}
