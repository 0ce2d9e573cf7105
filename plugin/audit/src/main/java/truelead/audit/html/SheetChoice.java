package truelead.audit.html;

/** What a page of a program holds. */
public enum SheetChoice {
	/** Everything. */
	AUDIT,
	/** The sheet to sign before the first part alone. */
	FIRST_RUN,
	/** The gauge sheet alone. */
	GAUGE
}
