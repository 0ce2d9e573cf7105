package truelead.grammar;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Decides what the parts of a block are that do not stand as they are: a statement of a richer language, prose for the operator, or damage.
 * Names of two letters and more speak for the first two, so that a text without any is damage.
 */
final class BlockBuilder {

	/** Names that change a motion block and leave its words what they are. */
	private static final List<String> MODIFIERS = List.of("SUPA");

	private final String line;
	private final List<Part> parts;
	private final List<Problem> problems;
	private final List<Element> elements = new ArrayList<>();

	BlockBuilder(String line, Parse parse) {
		this.line = line;
		this.parts = parse.parts();
		this.problems = new ArrayList<>(parse.problems());
	}

	/** The block, of which the first {@code size} characters were read. */
	Block block(int size) {
		for (int i = 0; i < parts.size(); i++) {
			i = take(i);
		}
		elements.forEach(element -> {
			if (element instanceof Element.Comment comment && !comment.closed()) {
				unclosed(comment);
			}
		});
		if (size < line.length()) {
			int cut = parts.isEmpty() || parts.get(parts.size() - 1).span().end() < size ? size
					: parts.get(parts.size() - 1).span().start();
			// what the limit cuts through is not left open by whoever wrote it
			problems.removeIf(problem -> problem.span().start() >= cut);
			Span rest = new Span(size, line.length());
			elements.add(new Element.Opaque("", rest));
			problems.add(new Problem(rest, Limits.message(size)));
		}
		problems.sort(Comparator.comparingInt((Problem problem) -> problem.span().start())
				.thenComparingInt(problem -> problem.span().end()));
		return new Block(line, elements, problems);
	}

	/** The block, read from {@code repaired}, a text of the same length; every place that differs is a problem. */
	Block repaired(String repaired) {
		for (int i = 0; i < line.length(); i++) {
			if (line.charAt(i) != repaired.charAt(i)) {
				int end = i + 1;
				while (end < line.length() && line.charAt(end) != repaired.charAt(end)) {
					end++;
				}
				problems.add(new Problem(new Span(i, end), lookAlike(line.substring(i, end), repaired.substring(i, end),
						wordAround(repaired, i))));
				i = end;
			}
		}
		return block(line.length());
	}

	/** A comment may end with its line; where code stands at its end, the closing parenthesis was forgotten before it. */
	private void unclosed(Element.Comment comment) {
		if (comment.mark() == Element.CommentMark.QUOTES) {
			problems.add(new Problem(comment.span(), "this text is never closed; type \" where it ends"));
			return;
		}
		int words = 0;
		boolean g = false;
		List<Part> inner = Parse.of(comment.text(), comment.text().length()).parts();
		for (int i = inner.size() - 1; i >= 0 && word(inner.get(i)) != null && word(inner.get(i)).literal(); i--) {
			words++;
			g |= word(inner.get(i)).address() == 'G';
		}
		if (g && words > 1) {
			problems.add(new Problem(comment.span(),
					"this comment is never closed and words of code stand in it, which are not done; type ) where the comment ends"));
		}
	}

	private static String lookAlike(String written, String meant, String word) {
		String kind = written.charAt(0) == '$' ? "a dollar sign" : "the letter " + written;
		String wanted = written.charAt(0) == '$' ? "the letter S" : "the digit " + meant;
		return kind + " stands where " + wanted + " is meant; type " + word;
	}

	private String wordAround(String repaired, int at) {
		for (Part part : parts) {
			if (part.span().start() <= at && at < part.span().end()) {
				return repaired.substring(part.span().start(), part.span().end());
			}
		}
		return repaired.substring(at, at + 1);
	}

