package truelead.checker.job;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The stock and its hardness.
 *
 * @param group    what it is
 * @param words    as it was written
 * @param hardness Rockwell C, 0 to 70; converted where it was given in HB or HV; empty where nobody says
 */
public record Stock(StockGroup group, String words, OptionalDouble hardness) {

	/** What it is called: the words without a hardness at their end; empty where a hardness is all that is said. */
	public String name() {
		int comma = words.lastIndexOf(',');
		String last = words.substring(comma + 1).strip();
		boolean hard = !last.isEmpty() && Character.isDigit(last.charAt(0)) && List.of("HRC", "HB", "HV").stream().anyMatch(last::endsWith);
		return hard ? words.substring(0, Math.max(0, comma)).strip() : words.strip();
	}
}
