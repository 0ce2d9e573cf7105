package truelead.checker.job;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads what a part is cut from out of the items of a STOCK note: a name, a hardness, in any order. */
final class StockReader {

	/** A stock that was understood: a known name, a hardness, or both. */
	record Reading(Stock stock) {
	}

	private StockReader() {
	}

	/** Empty where neither a known name nor a hardness is said. */
	static Optional<Reading> read(NoteParser.StockNoteContext note, NoteItems items) {
		Optional<StockGroup> group = Optional.empty();
		OptionalDouble hardness = OptionalDouble.empty();
		String words = "";
		for (NoteParser.StockItemContext item : note.stockItem()) {
			if (item instanceof NoteParser.StockHardnessContext given) {
				hardness = OptionalDouble.of(rockwell(given));
			} else {
				String text = NoteItems.text(item).strip();
				Optional<StockGroup> known = StockNames.group(List.of(text.split(" +")));
				group = known.isPresent() ? known : group;
				words = words.isEmpty() ? text : words + ", " + text;
			}
		}
		if (group.isEmpty() && hardness.isEmpty() || group.isEmpty() && !words.isEmpty() && note.stockItem().size() > 1) {
			return Optional.empty();
		}
		return Optional.of(new Reading(new Stock(group.orElse(StockGroup.OTHER), words, hardness)));
	}

	private static double rockwell(NoteParser.StockHardnessContext given) {
		double value = NoteItems.number(given.NUMBER().getText());
		return given.HRC() != null ? value : given.HB() != null ? Hardness.fromBrinell(value) : Hardness.fromVickers(value);
	}
}
