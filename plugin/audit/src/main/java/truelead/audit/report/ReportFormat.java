package truelead.audit.report;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** The kinds of report; the names in lower case, with hyphens, are what {@code --report} takes. */
public enum ReportFormat {
	/** Lines for people and editors. */
	TEXT("Lines of text", ".txt"),
	/** The whole audit on one page. */
	HTML("Audit, HTML page", ".html"),
	/** The sheet to sign before the first part. */
	FIRST_RUN("First-run sheet, HTML page", "-first-run.html"),
	/** The gauge sheet, to print. */
	GAUGE("Gauge sheet, HTML page", "-gauge.html"),
	/** The gauge sheet as a table. */
	GAUGE_CSV("Gauge sheet, CSV table", "-gauge.csv"),
	/** SARIF 2.1.0. */
	SARIF("SARIF", ".sarif"),
	/** Operations, holes and findings. */
	JSON("JSON", ".json"),
	/** Suites and cases for build servers. */
	JUNIT("JUnit XML", ".xml"),
	/** Open findings as lines of an accept file. */
	ACCEPT_LIST("Accept list, CSV table", "-accept.csv");

	private final String title;
	private final String ending;

	ReportFormat(String title, String ending) {
		this.title = title;
		this.ending = ending;
	}

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

	/** What a person chooses it by in a list. */
	public String title() {
		return title;
	}

	/** How the name of its file ends where nobody says otherwise, with the dot. */
	public String ending() {
		return ending;
	}

	/** Whether it is a page for a browser. */
	public boolean page() {
		return ending.endsWith(".html");
	}
}
