package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.chunk.ChunkFacts;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFile;
import truelead.grammar.Block;
import truelead.grammar.BlockCursor;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.KnownBlocks;
import truelead.grammar.MotionWords;
import truelead.grammar.ProgramText;

/** A program file while it is executed: blocks that are come by again are kept, and so is its outline once it has been asked for. */
final class Source {

	private final ProgramFile file;
	private final int lines;
	private Block[] kept;
	private int reached = -1;
	private int firstDone = -1;
	/** Stands in the chunk read last, whose lines are those from first up to behind. */
	private BlockCursor cursor;
	private final KnownBlocks known = new KnownBlocks();
	private int first;
	private int behind;
	private Outline outline;
	private Optional<Boolean> changesTool = Optional.empty();
	private Optional<Boolean> callsCycles = Optional.empty();
	private Optional<Boolean> aboutPoles = Optional.empty();

	Source(ProgramFile file) {
		this.file = file;
		this.lines = file.text().lineCount();
	}

	ProgramFile file() {
		return file;
	}

	int lines() {
		return lines;
	}

	/** A block, read; one that is passed for the first time, in order, is not kept. */
	Block block(int line) {
		if (line > reached) {
			reached = line;
			return kept != null && kept[line] != null ? kept[line] : read(line);
		}
		kept = kept == null ? new Block[lines] : kept;
		if (kept[line] == null) {
			kept[line] = read(line);
		}
		return kept[line];
	}

	/** Whether a block is nothing but a motion, of which {@link #motion()} tells; it is not kept. */
	boolean moves(int line) {
		goTo(line);
		return cursor.moves();
	}

	/** The words of a block that {@link #moves}. */
	MotionWords motion() {
		return cursor.words();
	}

	private Block read(int line) {
		goTo(line);
		return known.at(cursor);
	}

	private void goTo(int line) {
		if (cursor == null || line < first || line >= behind) {
			ProgramText text = file.text();
			int chunk = text.chunkOfLine(line);
			cursor = text.chunks().get(chunk).cursor();
			first = text.firstLine(chunk);
			behind = chunk + 1 < text.chunks().size() ? text.firstLine(chunk + 1) : lines;
		}
		cursor.goTo(line - first);
	}

	/** The first line, of so many, with a word that calls a tool, sets its feed or speed, or moves it; looked for once. */
	int firstDone(int most) {
		if (firstDone < 0) {
			firstDone = 0;
			while (firstDone < Math.min(most, lines) && file.text().block(firstDone).words().stream().noneMatch(word ->
					"XYZABCUVWTFS".indexOf(word.address()) >= 0)) {
				firstDone++;
			}
		}
		return firstDone;
	}

	/** Whether any block has the change code M6; looked for once. */
	boolean changesTool() {
		if (changesTool.isEmpty()) {
			changesTool = Optional.of(file.text().chunks().stream().anyMatch(chunk -> ChunkFacts.of(chunk).changesTool()));
		}
		return changesTool.get();
	}

	/** Whether any block calls a cycle by a code of its own; looked for once, by the profile asked with first. */
	boolean callsCycles(MachineProfile profile) {
		if (callsCycles.isEmpty()) {
			callsCycles = Optional.of(file.text().chunks().stream()
					.anyMatch(chunk -> ChunkFacts.of(chunk).hasCode(code -> profile.gCode(code).contains(Meaning.CYCLE_CALL))));
		}
		return callsCycles.get();
	}

	/** Whether any block leads to an angle or a radius about a pole, {@code AP=90}; looked for once, where a block may set one. */
	boolean aboutPoles() {
		if (aboutPoles.isEmpty()) {
			boolean found = false;
			for (int line = 0; line < file.text().lineCount() && !found; line++) {
				for (Element element : file.text().block(line).elements()) {
					found |= element instanceof Element.Assignment given && given.target() instanceof Expression.NamedVariable name
							&& (name.name().equalsIgnoreCase("AP") || name.name().equalsIgnoreCase("RP"));
				}
			}
			aboutPoles = Optional.of(found);
		}
		return aboutPoles.get();
	}

	/** Where numbers, labels and statements stand. */
	Outline outline() {
		if (outline == null) {
			outline = new Outline(file);
		}
		return outline;
	}

	BlockRef ref(int line, Optional<BlockRef> caller, boolean skippable) {
		return new BlockRef(file, line, caller, skippable);
	}
}
