package truelead.checker.edit;

/**
 * Something that may be typed at a place.
 *
 * @param offset where it goes, from the start of the program's text
 * @param length characters before the place that it replaces
 * @param text   what is put there
 * @param label  the text with a few words on what it is
 * @param more   more about it, in lines; empty text for nothing
 */
public record Proposal(int offset, int length, String text, String label, String more) {
}
