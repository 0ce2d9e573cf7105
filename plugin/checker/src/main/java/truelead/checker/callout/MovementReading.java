package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Decimals;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** Makes threads of Tr, S, Rd and W: trapezoids, saw teeth, miniature screws, knuckles, gas cylinders. */
final class MovementReading {
	private static final double FINEST = 1;
	private static final double SMALLEST_SAW = 10;
	private static final double LARGEST = 1000;
	private static final double LARGEST_MINIATURE = 1.4;
	private static final int MOST_STARTS = 8;

	private MovementReading() {
	}

	/**
	 * Tr20x4, Tr20x8P4, S36x6, S0.8, M0.8x0.2; empty where no pitch is said that such a thread has. A lone S is also the word of the
	 * spindle, so it is guessed.
	 */
	static Optional<ThreadDraft> of(CalloutParser.MetricContext m, double size) {
		CalloutParser.MetricPitchContext p = m.metricPitch();
		Optional<ThreadSpec> spec = p == null ? miniature(m, size) : movement(m, size, p);
		ThreadMarks marks = ThreadMarks.of(m.tail(), false);
		boolean saw = m.S() != null;
		List<String> assumed = m.M() != null ? List.of("M below 1 mm taken as S of ISO 1501") : List.of();
		return spec.map(s -> new ThreadDraft(marks.onto(s), assumed, ThreadMarks.extent(m.extent(), m.after()), false, !saw || marks.said(),
				ThreadTable.standard().isStandard(s), saw, OptionalInt.empty()));
	}

	/** Rd 20x1/8 and W 21.8x1/14. */
	static Optional<ThreadDraft> of(CalloutParser.PerInchContext t) {
		double tpi = ParsedNumbers.value(t.tpi);
		double size = ParsedNumbers.value(t.size);
		ThreadSystem system = t.RD() != null ? ThreadSystem.RD : ThreadSystem.W;
		boolean letter = t.RD() != null || t.SERIES_LETTER().getText().equalsIgnoreCase("W");
		if (!letter || ParsedNumbers.value(t.one) != 1 || !(tpi >= 4 && tpi <= 28) || !(size >= 8 && size <= LARGEST)) {
			return Optional.empty();
		}
		ThreadSpec spec = ThreadSpec.other(system, Decimals.plain(size, 4), size, LengthUnit.INCH.mm() / tpi, tpi);
		return Optional.of(new ThreadDraft(ThreadMarks.of(t.tail(), false).onto(spec), List.of(), Optional.empty(), false, true,
				ThreadTable.standard().isStandard(spec), false, OptionalInt.empty()));
	}

	private static Optional<ThreadSpec> miniature(CalloutParser.MetricContext m, double size) {
		return m.TR() != null || m.size.getText().chars().allMatch(Character::isDigit) ? Optional.empty()
				: ThreadTable.standard().threads(ThreadSystem.MINIATURE).stream().filter(t -> Math.abs(t.diameter() - size)
						< 1e-6).findFirst();
	}

	private static Optional<ThreadSpec> movement(CalloutParser.MetricContext m, double size, CalloutParser.MetricPitchContext p) {
		double pitch = ParsedNumbers.value(p.each != null ? p.each : p.pitch);
		double starts = p.each != null ? ParsedNumbers.value(p.lead) / pitch : 1;
		ThreadSystem system = m.TR() != null ? ThreadSystem.TR : size <= LARGEST_MINIATURE ? ThreadSystem.MINIATURE : ThreadSystem.SAW;
		String name = Decimals.plain(size, 4);
		if (system == ThreadSystem.MINIATURE) {
			return miniature(m, size).filter(t -> Math.abs(t.pitch() - pitch) < 1e-6);
		}
		boolean sound = pitch >= FINEST && pitch <= 0.4 * size && size <= LARGEST && (system == ThreadSystem.TR || size >= SMALLEST_SAW)
				&& Math.abs(starts - Math.rint(starts)) < 0.001 && starts >= 1 && starts <= MOST_STARTS;
		return sound ? Optional.of(ThreadSpec.other(system, name, size, pitch, 0).withStarts((int) Math.rint(starts))) : Optional.empty();
	}
}
