package truelead.audit.html;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import truelead.audit.report.Report;
import truelead.audit.report.WholeFile;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;

/** A page a program in a folder, and an index; each page is there whole as soon as its program is done. */
public final class HtmlFolder implements Report {

	private final Path folder;
	private final ProgramPart part;
	private final IndexPart index = new IndexPart();

	/** Pages go into {@code folder}, which is made where it is missing. */
	public HtmlFolder(Path folder, SheetChoice choice, int every) {
		this.folder = folder;
		this.part = new ProgramPart(choice, every);
	}

	@Override
	public void add(Audited audited) throws IOException {
		String name = pageName(index.size() + 1, audited.source().shown());
		index.add(audited, name);
		write(name, Page.head(audited.source().shown()) + "<p><a href=\"index.html\">all programs</a></p>\n" + part.write(audited, "p1")
				+ Page.foot());
	}

	@Override
	public void finish(Tally tally) throws IOException {
		write("index.html", Page.head("Audit of " + Verdict.many(index.size(), "program")) + index.write(tally)
				+ new Html().list(tally.remarks()) + Page.foot());
	}

	private void write(String name, String page) throws IOException {
		try (WholeFile file = WholeFile.at(folder.resolve(name))) {
			file.writer().write(page);
			file.finish();
		}
	}

	/** A number and the plain letters of the program's name: safe in links and on every disk. */
	static String pageName(int number, String shown) {
		StringBuilder plain = new StringBuilder();
		String name = shown.substring(shown.lastIndexOf('/') + 1);
		name.chars().map(c -> c == '.' || c == ' ' ? '-' : c)
				.filter(c -> c < 0x80 && (Character.isLetterOrDigit(c) || c == '-' || c == '_')).limit(40)
				.forEach(c -> plain.append((char) c));
		return String.format(Locale.ROOT, "%04d-%s.html", number, plain);
	}
}
