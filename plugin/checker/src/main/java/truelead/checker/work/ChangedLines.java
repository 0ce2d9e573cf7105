package truelead.checker.work;

import java.util.List;
import java.util.Optional;
import truelead.checker.machine.ChunkFacts;
import truelead.grammar.Chunk;
import truelead.grammar.ProgramText;

/**
 * The lines in which two texts of a program differ, where they have as many lines, and differ in nothing that is read apart from the motions: comments, blocks
 * that cannot be read, program numbers, changes of the tool.
 *
 * @param first the first such line, from 0
 * @param last  the last one; before the first where they differ in no line
 */
record ChangedLines(int first, int last) {

	/** Empty where the texts differ in more. */
	static Optional<ChangedLines> between(ProgramText before, ProgramText now) {
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
			for (int line = 0; line <= old.get(chunk).lineEnds() && base + line < before.lineCount(); line++) {
				if (!old.get(chunk).line(line).equals(fresh.get(chunk).line(line))) {
					first = Math.min(first, base + line);
					last = base + line;
				}
			}
		}
		return Optional.of(new ChangedLines(Math.min(first, before.lineCount()), last));
	}

	/** Whether a line is among them. */
	boolean has(int line) {
		return line >= first && line <= last;
	}

	/** Whether one of some lines in a row is among them. */
	boolean touch(int from, int to) {
		return from <= last && to >= first;
	}

	private static boolean alike(Chunk old, Chunk fresh) {
		return old.lineEnds() == fresh.lineEnds() && ChunkScan.of(old).same(ChunkScan.of(fresh))
				&& ChunkFacts.of(old).changesTool() == ChunkFacts.of(fresh).changesTool();
	}
}
