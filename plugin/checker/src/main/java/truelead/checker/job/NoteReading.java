package truelead.checker.job;

import java.util.List;
import java.util.Optional;

/**
 * What came of a comment that begins like one of our notes.
 *
 * @param note    the note with everything that was understood of it; empty where nothing was
 * @param remarks what was not understood, with the exact range
 */
public record NoteReading(Optional<Note> note, List<Remark> remarks) {

	public NoteReading {
		remarks = List.copyOf(remarks);
	}
}