	/** Takes the part at an index, or more; gives the index of the last one taken. */
	private int take(int index) {
		Part part = parts.get(index);
		if (part instanceof Part.Whole whole) {
			elements.add(whole.element());
			return index;
		}
		int end = stretchEnd(index);
		if (part instanceof Part.Leading statement) {
			if (leading(index) && end == index + 1) {
				elements.add(statement.element());
				return index;
			}
			return takeKeyword(new Part.Keyword(statement.text(), part.span()), index, end);
		}
		if (part instanceof Part.Keyword keyword && names(keyword, index, end)) {
			elements.add(new Element.Label(keyword.text().toUpperCase(Locale.ROOT), keyword.span()));
			return index;
		}
		if (part instanceof Part.Keyword keyword) {
			return repeatedCall(keyword, index, end) ? end - 1 : takeKeyword(keyword, index, end);
		}
		if (anyKeyword(index, end) || channel(index, end) || waitMark(part, index, end)) {
			return opaque(index, end);
		}
		if (variableBehind(index)) {
			Element.Word address = ((Part.Bare) part).word();
			Element.Word variable = word(parts.get(index + 1));
			String name = ExpressionReader.plainName("L" + line.substring(variable.span().start() + 1, variable.span().end()));
			elements.add(new Element.Word(address.address(), -1, new Expression.NamedVariable(name, true, variable.span()),
					part.span().to(variable.span())));
			return index + 1;
		}
		if (comparesForJump(part, index)) {
			elements.add(new Element.Opaque("G79", part.span().to(parts.get(end - 1).span())));
			problems.removeIf(problem -> problem.span().start() >= part.span().start());
			return end - 1;
		}
		return takeDamage(part, index);
	}

	/** NLAP1 G0 X20, NEND M2: some controls name blocks by letters behind the N (from memory). */
	private boolean names(Part.Keyword keyword, int index, int end) {
		boolean name = keyword.text().length() > 2 && (keyword.text().charAt(0) == 'N' || keyword.text().charAt(0) == 'n') && leading(index)
				&& end > index + 1;
		return name && parts.subList(index + 1, end).stream().allMatch(part -> word(part) != null);
	}

	private int takeKeyword(Part.Keyword keyword, int index, int end) {
		boolean alone = end == index + 1 || MODIFIERS.contains(keyword.text().toUpperCase(Locale.ROOT));
		boolean rest = leading(index) && !gWord(index, end) || operatorText(index) || misfits(index + 1, end);
		if (!alone && rest) {
			return opaque(index, end);
		}
		elements.add(new Element.Opaque(keyword.text().toUpperCase(Locale.ROOT), keyword.span()));
		return index;
	}

	/** A name alone with a count of P, {@code HOLES P3}, is a call. */
	private boolean repeatedCall(Part.Keyword keyword, int index, int end) {
		boolean call = leading(index) && end == index + 2 && word(parts.get(index + 1)) != null
				&& word(parts.get(index + 1)).address() == 'P';
		if (call) {
			Element.Word count = word(parts.get(index + 1));
			elements.add(new Element.Statement(keyword.text().toUpperCase(Locale.ROOT), List.of(), Optional.of(count.value()),
					keyword.span().to(count.span())));
		}
		return call;
	}

	private int opaque(int index, int end) {
		Span span = parts.get(index).span().to(parts.get(end - 1).span());
		String name = line.substring(parts.get(index).span().start(), parts.get(index).span().end());
		for (int i = end - 1; i >= index; i--) {
			if (parts.get(i) instanceof Part.Keyword keyword) {
				name = keyword.text();
			} else if (parts.get(i) instanceof Part.Leading statement) {
				name = statement.text();
			}
		}
		elements.add(new Element.Opaque(name.toUpperCase(Locale.ROOT), span));
		problems.removeIf(problem -> problem.span().start() >= span.start() && problem.span().end() <= span.end());
		return end - 1;
	}

	private int takeDamage(Part part, int index) {
		if (part instanceof Part.Bare bare) {
			elements.add(bare.word());
			if (!bareAxes()) {
				char address = bare.word().address();
				problems.add(new Problem(bare.span(), address + " has no number; type the number behind it, or take " + address + " away"));
			}
		} else if (part instanceof Part.Misfit misfit) {
			elements.add(new Element.Unread(misfit.span()));
			problems.add(new Problem(misfit.span(), misfit.message()));
		}
		return index;
	}

