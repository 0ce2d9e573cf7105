package truelead.audit.html;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import truelead.audit.report.Report;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;

/** All programs on one page. What was written of them waits in a temporary file, since the list of programs comes first. */
public final class HtmlReport implements Report {

	private final Writer out;
	private final ProgramPart part;
	private final IndexPart index = new IndexPart();
	private final Path waiting;
	private final Writer waitingOut;
	private String first = "";

	/** Starts the page on {@code out}; a gauge check every so many holes, 0 for the usual number. */
	public HtmlReport(Writer out, SheetChoice choice, int every) throws IOException {
		this.out = out;
		this.part = new ProgramPart(choice, every);
		this.waiting = Files.createTempFile("truelead", ".part");
		this.waiting.toFile().deleteOnExit();
		this.waitingOut = Files.newBufferedWriter(waiting, StandardCharsets.UTF_8);
	}

	@Override
	public void add(Audited audited) throws IOException {
		String anchor = "p" + (index.size() + 1);
		first = index.size() == 0 ? audited.source().shown() : first;
		index.add(audited, "#" + anchor);
		waitingOut.write(part.write(audited, anchor));
	}

	@Override
	public void finish(Tally tally) throws IOException {
		waitingOut.close();
		out.write(Page.head(index.size() == 1 ? first : Verdict.many(index.size(), "program")));
		if (index.size() != 1) {
			out.write(index.write(tally));
		}
		out.write(new Html().list(tally.remarks()).toString());
		try (Reader reader = Files.newBufferedReader(waiting, StandardCharsets.UTF_8)) {
			reader.transferTo(out);
		}
		out.write(Page.foot());
		out.flush();
	}

	@Override
	public void close() throws IOException {
		waitingOut.close();
		Files.deleteIfExists(waiting);
	}
}
