package truelead.checker.machine;

import java.util.function.ToIntFunction;
import truelead.grammar.ProgramText;

/**
 * Tells whether one of the stretches that a chunk's text shows by itself begins where a program stands; looks a chunk's up only once on the
 * way through it.
 */
final class Stretches<T> {

	/** The stretches of a chunk of a text, in order. */
	interface Finder<T> {
		T[] in(ProgramText text, int chunk);
	}

	private final Finder<T> finder;
	private final ToIntFunction<T> from;
	private Source source;
	private T[] stretches;
	private int base;
	private int end;
	private int index;
	private int next;
	/** The line asked of last: a loop leads back. */
	private int asked;

	/** @param from the first line of a stretch, counted from the start of its chunk */
	Stretches(Finder<T> finder, ToIntFunction<T> from) {
		this.finder = finder;
		this.from = from;
	}

	/** Whether one begins at the line at which a program stands. */
	boolean beginsAt(CallFrame frame) {
		int line = frame.line;
		if (frame.source != source || line < base || line >= end) {
			enter(frame.source, line);
		}
		if (line > next || line < asked) {
			seek(line);
		}
		asked = line;
		return line == next;
	}

	/** The one that begins here. */
	T here() {
		return stretches[index];
	}

	/** The first line of its chunk. */
	int base() {
		return base;
	}

	private void enter(Source other, int line) {
		ProgramText text = other.file().text();
		int chunk = text.chunkOfLine(line);
		source = other;
		base = text.firstLine(chunk);
		end = chunk + 1 < text.chunks().size() ? text.firstLine(chunk + 1) : text.lineCount();
		stretches = finder.in(text, chunk);
		index = 0;
		asked = base;
		seek(base);
	}

	private void seek(int line) {
		while (index < stretches.length && first(index) < line) {
			index++;
		}
		while (index > 0 && first(index - 1) >= line) {
			index--;
		}
		next = index < stretches.length ? first(index) : Integer.MAX_VALUE;
	}

	private int first(int index) {
		return base + from.applyAsInt(stretches[index]);
	}
}
