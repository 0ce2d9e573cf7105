package truelead.checker.callout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;

/** Class and hand written behind a thread. */
record ThreadMarks(Optional<String> threadClass, Optional<Hand> hand) {

	/** Read from the tails; in a callout whose M is a capital, a small g or h is the class of a bolt and stays small. */
	static ThreadMarks of(List<CalloutParser.TailContext> tails, boolean small) {
		Optional<String> threadClass = Optional.empty();
		Optional<Hand> hand = Optional.empty();
		for (CalloutParser.TailContext tail : tails) {
			if (tail.METRIC_CLASS(0) != null) {
				String text = withoutX(tail.METRIC_CLASS(0).getText());
				threadClass = Optional.of(small ? text.toUpperCase(Locale.ROOT) : text);
			} else if (tail.ACME_CLASS() != null) {
				threadClass = Optional.of(tail.ACME_CLASS().getText().toUpperCase(Locale.ROOT));
			} else if (tail.UNIFIED_CLASS(0) != null) {
				threadClass = Optional.of(tail.UNIFIED_CLASS(0).getText().toUpperCase(Locale.ROOT));
			} else if (tail.hand() != null) {
				hand = Optional.of(tail.hand().LEFT() != null ? Hand.LEFT : Hand.RIGHT);
			}
		}
		return new ThreadMarks(threadClass, hand);
	}

	/** A tap for 6HX lies otherwise in the tolerance and makes 6H all the same (common practice of tap makers, no source). */
	private static String withoutX(String name) {
		return name.endsWith("X") || name.endsWith("x") ? name.substring(0, name.length() - 1) : name;
	}

	/** The length behind a thread, as in M8X1.25X20 and M8X1.25-6H X 20. */
	static Optional<Dimension> extent(CalloutParser.ExtentContext first, CalloutParser.AfterContext after) {
		CalloutParser.ExtentContext extent = first == null && after != null ? after.extent() : first;
		if (extent == null) {
			return Optional.empty();
		}
		Optional<LengthUnit> unit = extent.MM() != null ? Optional.of(LengthUnit.MM)
				: extent.INCH() != null || extent.INCH_MARK() != null ? Optional.of(LengthUnit.INCH) : Optional.empty();
		boolean fraction = unit.isEmpty() && ParsedNumbers.inchFraction(extent.dimension());
		return Optional.of(new Dimension(ParsedNumbers.value(extent.dimension()), fraction ? Optional.of(LengthUnit.INCH) : unit));
	}

	/** Whether anything was written that only a thread has. */
	boolean said() {
		return threadClass.isPresent() || hand.isPresent();
	}

	/** The thread with what was written. */
	ThreadSpec onto(ThreadSpec spec) {
		ThreadSpec handed = hand.map(spec::withHand).orElse(spec);
		return threadClass.map(handed::withClass).orElse(handed);
	}
}
