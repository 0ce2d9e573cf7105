package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.InchSize;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** Which Unified thread a size means: 10-32 a number, 1-8 an inch, .312-18 five sixteenths. */
final class UnifiedSize {
	/** Decimals cut to three places still name their size: .312 is 5/16. */
	private static final double CUT_OFF = 0.0008;
	/** The most threads an inch of any series from 2 in on (ASME B1.1). */
	private static final double LARGE_SIZES_MOST = 20;

	private static final Set<Double> SCREW_TURNS = Set.of(24.0, 28.0, 32.0, 36.0, 40.0, 44.0, 48.0, 56.0, 64.0, 72.0, 80.0);

	private UnifiedSize() {
	}

	/**
	 * The thread of a size and a number of threads per inch; UNS where no series has it.
	 *
	 * @param size     as written: 10, 0.25, 1.125
	 * @param fraction it was written as a fraction, so it is no number size
	 * @param numbered it was written with # or NO
	 */
	static Optional<ThreadSpec> withTpi(double size, double tpi, boolean fraction, boolean numbered) {
		OptionalDouble number = fraction ? OptionalDouble.empty() : number(size);
		if (numbered) {
			return number.isPresent() ? Optional.of(ThreadSpec.unified(number.getAsDouble(), tpi)) : Optional.empty();
		}
		if (number.isPresent() && ThreadTable.standard().unifiedSeries(number.getAsDouble(), tpi).isPresent()) {
			return Optional.of(ThreadSpec.unified(number.getAsDouble(), tpi));
		}
		Optional<ThreadSpec> near = table().stream().filter(t -> t.tpi() == tpi && near(t, size)).findFirst();
		if (near.isPresent()) {
			return near;
		}
		// no thread of two inches and more has so many threads an inch (ASME B1.1, constant-pitch series): 4-36 is #4
		boolean screw = size >= 5 || size >= 2 && tpi > LARGE_SIZES_MOST;
		double inches = number.isPresent() && screw ? number.getAsDouble() : size;
		return inches > 0 && inches < 100 ? Optional.of(ThreadSpec.unified(inches, tpi)) : Optional.empty();
	}

	/** The thread of a size in a series: 1/4 UNC, #10 UNF, 10 UNF. */
	static Optional<ThreadSpec> ofSeries(double size, String series, boolean fraction, boolean numbered) {
		OptionalDouble number = fraction ? OptionalDouble.empty() : number(size);
		boolean several = series.equals("UN") || series.equals("UNS");
		if (several) {
			return Optional.empty();
		}
		Optional<ThreadSpec> byNumber = number.isEmpty() || !numbered && size < 5 ? Optional.empty()
				: table().stream().filter(t -> t.series().equals(series) && near(t, number.getAsDouble())).findFirst();
		return byNumber.isPresent() || numbered ? byNumber
				: table().stream().filter(t -> t.series().equals(series) && near(t, size)).findFirst();
	}

	/** TAP 3-10 may be holes; not #8-36, nor 6-48 and 8-56, numbered screws with as many threads an inch as some series has (ASME B1.1). */
	static boolean mayBeRange(ThreadDraft draft) {
		ThreadSpec spec = draft.spec();
		boolean screw = spec.size().startsWith("#") && SCREW_TURNS.contains(spec.tpi());
		return !draft.standard() && !draft.named() && !spec.system().metric() && !screw;
	}

	private static OptionalDouble number(double size) {
		return size == Math.rint(size) && size >= 0 && size <= 12 ? InchSize.ofNumber((int) size) : OptionalDouble.empty();
	}

	private static boolean near(ThreadSpec thread, double inches) {
		return Math.abs(thread.diameter() / LengthUnit.INCH.mm() - inches) < CUT_OFF;
	}

	private static List<ThreadSpec> table() {
		return ThreadTable.standard().threads(ThreadSystem.UNIFIED);
	}
}
