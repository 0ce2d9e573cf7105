package truelead.checker.machine;

import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/**
 * Tells text that is no program of words as we follow them, such as a conversational program or prose, so that one sentence can be said of
 * it instead of many.
 */
public final class ForeignLanguage {

	private static final int LINES = 400;
	private static final int FEW = 3;

	private ForeignLanguage() {
	}

	/** The sentence for a text in another language; empty for a program of words, and for one too short to tell. */
	public static Optional<String> complaint(ProgramText text) {
		if (opensWithItsUnit(text) && callsCyclesAtPlaces(text)) {
			return Optional.of("the cycles of this program are defined by parameters and called by M99 behind a place, as on controls "
					+ "whose programs open with a line such as %COVER G71");
		}
		int strange = 0;
		int words = 0;
		int lines = Math.min(LINES, text.lineCount());
		// as soon as what is left cannot outweigh the words, nothing more need be read
		for (int line = 0; line < lines && strange + lines - line > 3 * words; line++) {
			Block block = text.block(line);
			boolean opaque = false;
			boolean code = false;
			for (Element element : block.elements()) {
				opaque |= element instanceof Element.Opaque || element instanceof Element.Unread;
				code |= element instanceof Element.Word word && "GMXYZSFT".indexOf(word.address()) >= 0;
			}
			code &= !spoken(block);
			strange += !code && (opaque || !block.problems().isEmpty()) ? 1 : 0;
			words += code ? 1 : 0;
		}
		boolean foreign = strange >= FEW && strange > 3 * words;
		return foreign ? Optional.of("this is not a program of words such as G84 Z-10, but another language or plain text")
				: Optional.empty();
	}

	/** {@code %COVER G71 *} (from memory). */
	private static boolean opensWithItsUnit(ProgramText text) {
		String first = text.lineCount() == 0 ? "" : text.line(0).replace('*', ' ').strip();
		return first.startsWith("%") && (first.endsWith(" G71") || first.endsWith(" G70"));
	}

	private static boolean callsCyclesAtPlaces(ProgramText text) {
		for (int line = 0; line < Math.min(LINES, text.lineCount()); line++) {
			boolean place = false;
			for (Element.Word word : text.block(line).words()) {
				place |= word.address() == 'X' || word.address() == 'Y';
				if (place && word.address() == 'M' && word.value() instanceof Expression.Number code && code.value() == 99) {
					return true;
				}
			}
		}
		return false;
	}

	/**
	 * Whether a line begins with a letter that has no number, behind its own number without a letter: {@code L X+10 Y+5},
	 * {@code 12 CC X+50}.
	 */
	private static boolean spoken(Block block) {
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				return word.value() instanceof Expression.Missing && "LC".indexOf(word.address()) >= 0;
			} else if (!(element instanceof Element.Unread)) {
				return false;
			}
		}
		return false;
	}
}
