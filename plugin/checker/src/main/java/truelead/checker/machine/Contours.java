package truelead.checker.machine;

import java.util.List;
import truelead.grammar.Chunk;
import truelead.grammar.ProgramText;

/** Goes over the plain contours of a program in one step each, where the state lets their words mean what they say. */
final class Contours {

	private static final Contour[] NONE = {};

	private final MachineState state;
	private final Output out;
	private final Meter meter;
	private final boolean possible;
	private Source source;
	private Contour[] contours = NONE;
	private int base;
	private int end;
	private int index;
	private int next;

	Contours(MachineState state, Output out, Meter meter) {
		this.state = state;
		this.out = out;
		this.meter = meter;
		this.possible = !state.profile.yes(ProfileKey.DIAMETER) && !state.profile.yes(ProfileKey.INCREMENTAL_WORDS)
				&& state.profile.is(ProfileKey.NUMBERS_WITHOUT_POINT, "as-written");
	}

	/** Whether a contour begins at the line at which a program stands; looks up the chunk's only where the line is in another chunk. */
	boolean beginsAt(CallFrame frame) {
		int line = frame.line;
		if (frame.source != source || line < base || line >= end) {
			enter(frame.source, line);
		}
		if (line > next) {
			seek(line);
		}
		return line == next && possible;
	}

	private void enter(Source other, int line) {
		ProgramText text = other.file().text();
		List<Chunk> chunks = text.chunks();
		int chunk = text.chunkOfLine(line);
		boolean more = chunk + 1 < chunks.size();
		source = other;
		base = text.firstLine(chunk);
		end = more ? text.firstLine(chunk + 1) : text.lineCount();
		contours = ChunkFacts.of(chunks.get(chunk)).contours(chunk > 0 && ChunkFacts.of(chunks.get(chunk - 1)).plainTail(),
				more && ChunkFacts.of(chunks.get(chunk + 1)).plainHead());
		index = 0;
		next = contours.length == 0 ? Integer.MAX_VALUE : base + contours[0].from();
	}

	private void seek(int line) {
		while (index < contours.length && base + contours[index].from() < line) {
			index++;
		}
		next = index < contours.length ? base + contours[index].from() : Integer.MAX_VALUE;
	}

	/** Goes over the contour that begins here; false where the state or the end of the program forbids it, and nothing is done. */
	boolean follow(CallFrame frame, boolean skippable) {
		Contour contour = contours[index];
		boolean plain = state.absolute && state.plane == Plane.XY && state.place.frame().same()
				&& (state.motion == Meaning.RAPID || state.motion == Meaning.LINEAR || contour.code() >= 0 && !state.motion.cycle() && state.motion.motion());
		if (!plain || base + contour.to() > frame.end || !meter.next(contour.moves())) {
			return false;
		}
		if (contour.code() >= 0) {
			state.motion = contour.code() == 0 ? Meaning.RAPID : Meaning.LINEAR;
			state.motionCode = 10 * contour.code();
		}
		Point from = state.place.here();
		double mm = state.unit.mm();
		Point to = new Point(Double.isNaN(contour.x()) ? from.x() : contour.x() * mm, Double.isNaN(contour.y()) ? from.y() : contour.y() * mm,
				Double.isNaN(contour.z()) ? from.z() : contour.z() * mm);
		state.place.moveTo(to);
		frame.line = base + contour.to();
		BlockRef last = frame.source.ref(frame.line - 1, frame.caller, skippable);
		out.step(new Step.Contour(last, state.modal(), state.motion == Meaning.RAPID, from, to, contour.moves(),
				contour.levels() || Double.compare(from.z(), to.z()) != 0));
		return true;
	}
}
