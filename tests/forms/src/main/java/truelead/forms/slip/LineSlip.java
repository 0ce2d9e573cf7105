package truelead.forms.slip;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BiConsumer;

/** A slip at a whole line. */
enum LineSlip {

	LOST("lost", (lines, at) -> lines.remove(at.intValue())),
	TWICE("twice", (lines, at) -> lines.add(at, lines.get(at))),
	SWAPPED("swapped with the next", (lines, at) -> {
		if (at + 1 < lines.size()) {
			Collections.swap(lines, at, at + 1);
		}
	});

	private final String written;
	private final BiConsumer<List<String>, Integer> slip;

	LineSlip(String written, BiConsumer<List<String>, Integer> slip) {
		this.written = written;
		this.slip = slip;
	}

	/** What the table calls it. */
	String written() {
		return written;
	}

	/** The lines of a program with this slip at one of them. */
	List<String> of(List<String> lines, int at) {
		List<String> typed = new ArrayList<>(lines);
		slip.accept(typed, at);
		return typed;
	}
}
