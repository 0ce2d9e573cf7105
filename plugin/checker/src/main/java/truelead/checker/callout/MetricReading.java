package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.antlr.v4.runtime.Token;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Decimals;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/** Makes a metric thread of the tokens M, a size, and perhaps a pitch. */
final class MetricReading {
	/** DIN 13 goes on to 1000 where ISO 261 ends at 300. */
	private static final double LARGEST = 1000;
	private static final double FINEST = 0.2;
	private static final double COARSEST = 8;
	private static final int MOST_STARTS = 8;
	/** What stands behind a dash as no pitch is a depth up to this many diameters; more is a slip for a pitch: M8-125. */
	private static final double DEEPEST = 4;

	/** M12-4711 is the number of a part. */
	private static final double PART_NUMBER = 1000;

	/** Times the coarse pitch that no slip for a pitch reaches (common practice, no source). */
	private static final double MUCH_COARSER = 1.4;

	private MetricReading() {
	}

	/** The thread; empty where the numbers make none (M98, M6X0). */
	static Optional<ThreadDraft> of(CalloutParser.MetricContext m) {
		double size = ParsedNumbers.value(m.size);
		if (m.TR() != null || m.S() != null || m.M() != null && size < 1) {
			return MovementReading.of(m, size);
		}
		if (!(size >= 1) || size > LARGEST) {
			return Optional.empty();
		}
		boolean mj = m.MJ() != null;
		ThreadMarks marks = ThreadMarks.of(m.tail(), Character.isLowerCase(m.getStart().getText().charAt(0)));
		CalloutParser.MetricPitchContext p = m.metricPitch();
		if (p != null && p.each != null) {
			return multiStart(mj, size, ParsedNumbers.value(p.lead), ParsedNumbers.value(p.each))
					.map(s -> draft(m, marks, s, List.of(), false));
		}
		if (p != null && plausible(size, ParsedNumbers.value(p.pitch)) && !counts(m, size, ParsedNumbers.value(p.pitch))) {
			return Optional.of(draft(m, marks, thread(mj, size, ParsedNumbers.value(p.pitch)), List.of(), false));
		}
		if (p != null && p.P() != null && p.pitch.getText().startsWith(".")
				&& plausible(size, Double.parseDouble(p.pitch.getText().substring(1)))) {
			// MASCHIO M8 P.1
			return Optional.of(draft(m, marks, thread(mj, size, Double.parseDouble(p.pitch.getText().substring(1))), List.of(), false));
		}
		if (p != null && p.TIMES() != null && inHundredths(size, ParsedNumbers.value(p.pitch))) {
			double pitch = ParsedNumbers.value(p.pitch) / 100;
			return Optional.of(draft(m, marks, thread(mj, size, pitch), List.of("pitch taken in hundredths, " + Decimals.plain(pitch, 2)),
					false));
		}
		Optional<ThreadSpec> inProse = pitchBeforeIn(m, mj, size);
		if (inProse.isPresent()) {
			ThreadDraft read = draft(m, marks, inProse.get(), List.of(), false);
			return Optional.of(new ThreadDraft(read.spec(), read.assumed(), Optional.empty(), false, read.named(), true, false,
					OptionalInt.empty()));
		}
		if (p != null && p.DASH() != null && ParsedNumbers.value(p.pitch) >= PART_NUMBER) {
			return Optional.empty();
		}
		OptionalDouble coarse = ThreadTable.standard().coarsePitch(size);
		if (coarse.isEmpty()) {
			return Optional.empty();
		}
		String assumed = "coarse pitch " + Decimals.plain(coarse.getAsDouble(), 4) + " assumed";
		ThreadDraft bare = draft(m, marks, thread(mj, size, coarse.getAsDouble()), List.of(assumed), true);
		boolean times = p != null && p.pitch != null
				&& (p.TIMES() != null || p.DASH() != null && ParsedNumbers.value(p.pitch) <= DEEPEST * size);
		return Optional.of(times ? withExtent(bare, p.pitch, p.MM() != null, m.bore() == null) : bare);
	}

