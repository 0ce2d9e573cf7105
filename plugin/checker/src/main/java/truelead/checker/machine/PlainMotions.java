package truelead.checker.machine;

import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.MotionWords;

/**
 * Makes the motion of a block that is nothing but one straight from its text, as far most blocks are: the step is the one that
 * {@link BlockExecutor} makes of its words, without an object for each of them; a test compares the two.
 */
final class PlainMotions {

	private static final Meaning[] MOTIONS = {Meaning.RAPID, Meaning.LINEAR, Meaning.ARC_CLOCKWISE, Meaning.ARC_COUNTERCLOCKWISE};

	private final MachineState state;
	private final Output out;
	private final AsWritten written;
	/** What a millimetre of an X word is of the place, mm: half of one where X is a diameter. */
	private final double ofX;

	PlainMotions(MachineState state, Output out) {
		this.state = state;
		this.out = out;
		this.written = new AsWritten(state);
		this.ofX = state.profile.yes(ProfileKey.DIAMETER) ? 0.5 : 1;
	}

	/** Whether the profile lets any block be taken so. */
	boolean possible() {
		return (written.straight() || written.turning()) && !state.alone;
	}

	/** The motion that the words make; NONE where the state or a word asks for a closer look. */
	Meaning motion(MotionWords words) {
		if (!(written.turning() ? written.inFrame() : written.places())) {
			return Meaning.NONE;
		}
		Meaning motion = words.code() >= 0 ? MOTIONS[words.code()] : state.motion;
		boolean centred = said(words.i()) || said(words.j());
		return switch (motion) {
			case RAPID, LINEAR -> centred || said(words.r()) ? Meaning.NONE : motion;
			case ARC_CLOCKWISE, ARC_COUNTERCLOCKWISE -> written.arcs() && (centred || said(words.r())) ? motion : Meaning.NONE;
			default -> Meaning.NONE;
		};
	}

	/** Makes it. */
	void make(Meaning motion, MotionWords words, BlockRef block) {
		if (said(words.feed())) {
			state.feed = Setting.of(words.feed(), new WordRef(block, 'F', words.feedSpan(), words.feedDecimals(), true, words.feedText()));
			state.changed();
		}
		double mm = state.unit.mm();
		if (words.turns()) {
			state.place.turnTo(state.place.rotary().to(words.turned(0), words.turned(1), words.turned(2)));
		}
		Point from = state.place.here();
		Point to = new Point(said(words.x()) ? words.x() * mm * ofX : from.x(), said(words.y()) ? words.y() * mm : from.y(), said(words.z())
				? words.z() * mm : from.z());
		double resolution = MachineState.resolution(words.decimals(), state.unit);
		if (motion == Meaning.ARC_CLOCKWISE || motion == Meaning.ARC_COUNTERCLOCKWISE) {
			state.place.moveTo(to);
			out.step(arc(motion == Meaning.ARC_CLOCKWISE, words, block, from, to, resolution));
		} else if (said(words.x()) || said(words.y()) || said(words.z())) {
			state.place.moveTo(to);
			out.step(new Step.Move(block, state.modal(), motion == Meaning.RAPID, from, to, resolution));
		}
	}

	private Step.Arc arc(boolean clockwise, MotionWords words, BlockRef block, Point from, Point to, double resolution) {
		double mm = state.unit.mm();
		boolean byRadius = !said(words.i()) && !said(words.j());
		ArcGeometry geometry = byRadius ? ArcGeometry.withRadius(words.r() * mm, from.x(), from.y(), to.x(), to.y(), clockwise,
				state.profile.arcTolerance(state.unit)) : ArcGeometry.about(said(words.i()) ? from.x() + words.i() * mm : from.x(),
						said(words.j()) ? from.y() + words.j() * mm : from.y(), from.x(), from.y(), to.x(), to.y(), clockwise, 0);
		double rise = said(words.z()) ? to.z() - from.z() : 0;
		return new Step.Arc(block, state.modal(), from, to, new Point(geometry.first(), geometry.second(), from.z()), geometry.sweep(),
				geometry.startRadius(), geometry.endRadius(), rise, byRadius, resolution, false);
	}

	private static boolean said(double word) {
		return !Double.isNaN(word);
	}
}
