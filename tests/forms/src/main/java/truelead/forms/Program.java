package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/**
 * A program to be written in another form, and what the checker took it for.
 *
 * @param turning whether it is for a lathe
 * @param inch    whether its lengths are inches
 * @param asWritten whether a length without a decimal point is what it says
 */
record Program(List<Block> blocks, boolean turning, boolean inch, boolean asWritten) {

	/** Why a form for mills has nothing to do with a program, and one for lathes. */
	static final String FOR_A_LATHE = "is for a lathe";
	static final String FOR_A_MILL = "is for a mill";

	/** The program with another text. */
	Program with(String text) {
		return of(text, turning, inch, asWritten);
	}

	static Program of(String text, boolean turning, boolean inch, boolean asWritten) {
		ProgramText read = ProgramText.of(text);
		List<Block> blocks = new ArrayList<>();
		for (int line = 0; line < read.lineCount(); line++) {
			blocks.add(read.block(line));
		}
		return new Program(blocks, turning, inch, asWritten);
	}

	/** Its lines as they stand, to be changed. */
	List<String> lines() {
		return new ArrayList<>(blocks.stream().map(Block::text).toList());
	}

	/** A length in millimetres as it is written in this program's unit. */
	double length(double mm) {
		return inch ? mm / 25.4 : mm;
	}

	/** Decimals of a coordinate that no control rounds: a tenth of the usual smallest step. */
	int decimals() {
		return inch ? 5 : 4;
	}

	// What a form may decline a program for: the reason, or nothing.

	/** Variables, statements and what cannot be read. */
	Optional<String> notPlain() {
		return why("is not of plain words alone", blocks.stream().anyMatch(block -> !Words.plain(block)));
	}

	Optional<String> notForMilling() {
		return why(FOR_A_LATHE, turning);
	}

	Optional<String> notForTurning() {
		return why(FOR_A_MILL, !turning);
	}

	/** Codes of a letter that the form knows no way around. */
	Optional<String> says(char letter, double... codes) {
		for (double code : codes) {
			if (blocks.stream().anyMatch(block -> Words.says(block, letter, code))) {
				return Optional.of("says " + letter + Figures.code(code));
			}
		}
		return Optional.empty();
	}

	/** Subprograms and macros: what is in force there depends on the caller. */
	Optional<String> calls() {
		return says('M', 97, 98, 99, 198).or(() -> says('G', 65, 66, 66.1));
	}

	/** A local zero, a shifted, turned, scaled or mirrored frame, polar words, a plane other than that of X and Y. */
	Optional<String> framed() {
		return says('G', 10, 16, 18, 19, 51, 51.1, 52, 68, 68.2, 92, 92.1, 43.4);
	}

	/** Depths and cuts that a cycle names by I and J, which are no centres. */
	Optional<String> cyclesWithI() {
		return why("has I or J in a cycle", blocks.stream().anyMatch(block -> Words.cycle(block) > 0 && Words.has(block, "IJ")));
	}

	/** A number that two tools are called by. */
	Optional<String> numbersTwice() {
		return why("calls a number twice", tools().size() > tools().stream().distinct().count());
	}

	/** The numbers of all tools called, as written without zeros before them. */
	private List<String> tools() {
		return blocks.stream().flatMap(block -> block.words().stream()).filter(word -> word.address() == 'T' && word.literal())
				.map(Words::code).toList();
	}

	/** Lengths without a decimal point on a machine that counts them in smallest steps. */
	Optional<String> withoutPoint() {
		return why("has lengths without a point", !asWritten && blocks.stream().anyMatch(block -> !Words.call(block)
				&& block.words().stream().anyMatch(word -> "XYZRIJ".indexOf(word.address()) >= 0 && !Words.pointed(word))));
	}

	/** Moves and cycles by increments; the way home is none. */
	Optional<String> increments() {
		List<Course.State> states = Course.of(this);
		for (int i = 0; i < blocks.size(); i++) {
			if (states.get(i).relative() && Words.has(blocks.get(i), "XYZ") && !Words.call(blocks.get(i))) {
				return Optional.of("moves by increments");
			}
		}
		return Optional.empty();
	}

	/** Blocks with codes that the operator may skip, so that what is in force behind them is open. */
	Optional<String> skips() {
		return why("has codes in blocks to skip", blocks.stream().anyMatch(block -> Words.skipped(block) && Words.has(block, "G")));
	}

	/** A code that the form leans on. */
	Optional<String> lacks(char letter, double code) {
		return why("does not say " + letter + Figures.code(code), says(letter, code).isEmpty());
	}

	/** Contours of a lathe that P and Q name by block numbers. */
	Optional<String> turnedContours() {
		return says('G', 70, 71, 72, 73).filter(reason -> turning);
	}

	/** Comments that name a height: of the top, the bottom, a level Z. */
	Optional<String> heightsInComments() {
		return comments("speaks of heights", "Z", "SURFACE", "BOTTOM", "TOP");
	}

	/** Comments that name a length, other than the size of a tool or thread. */
	Optional<String> lengthsInComments() {
		return comments("speaks of lengths", "THK", "THICK", "DEEP", "DEPTH", "WALL", "PLATE", "TIEF", "LANG", "LONG", "THREAD:", "HOLE:",
				"TOOL:", "SURFACE:", "SURFACE", "BOTTOM");
	}

	/** Comments that may name tools by their numbers: one with the number of a tool in it, by itself or behind the letter of one. */
	Optional<String> toolsInComments() {
		List<String> numbers = tools();
		return why("speaks of tools by their numbers", blocks.stream().flatMap(block -> block.comments().stream())
				.anyMatch(comment -> numbers.stream().anyMatch(number -> holds(comment.text(), number))));
	}

	private static boolean holds(String text, String number) {
		for (int at = text.indexOf(number); at >= 0; at = text.indexOf(number, at + 1)) {
			int start = at;
			while (start > 0 && text.charAt(start - 1) == '0') {
				start--;
			}
			int end = at + number.length();
			char before = start > 0 ? Character.toUpperCase(text.charAt(start - 1)) : ' ';
			char behind = end < text.length() ? text.charAt(end) : ' ';
			// M6X1, 5.2 and 12 hold no number of a tool
			if (!Character.isDigit(behind) && behind != '.' && !Character.isDigit(before) && before != '.'
					&& (!Character.isLetter(before) || "THD".indexOf(before) >= 0)) {
				return true;
			}
		}
		return false;
	}

	/** Remarks marked otherwise than by parentheses. */
	Optional<String> remarks() {
		return why("has other remarks", blocks.stream().flatMap(block -> block.comments().stream()).anyMatch(comment ->
				comment.mark() != Element.CommentMark.PARENTHESES));
	}

	/** A comment with a word that begins with one of these, alone or before a number. */
	private Optional<String> comments(String reason, String... words) {
		return why(reason, blocks.stream().flatMap(block -> block.comments().stream()).anyMatch(comment ->
				names(comment.text().toUpperCase(Locale.ROOT), words)));
	}

	private static boolean names(String comment, String... words) {
		for (String word : words) {
			for (int at = comment.indexOf(word); at >= 0; at = comment.indexOf(word, at + 1)) {
				boolean begins = at == 0 || !Character.isLetter(comment.charAt(at - 1));
				int behind = at + word.length();
				if (begins && (behind == comment.length() || !Character.isLetter(comment.charAt(behind)))) {
					return true;
				}
			}
		}
		return false;
	}

	static Optional<String> why(String reason, boolean so) {
		return so ? Optional.of(reason) : Optional.empty();
	}
}
