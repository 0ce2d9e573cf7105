package truelead.checker.callout;

import java.util.Optional;

/** A cheap look at a comment, so that ordinary ones never start the parser. It may say yes in vain, but not no. */
final class Pretest {
	private Pretest() {
	}

	/**
	 * A word of the trade that names a tool, a thread or a thickness, or a number behind the letters of a system, or two numbers with a
	 * dash or slash, or a size behind a tool's number.
	 */
	static boolean passes(String text) {
		int i = 0;
		int length = text.length();
		boolean number = false;
		if (listsSize(text)) {
			return true;
		}
		while (i < length) {
			char c = text.charAt(i);
			if (Character.isLetter(c)) {
				if ((c == 'G' || c == 'g') && pipeInInches(text, i + 1)) {
					return true;
				}
				int end = i + 1;
				while (end < length && Character.isLetter(text.charAt(end))) {
					end++;
				}
				if (telling(text.substring(i, end)) || wholePipe(text, i, end)) {
					return true;
				}
				i = end;
			} else {
				boolean digit = c >= '0' && c <= '9' || c == '.';
				if (number && (c == '-' || c == '/' || c > 0x7F) || c == '#') {
					return true;
				}
				number = digit || number && c == ' ' || number && c == '"';
				i++;
			}
		}
		return false;
	}

	/** T2 .2130: a tool's number, and a size with decimals. */
	private static boolean listsSize(String text) {
		boolean tool = text.length() > 2 && (text.charAt(0) == 'T' || text.charAt(0) == 't') && text.charAt(1) >= '0'
				&& text.charAt(1) <= '9';
		return tool && (text.indexOf('.') > 1 || text.indexOf(',') > 1);
	}

	/** G 1 ZOLL, G1": a size of pipes with its unit. */
	private static boolean pipeInInches(String text, int from) {
		int at = from;
		while (at < text.length() && text.charAt(at) == ' ') {
			at++;
		}
		int behind = at + 1;
		while (behind < text.length() && text.charAt(behind) == ' ') {
			behind++;
		}
		boolean digit = at < text.length() && text.charAt(at) >= '1' && text.charAt(at) <= '9';
		return digit && behind < text.length()
				&& (text.charAt(behind) == '"' || Character.isLetter(text.charAt(behind)) && inches(text, behind));
	}

	private static boolean inches(String text, int from) {
		int end = from;
		while (end < text.length() && Character.isLetter(text.charAt(end))) {
			end++;
		}
		return TradeWords.words().meaning(text.substring(from, end)).filter(Meaning.INCH::equals).isPresent();
	}

	/** G1 to G6: the motion, or a pipe thread that a lathe cuts. */
	private static boolean wholePipe(String text, int start, int end) {
		boolean letter = end == start + 1 && (text.charAt(start) == 'G' || text.charAt(start) == 'g');
		boolean inches = end < text.length() && text.charAt(end) >= '1' && text.charAt(end) <= '6';
		return letter && inches && (end + 1 == text.length() || !Character.isDigit(text.charAt(end + 1)));
	}

	private static boolean telling(String word) {
		// 4XM6
		if (word.length() <= 5 && (word.equalsIgnoreCase("XM") || Abbreviations.mayBeTool(word))) {
			return true;
		}
		if (CutterTeeth.one(word) || CutterTeeth.several(word)) {
			return true;
		}
		Optional<Meaning> known = TradeWords.words().meaning(word);
		// TAPM6
		Optional<Meaning> meaning = known.isEmpty() && word.length() > 2 && (word.endsWith("M") || word.endsWith("m"))
				? TradeWords.words().meaning(word.substring(0, word.length() - 1)) : known;
		return meaning.isPresent() && switch (meaning.get()) {
			case TOOL, HOLDER, SYNCHRO, REVERSING, SELF, COMPRESSION, TIMES, P, D, MM, INCH, LEFT, RIGHT, HAND, DEPTH, FOR, SERIES_LETTER,
					NO, DEG, STARTS, INSERT, CUTTER, DATE, STOCK, APART, SUPPLY, RATE, VERB, ELSEWHERE, OTHER_SIDE, NOT, SILENT, PLACES,
					POCKET, OTHER_THREAD -> false;
			default -> true;
		};
	}
}
