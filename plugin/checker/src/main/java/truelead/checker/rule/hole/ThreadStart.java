package truelead.checker.rule.hole;

import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;

/**
 * Where the threading tool of a hole starts, which tells where the hole begins.
 *
 * @param top   the level that a tap starts from, or the highest of a thread mill's helix, mm; empty where none is known
 * @param lead  what a tap advances a turn, mm; 0 of a thread mill, NaN where it is not known
 * @param saysR whether a cycle with R starts there
 * @param stops levels that a thread mill stops at on its way down, mm: how far above the hole they are says little
 */
record ThreadStart(OptionalDouble top, double lead, boolean saysR, double... stops) {

	/** Turns that a tap is given above its hole at least to come up to speed (common practice, no source). */
	private static final double RUN_UP = 1.5;

	private static final ThreadStart UNKNOWN = new ThreadStart(OptionalDouble.empty(), 0, false);

	/** At one of the typical visits of an operation. */
	static ThreadStart of(ThreadingOperation operation, Visit visit) {
		if (operation instanceof Tapping tapping) {
			return tapping.strokes().typical().stream().filter(stroke -> stroke.order() == visit.order()).findFirst().map(ThreadStart::of)
					.orElse(UNKNOWN);
		}
		return operation instanceof ThreadMilling milling
				? milling.firstPasses().typical().stream().filter(pass -> pass.order() == visit.order()).findFirst().map(ThreadStart::of)
				.orElse(UNKNOWN) : UNKNOWN;
	}

	private static ThreadStart of(TapStroke tap) {
		return new ThreadStart(OptionalDouble.of(tap.start()), tap.modal().advance(), tap.step() instanceof Step.Stroke cycle
				&& cycle.cycle().word('R').isPresent());
	}

	/** Of the first pass of a thread mill: it comes in rapid, or feeds down. */
	private static ThreadStart of(MillPass first) {
		DoubleStream stops = Stream.concat(first.rapidIn().stream(), first.entry().stream()).filter(Step.Move.class::isInstance)
				.map(Step.Move.class::cast).mapToDouble(move -> (move.rapid() ? move.to() : move.from()).z());
		return new ThreadStart(OptionalDouble.of(Math.max(first.startLevel(), first.endLevel())), 0, false, stops.toArray());
	}

	/** The level that it starts from, where it has its run-up from there down to level 0; else the hole begins lower. */
	OptionalDouble aboveZero() {
		return top.isPresent() && top.getAsDouble() > 0 && top.getAsDouble() < RUN_UP * lead ? OptionalDouble.empty() : top;
	}

	/** The level of a cycle with R, mm. */
	OptionalDouble said() {
		return saysR ? top : OptionalDouble.empty();
	}
}
