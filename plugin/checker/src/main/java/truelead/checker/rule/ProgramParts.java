package truelead.checker.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFile;

/** The programs and subprograms that blocks stand in, each gone through once, however many findings ask for it. */
final class ProgramParts {

	/** Lines of one part; it is empty where that is too long to be gone through. */
	private record Known(ProgramFile file, int first, int end, Optional<PartOfProgram> part) {

		boolean has(BlockRef block) {
			return block.line() >= first && block.line() < end && block.file().equals(file);
		}
	}

	private final List<Known> known = new ArrayList<>();

	/** The part that a block stands in; empty where it is long. */
	Optional<PartOfProgram> of(BlockRef block) {
		for (Known one : known) {
			if (one.has(block)) {
				return one.part();
			}
		}
		int first = PartOfProgram.firstLine(block);
		int end = PartOfProgram.lineBehind(block);
		Optional<PartOfProgram> part = PartOfProgram.of(block.file(), first, end);
		known.add(new Known(block.file(), first, end, part));
		return part;
	}
}
