package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import truelead.checker.thread.ThreadSpec;

/** M3 TAP HOLE, D2.5: a hole as wide as the core of the thread is drilled for the tap; without its size TAP HOLES names the tap. */
final class TapHole {

	/** A hole for a tap takes away no more than that much of the pitch on the diameter, and no less. */
	private static final double MOST_OF_PITCH = 1.3;
	private static final double LEAST_OF_PITCH = 0.4;

	private TapHole() {
	}

	/** Whether the word of a tap at a place speaks of such a hole. */
	static boolean drilled(List<Part> parts, int at) {
		boolean hole = at + 1 < parts.size() && parts.get(at + 1) instanceof Part.Word word && word.meaning() == Meaning.HOLE;
		Optional<ThreadSpec> thread = hole ? parts.stream().filter(Part.Thread.class::isInstance).map(part -> ((Part.Thread) part).draft()
				.spec()).findFirst() : Optional.empty();
		return thread.filter(spec -> parts.stream().anyMatch(part -> part instanceof Part.Amount size && core(size, spec))).isPresent();
	}

	private static boolean core(Part.Amount size, ThreadSpec spec) {
		double taken = (spec.diameter() - size.dimension().mm(spec.unit())) / spec.pitch();
		return (size.role() == Part.Role.PLAIN || size.role() == Part.Role.DIAMETER) && taken > LEAST_OF_PITCH && taken < MOST_OF_PITCH;
	}
}
