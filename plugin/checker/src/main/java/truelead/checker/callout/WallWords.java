package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/** Finds the thickness of the wall that a comment speaks of: {@code THRU .75 WALL}, {@code 12 THICK}, {@code DURCHGANG 25}. */
final class WallWords {

	/** What goes through a drill, and where it goes (common practice, no source). */
	private static final Set<String> COOLANT = Set.of("COOL", "CLNT", "SPINDLE", "TOOL", "FLUSH");

	private final List<Part> parts;
	private final PartRow row;

	WallWords(List<Part> parts) {
		this.parts = parts;
		this.row = new PartRow(parts);
	}

	/**
	 * The thickness; empty where none is said. Beside a word of through holes a bare whole number may count holes: it is taken only as the
	 * last word of the comment and from the thread's own diameter up.
	 */
	Optional<Dimension> wall(ThreadSpec thread) {
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN
					&& (beside(i, Meaning.WALL) || plate(i) || row.is(i - 1, Meaning.PLATE) && throughAtEnd(i, a.dimension(), thread)
							|| besideThrough(i) && (measured(a) || row.is(i - 1, Meaning.THROUGH) && i == parts.size() - 1
									&& a.dimension().value() >= thread.diameter()))) {
				return Optional.of(a.dimension());
			}
		}
		return Optional.empty();
	}

	/** The thickness of what a comment speaks of without a thread: {@code PLATE 20 THICK}, {@code PLATE 12MM}; empty where none is said. */
	static Optional<Dimension> thickness(List<Part> parts) {
		WallWords words = new WallWords(parts);
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN
					&& (words.beside(i, Meaning.WALL) || measured(a) && words.beside(i, Meaning.PLATE)
							|| words.row.is(words.point(i + 1) ? i + 2 : i + 1, Meaning.WALL))) {
				return Optional.of(a.dimension());
			}
		}
		return Optional.empty();
	}

	/** DRILL 6.8 THRU, where nothing is said of blind holes; not the coolant through the tool. */
	static boolean drillsThrough(List<Part> parts, List<ToolDescription> tools) {
		WallWords words = new WallWords(parts);
		boolean drill = !tools.isEmpty() && tools.stream().allMatch(tool -> tool.kind() == ToolKind.DRILL);
		boolean through = drill && IntStream.range(0, parts.size()).anyMatch(i -> words.row.is(i, Meaning.THROUGH) && !words.coolant(i - 1)
				&& !words.coolant(i + 1) && !words.coolant(i + 2));
		return through && IntStream.range(0, parts.size()).noneMatch(i -> words.row.is(i, Meaning.BLIND));
	}

	private boolean coolant(int i) {
		String text = i < 0 || i >= parts.size() ? "" : parts.get(i) instanceof Part.Other o ? o.text()
				: parts.get(i) instanceof Part.Word w ? w.text() : "";
		return COOLANT.stream().anyMatch(TradeWords.fold(text)::startsWith);
	}

	/** M5 THRU, PLATE 12: a bare number at the end; a plate's own number is less than the thread is wide, or stands elsewhere. */
	private boolean throughAtEnd(int i, Dimension number, ThreadSpec thread) {
		return i == parts.size() - 1 && number.value() >= thread.diameter()
				&& IntStream.range(0, i).anyMatch(j -> row.is(j, Meaning.THROUGH));
	}

	/** Right before or behind a number, or before it with a colon or the like between them. */
	private boolean beside(int i, Meaning meaning) {
		return row.beside(i, meaning) || i > 1 && parts.get(i - 1) instanceof Part.Other sign && !Character.isLetterOrDigit(sign.text()
				.charAt(0)) && row.is(i - 2, meaning);
	}

	/** THRU 10 PLATE, .375 PLATE THRU, THRU, PLATE 10MM. */
	private boolean plate(int i) {
		boolean through = row.is(i + 1, Meaning.PLATE) && (row.is(i - 1, Meaning.THROUGH) || row.is(i + 2, Meaning.THROUGH));
		boolean measured = parts.get(i) instanceof Part.Amount a && measured(a)
				&& (row.is(i - 1, Meaning.PLATE) || row.is(i + 1, Meaning.PLATE));
		return through || measured && IntStream.range(0, parts.size()).anyMatch(j -> row.is(j, Meaning.THROUGH));
	}

	private boolean besideThrough(int i) {
		return (row.is(i - 1, Meaning.THROUGH) || row.is(i + 1, Meaning.THROUGH)) && !row.is(i + 1, Meaning.DRILL)
				&& !row.is(i - 1, Meaning.DRILL);
	}

	/** Whether a number cannot count anything: it has a unit, or a part of a whole, or is written with one, 2.0. */
	private static boolean measured(Part.Amount amount) {
		double value = amount.dimension().value();
		return amount.dimension().unit().isPresent() || value != Math.rint(value)
				|| amount.role() == Part.Role.PLAIN && amount.end() - amount.start() > String.valueOf((long) value).length() + 1;
	}

	/** The point of {@code .75 IN. THICK}. */
	private boolean point(int i) {
		return i < parts.size() && parts.get(i) instanceof Part.Other o && o.text().equals(".");
	}
}
