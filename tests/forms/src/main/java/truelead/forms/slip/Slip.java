package truelead.forms.slip;

import java.util.List;

/**
 * A program with one slip in it.
 *
 * @param in   the class it is counted with
 * @param line the line it is in, from 0
 * @param now  the lines of the program with it
 */
record Slip(Kind in, int line, List<String> now) {

	/**
	 * What slips are counted together.
	 *
	 * @param tool what is in the spindle: {@code drill}, {@code lathe cutting tap}, {@code no tool} before the first, {@code a tool} of
	 *             which nothing is known
	 * @param word what the slip is at: {@code Z}, {@code Z of a cycle}, {@code M3}, {@code line}
	 * @param kind what became of it
	 */
	record Kind(String tool, String word, String kind) implements Comparable<Kind> {

		@Override
		public int compareTo(Kind other) {
			return toString().compareTo(other.toString());
		}

		@Override
		public String toString() {
			return tool + ", " + word + ' ' + kind;
		}
	}
}