	/**
	 * M20 X4: apart from the size, whole, and far coarser than the coarse series, it counts holes; M20X4 and M10 X 2 may be slips for a
	 * pitch.
	 */
	private static boolean counts(CalloutParser.MetricContext m, double size, double number) {
		boolean apart = m.metricPitch().TIMES() != null && m.metricPitch().MM() == null
				&& m.size.getStopIndex() + 1 < m.metricPitch().getStart().getStartIndex();
		double coarse = ThreadTable.standard().coarsePitch(size).orElse(Double.NaN);
		return apart && number >= 2 && number == Math.rint(number) && number > MUCH_COARSER * coarse;
	}

	/** M8X100, M20X150: French shops write the pitch in hundredths (common practice, no source); no thread is that deep. */
	private static boolean inHundredths(double size, double number) {
		return number > DEEPEST * size && number == Math.rint(number) && plausible(size, number / 100)
				&& ThreadTable.standard().isStandard(ThreadSpec.metric(size, number / 100));
	}

	/** M16x2 IN A PLATE: the word IN behind a pitch of the series is a word of the sentence, not the unit of a depth. */
	private static Optional<ThreadSpec> pitchBeforeIn(CalloutParser.MetricContext m, boolean mj, double size) {
		if (m.metricPitch() != null || m.extent() == null || m.extent().INCH() == null) {
			return Optional.empty();
		}
		double pitch = ParsedNumbers.value(m.extent().dimension());
		return Optional.of(thread(mj, size, pitch)).filter(spec -> plausible(size, pitch) && ThreadTable.standard().isStandard(spec));
	}

	/**
	 * M6X12, M6 - 12 DEEP: no pitch of a 6 mm thread, so its depth, or in prose a screw's length; never a screw's where the drill is named
	 * too (M6X12/5X16).
	 */
	private static ThreadDraft withExtent(ThreadDraft draft, Token number, boolean mm, boolean doubtful) {
		Dimension extent = new Dimension(ParsedNumbers.value(number), mm ? Optional.of(LengthUnit.MM) : Optional.empty());
		return new ThreadDraft(draft.spec(), draft.assumed(), Optional.of(extent), doubtful, draft.named(), draft.standard(), false,
				OptionalInt.empty());
	}

	private static ThreadDraft draft(CalloutParser.MetricContext m, ThreadMarks marks, ThreadSpec spec, List<String> assumed,
			boolean bare) {
		Optional<Dimension> extent = m.lengths() == null ? ThreadMarks.extent(m.extent(), m.after())
				: Optional.of(Dimension.of(ParsedNumbers.value(m.lengths().NUMBER(0).getSymbol()), LengthUnit.MM));
		return new ThreadDraft(marks.onto(spec), assumed, extent, bare, marks.said() || m.MJ() != null,
				ThreadTable.standard().isStandard(spec), false, OptionalInt.empty());
	}

	private static Optional<ThreadSpec> multiStart(boolean mj, double size, double lead, double each) {
		double starts = lead / each;
		long whole = Math.round(starts);
		return plausible(size, each) && Math.abs(starts - whole) < 0.001 && whole >= 1 && whole <= MOST_STARTS
				? Optional.of(thread(mj, size, each).withStarts((int) whole)) : Optional.empty();
	}

	private static ThreadSpec thread(boolean mj, double size, double pitch) {
		return mj ? ThreadSpec.mj(size, pitch) : ThreadSpec.metric(size, pitch);
	}

	/** A pitch leaves a core: at most 0.4 of the diameter (M1x0.25 is the coarsest of the series by that measure). */
	private static boolean plausible(double size, double pitch) {
		return pitch >= FINEST && pitch <= COARSEST && pitch <= 0.4 * size;
	}
}
