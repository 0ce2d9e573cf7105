package truelead.checker.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.StringTokenizer;

/** A row of a data file: its cells by the names of the file's head. */
public final class DataRow {

	private final String[] names;
	private final String[] cells;

	DataRow(String[] names, String[] cells) {
		this.names = names;
		this.cells = cells;
	}

	/** A cell; a name that the file does not have is a fault of the build and throws. */
	public String get(String name) {
		for (int i = 0; i < names.length; i++) {
			if (names[i].equals(name)) {
				return cells[i];
			}
		}
		throw new IllegalArgumentException("no column " + name);
	}

	/** The words of a cell, which blanks part; an unknown name throws, as in {@link #get}. */
	public List<String> words(String name) {
		List<String> words = new ArrayList<>();
		for (StringTokenizer all = new StringTokenizer(get(name), " "); all.hasMoreTokens();) {
			words.add(all.nextToken());
		}
		return words;
	}
}
