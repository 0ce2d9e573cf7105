package truelead.audit.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of report; the names in lower case, with hyphens, are what {@code --report} takes. */
public enum ReportFormat {
	/** Lines for people and editors. */
	TEXT,
	/** The whole audit on one page. */
	HTML,
	/** The sheet to sign before the first part. */
	FIRST_RUN,
	/** The gauge sheet, to print. */
	GAUGE,
	/** The gauge sheet as a table. */
	GAUGE_CSV,
	/** SARIF 2.1.0. */
	SARIF,
	/** Operations, holes and findings. */
	JSON,
	/** Suites and cases for build servers. */
	JUNIT,
	/** Open findings as lines of an accept file. */
	ACCEPT_LIST;

	/** The format of that name. */
	public static Optional<ReportFormat> named(String name) {
		return Arrays.stream(values()).filter(format -> format.label().equals(name.toLowerCase(Locale.ROOT))).findFirst();
	}

	/** All names, parted by commas. */
	public static String names() {
		return Arrays.stream(values()).map(ReportFormat::label).collect(Collectors.joining(", "));
	}

	/** The name as {@code --report} takes it. */
	public String label() {
		return name().toLowerCase(Locale.ROOT).replace('_', '-');
	}
}
