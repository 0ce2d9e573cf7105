package truelead.editor.check;

import java.util.List;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IDocumentExtension4;
import truelead.checker.CheckResult;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Related;

/**
 * A program's text at one moment and what the check found in it.
 *
 * @param check how it was checked
 * @param stamp the document's modification stamp at that moment
 */
public record CheckedText(ProgramCheck check, ProgramFile program, CheckResult result, long stamp) {

	/** A document's modification stamp, for any thread. */
	public static long stampOf(IDocument document) {
		return document instanceof IDocumentExtension4 stamped ? stamped.getModificationStamp()
				: IDocumentExtension4.UNKNOWN_MODIFICATION_STAMP;
	}

	/** Whether this is how the program's document stands now. */
	public boolean isOf(IDocument document) {
		return stamp == stampOf(document);
	}

	/** The findings to show: those that nobody has accepted. */
	public List<Finding> shown() {
		return result.findings().stream().filter(finding -> finding.accepted().isEmpty()).toList();
	}

	/** Where to show a finding in this program: its own place, or, where that is in another file, the first related place in this one. */
	public Location placeOf(Finding finding) {
		if (here(finding.at())) {
			return finding.at();
		}
		return finding.related().stream().map(Related::at).filter(this::here).findFirst().orElseGet(this::firstLine);
	}

	/** Whether a place is in this program, not in one that it calls. */
	public boolean here(Location place) {
		return place.file().name().equals(program.name()) && place.line() < program.text().lineCount();
	}

	private Location firstLine() {
		return new Location(program, 0, new truelead.grammar.Span(0, program.text().line(0).length()));
	}
}
