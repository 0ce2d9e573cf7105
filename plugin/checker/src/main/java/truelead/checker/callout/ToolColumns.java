package truelead.checker.callout;

import java.util.List;
import java.util.Set;

/**
 * What programs written by a machine name a number of a tool by, other than its diameter: DIA. OFF. - 41 LEN. - 1 (common practice, no
 * source).
 */
final class ToolColumns {

	private static final Set<String> NAMES = Set.of("LEN", "LENGTH", "LG", "HGT", "HEIGHT", "COR", "CORNER", "CR", "RAD", "ZMIN");

	private static final Set<String> OFFSETS = Set.of("OFF", "OFFS", "OFFSET");

	private ToolColumns() {
	}

	/** Whether a word is such a name. */
	static boolean name(Part part) {
		return offset(part) || part instanceof Part.Other word && NAMES.contains(TradeWords.fold(word.text()));
	}

	private static boolean offset(Part part) {
		return part instanceof Part.Other word && OFFSETS.contains(TradeWords.fold(word.text()));
	}

	/** Whether the last part is such a name, signs left out. */
	static boolean behind(List<Part> parts) {
		return !parts.isEmpty() && name(parts.get(parts.size() - 1));
	}

	/** TOOL - 1 DIA. OFF. - 41: the word is that of the offset, and the number before it no diameter. */
	static void part(List<Part> parts) {
		for (int i = 0; i + 1 < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Amount amount && amount.role() == Part.Role.DIAMETER && offset(parts.get(i + 1))) {
				parts.set(i, new Part.Amount(amount.dimension(), Part.Role.PLAIN, amount.start(), amount.end()));
			}
		}
	}
}
