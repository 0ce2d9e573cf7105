package truelead.checker.wanted;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import truelead.checker.job.Note;

/** Takes notes of one kind, the nearest, or single items, out of what is said. */
final class NotesOf {

	/** Of what is said in a tool's stay before an operation as much is read, from either end. */
	private static final int MOST_AT_END = 50;

	private NotesOf() {
	}

	/** An item from the first that has it. */
	static <N, T> Optional<T> item(List<N> notes, Function<N, Optional<T>> item) {
		for (N note : notes) {
			Optional<T> said = item.apply(note);
			if (said.isPresent()) {
				return said;
			}
		}
		return Optional.empty();
	}

	/** Those of a kind. */
	static <N extends Note> List<N> all(List<Note> notes, Class<N> kind) {
		List<N> found = new ArrayList<>();
		for (Note note : notes) {
			if (kind.isInstance(note)) {
				found.add(kind.cast(note));
			}
		}
		return found;
	}

	/** The first of a kind. */
	static <N extends Note> Optional<N> first(List<Note> notes, Class<N> kind) {
		for (Note note : notes) {
			if (kind.isInstance(note)) {
				return Optional.of(kind.cast(note));
			}
		}
		return Optional.empty();
	}

	/**
	 * Of what is said in a tool's stay before an operation the first and the nearest: where each of thousands has a comment, those between
	 * are of others.
	 */
	static <T> List<T> ends(List<T> said) {
		if (said.size() <= 2 * MOST_AT_END) {
			return said;
		}
		List<T> ends = new ArrayList<>(said.subList(0, MOST_AT_END));
		ends.addAll(said.subList(said.size() - MOST_AT_END, said.size()));
		return ends;
	}

	/** The same the other way round. */
	static List<Note> lastFirst(List<Note> notes) {
		List<Note> reversed = new ArrayList<>(notes);
		Collections.reverse(reversed);
		return reversed;
	}
}
