package truelead.checker.summary;

import java.util.function.Predicate;
import java.util.stream.Stream;
import truelead.checker.program.BlockRef;
import truelead.checker.sheet.Sheets;
import truelead.checker.work.Work;

/** The quiet notes behind the blocks of a program's threads, in holes and turned. */
public final class ThreadNotes {

	/** A note and the block behind which it stands. */
	public record Note(BlockRef block, String text) {
	}

	private ThreadNotes() {
	}

	/** How many threads there are. */
	public static int threads(Work work) {
		return work.operations().size() + work.course().singlePoints().size();
	}

	/** The notes of the threads that begin at some blocks; none where nothing worth saying is known. */
	public static Stream<Note> of(Work work, Predicate<BlockRef> where) {
		Stream<Note> inHoles = work.operations().stream().filter(operation -> where.test(operation.block()))
				.map(operation -> new Note(operation.block(), OperationSummary.of(operation)));
		Stream<Note> turned = Sheets.turned(work).stream().filter(sheet -> where.test(sheet.block()))
				.map(sheet -> new Note(sheet.block(), TurnedSummary.of(sheet)));
		return Stream.concat(inHoles, turned).filter(note -> !note.text().isEmpty());
	}
}
