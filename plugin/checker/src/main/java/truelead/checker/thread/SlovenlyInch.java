package truelead.checker.thread;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Inch threads with a blank or a stroke where the dash should be: 1/4 20 TAP, TAP 10/32. Taken as threads only beside the word of a tap and
 * where the size has that many threads an inch in UNC or UNF.
 */
final class SlovenlyInch {
	private static final String NOTE = "taken as a Unified thread, though no dash stands in it";

	private final List<Part> parts;
	private final Map<Integer, double[]> fractions;

	/**
	 * Reads on in the parts of a comment.
	 *
	 * @param fractions numerator and denominator of the amounts that are written as fractions, by their start
	 */
	SlovenlyInch(List<Part> parts, Map<Integer, double[]> fractions) {
		this.parts = parts;
		this.fractions = fractions;
	}

	/** Puts threads in the place of the numbers that make them. */
	void read() {
		if (parts.stream().anyMatch(Part.Thread.class::isInstance) || parts.stream().noneMatch(SlovenlyInch::telling)) {
			return;
		}
		for (int i = 0; i < parts.size(); i++) {
			int last = last(i);
			Optional<ThreadSpec> thread = last == i ? stroke(i) : last > i ? pair(i, last) : Optional.empty();
			if (thread.isPresent() && (told(i - 1) || told(last + 1))) {
				Part.Thread read = new Part.Thread(new ThreadDraft(thread.get(), List.of(NOTE), Optional.empty(), false, false, true, true, OptionalInt.empty()),
						OptionalInt.empty(), parts.get(i).start(), parts.get(last).end());
				parts.subList(i, last + 1).clear();
				parts.add(i, read);
				return;
			}
		}
	}

	/** The index of the number of threads for a size at i: i itself for a stroke alone, -1 for none. */
	private int last(int i) {
		if (amount(i).isEmpty()) {
			return -1;
		}
		boolean stroke = i + 2 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().equals("/");
		return amount(stroke ? i + 2 : i + 1).isPresent() ? stroke ? i + 2 : i + 1 : i;
	}

	private Optional<ThreadSpec> stroke(int i) {
		double[] fraction = fractions.get(parts.get(i).start());
		return fraction == null ? Optional.empty() : numbered(fraction[0], fraction[1]);
	}

	private Optional<ThreadSpec> pair(int i, int last) {
		double size = amount(i).orElseThrow();
		double tpi = amount(last).orElseThrow();
		return fractions.containsKey(parts.get(i).start()) ? everyday(size, tpi) : numbered(size, tpi);
	}

	private static Optional<ThreadSpec> numbered(double number, double tpi) {
		boolean whole = number == Math.rint(number) && number >= 0 && number <= 12;
		OptionalDouble inches = whole ? InchSize.ofNumber((int) number) : OptionalDouble.empty();
		return inches.isPresent() ? everyday(inches.getAsDouble(), tpi) : Optional.empty();
	}

	private static Optional<ThreadSpec> everyday(double inches, double tpi) {
		return ThreadTable.standard().unifiedSeries(inches, tpi).filter(s -> s.equals("UNC") || s.equals("UNF")).map(s -> ThreadSpec.unified(inches, tpi));
	}

	private Optional<Double> amount(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN
				&& (a.dimension().unit().isEmpty() || fractions.containsKey(a.start())) ? Optional.of(a.dimension().value()) : Optional.empty();
	}

	private boolean told(int i) {
		return i >= 0 && i < parts.size() && telling(parts.get(i));
	}

	private static boolean telling(Part part) {
		return part instanceof Part.Word w && (w.meaning() == Meaning.TAP || w.meaning() == Meaning.FORM_TAP || w.meaning() == Meaning.TPI
				|| w.meaning() == Meaning.SERIES && (w.text().equals("UNC") || w.text().equals("UNF")));
	}
}
