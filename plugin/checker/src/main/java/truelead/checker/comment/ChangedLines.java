package truelead.checker.comment;

import java.util.List;
import java.util.Optional;
import truelead.checker.chunk.ChunkFacts;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/**
 * The lines in which two texts of a program differ, where they have as many lines, and differ in nothing that is read apart from the
 * motions: comments, blocks that cannot be read, program numbers, changes of the tool.
 *
 * @param first the first such line, from 0
 * @param last  the last one; before the first where they differ in no line
 */
public record ChangedLines(int first, int last) {

	/** What a number beside another letter of a word is: no code, tool, offset, name. */
	private static final String PLAIN = "ABCEFIJKLPQRSUVWXYZ";

	/**
	 * Lines apart that differ and are still taken for one edit; where more lie between, as when a word is replaced everywhere, there is no
	 * part to follow.
	 */
	private static final int FARTHEST = 20_000;

	/** Empty where the texts differ in more, or in lines far from each other. */
	public static Optional<ChangedLines> between(ProgramText before, ProgramText now) {
		List<Chunk> old = before.chunks();
		List<Chunk> fresh = now.chunks();
		if (old.size() != fresh.size() || before.lineCount() != now.lineCount()) {
			return Optional.empty();
		}
		int first = Integer.MAX_VALUE;
		int last = -1;
		for (int chunk = 0; chunk < old.size(); chunk++) {
			if (old.get(chunk) == fresh.get(chunk)) {
				continue;
			}
			if (!alike(old.get(chunk), fresh.get(chunk)) || before.firstLine(chunk) != now.firstLine(chunk)) {
				return Optional.empty();
			}
			int base = before.firstLine(chunk);
			if (last >= 0 && base - first > FARTHEST) {
				return Optional.empty();
			}
			for (int line = 0; line <= old.get(chunk).lineEnds() && base + line < before.lineCount(); line++) {
				if (!old.get(chunk).sameLine(line, fresh.get(chunk))) {
					first = Math.min(first, base + line);
					last = base + line;
				}
			}
		}
		return Optional.of(new ChangedLines(Math.min(first, before.lineCount()), last));
	}

	/** Whether a line is among them. */
	public boolean has(int line) {
		return line >= first && line <= last;
	}

	/** Whether nothing but plain numbers of words that are no codes, tools, offsets or names differs in them. */
	public boolean numbersAlone(ProgramText before, ProgramText now) {
		boolean alone = true;
		for (int line = first; alone && line <= last; line++) {
			List<Element> old = before.block(line).elements();
			List<Element> fresh = now.block(line).elements();
			alone = old.size() == fresh.size();
			for (int i = 0; alone && i < old.size(); i++) {
				alone = same(old.get(i), fresh.get(i));
			}
		}
		return alone;
	}

	private static boolean same(Element old, Element fresh) {
		if (old instanceof Element.Word word && fresh instanceof Element.Word other && word.value() instanceof Expression.Number was
				&& other.value() instanceof Expression.Number is) {
			return word.address() == other.address() && word.extension() == other.extension()
					&& (PLAIN.indexOf(word.address()) >= 0 || was.value() == is.value());
		}
		return old instanceof Element.Comment comment && fresh instanceof Element.Comment other && comment.text().equals(other.text());
	}

	/** Whether places behind them in the text lie where they did: one line alone differs, and is as long as before. */
	public boolean movesNothing(ProgramText before, ProgramText now) {
		return first >= last && before.length() == now.length();
	}

	/** Whether one of some lines in a row is among them. */
	public boolean touch(int from, int to) {
		return from <= last && to >= first;
	}

	private static boolean alike(Chunk old, Chunk fresh) {
		return old.lineEnds() == fresh.lineEnds() && ChunkScan.of(old).same(ChunkScan.of(fresh))
				&& ChunkFacts.of(old).changesTool() == ChunkFacts.of(fresh).changesTool();
	}
}
