package truelead.audit.report;

import com.google.gson.stream.JsonWriter;
import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.Locale;
import truelead.audit.terminal.Printable;

/**
 * JSON that does no harm where it is shown instead of read: what a terminal takes for a command, or turns the text round, stands in it as
 * an escape, which is the same character to whoever reads it, and so do the signs that a page takes for its own.
 */
public final class SafeJson {

	private SafeJson() {
	}

	/** A writer of indented JSON on {@code out}. */
	public static JsonWriter on(Writer out) {
		JsonWriter json = new JsonWriter(new Escapes(out));
		json.setIndent(" ");
		json.setHtmlSafe(true);
		return json;
	}

	/** The same of a whole JSON text. */
	public static String escaped(String json) {
		StringBuilder safe = new StringBuilder(json.length());
		json.chars().forEach(sign -> safe.append(Escapes.escaped((char) sign)));
		return safe.toString();
	}

	/** Such characters stand in strings alone, where each of them may be an escape. */
	private static final class Escapes extends FilterWriter {

		Escapes(Writer out) {
			super(out);
		}

		static String escaped(char sign) {
			return harmless(sign) ? String.valueOf(sign) : String.format(Locale.ROOT, "\\u%04x", (int) sign);
		}

		private static boolean harmless(char sign) {
			return sign < 0x7F || Printable.shows(sign);
		}

		@Override
		public void write(int sign) throws IOException {
			if (harmless((char) sign)) {
				out.write(sign);
			} else {
				out.write(escaped((char) sign));
			}
		}

		@Override
		public void write(char[] signs, int from, int count) throws IOException {
			write(new String(signs, from, count), 0, count);
		}

		@Override
		public void write(String text, int from, int count) throws IOException {
			int written = from;
			for (int i = from; i < from + count; i++) {
				if (!harmless(text.charAt(i))) {
					out.write(text, written, i - written);
					out.write(escaped(text.charAt(i)));
					written = i + 1;
				}
			}
			out.write(text, written, from + count - written);
		}
	}
}
