package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.chunk.ChunkFacts;
import truelead.checker.chunk.Contour;
import truelead.checker.profile.Meaning;
import truelead.checker.program.BlockRef;
import truelead.grammar.Chunk;
import truelead.grammar.ProgramText;

/** Goes over the plain contours of a program in one step each, where the state lets their words mean what they say. */
final class Contours {

	private final MachineState state;
	private final Output out;
	private final Meter meter;
	private final AsWritten written;
	private final Stretches<Contour> contours = new Stretches<>(Contours::of, Contour::from);

	Contours(MachineState state, Output out, Meter meter) {
		this.state = state;
		this.out = out;
		this.meter = meter;
		this.written = new AsWritten(state);
	}

	/** Whether a contour begins at the line at which a program stands. */
	boolean beginsAt(CallFrame frame) {
		return contours.beginsAt(frame) && written.straight();
	}

	private static Contour[] of(ProgramText text, int chunk) {
		List<Chunk> chunks = text.chunks();
		return ChunkFacts.of(chunks.get(chunk)).contours(chunk > 0 ? Optional.of(ChunkFacts.of(chunks.get(chunk - 1))) : Optional.empty(),
				chunk + 1 < chunks.size() ? Optional.of(ChunkFacts.of(chunks.get(chunk + 1))) : Optional.empty());
	}

	/** Goes over the contour that begins here; false where the state or the end of the program forbids it, and nothing is done. */
	boolean follow(CallFrame frame, boolean skippable) {
		Contour contour = contours.here();
		int base = contours.base();
		Point from = state.place.here();
		double mm = state.unit.mm();
		if (!plain(contour) || !closes(contour, mm) || !aside(contour.entry(), from, mm) || base + contour.to() > frame.end
				|| !meter.next(contour.moves())) {
			return false;
		}
		Contour.Passage passage = state.motion == Meaning.RAPID ? contour.afterRapid() : contour.afterFeed();
		List<Modal> cutting = passage.cuts() < 0 ? List.of() : cutting(frame, passage, skippable);
		if (contour.code() >= 0) {
			state.motion = contour.code() == 0 ? Meaning.RAPID : Meaning.LINEAR;
			state.motionCode = 10 * contour.code();
		}
		contour.feed().forEach(feed -> feed(feed, frame, skippable));
		Point to = new Point(Double.isNaN(contour.x()) ? from.x() : contour.x() * mm, Double.isNaN(contour.y()) ? from.y()
				: contour.y() * mm, Double.isNaN(contour.z()) ? from.z() : contour.z() * mm);
		state.place.moveTo(to);
		Contour.Turned turned = contour.turned();
		state.place.turnTo(state.place.rotary().to(turned.a(), turned.b(), turned.c()));
		frame.passedTo(base + contour.to());
		BlockRef last = ref(frame, contour.to() - 1, skippable);
		boolean levels = passage.levels() || passage.entryLevels() && contour.entry().z() * mm != from.z();
		out.step(new Step.Contour(last, state.modal(), cutting.isEmpty() ? last : ref(frame, passage.cuts(), skippable), cutting,
				state.motion == Meaning.RAPID, from, to, contour.moves(), levels));
		return true;
	}

	private boolean plain(Contour contour) {
		return written.places() && (state.motion == Meaning.RAPID || state.motion == Meaning.LINEAR
				|| contour.starts() && !state.motion.cycle() && state.motion.motion());
	}

	/** Whether its arcs close as the control takes them, where it has any. */
	private boolean closes(Contour contour, double mm) {
		return contour.gap() < 0 || written.arcs() && contour.gap() * mm < state.profile.arcTolerance(state.unit);
	}

	/** Whether the words that stand first differ from the place before. */
	private static boolean aside(Contour.Entry entry, Point from, double mm) {
		return (Double.isNaN(entry.x()) || Double.compare(entry.x() * mm, from.x()) != 0)
				&& (Double.isNaN(entry.y()) || Double.compare(entry.y() * mm, from.y()) != 0);
	}

	/** The states that it cuts under: with the feed before, the smallest and the largest feed. */
	private List<Modal> cutting(CallFrame frame, Contour.Passage passage, boolean skippable) {
		List<Modal> states = new ArrayList<>(3);
		double before = state.feed.value();
		if (passage.entryFeed()) {
			states.add(state.modal());
		}
		for (Contour.FeedWord feed : passage.feeds()) {
			if (!passage.entryFeed() || feed.value() != before) {
				feed(feed, frame, skippable);
				states.add(state.modal());
			}
		}
		return states;
	}

	private void feed(Contour.FeedWord feed, CallFrame frame, boolean skippable) {
		state.feed = feed.setting(ref(frame, feed.line(), skippable));
		state.changed();
	}

	private BlockRef ref(CallFrame frame, int line, boolean skippable) {
		return frame.source.ref(contours.base() + line, frame.caller, skippable);
	}
}
