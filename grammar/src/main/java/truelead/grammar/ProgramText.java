package truelead.grammar;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The text of a program as an immutable value, cut into lines, each line a block. An edit gives a new value. Lines end at CR, LF or CR LF,
 * as the platform's text documents count them; line numbers and offsets count from 0.
 */
public final class ProgramText {

	private final Chunk[] chunks;
	private final int[] offsets;
	private final int[] lines;
	private final Charset charset;

	private ProgramText(Chunk[] chunks, Charset charset) {
		this.chunks = chunks;
		this.charset = charset;
		this.offsets = new int[chunks.length + 1];
		this.lines = new int[chunks.length + 1];
		for (int i = 0; i < chunks.length; i++) {
			offsets[i + 1] = offsets[i] + chunks[i].text().length();
			lines[i + 1] = lines[i] + chunks[i].lineEnds();
		}
		lines[chunks.length]++;
	}

	private ProgramText(String text, Charset charset) {
		this(Chunk.cut(text), charset);
	}

	private ProgramText(List<Chunk> chunks, Charset charset) {
		this(chunks.toArray(Chunk[]::new), charset);
	}

	/** A program from characters. */
	public static ProgramText of(String text) {
		return new ProgramText(text, StandardCharsets.UTF_8);
	}

	/**
	 * A program from bytes: UTF-16 where a byte order mark says so, UTF-8 where they are valid UTF-8, else one character a byte, so that
	 * {@link #bytes()} gives the same bytes again.
	 */
	public static ProgramText read(byte[] bytes) {
		Optional<int[]> starts = PlainBytes.starts(bytes);
		if (starts.isPresent()) {
			return new ProgramText(Chunk.cut(starts.get(), bytes), StandardCharsets.UTF_8);
		}
		String simple = new String(bytes, StandardCharsets.UTF_8);
		if (simple.length() == bytes.length && simple.indexOf('\uFFFD') < 0) {
			return new ProgramText(simple, StandardCharsets.UTF_8);
		}
		Charset likely = StandardCharsets.UTF_8;
		if (bytes.length > 1 && bytes[0] == (byte) 0xFF && bytes[1] == (byte) 0xFE) {
			likely = StandardCharsets.UTF_16LE;
		} else if (bytes.length > 1 && bytes[0] == (byte) 0xFE && bytes[1] == (byte) 0xFF) {
			likely = StandardCharsets.UTF_16BE;
		}
		try {
			CharBuffer decoded = likely.newDecoder().decode(ByteBuffer.wrap(bytes));
			return new ProgramText(decoded.toString(), likely);
		} catch (CharacterCodingException otherEncoding) {
			return new ProgramText(new String(bytes, StandardCharsets.ISO_8859_1), StandardCharsets.ISO_8859_1);
		}
	}

	/** The program as bytes, in the encoding it was read in. */
	public byte[] bytes() {
		return toString().getBytes(charset);
	}

	/** Number of characters. */
	public int length() {
		return offsets[chunks.length];
	}

	/** Number of lines, at least 1; a text that ends with a line end has an empty last line. */
	public int lineCount() {
		return lines[chunks.length];
	}

	/** The chunks that the program is made of, in order; at least one. */
	public List<Chunk> chunks() {
		return Collections.unmodifiableList(Arrays.asList(chunks));
	}

	/** First line of a chunk. */
	public int firstLine(int chunk) {
		return lines[chunk];
	}

	/** The chunk that holds a line, 0 to {@link #lineCount()} - 1. */
	public int chunkOfLine(int line) {
		return holder(lines, line);
	}

	/** Offset of the first character of a line. */
	public int lineStart(int line) {
		int chunk = holder(lines, line);
		return offsets[chunk] + chunks[chunk].lineStart(line - lines[chunk]);
	}

	/** The line that holds an offset, 0 to {@link #length()}. */
	public int lineOf(int offset) {
		int chunk = holder(offsets, offset);
		return lines[chunk] + chunks[chunk].lineOf(offset - offsets[chunk]);
	}

	/** A line without its line end. */
	public String line(int line) {
		int chunk = holder(lines, line);
		return chunks[chunk].line(line - lines[chunk]);
	}

	/** Where the text of a line stands in it, the white space around it left out. */
	public Span written(int line) {
		int chunk = holder(lines, line);
		return chunks[chunk].written(line - lines[chunk]);
	}

