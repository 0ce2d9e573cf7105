package truelead.checker.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.antlr.v4.runtime.tree.TerminalNode;

/** Reads what a part is cut from out of the items of a STOCK note: a name, a hardness, in any order. */
final class StockReader {

	/** A stock that was understood: a known name, a hardness, or both. */
	record Reading(Stock stock) {
	}

	private static final String HRC = "HRC";
	/** Where the scale ends (ISO 6508-1): more is a slip of the keys, or of another scale. */
	private static final double HARDEST = 70;
	/** Other scales of Rockwell, which are no slip. */
	private static final Set<String> SCALES = Set.of("HRA", "HRB");

	private StockReader() {
	}

	/** Empty where neither a known name nor a hardness is said. */
	static Optional<Reading> read(NoteParser.StockNoteContext note, NoteItems items) {
		List<String> names = new ArrayList<>();
		OptionalDouble hardness = OptionalDouble.empty();
		String words = "";
		for (NoteParser.StockItemContext item : note.stockItem()) {
			String text = NoteItems.text(item).strip();
			if (item instanceof NoteParser.StockGivenContext given) {
				for (NoteParser.HardnessContext said : given.hardness()) {
					hardness = OptionalDouble.of(rockwell(said));
					text = text.replace(NoteItems.text(said), named(said)).strip();
				}
			}
			if (!text.isEmpty()) {
				names.addAll(List.of(text.split(" +")));
				words = words.isEmpty() ? text : words + ", " + text;
			}
		}
		Optional<StockGroup> group = StockNames.group(names);
		if (group.isEmpty() && hardness.isEmpty() || group.isEmpty() && !words.isEmpty() && note.stockItem().size() > 1) {
			return Optional.empty();
		}
		return Optional.of(new Reading(new Stock(group.orElse(StockGroup.OTHER), words, hardness)));
	}

	/**
	 * The first item in which a number is followed by what is one letter off HRC, 28 XRC, or that says a hardness beyond the scale, 280
	 * HRC.
	 */
	static Optional<NoteParser.StockItemContext> misspelt(NoteParser.StockNoteContext note) {
		return note.stockItem().stream().filter(StockReader::misspelt).findFirst();
	}

	/** Whether an item says a hardness. */
	static boolean hard(NoteParser.StockItemContext item) {
		return item instanceof NoteParser.StockGivenContext given && !given.hardness().isEmpty();
	}

	private static boolean misspelt(NoteParser.StockItemContext given) {
		if (given instanceof NoteParser.StockGivenContext said
				&& said.hardness().stream().anyMatch(hardness -> rockwell(hardness) > HARDEST)) {
			return true;
		}
		for (int i = 1; i < given.getChildCount(); i++) {
			String word = given.getChild(i).getText().toUpperCase(Locale.ROOT);
			boolean behindNumber = given.getChild(i - 1) instanceof TerminalNode before
					&& before.getSymbol().getType() == NoteParser.NUMBER;
			if (behindNumber && word.length() == HRC.length() && !SCALES.contains(word) && same(word) == HRC.length() - 1) {
				return true;
			}
		}
		return false;
	}

	private static int same(String word) {
		return (int) IntStream.range(0, HRC.length()).filter(i -> word.charAt(i) == HRC.charAt(i)).count();
	}

	/** The number before a hardness that is not the softer end of it but the stock's name. */
	private static String named(NoteParser.HardnessContext given) {
		boolean two = given.NUMBER().size() == 2 && given.getStart().getType() == NoteParser.NUMBER;
		return two && !given.NUMBER(1).getText().startsWith("-") ? given.NUMBER(0).getText() : "";
	}

	private static double rockwell(NoteParser.HardnessContext given) {
		double value = given.NUMBER().stream().skip(named(given).isEmpty() ? 0 : 1)
				.mapToDouble(number -> Math.abs(NoteItems.number(number.getText()))).max().orElse(0);
		return given.HRC() != null ? value : given.HB() != null ? Hardness.fromBrinell(value) : Hardness.fromVickers(value);
	}
}
