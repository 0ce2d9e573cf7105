package truelead.checker.drawing;

/**
 * Colours of a drawing, as SVG has them.
 *
 * @param line  lines and letters
 * @param alarm what is wrong, or close to it
 */
public record Ink(String line, String alarm) {

	/** Takes the colour of the text around it, and of its alarms where the page's styles name one, for pages that are light or dark. */
	public static final Ink OF_PAGE = new Ink("currentColor", "var(--alarm, #c62828)");

	/** Black on white. */
	public static final Ink BLACK = new Ink("#000000", "#c62828");

	/** White on dark. */
	public static final Ink WHITE = new Ink("#f0f0f0", "#ff8a80");
}
