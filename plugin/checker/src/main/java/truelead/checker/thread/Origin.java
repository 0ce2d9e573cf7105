package truelead.checker.thread;

/** How far a number can be traced. */
public enum Origin {
	/** A published table. */
	TABLE("table"),
	/** Computed by the standard's formula; the table that would rule was not at hand or does not hold the size. */
	COMPUTED("computed"),
	/** From a founder's memory of the standard, checked against its formula where there is one. */
	FROM_MEMORY("from memory");

	private final String words;

	Origin(String words) {
		this.words = words;
	}

	/** As shown to a person. */
	public String words() {
		return words;
	}

	/** The weaker of two. */
	Origin and(Origin other) {
		return compareTo(other) >= 0 ? this : other;
	}

	/** Read from the words of a source. */
	static Origin of(String source) {
		return source.contains("from memory") ? FROM_MEMORY : source.contains("computed") ? COMPUTED : TABLE;
	}
}
