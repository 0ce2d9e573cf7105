package truelead.editor.text;

import java.util.Arrays;

/** Some lines of a text that follow one another: where each ends, counted from the start of the first, and what ends it. */
final class LineRun {

	private int[] ends;
	private byte[] marks;
	private int count;

	/** A run without lines, with room for some. */
	LineRun(int room) {
		ends = new int[room];
		marks = new byte[room];
	}

	int count() {
		return count;
	}

	/** Characters of all its lines. */
	int length() {
		return start(count);
	}

	/** Where a line starts; behind the last one, where the run ends. */
	int start(int line) {
		return line == 0 ? 0 : ends[line - 1];
	}

	int length(int line) {
		return ends[line] - start(line);
	}

	/** What ends a line: a mark of {@link LineEnds}. */
	byte mark(int line) {
		return marks[line];
	}

	/** The line that has the character at the offset; the last one behind all of them. */
	int lineAt(int offset) {
		int found = Arrays.binarySearch(ends, 0, count, offset);
		return Math.min(found < 0 ? -found - 1 : found + 1, count - 1);
	}

	void add(int length, byte mark) {
		if (count == ends.length) {
			ends = Arrays.copyOf(ends, 2 * count + 8);
			marks = Arrays.copyOf(marks, ends.length);
		}
		ends[count] = length() + length;
		marks[count++] = mark;
	}

	void addAll(LineRun other, int from, int to) {
		for (int line = from; line < to; line++) {
			add(other.length(line), other.mark(line));
		}
	}

	/** Some of its lines, as a run of their own. */
	LineRun part(int from, int to) {
		LineRun part = new LineRun(to - from);
		part.addAll(this, from, to);
		return part;
	}

	/** Makes a line longer by so many characters, or shorter by fewer than none. */
	void stretch(int line, int by) {
		for (int i = line; i < count; i++) {
			ends[i] += by;
		}
	}
}
