package truelead.checker.thread;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The data files beside the classes that read them: comma separated, a comment line that says what the file is, a line of names, a source a
 * row. Read by hand: every cold start reads some of them, and they are written by us.
 */
public final class DataFile {

	/** Columns of the widest file, and some (a choice of ours). */
	private static final int MOST = 16;

	private DataFile() {
	}

	/** The rows of a file beside a class; a missing or broken file is a fault of the build and throws. */
	public static List<DataRow> rows(Class<?> reader, String name) {
		try (InputStream bytes = reader.getResourceAsStream(name)) {
			if (bytes == null) {
				throw new IllegalStateException("the data file " + name + " is not in the build");
			}
			return read(new String(bytes.readAllBytes(), StandardCharsets.UTF_8));
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** A number of a row, in the unit of its column; a cell that holds none is a fault of the build and throws. */
	public static double number(DataRow row, String name) {
		return Double.parseDouble(row.get(name));
	}

	static List<DataRow> read(String text) {
		List<DataRow> rows = new ArrayList<>();
		String[] names = {};
		int end;
		for (int start = 0; start < text.length(); start = end + 1) {
			int feed = text.indexOf('\n', start);
			end = feed < 0 ? text.length() : feed;
			int last = end > start && text.charAt(end - 1) == '\r' ? end - 1 : end;
			if (last == start || text.charAt(start) == '#') {
				continue;
			}
			String[] cells = cells(text, start, last, names.length);
			if (names.length == 0) {
				names = cells;
			} else {
				rows.add(new DataRow(names, cells));
			}
		}
		return rows;
	}

	/** The cells of a line. A size such as #10 stands in quotes, so that its line is no comment, and so does a cell with a comma in it. */
	private static String[] cells(String text, int from, int to, int wanted) {
		String[] cells = new String[Math.max(wanted, MOST)];
		int count = 0;
		for (int start = from; start <= to;) {
			boolean quoted = start < to && text.charAt(start) == '"';
			int end = quoted ? text.indexOf('"', start + 1) + 1 : text.indexOf(',', start);
			end = end < 0 || end > to ? to : end;
			if (count == cells.length || quoted && end <= start || quoted && end < to && text.charAt(end) != ',') {
				throw new IllegalStateException("a broken line in a data file: " + text.substring(from, to));
			}
			cells[count++] = quoted ? text.substring(start + 1, end - 1) : text.substring(start, end);
			start = end + 1;
		}
		if (wanted > 0 && count != wanted) {
			throw new IllegalStateException("a line of a data file has " + count + " cells, its head " + wanted + ": "
					+ text.substring(from, to));
		}
		return count == cells.length ? cells : Arrays.copyOf(cells, count);
	}
}
