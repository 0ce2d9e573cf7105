package truelead.grammar;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;

/**
 * Some lines of a program in a row, about two thousand. Immutable, and shared by all texts that an edit elsewhere has made of one another,
 * so that what is worked out from its text alone need not be worked out again.
 */
public final class Chunk {

	/** Lines a fresh chunk has, and most characters, so that long lines make small chunks. */
	private static final int LINES = 2048;
	private static final int CHARACTERS = 1 << 17;

	private final String text;
	private final int[] starts;
	private final Map<Class<?>, Object> derived = new ConcurrentHashMap<>(2);

	/** A text that ends with a line end, or is the last of its program. */
	private Chunk(String text, int[] starts) {
		this.text = text;
		this.starts = starts;
	}

	/** Cuts a text into chunks, at least one; each but the last ends with a line end. */
	static List<Chunk> cut(String text) {
		return cut(starts(text), text.length(), text::substring);
	}

	/** The same of plain bytes, whose lines start as told. */
	static List<Chunk> cut(int[] starts, byte[] bytes) {
		return cut(starts, bytes.length, (from, to) -> new String(bytes, from, to - from, StandardCharsets.ISO_8859_1));
	}

	private static List<Chunk> cut(int[] starts, int length, Pieces pieces) {
		List<Chunk> chunks = new ArrayList<>(starts.length / LINES + 1);
		int line = 0;
		while (true) {
			int next = Math.min(line + LINES, starts.length - 1);
			while (next > line + 1 && starts[next] - starts[line] > CHARACTERS) {
				next = line + (next - line) / 2;
			}
			boolean last = next >= starts.length - 1 || starts[next] == length;
			int end = last ? length : starts[next];
			int[] own = Arrays.copyOfRange(starts, line, last ? starts.length : next + 1);
			for (int i = 0, base = starts[line]; i < own.length; i++) {
				own[i] -= base;
			}
			chunks.add(new Chunk(pieces.piece(starts[line], end), own));
			if (last) {
				return chunks;
			}
			line = next;
		}
	}

	/** Pieces of a text. */
	private interface Pieces {
		String piece(int from, int to);
	}

	/** Starts of the lines; behind the last line end one more. */
	private static int[] starts(String text) {
		int[] starts = new int[Math.max(16, text.length() / 16)];
		int count = 1;
		int feed = place(text, '\n', 0);
		int carriage = place(text, '\r', 0);
		while (feed < text.length() || carriage < text.length()) {
			if (count == starts.length) {
				starts = Arrays.copyOf(starts, count * 2);
			}
			boolean both = carriage + 1 == feed;
			int last = both ? feed : Math.min(feed, carriage);
			starts[count++] = last + 1;
			feed = feed == last ? place(text, '\n', last + 1) : feed;
			carriage = carriage <= last ? place(text, '\r', last + 1) : carriage;
		}
		return Arrays.copyOf(starts, count);
	}

	/** Where a character stands next; far behind the end where it does not. */
	private static int place(String text, char character, int from) {
		int found = text.indexOf(character, from);
		return found < 0 ? Integer.MAX_VALUE : found;
	}

	/** The characters, line ends included. */
	String text() {
		return text;
	}

	/** Number of line ends: the lines it has, unless it is the last chunk, which has one more. */
	public int lineEnds() {
		return starts.length - 1;
	}

	/** Where a line starts in the chunk's text; lines count from 0 in each chunk. */
	int lineStart(int line) {
		return starts[line];
	}

	/** Where the next line starts, or the chunk's text ends. */
	int behind(int line) {
		return line + 1 < starts.length ? starts[line + 1] : text.length();
	}

	/** The line that holds an offset in the chunk's text. */
	int lineOf(int offset) {
		int found = Arrays.binarySearch(starts, offset);
		return found >= 0 ? found : -found - 2;
	}

	/** Where a line ends in the chunk's text, its line end left out. */
	int lineEnd(int line) {
		int start = starts[line];
		int end = behind(line);
		while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
			end--;
		}
		return end;
	}

	/** Where the text of a line stands in it, the white space around it left out. */
	Span written(int line) {
		int first = starts[line];
		int start = first;
		int end = lineEnd(line);
		while (end > start && text.charAt(end - 1) <= ' ') {
			end--;
		}
		while (start < end && text.charAt(start) <= ' ') {
			start++;
		}
		return new Span(start - first, end - first);
	}

	/** A line without its line end. */
	public String line(int line) {
		return text.substring(starts[line], lineEnd(line));
	}

	/** Whether a line, with its line end, is the same in another chunk that has it. */
	public boolean sameLine(int line, Chunk other) {
		int length = behind(line) - starts[line];
		return length == other.behind(line) - other.starts[line]
				&& text.regionMatches(starts[line], other.text, other.starts[line], length);
	}

	/** Goes through the blocks in order. */
	public BlockCursor cursor() {
		return new BlockCursor(this);
	}

	/** A line, read. */
	public Block block(int line) {
		return BlockReader.read(line(line));
	}

	/** What some work makes of this chunk alone; kept for each kind of answer. */
	@SuppressWarnings("unchecked")
	public <T> T derived(Class<T> kind, Function<Chunk, T> work) {
		Object known = derived.get(kind);
		if (known == null) {
			T answer = work.apply(this);
			known = derived.putIfAbsent(kind, answer);
			return known == null ? answer : (T) known;
		}
		return (T) known;
	}
}
