package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.chunk.ChunkFacts;
import truelead.checker.chunk.Refrain;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.program.Plane;

/**
 * Goes over the turns of refrains in one step. The first two are followed block by block; where the machine then stands as it did a turn
 * before, but for the place, all further ones do the same too. The last one is followed again, so that what comes behind finds everything
 * as ever.
 */
final class Refrains {

	private static final List<Code> PLAIN = List.of(new Code(0, Meaning.RAPID), new Code(10, Meaning.LINEAR),
			new Code(20, Meaning.ARC_CLOCKWISE),
			new Code(30, Meaning.ARC_COUNTERCLOCKWISE), new Code(170, Meaning.PLANE_XY), new Code(400, Meaning.COMPENSATION_OFF),
			new Code(410, Meaning.COMPENSATION_LEFT), new Code(420, Meaning.COMPENSATION_RIGHT), new Code(900, Meaning.ABSOLUTE),
			new Code(910, Meaning.INCREMENTAL));

	private record Code(int tenfold, Meaning meaning) {
	}

	/** What the blocks of a refrain can change, but for the place in the plane. */
	private record Standing(Meaning motion, int code, boolean absolute, Plane plane, Compensation compensation, double offset, double feed,
			double level) {

		Standing(MachineState state) {
			this(state.motion, state.motionCode, state.absolute, state.plane, state.compensation, state.compensationOffset.value(),
					state.feed.value(), state.place.here().z());
		}
	}

	/** A refrain that is being followed, and how many blocks were executed when its latest turn began. */
	private record Begun(CallFrame frame, Refrain.Turn turn, long executed, Standing standing, Optional<MachineState> before) {
	}

	private final MachineState state;
	private final Output out;
	private final Meter meter;
	private final boolean possible;
	private final Stretches<Refrain.Turn> turns = new Stretches<>((text, chunk) -> ChunkFacts.of(text.chunks().get(chunk)).refrains(),
			Refrain.Turn::from);
	private Optional<Begun> begun = Optional.empty();

	Refrains(MachineState state, Output out, Meter meter) {
		this.state = state;
		this.out = out;
		this.meter = meter;
		this.possible = out.takesCopies() && state.asWritten() && !state.alone && plainCodes(state.profile);
	}

	private static boolean plainCodes(MachineProfile profile) {
		for (Code code : PLAIN) {
			if (!profile.gCode(code.tenfold()).equals(List.of(code.meaning()))) {
				return false;
			}
		}
		return true;
	}

	/** Whether no refrain has begun. */
	boolean atRest() {
		return begun.isEmpty();
	}

	/** Whether one of the first turns of a refrain begins at the line at which a program stands. */
	boolean beginsAt(CallFrame frame) {
		return possible && turns.beginsAt(frame);
	}

	/**
	 * Looks at the turn that begins here; hands out the copies and goes to the turn before the last where it is the one to tell, else does
	 * nothing.
	 */
	Optional<Refrain> follow(CallFrame frame, boolean skippable) {
		Refrain.Turn turn = turns.here();
		Standing now = new Standing(state);
		boolean asEver = turn.number() == 0 || begun.filter(before -> before.frame() == frame && before.turn().refrain() == turn.refrain()
				&& before.turn().number() == turn.number() - 1 && meter.executed() - before.executed() == turn.refrain().period()
				&& before.standing().equals(now)).isPresent();
		Optional<MachineState> before = begun.flatMap(Begun::before);
		begun = asEver && plain(turn) ? Optional.of(new Begun(frame, turn, meter.executed(), now, turn.number() == 1
				? Optional.of(new MachineState(state)) : Optional.empty())) : Optional.empty();
		if (begun.isEmpty() || turn.number() < Refrain.Turn.LAST) {
			return Optional.empty();
		}
		begun = Optional.empty();
		return copies(frame, skippable, turn.refrain(), before.orElseThrow()) ? Optional.of(turn.refrain()) : Optional.empty();
	}

	private boolean plain(Refrain.Turn turn) {
		Refrain refrain = turn.refrain();
		boolean here = turn.number() > 0 || state.place.here().x() == refrain.x(0) * state.unit.mm()
				&& state.place.here().y() == refrain.y(0) * state.unit.mm() || !refrain.stands();
		return here && state.absolute && !state.arcCentreAbsolute && state.plane == Plane.XY && state.place.frame().same();
	}

	private boolean copies(CallFrame frame, boolean skippable, Refrain refrain, MachineState before) {
		int count = refrain.count() - Copies.BEFORE - 1;
		if (turns.base() + refrain.line(refrain.count()) > frame.end) {
			return false;
		}
		int chunk = frame.source.file().text().chunkOfLine(turns.base());
		Copies copies = new Copies(refrain, count, before, frame.source.ref(turns.base() + refrain.from(), frame.caller, skippable),
				frame.source.file().text().chunks().get(chunk));
		if (!takes(copies) || !meter.next(count * refrain.period())) {
			return false;
		}
		out.step(new Step.Again(copies.last(), state.modal(), copies));
		if (count > 1) {
			state.place.moveTo(new Point(copies.x(count - 2), copies.y(count - 2), state.place.here().z()));
		}
		frame.passedTo(turns.base() + refrain.line(Copies.BEFORE + count - 1));
		return true;
	}

	/** Whether a copy is nothing but motions, of which the first is a rapid to the place. */
	private static boolean takes(Copies copies) {
		List<Step> steps = copies.steps(0);
		boolean motions = !steps.isEmpty() && steps.stream().allMatch(step -> step instanceof Step.Move || step instanceof Step.Arc);
		return motions && steps.get(0) instanceof Step.Move move && move.rapid() && move.to().x() == copies.x(0)
				&& move.to().y() == copies.y(0);
	}
}
