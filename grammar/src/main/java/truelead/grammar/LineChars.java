package truelead.grammar;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.misc.Interval;

/** One line as the lexer sees it: UTF-16 units, so that token positions are positions in the line. */
final class LineChars implements CharStream {

	private final String line;
	private final int size;
	private int index;

	/** The first {@code size} characters of a line. */
	LineChars(String line, int size) {
		this.line = line;
		this.size = size;
	}

	@Override
	public String getText(Interval interval) {
		return line.substring(Math.min(interval.a, size), Math.min(interval.b + 1, size));
	}

	@Override
	public void consume() {
		if (index >= size) {
			throw new IllegalStateException("nothing left to read");
		}
		index++;
	}

	@Override
	public int LA(int offset) {
		int at = offset > 0 ? index + offset - 1 : index + offset;
		return offset == 0 || at < 0 || at >= size ? IntStream.EOF : line.charAt(at);
	}

	@Override
	public int mark() {
		return -1;
	}

	@Override
	public void release(int marker) {
		// the whole line is at hand, nothing to release
	}

	@Override
	public int index() {
		return index;
	}

	@Override
	public void seek(int position) {
		index = Math.min(position, size);
	}

	@Override
	public int size() {
		return size;
	}

	@Override
	public String getSourceName() {
		return UNKNOWN_SOURCE_NAME;
	}
}
