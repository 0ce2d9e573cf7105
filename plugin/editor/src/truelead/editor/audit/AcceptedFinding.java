package truelead.editor.audit;

import java.util.Optional;
import org.eclipse.core.resources.IFile;
import truelead.audit.result.Acceptance;
import truelead.audit.standing.AcceptFile;
import truelead.checker.job.Allowance;
import truelead.editor.check.ProjectAcceptFile;

/**
 * A finding that somebody has accepted, by a note in the program or a line of the project's accept file.
 *
 * @param program  the program; empty for a line of the accept file whose program is not there, or that is about all programs
 * @param line     where the note or the finding stands, from 0; -1 where that is not known
 * @param why      reason, person and date
 * @param inForce  whether it accepts anything: one that does not is stale
 * @param note     the note, where one accepts it
 * @param entry    the line of the accept file, where that accepts it
 */
record AcceptedFinding(String rule, Optional<IFile> program, String programName, int line, Acceptance why, boolean inForce,
		Optional<Allowance> note, Optional<AcceptFile.Entry> entry) {

	/** By a note of a program. */
	static AcceptedFinding of(IFile program, Allowance note, boolean inForce) {
		return new AcceptedFinding(note.rule(), Optional.of(program), program.getName(), note.at().line(),
				new Acceptance(true, note.reason(), "", ""), inForce, Optional.of(note), Optional.empty());
	}

	/** By a line of the accept file, which accepts that finding, or none. */
	static AcceptedFinding of(AcceptFile.Entry entry, Optional<AuditedFinding> accepted) {
		return new AcceptedFinding(entry.rule(), accepted.map(AuditedFinding::program), entry.program(),
				accepted.map(AuditedFinding::line).orElse(-1), entry.acceptance(), accepted.isPresent(), Optional.empty(),
				Optional.of(entry));
	}

	/** By what it is accepted. */
	String by() {
		return note.isPresent() ? "note in the program" : ProjectAcceptFile.NAME;
	}

	/** Whether it still accepts anything, in words. */
	String state() {
		return inForce ? "in force" : "stale: accepts nothing";
	}
}
