package truelead.audit.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of report; the names in lower case, with hyphens, are what {@code --report} takes. */
public enum ReportFormat {
	/** Lines for people and editors. */
	TEXT,
	/** SARIF 2.1.0. */
	SARIF;

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