	/** Up to the next comment; behind it reading begins anew. */
	private int stretchEnd(int index) {
		int end = index;
		while (end < parts.size() && !(parts.get(end) instanceof Part.Whole whole && whole.element() instanceof Element.Comment)) {
			end++;
		}
		return end;
	}

	/** Which channel of a machine with several the blocks behind it are for; it has its line to itself. */
	private boolean channel(int index, int end) {
		return leading(index) && ChannelHeader.names(line.substring(parts.get(index).span().start(), parts.get(end - 1).span().end()));
	}

	/** !2L1, !L10: a path waits there for another one, or for all (common practice, no source). */
	private boolean waitMark(Part part, int index, int end) {
		boolean mark = line.charAt(part.span().start()) == '!' && leading(index);
		for (int i = part.span().start() + 1; mark && i < parts.get(end - 1).span().end(); i++) {
			mark = "0123456789Ll. ".indexOf(line.charAt(i)) >= 0;
		}
		return mark && parts.get(end - 1).span().end() > part.span().start() + 1;
	}

	/** XL1: some controls have their variables in L, and no sign before them (from memory). */
	private boolean variableBehind(int index) {
		Element.Word behind = index + 1 < parts.size() ? word(parts.get(index + 1)) : null;
		return parts.get(index) instanceof Part.Bare && behind != null && behind.address() == 'L' && behind.extension() < 0
				&& behind.value() instanceof Expression.Number number && !number.point()
				&& behind.span().start() == parts.get(index).span().end();
	}

	/** G79 L1<100 N35: their jump on a condition. */
	private boolean comparesForJump(Part part, int index) {
		return part instanceof Part.Misfit && part.span().start() < line.length() && "<>=".indexOf(line.charAt(part.span().start())) >= 0
				&& parts.subList(0, index).stream().anyMatch(before -> word(before) != null && word(before).address() == 'G'
						&& word(before).value() instanceof Expression.Number number && number.value() == 79);
	}

	private boolean anyKeyword(int from, int to) {
		return parts.subList(from, to).stream().anyMatch(part -> part instanceof Part.Keyword || part instanceof Part.Leading
				|| part instanceof Part.Whole whole && whole.element() instanceof Element.Statement);
	}

	private boolean misfits(int from, int to) {
		return parts.subList(from, to).stream().anyMatch(part -> part instanceof Part.Misfit || part instanceof Part.Bare);
	}

	private boolean gWord(int from, int to) {
		return parts.subList(from, to).stream().anyMatch(part -> word(part) != null && word(part).address() == 'G');
	}

	/** Whether only block delete, block number, label and comments stand before. */
	private boolean leading(int index) {
		return parts.subList(0, index).stream().allMatch(part -> part instanceof Part.Whole whole
				&& (whole.element() instanceof Element.BlockDelete || whole.element() instanceof Element.Label
						|| whole.element() instanceof Element.Comment || word(part) != null && word(part).address() == 'N'));
	}

	/** Whether the part stands right behind an M word: M0, M1 and M117 show the rest of the block to the operator. */
	private boolean operatorText(int index) {
		return index > 0 && word(parts.get(index - 1)) != null && word(parts.get(index - 1)).address() == 'M';
	}

	/**
	 * G28 and G30 take bare axis letters on some controls: the axes to send home; and M18 and M84 those whose motors go off (from memory).
	 */
	private boolean bareAxes() {
		return parts.stream().anyMatch(part -> word(part) != null && word(part).value() instanceof Expression.Number number
				&& switch (word(part).address()) {
					case 'G' -> number.value() == 28 || number.value() == 30;
					case 'M' -> number.value() == 18 || number.value() == 84;
					default -> false;
				});
	}

	private static Element.Word word(Part part) {
		return part instanceof Part.Whole whole && whole.element() instanceof Element.Word word ? word : null;
	}
}
