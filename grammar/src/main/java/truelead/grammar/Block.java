package truelead.grammar;

import java.util.ArrayList;
import java.util.List;

/**
 * One line of a program, read. Its tree depends on its own text alone; all ranges count from the start of the line. Every character of
 * the text belongs to an element or is white space.
 */
public final class Block {

	private final String text;
	private final List<Element> elements;
	private final List<Problem> problems;

	public Block(String text, List<Element> elements, List<Problem> problems) {
		this.text = text;
		this.elements = List.copyOf(elements);
		this.problems = List.copyOf(problems);
	}

	/** A block without problems. */
	Block(String text, List<Element> elements) {
		this.text = text;
		this.elements = List.copyOf(elements);
		this.problems = List.of();
	}

	/** The line as written, without its line end. */
	public String text() {
		return text;
	}

	/** All parts in the order written. */
	public List<Element> elements() {
		return elements;
	}

	/** What could not be read, in the order it stands; empty for a good block. */
	public List<Problem> problems() {
		return problems;
	}

	/** The words alone, in the order written. */
	public List<Element.Word> words() {
		List<Element.Word> words = new ArrayList<>();
		for (Element element : elements) {
			if (element instanceof Element.Word word) {
				words.add(word);
			}
		}
		return words;
	}

	/** The comments alone, in the order written. */
	public List<Element.Comment> comments() {
		List<Element.Comment> comments = new ArrayList<>();
		for (Element element : elements) {
			if (element instanceof Element.Comment comment) {
				comments.add(comment);
			}
		}
		return comments;
	}

	@Override
	public String toString() {
		return text;
	}
}
