package truelead.faults;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** One block before it is dressed: words, or a line to be written as it stands, a comment, and the marks of what it is for. */
final class Block {
	final List<Word> words = new ArrayList<>();
	final Set<String> marks = new LinkedHashSet<>();
	String line = "";
	String comment = "";
	boolean fixed;
	boolean optional;

	Block(Word... words) {
		this.words.addAll(List.of(words));
	}

	static Block line(String text) {
		Block block = new Block();
		block.line = text;
		return block;
	}

	static Block comment(String text) {
		Block block = new Block();
		block.comment = text;
		return block;
	}

	Block with(Word word) {
		words.add(word);
		return this;
	}

	Block say(String text) {
		comment = text;
		return this;
	}

	Block mark(String... names) {
		marks.addAll(List.of(names));
		return this;
	}

	/** Words stay in the order given. */
	Block keep() {
		fixed = true;
		return this;
	}

	boolean has(char letter) {
		return words.stream().anyMatch(w -> w.letter() == letter);
	}

	boolean has(char letter, double code) {
		return words.stream().anyMatch(w -> w.is(letter, code));
	}

	void drop(char letter) {
		words.removeIf(w -> w.letter() == letter);
	}

	void drop(char letter, double code) {
		words.removeIf(w -> w.is(letter, code));
	}

	void swap(char letter, Word word) {
		words.replaceAll(w -> w.letter() == letter ? word : w);
	}

	boolean empty() {
		return words.isEmpty() && line.isEmpty() && comment.isEmpty();
	}
}
