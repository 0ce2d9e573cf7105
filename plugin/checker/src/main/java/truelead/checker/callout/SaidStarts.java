package truelead.checker.callout;

import java.util.HashMap;
import java.util.Map;
import truelead.checker.thread.DataFile;

/** How many starts a thread is said to have: its lead is that of so many pitches. */
final class SaidStarts {

	private static final int MOST = 8;

	/** Read when the first thread is called out, not for programs that have none. */
	private static final class Loaded {
		static final Map<String, Integer> NUMBERS = words("no");
		/** Words that say the number and that it counts starts: ZWEIGAENGIG. */
		static final Map<String, Integer> ALONE = words("yes");

		private static Map<String, Integer> words(String alone) {
			Map<String, Integer> words = new HashMap<>();
			DataFile.rows(SaidStarts.class, "start-words.csv").stream().filter(row -> row.get("alone").equals(alone))
					.forEach(row -> row.words("words").forEach(word -> words.put(word, (int) DataFile.number(row, "count"))));
			return words;
		}
	}

	private SaidStarts() {
	}

	/** 1-8 ACME 2 START, M20 TWO START, M20 ZWEIGAENGIG; 1 where nothing is said. */
	static int of(PartRow own) {
		for (int i = 1; i < own.parts().size(); i++) {
			if (own.parts().get(i) instanceof Part.Other other) {
				int whole = word(other, Loaded.ALONE);
				if (whole > 1) {
					return whole;
				}
			}
			if (own.is(i, Meaning.STARTS)) {
				int count = before(own, i);
				if (count > 1) {
					return count;
				}
			}
		}
		return 1;
	}

	/** The number before the word for starts; 1 where none is. */
	private static int before(PartRow own, int at) {
		Part nearest = own.parts().get(at - 1);
		int said = nearest instanceof Part.Other other ? word(other, Loaded.NUMBERS) : 1;
		Part before = nearest instanceof Part.Other && said == 1 && at > 1 ? own.parts().get(at - 2) : nearest;
		boolean number = before instanceof Part.Amount a && a.role() == Part.Role.PLAIN && a.dimension().unit().isEmpty()
				&& a.dimension().value() == Math.rint(a.dimension().value()) && a.dimension().value() >= 2 && a.dimension().value() <= MOST;
		if (number) {
			return (int) ((Part.Amount) before).dimension().value();
		}
		return before instanceof Part.Other other ? word(other, Loaded.NUMBERS) : said;
	}

	private static int word(Part.Other other, Map<String, Integer> words) {
		return words.getOrDefault(TradeWords.fold(other.text()), 1);
	}
}
