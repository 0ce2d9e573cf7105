package truelead.checker.rule;

/** How bad it is, worst first. */
public enum Severity {
	/** Will scrap the part or break the tool. */
	ERROR,
	/** May; look before running. */
	WARNING,
	/** Good to know. */
	INFORMATION
}
