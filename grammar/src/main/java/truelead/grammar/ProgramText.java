package truelead.grammar;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * The text of a program as an immutable value, cut into lines, each line a block. An edit gives a new value. Lines end at CR, LF or CR LF,
 * as the platform's text documents count them; line numbers and offsets count from 0.
 */
public final class ProgramText {

	private final String text;
	private final Charset charset;
	private final int[] lineStarts;

	private ProgramText(String text, Charset charset) {
		this.text = text;
		this.charset = charset;
		this.lineStarts = lineStarts(text);
	}

	/** A program from characters. */
	public static ProgramText of(String text) {
		return new ProgramText(text, StandardCharsets.UTF_8);
	}

	/** A program from bytes: UTF-8 where they are valid UTF-8, else one character a byte, so that {@link #bytes()} gives the same bytes again. */
	public static ProgramText read(byte[] bytes) {
		try {
			CharBuffer decoded = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
			return new ProgramText(decoded.toString(), StandardCharsets.UTF_8);
		} catch (CharacterCodingException notUtf8) {
			return new ProgramText(new String(bytes, StandardCharsets.ISO_8859_1), StandardCharsets.ISO_8859_1);
		}
	}

	/** The program as bytes, in the encoding it was read in. */
	public byte[] bytes() {
		return text.getBytes(charset);
	}

	/** The encoding it was read in. */
	public Charset charset() {
		return charset;
	}

	/** Number of characters. */
	public int length() {
		return text.length();
	}

	/** Number of lines, at least 1; a text that ends with a line end has an empty last line. */
	public int lineCount() {
		return lineStarts.length;
	}

	/** Offset of the first character of a line. */
	public int lineStart(int line) {
		return lineStarts[line];
	}

	/** The line that holds an offset, 0 to {@link #length()}. */
	public int lineOf(int offset) {
		int found = Arrays.binarySearch(lineStarts, offset);
		return found >= 0 ? found : -found - 2;
	}

	/** A line without its line end. */
	public String line(int line) {
		int start = lineStarts[line];
		int end = line + 1 < lineStarts.length ? lineStarts[line + 1] : text.length();
		while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
			end--;
		}
		return text.substring(start, end);
	}

	/** A line, read. */
	public Block block(int line) {
		return BlockReader.read(line(line));
	}

	/** The first line from {@code line} on that has one of some characters in it, wherever it stands; {@link #lineCount()} where none has. */
	public int nextLineWith(String characters, int line) {
		for (int i = line < lineStarts.length ? lineStarts[line] : text.length(); i < text.length(); i++) {
			if (characters.indexOf(text.charAt(i)) >= 0) {
				return lineOf(i);
			}
		}
		return lineStarts.length;
	}

	/** The program with {@code length} characters at {@code offset} replaced. */
	public ProgramText edit(int offset, int length, String replacement) {
		return new ProgramText(text.substring(0, offset) + replacement + text.substring(offset + length), charset);
	}

	@Override
	public String toString() {
		return text;
	}

	private static int[] lineStarts(String text) {
		int[] starts = new int[Math.max(16, text.length() / 16)];
		int count = 1;
		for (int i = 0; i < text.length(); i++) {
			char c = text.charAt(i);
			if (c == '\n' || c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n')) {
				if (count == starts.length) {
					starts = Arrays.copyOf(starts, count * 2);
				}
				starts[count++] = i + 1;
			}
		}
		return Arrays.copyOf(starts, count);
	}
}
