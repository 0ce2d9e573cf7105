package truelead.editor.audit;

import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.IAdaptable;
import truelead.audit.result.Acceptance;
import truelead.audit.result.Judged;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.checker.program.Location;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.ProgramThreads;
import truelead.editor.fix.MarkedFinding;

/**
 * A finding in the audit view.
 *
 * @param program  the program that was audited
 * @param place    the file the finding points into: the program, or one that it calls
 * @param line     from 0
 * @param start    first character in the line, from 0
 * @param length   characters
 * @param block    the line's text, by which it is found again after an edit
 * @param lesson   the one that tells more about it
 * @param accepted the reason where it is accepted, and who says so
 */
record AuditedFinding(IFile program, IFile place, String rule, Severity severity, String message, int line, int start, int length,
		String block, String fingerprint, Optional<Lesson> lesson, String accepted) implements IAdaptable {

	/** What the view keeps of a finding, which is about one of these threads or about none. */
	static AuditedFinding of(IFile program, ProgramThreads threads, Judged judged) {
		Finding finding = judged.finding();
		Location at = finding.at();
		String block = at.line() < at.file().text().lineCount() ? at.file().text().line(at.line()) : "";
		return new AuditedFinding(program, place(program, at.file().name()), finding.rule(), finding.severity(), finding.message(),
				at.line(), at.span().start(), at.span().length(), block, judged.fingerprint(),
				Lessons.of(finding.rule(), threads.about(finding)),
				judged.acceptance().map(AuditedFinding::words).orElse(""));
	}

	@Override
	public <T> T getAdapter(Class<T> kind) {
		return kind == MarkedFinding.class ? kind.cast(marked()) : null;
	}

	/** As it is found again in the text. */
	MarkedFinding marked() {
		return new MarkedFinding(program, rule, message, line, lesson);
	}

	/** Called programs lie beside the program. */
	private static IFile place(IFile program, String name) {
		IResource beside = program.getParent().findMember(name);
		return beside instanceof IFile file ? file : program;
	}

	private static String words(Acceptance acceptance) {
		String who = (acceptance.person() + " " + acceptance.date()).strip();
		return who.isEmpty() ? acceptance.reason() : acceptance.reason() + " (" + who + ")";
	}
}
