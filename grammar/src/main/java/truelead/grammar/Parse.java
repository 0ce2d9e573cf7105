package truelead.grammar;

import java.util.Arrays;
import java.util.List;
import org.antlr.v4.runtime.BailErrorStrategy;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.misc.ParseCancellationException;

/** One run of the grammar over a line: its tokens, its parts, and what is missing in them. */
record Parse(List<Token> tokens, List<Part> parts, List<Problem> problems) {

	/** Runs the grammar over the first {@code size} characters of a line. */
	static Parse of(String line, int size) {
		Caches caches = Caches.current();
		GCodeLexer lexer = caches.use(new GCodeLexer(new LineChars(line, size)));
		lexer.removeErrorListeners();
		CommonTokenStream tokens = new CommonTokenStream(new Gaps(lexer));
		GCodeParser parser = caches.use(new GCodeParser(tokens));
		parser.removeErrorListeners();
		parser.setErrorHandler(new BailErrorStrategy());
		try {
			PartReader reader = new PartReader(parser.block());
			return new Parse(tokens.getTokens(), reader.parts(), reader.problems());
		} catch (ParseCancellationException unreadable) {
			Span all = new Span(0, size);
			return new Parse(tokens.getTokens(), List.of(new Part.Misfit("this block cannot be read; correct it, or put it into a comment",
					all)), List.of());
		}
	}

	/** Whether every part stands as it is. */
	boolean whole() {
		return faults() == 0;
	}

	/** The number of places that do not stand as they are, names alone among them. */
	int faults() {
		int count = problems.size();
		for (Part part : parts) {
			if (!(part instanceof Part.Whole)) {
				count++;
			}
		}
		return count;
	}

	/** Whether letters stand right behind a code that shows the rest of the block to the operator: {@code M0 NO GO}. */
	boolean speaksToOperator() {
		for (int i = 1; i < parts.size(); i++) {
			boolean shows = parts.get(i - 1) instanceof Part.Whole whole && whole.element() instanceof Element.Word word
					&& word.address() == 'M' && word.value() instanceof Expression.Number number
					&& (number.value() == 0 || number.value() == 1 || number.value() == 117);
			if (shows && parts.get(i) instanceof Part.Keyword name && name.text().chars().noneMatch(Character::isDigit)) {
				return true;
			}
		}
		return false;
	}

	/**
	 * Whether no name stands alone and every one of the tokens that the repair has changed is made of words with plain numbers.
	 *
	 * @param before the tokens of the text as written; the repaired text is of the same length
	 */
	boolean explains(List<Token> before, String written, String repaired) {
		boolean[] literal = new boolean[written.length()];
		for (Part part : parts) {
			if (part instanceof Part.Keyword || part instanceof Part.Leading) {
				return false;
			}
			if (part instanceof Part.Whole whole && whole.element() instanceof Element.Word word && word.literal()) {
				Arrays.fill(literal, word.span().start(), word.span().end(), true);
			}
		}
		for (Token token : before) {
			int start = token.getStartIndex();
			int end = token.getStopIndex() + 1;
			for (int i = start; i < end; i++) {
				if (!written.regionMatches(start, repaired, start, end - start) && !literal[i]) {
					return false;
				}
			}
		}
		return true;
	}
}
