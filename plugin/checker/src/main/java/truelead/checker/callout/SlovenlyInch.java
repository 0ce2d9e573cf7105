package truelead.checker.callout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.InchSize;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;

/**
 * Inch threads with a blank, a stroke or a word where the dash should be: 1/4 20 TAP, TAP 10/32, 1/2 DIA 13 TPI, 1/4 TAP 20 TPI. Taken as
 * threads only beside the word of a tap or of threads an inch, and where the size has that many threads an inch in UNC or UNF; on a mill
 * the size is the mill's.
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
		if (parts.stream().anyMatch(Part.Thread.class::isInstance) || parts.stream().noneMatch(SlovenlyInch::telling)
				|| parts.stream().anyMatch(SlovenlyInch::mill)) {
			return;
		}
		for (int i = 0; i < parts.size(); i++) {
			int last = last(i);
			Optional<ThreadSpec> thread = last == i ? stroke(i) : last > i ? pair(i, last) : Optional.empty();
			if (thread.isPresent() && (told(i - 1) || told(last + 1))) {
				boolean guessed = !tpi(last + 1);
				Part.Thread read = new Part.Thread(new ThreadDraft(thread.get(), List.of(NOTE), Optional.empty(), false, !guessed, true,
						guessed, OptionalInt.empty()), OptionalInt.empty(), parts.get(i).start(), parts.get(last).end());
				List<Part> words = parts.subList(i, last + 1).stream().filter(Part.Word.class::isInstance).toList();
				parts.subList(i, last + 1).clear();
				parts.addAll(i, words);
				parts.add(i, read);
				return;
			}
		}
	}

	/** The index of the number of threads for a size at i: i itself for a stroke alone, -1 for none. */
	private int last(int i) {
		if (size(i).isEmpty()) {
			return -1;
		}
		boolean between = i + 2 < parts.size()
				&& (parts.get(i + 1) instanceof Part.Other o && (o.text().equals("/") || o.text().equals("-"))
						|| told(i + 1) && tpi(i + 3));
		int turns = between ? i + 2 : i + 1;
		return amount(turns).isPresent() && (!diameter(i) || tpi(turns + 1)) ? turns : i;
	}

	private Optional<ThreadSpec> stroke(int i) {
		double[] fraction = fractions.get(parts.get(i).start());
		return fraction == null ? Optional.empty() : numbered(fraction[0], fraction[1]);
	}

	private Optional<ThreadSpec> pair(int i, int last) {
		double size = size(i).orElseThrow();
		double tpi = amount(last).orElseThrow();
		return fractions.containsKey(parts.get(i).start()) || diameter(i) ? everyday(size, tpi) : numbered(size, tpi);
	}

	private static Optional<ThreadSpec> numbered(double number, double tpi) {
		boolean whole = number == Math.rint(number) && number >= 0 && number <= 12;
		OptionalDouble inches = whole ? InchSize.ofNumber((int) number) : OptionalDouble.empty();
		return inches.isPresent() ? everyday(inches.getAsDouble(), tpi) : Optional.empty();
	}

	private static Optional<ThreadSpec> everyday(double inches, double tpi) {
		return ThreadTable.standard().unifiedSeries(inches, tpi).filter(s -> s.equals("UNC") || s.equals("UNF"))
				.map(s -> ThreadSpec.unified(inches, tpi));
	}

	/** The size of a thread: a fraction, a screw's number, or a diameter. */
	private Optional<Double> size(int i) {
		return ToolSize.screwNumber(parts, i).map(number -> (double) number)
				.or(() -> diameter(i) ? Optional.of(((Part.Amount) parts.get(i)).dimension().value()) : amount(i));
	}

	private boolean diameter(int i) {
		return parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.DIAMETER
				&& a.dimension().unit().filter(u -> u == LengthUnit.MM).isEmpty();
	}

	private Optional<Double> amount(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN
				&& (a.dimension().unit().isEmpty() || fractions.containsKey(a.start())) ? Optional.of(a.dimension().value())
				: Optional.empty();
	}

	private boolean tpi(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Word w && w.meaning() == Meaning.TPI;
	}

	private boolean told(int i) {
		return i >= 0 && i < parts.size() && telling(parts.get(i));
	}

	private static boolean mill(Part part) {
		return part instanceof Part.Word w && (w.meaning() == Meaning.MILL || w.meaning() == Meaning.THREAD_MILL);
	}

	private static boolean telling(Part part) {
		return part instanceof Part.Word w && (w.meaning() == Meaning.TAP || w.meaning() == Meaning.FORM_TAP || w.meaning() == Meaning.TPI
				|| w.meaning() == Meaning.SERIES && (w.text().equals("UNC") || w.text().equals("UNF")));
	}
}