	/** What ends a line: CR, LF, both, or nothing where the text ends. */
	public String lineEnd(int line) {
		int chunk = holder(lines, line);
		String text = chunks[chunk].text();
		int start = chunks[chunk].lineStart(line - lines[chunk]) + line(line).length();
		return text.startsWith("\r\n", start) ? "\r\n" : start < text.length() ? text.substring(start, start + 1) : "";
	}

	/** A line, read. */
	public Block block(int line) {
		return BlockReader.read(line(line));
	}

	/**
	 * The first line from {@code line} on that has one of some characters in it, wherever it stands; {@link #lineCount()} where none has.
	 */
	public int nextLineWith(String characters, int line) {
		if (line >= lineCount()) {
			return lineCount();
		}
		int chunk = holder(lines, line);
		int from = chunks[chunk].lineStart(line - lines[chunk]);
		for (; chunk < chunks.length; chunk++, from = 0) {
			String text = chunks[chunk].text();
			for (int i = from; i < text.length(); i++) {
				if (characters.indexOf(text.charAt(i)) >= 0) {
					return lines[chunk] + chunks[chunk].lineOf(i);
				}
			}
		}
		return lineCount();
	}

	/** The last one whose start is not behind a place; starts grow, the last entry is the end. */
	private static int holder(int[] starts, int place) {
		int low = 0;
		int high = starts.length - 2;
		while (low < high) {
			int middle = (low + high + 1) >>> 1;
			if (starts[middle] <= place) {
				low = middle;
			} else {
				high = middle - 1;
			}
		}
		return low;
	}

	/** The program with {@code length} characters at {@code offset} replaced; it shares all chunks that the edit does not touch. */
	public ProgramText edit(int offset, int length, String replacement) {
		int first = holder(offsets, offset);
		if (first > 0 && offsets[first] == offset) {
			first--;
		}
		int last = holder(offsets, offset + length);
		StringBuilder changed = new StringBuilder();
		for (int i = first; i <= last; i++) {
			changed.append(chunks[i].text());
		}
		changed.replace(offset - offsets[first], offset - offsets[first] + length, replacement);
		while (last + 1 < chunks.length && !endsLine(changed, chunks[last + 1].text())) {
			changed.append(chunks[++last].text());
		}
		List<Chunk> all = new ArrayList<>(Arrays.asList(chunks).subList(0, first));
		List<Chunk> fresh = Chunk.cut(changed.toString());
		boolean more = last + 1 < chunks.length;
		all.addAll(more && fresh.get(fresh.size() - 1).text().isEmpty() ? fresh.subList(0, fresh.size() - 1) : fresh);
		all.addAll(Arrays.asList(chunks).subList(last + 1, chunks.length));
		return new ProgramText(all, charset);
	}

	/**
	 * The program with other characters, sharing all chunks before and behind what differs; for those who have the text but not the edit.
	 */
	public ProgramText changedTo(String text) {
		int first = 0;
		while (first < chunks.length && offsets[first + 1] <= text.length()
				&& text.regionMatches(offsets[first], chunks[first].text(), 0, chunks[first].text().length())) {
			first++;
		}
		if (first == chunks.length && text.length() == length()) {
			return this;
		}
		int behind = length() - text.length();
		int last = chunks.length;
		while (last > first && offsets[last - 1] - behind >= offsets[first]
				&& text.regionMatches(offsets[last - 1] - behind, chunks[last - 1].text(), 0, chunks[last - 1].text().length())) {
			last--;
		}
		return edit(offsets[first], offsets[last] - offsets[first], text.substring(offsets[first], offsets[last] - behind));
	}

	/** Whether a text ends with a line end that what follows does not belong to; an empty one does where nothing is before it. */
	private static boolean endsLine(CharSequence text, String behind) {
		int length = text.length();
		char end = length == 0 ? '\n' : text.charAt(length - 1);
		return end == '\n' || end == '\r' && !(behind.length() > 0 && behind.charAt(0) == '\n');
	}

	@Override
	public String toString() {
		if (chunks.length == 1) {
			return chunks[0].text();
		}
		StringBuilder text = new StringBuilder(length());
		for (Chunk chunk : chunks) {
			text.append(chunk.text());
		}
		return text.toString();
	}
}
