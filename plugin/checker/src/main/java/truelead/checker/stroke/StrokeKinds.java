package truelead.checker.stroke;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.hole.Alike;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.program.Setting;

/**
 * Numbers kinds of strokes of an operation: those of one kind are made by one cycle under one state, and differ in place, block and time
 * alone, and in where the block of the cycle has its words.
 */
final class StrokeKinds {

	private record Kind(int cycle, int modal, double start, double bottom, double initial, boolean staleFeed, boolean positioned,
			int repeat, double resolution) {
	}

	private final Map<Kind, Integer> numbers = new HashMap<>();
	private final Alike<Cycle> cycles = new Alike<>();
	private final Alike<Modal> modals = new Alike<>();
	private int count;

	/** From now on the strokes of an edit are asked for, whose states are equal to those before. */
	void edited() {
		modals.edited();
	}

	/** The kind of a stroke, or of a row, whose decimals tell apart further; a stroke made by moves is always of a kind of its own. */
	int of(Stroke made) {
		if (!(made.step() instanceof Step.Stroke stroke)) {
			return another();
		}
		int cycle = cycles.of(stroke.cycle(), Cycle::said);
		int modal = stroke.cycle().says(stroke.modal().feed()) ? modals.of(stroke.modal(), StrokeKinds::fed) : modals.of(stroke.modal());
		return numbers.computeIfAbsent(new Kind(cycle, modal, made.start(), made.bottom(), made.initial(), made.staleFeed(),
				made.positioned(), made.repeat(), made.row().isPresent() || stroke.decimals() >= 0 ? -1 : made.resolution()),
				fresh -> count++);
	}

	/** A state, wherever the block of the cycle has its feed. */
	private static Object fed(Modal modal) {
		return List.of(modal.fed(Setting.NONE), modal.feed().value(), modal.feed().rounding());
	}

	/** A kind of its own. */
	int another() {
		return count++;
	}
}
