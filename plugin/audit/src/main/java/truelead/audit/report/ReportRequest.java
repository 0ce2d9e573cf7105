package truelead.audit.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.audit.source.Paths;
import truelead.audit.terminal.Complaint;

/** What one {@code --report} asks for: a format, and the file it goes to; without a file it goes to standard output. */
public record ReportRequest(ReportFormat format, Optional<String> file) {

	/** Reads {@code sarif} or {@code sarif:out/threads.sarif}; anything else ends the command with a complaint. */
	public static ReportRequest of(String written) {
		int colon = written.indexOf(':');
		String name = colon < 0 ? written : written.substring(0, colon);
		ReportFormat format = ReportFormat.named(name)
				.orElseThrow(() -> new Complaint("no report \"" + name + "\"; there are " + ReportFormat.names()));
		if (colon == written.length() - 1) {
			throw new Complaint("no file name behind --report " + written);
		}
		return new ReportRequest(format, colon < 0 ? Optional.empty() : Optional.of(written.substring(colon + 1)));
	}

	/** Whether the file's name is a folder's: it ends in a slash. */
	public boolean folder() {
		return file.filter(name -> name.endsWith("/") || name.endsWith(java.io.File.separator)).isPresent();
	}

	/** All that was asked for; text on standard output is added where nothing else goes there. */
	public static List<ReportRequest> all(List<String> written) {
		List<ReportRequest> requests = new ArrayList<>();
		Set<Path> files = new HashSet<>();
		int toOutput = 0;
		boolean twice = false;
		for (String one : written) {
			ReportRequest request = of(one);
			requests.add(request);
			toOutput += request.file().isEmpty() ? 1 : 0;
			twice |= request.file().isPresent() && !files.add(Spared.place(Paths.of(request.file().get())));
		}
		if (toOutput > 1) {
			throw new Complaint("only one report can go to standard output; give the others a file: --report FORMAT:FILE");
		}
		if (twice) {
			throw new Complaint("two reports cannot go to the same file");
		}
		if (toOutput == 0) {
			requests.add(0, new ReportRequest(ReportFormat.TEXT, Optional.empty()));
		}
		return List.copyOf(requests);
	}
}
