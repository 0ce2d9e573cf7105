package truelead.help;

import java.util.Arrays;
import java.util.Locale;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;

/**
 * A page of the guide.
 *
 * @param name     what it is asked for by: a rule's name, or one of a chapter
 * @param title    as lists show it
 * @param group    what it is listed under
 * @param summary  one sentence; empty where the title says enough
 * @param markdown the page, with its title
 */
public record HelpPage(String name, String title, String group, String summary, String markdown) {

	/** The page as a tree of blocks, its tables as {@link Table}. */
	public Node tree() {
		Node tree = Parser.builder().build().parse(markdown);
		Table.findIn(tree);
		return tree;
	}

	/** Whether title, summary or text hold every word, in any case; no words are held by every page. */
	public boolean says(String words) {
		String all = (title + "\n" + summary + "\n" + markdown).toLowerCase(Locale.ROOT);
		return Arrays.stream(words.toLowerCase(Locale.ROOT).split(" ")).allMatch(all::contains);
	}
}
