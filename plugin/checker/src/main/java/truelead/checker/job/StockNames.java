package truelead.checker.job;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Which group a stock's name belongs to, by the words and number series in common use (common practice, no source). */
final class StockNames {

	private static final String CAST = "CAST";

	private static final Map<String, StockGroup> WORDS = Map.ofEntries(Map.entry("STAINLESS", StockGroup.STAINLESS),
			Map.entry("INOX", StockGroup.STAINLESS), Map.entry("VA", StockGroup.STAINLESS), Map.entry("304", StockGroup.STAINLESS),
			Map.entry("316", StockGroup.STAINLESS), Map.entry("303", StockGroup.STAINLESS), Map.entry("316L", StockGroup.STAINLESS),
			Map.entry("304L", StockGroup.STAINLESS), Map.entry("17-4", StockGroup.STAINLESS), Map.entry("17-4PH", StockGroup.STAINLESS),
			Map.entry(CAST, StockGroup.CAST_IRON), Map.entry("IRON", StockGroup.CAST_IRON), Map.entry("GG", StockGroup.CAST_IRON),
			Map.entry("GGG", StockGroup.CAST_IRON), Map.entry("GJL", StockGroup.CAST_IRON), Map.entry("GJS", StockGroup.CAST_IRON),
			Map.entry("ALUMINIUM", StockGroup.ALUMINIUM), Map.entry("ALUMINUM", StockGroup.ALUMINIUM),
			Map.entry("ALU", StockGroup.ALUMINIUM),
			Map.entry("ALUM", StockGroup.ALUMINIUM), Map.entry("AL", StockGroup.ALUMINIUM), Map.entry("6061", StockGroup.ALUMINIUM),
			Map.entry("6061-T6", StockGroup.ALUMINIUM), Map.entry("6082", StockGroup.ALUMINIUM), Map.entry("7075", StockGroup.ALUMINIUM),
			Map.entry("7075-T6", StockGroup.ALUMINIUM), Map.entry("2024", StockGroup.ALUMINIUM), Map.entry("5083", StockGroup.ALUMINIUM),
			Map.entry("BRASS", StockGroup.BRASS), Map.entry("BRONZE", StockGroup.BRONZE), Map.entry("COPPER", StockGroup.COPPER),
			Map.entry("TITANIUM", StockGroup.TITANIUM), Map.entry("TI", StockGroup.TITANIUM), Map.entry("TI6AL4V", StockGroup.TITANIUM),
			Map.entry("NICKEL", StockGroup.NICKEL_ALLOY), Map.entry("SUPERALLOY", StockGroup.NICKEL_ALLOY),
			Map.entry("718", StockGroup.NICKEL_ALLOY),
			Map.entry("625", StockGroup.NICKEL_ALLOY), Map.entry("MAGNESIUM", StockGroup.MAGNESIUM), Map.entry("ZINC", StockGroup.ZINC),
			Map.entry("PLASTIC", StockGroup.PLASTIC), Map.entry("POM", StockGroup.PLASTIC), Map.entry("PEEK", StockGroup.PLASTIC),
			Map.entry("NYLON", StockGroup.PLASTIC), Map.entry("ACETAL", StockGroup.PLASTIC), Map.entry("STEEL", StockGroup.STEEL),
			Map.entry("TOOL", StockGroup.STEEL), Map.entry("HARDENED", StockGroup.STEEL), Map.entry("1018", StockGroup.STEEL),
			Map.entry("1020", StockGroup.STEEL), Map.entry("1045", StockGroup.STEEL), Map.entry("4130", StockGroup.STEEL),
			Map.entry("4140", StockGroup.STEEL), Map.entry("4340", StockGroup.STEEL), Map.entry("8620", StockGroup.STEEL),
			Map.entry("12L14", StockGroup.STEEL), Map.entry("D2", StockGroup.STEEL), Map.entry("A2", StockGroup.STEEL),
			Map.entry("O1", StockGroup.STEEL), Map.entry("H13", StockGroup.STEEL), Map.entry("C45", StockGroup.STEEL),
			Map.entry("S235", StockGroup.STEEL), Map.entry("S355", StockGroup.STEEL), Map.entry("42CRMO4", StockGroup.STEEL));

	private StockNames() {
	}

	/**
	 * The group of a stock by its name. Groups named in several words are looked for first: stainless before steel. CAST alone
	 * is cast iron; beside another name, as in cast aluminium, the other counts. Empty where no word is known.
	 */
	static Optional<StockGroup> group(List<String> words) {
		List<String> known = words.stream().map(StockNames::known).flatMap(Optional::stream).toList();
		List<StockGroup> groups = known.stream().filter(word -> !word.equals(CAST)).map(WORDS::get).toList();
		return groups.stream().filter(g -> g != StockGroup.STEEL).findFirst().or(() -> groups.stream().findFirst())
				.or(() -> known.stream().findFirst().map(WORDS::get));
	}

	/** The word in capitals, or without the digits of its strength: GG25, GGG40. */
	private static Optional<String> known(String word) {
		String name = word.toUpperCase(Locale.ROOT);
		int letters = name.length();
		while (letters > 0 && Character.isDigit(name.charAt(letters - 1))) {
			letters--;
		}
		String group = name.substring(0, letters);
		return Optional.of(WORDS.containsKey(name) || letters < 2 ? name : group).filter(WORDS::containsKey);
	}
}
