package truelead.checker.callout;

import java.util.List;
import java.util.Optional;

/**
 * The size that is all a comment says of a tool: 3.3 HSS, #30, DIA 6.8, 1/4; beside it the numbers of its offsets, DIA. OFF. - 41 LEN. - 1
 * DIA. - 6.8.
 */
final class BareSize {

	private static final int SHORTEST_NAME = 3;

	private BareSize() {
	}

	/**
	 * The size; empty where the comment says anything else but what the tool is made of, or two sizes.
	 *
	 * @param named whether one word that nobody knows may stand beside it, as the tool's name in another language
	 */
	static Optional<Dimension> of(List<Part> parts, boolean named) {
		Optional<Dimension> size = Optional.empty();
		boolean column = false;
		boolean name = !named;
		for (Part part : parts) {
			if (column && part instanceof Part.Amount amount && amount.role() == Part.Role.PLAIN) {
				column = false;
			} else if (ToolColumns.name(part)) {
				column = true;
			} else if (part instanceof Part.Amount amount && amount.role() != Part.Role.DEPTH && amount.role() != Part.Role.PITCH
					&& size.isEmpty()) {
				size = Optional.of(amount.dimension());
			} else if (!name && unknown(part)) {
				name = true;
			} else if (!(part instanceof Part.Word word && (word.meaning() == Meaning.MAKE || word.meaning() == Meaning.TENSION_COMPRESSION
					|| word.meaning() == Meaning.DIA || word.meaning() == Meaning.MM))
					&& !(part instanceof Part.Code code && code.letter().equalsIgnoreCase("T"))
					&& !(part instanceof Part.Other other && other.text().length() == 1
							&& !Character.isLetterOrDigit(other.text().charAt(0)))) {
				return Optional.empty();
			}
		}
		return size;
	}

	private static boolean unknown(Part part) {
		return part instanceof Part.Other other && other.text().length() >= SHORTEST_NAME
				&& other.text().chars().allMatch(Character::isLetter);
	}
}
