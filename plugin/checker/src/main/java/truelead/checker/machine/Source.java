package truelead.checker.machine;

import java.util.Optional;
import truelead.grammar.Block;

/** A program file while it is executed: blocks that are come by again are kept, and so is its outline once it has been asked for. */
final class Source {

	private final ProgramFile file;
	private final int lines;
	private Block[] kept;
	private int reached = -1;
	private Outline outline;
	private Optional<Boolean> changesTool = Optional.empty();

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
			return kept != null && kept[line] != null ? kept[line] : file.text().block(line);
		}
		kept = kept == null ? new Block[lines] : kept;
		if (kept[line] == null) {
			kept[line] = file.text().block(line);
		}
		return kept[line];
	}

	/** Whether any block has the change code M6; looked for once. */
	boolean changesTool() {
		if (changesTool.isEmpty()) {
			changesTool = Optional.of(file.text().chunks().stream().anyMatch(chunk -> ChunkFacts.of(chunk).changesTool()));
		}
		return changesTool.get();
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
