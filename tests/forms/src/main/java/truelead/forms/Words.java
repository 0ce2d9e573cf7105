package truelead.forms;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Predicate;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/** Asks a block for its words, and writes it anew with some of them changed; all else of it stays as it was written. */
public final class Words {

	private static final double SAME_CODE = 1e-6;

	private Words() {
	}

	/** A line read. */
	static Block block(String line) {
		return ProgramText.of(line).block(0);
	}

	/** Whether it is of plain words, comments, marks to skip and percent signs alone, and read without a problem. */
	static boolean plain(Block block) {
		return block.problems().isEmpty() && block.elements().stream().allMatch(element -> element instanceof Element.Comment
				|| element instanceof Element.BlockDelete || element instanceof Element.Percent || element instanceof Element.Word word
				&& word.literal() && word.extension() < 0 && Character.isLetter(word.address()));
	}

	/** Whether any word stands in it. */
	public static boolean any(Block block) {
		return !block.words().isEmpty();
	}

	/** Whether a word other than its number stands in it. */
	static boolean works(Block block) {
		return block.words().stream().anyMatch(word -> word.address() != 'N');
	}

	/** Whether the operator may skip it, or part of it. */
	static boolean skipped(Block block) {
		return block.elements().stream().anyMatch(Element.BlockDelete.class::isInstance);
	}

	/** Whether it is the head or end of a program: an O word or a percent sign. */
	static boolean head(Block block) {
		return has(block, "O:") || block.elements().stream().anyMatch(Element.Percent.class::isInstance);
	}

	static boolean says(Block block, char letter, double... codes) {
		for (Element.Word word : block.words()) {
			for (double code : codes) {
				if (word.address() == letter && word.value() instanceof Expression.Number number
						&& Math.abs(number.value() - code) < SAME_CODE) {
					return true;
				}
			}
		}
		return false;
	}

	/** Whether a word of any of these letters stands in it. */
	static boolean has(Block block, String letters) {
		return block.words().stream().anyMatch(word -> letters.indexOf(word.address()) >= 0);
	}

	/** Whether its words are of these letters alone; block numbers are no matter. */
	static boolean only(Block block, String letters) {
		return any(block) && block.words().stream().allMatch(word -> word.address() == 'N' || letters.indexOf(word.address()) >= 0);
	}

	/** The number of the last word of a letter. */
	static OptionalDouble number(Block block, char letter) {
		OptionalDouble found = OptionalDouble.empty();
		for (Element.Word word : block.words()) {
			if (word.address() == letter && word.value() instanceof Expression.Number number) {
				found = OptionalDouble.of(number.value());
			}
		}
		return found;
	}

	static double number(Block block, char letter, double otherwise) {
		return number(block, letter).orElse(otherwise);
	}

	static double value(Element.Word word) {
		return word.value() instanceof Expression.Number number ? number.value() : Double.NaN;
	}

	/** The number of a code without zeros before it. */
	public static String code(Element.Word word) {
		return Figures.code(value(word));
	}

	static boolean pointed(Element.Word word) {
		return !(word.value() instanceof Expression.Number number) || number.point();
	}

	/** The code of a canned cycle that works at holes, 0 where the block begins none. */
	public static int cycle(Block block) {
		if (says(block, 'G', 84.2, 84.3)) {
			return 84;
		}
		for (int code : new int[] {73, 74, 81, 82, 83, 84, 85, 86, 87, 88, 89}) {
			if (says(block, 'G', code)) {
				return code;
			}
		}
		return 0;
	}

	/** Whether it changes the tool. */
	static boolean toolChange(Block block) {
		return says(block, 'M', 6);
	}

	static boolean end(Block block) {
		return says(block, 'M', 2, 30);
	}

	/** Whether its lengths are none of the work's: homing, a dwell, machine coordinates, a call. */
	static boolean call(Block block) {
		return says(block, 'G', 4, 28, 30, 53, 10, 65, 66) || says(block, 'M', 97, 98, 99, 198);
	}

	/** An element as it stands in its block. */
	public static String written(Block block, Element element) {
		return block.text().substring(element.span().start(), element.span().end());
	}

	/** The comments of a block as written, parted by spaces. */
	static String comments(Block block) {
		return String.join(" ", block.comments().stream().map(comment -> written(block, comment)).toList());
	}

	/** The block with each word as the function writes it: as it was where it gives null, left out where it gives an empty text. */
	public static String each(Block block, Function<Element.Word, String> function) {
		return rewritten(block, element -> element instanceof Element.Word word ? function.apply(word) : null);
	}

	/** The block with each of its comments as the function writes it. */
	static String eachComment(Block block, Function<Element.Comment, String> function) {
		return rewritten(block, element -> element instanceof Element.Comment comment ? function.apply(comment) : null);
	}

	static String without(Block block, Predicate<Element.Word> out) {
		return each(block, word -> out.test(word) ? "" : null);
	}

	/** The block without words of these letters. */
	static String without(Block block, String letters) {
		return without(block, word -> letters.indexOf(word.address()) >= 0);
	}

	/** The block with more words at its beginning, behind number and mark to skip. */
	static String first(String text, String words) {
		Block block = block(text);
		for (Element element : block.elements()) {
			if (!(element instanceof Element.BlockDelete) && !(element instanceof Element.Word word && word.address() == 'N')) {
				return text.substring(0, element.span().start()) + words + ' ' + text.substring(element.span().start());
			}
		}
		return text + ' ' + words;
	}

	/** The block with more words behind its last one. */
	static String last(String text, String words) {
		List<Element.Word> all = block(text).words();
		int at = all.isEmpty() ? 0 : all.get(all.size() - 1).span().end();
		return text.substring(0, at) + ' ' + words + text.substring(at);
	}

	private static String rewritten(Block block, Function<Element, String> function) {
		StringBuilder text = new StringBuilder();
		int at = 0;
		for (Element element : block.elements()) {
			String now = function.apply(element);
			text.append(block.text(), at, element.span().start());
			text.append(now == null ? written(block, element) : now);
			at = element.span().end();
			if (now != null && now.isEmpty()) {
				while (at < block.text().length() && block.text().charAt(at) == ' ') {
					at++;
				}
			}
		}
		return text.append(block.text().substring(at)).toString();
	}
}
