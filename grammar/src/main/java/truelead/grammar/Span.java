package truelead.grammar;

/** A range of characters in one block's text: {@code start} inclusive, {@code end} exclusive, counted from the start of the line. */
public record Span(int start, int end) {

	public Span {
		if (start < 0 || end < start) {
			throw new IllegalArgumentException("not a range: " + start + ".." + end);
		}
	}

	/** The number of characters covered. */
	public int length() {
		return end - start;
	}

	/** The smallest range that covers this one and the other. */
	public Span to(Span other) {
		return new Span(Math.min(start, other.start), Math.max(end, other.end));
	}
}
