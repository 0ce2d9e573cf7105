package truelead.editor.page;

import java.util.List;

/**
 * A page laid out as text for a widget that knows no HTML: characters, and what is to be seen and done at which of them.
 *
 * @param text  all characters
 * @param looks how ranges look, in their order; a marked range lies within one laid before it
 * @param lines indents of lines
 */
public record Passage(String text, List<Look> looks, List<Indent> lines) {

	/** How a range looks. */
	public enum Style {
		TITLE, HEADING, STRONG, CODE, LINK,
		/** Lines of a program, coloured as in the editor. */
		PROGRAM,
		/** What a finding points at in a program. */
		MARKED,
		/** What is said of it. */
		SAID
	}

	/**
	 * A range with a look.
	 *
	 * @param link what a click does; nothing but for links
	 */
	public record Look(int start, int length, Style style, Runnable link) {

		boolean holds(int offset) {
			return start <= offset && offset < start + length;
		}
	}

	/** A line, from 0, that is indented by some digits' width, as a whole or only where it goes on in the next one. */
	public record Indent(int line, int digits, boolean whole) {
	}
}
