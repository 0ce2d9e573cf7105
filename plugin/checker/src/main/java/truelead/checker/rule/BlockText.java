package truelead.checker.rule;

import java.util.List;
import java.util.Locale;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Span;

/** Places to put a word or a block that is missing, so that the result looks as its programmer would have written it. */
public final class BlockText {

	private BlockText() {
	}

	/** The edit that adds a word behind the last word of a block, before any comment there; spaced as the block is. */
	public static Edit append(BlockRef block, String word) {
		Block read = block.file().text().block(block.line());
		List<Element.Word> words = read.words();
		int end = words.isEmpty() ? read.text().length() : words.get(words.size() - 1).span().end();
		boolean lower = !words.isEmpty() && Character.isLowerCase(read.text().charAt(words.get(words.size() - 1).span().start()));
		String text = lower ? word.toLowerCase(Locale.ROOT) : word;
		return new Edit(new Location(block.file(), block.line(), new Span(end, end)), (tight(words) ? "" : " ") + text);
	}

	/** The edit that puts a block of its own before a block. */
	public static Edit before(BlockRef block, String text) {
		return new Edit(new Location(block.file(), block.line(), new Span(0, 0)), text + lineEnd(block));
	}

	/** The edit that puts a block of its own behind a block. */
	public static Edit after(BlockRef block, String text) {
		int end = block.file().text().line(block.line()).length();
		return new Edit(new Location(block.file(), block.line(), new Span(end, end)), lineEnd(block) + text);
	}

	private static boolean tight(List<Element.Word> words) {
		for (int i = 1; i < words.size(); i++) {
			if (words.get(i).span().start() == words.get(i - 1).span().end()) {
				return true;
			}
		}
		return false;
	}

	private static String lineEnd(BlockRef block) {
		String end = block.file().text().lineEnd(block.line());
		return end.isEmpty() ? "\n" : end;
	}

	/** The first word of a block with one of the addresses, in the order of the addresses; the block where it has none. */
	public static Location word(BlockRef block, String addresses) {
		for (char address : addresses.toCharArray()) {
			for (Element.Word word : block.file().text().block(block.line()).words()) {
				if (word.address() == address) {
					return Location.in(block, word.span());
				}
			}
		}
		return Location.of(block);
	}
}
