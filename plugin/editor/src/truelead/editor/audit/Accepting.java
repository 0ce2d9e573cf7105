package truelead.editor.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBufferManager;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.widgets.Shell;
import truelead.audit.result.Acceptance;
import truelead.audit.standing.AllowNote;
import truelead.editor.check.CheckedText;
import truelead.editor.check.ProgramCheck;
import truelead.editor.check.ProjectAcceptFile;
import truelead.editor.fix.AcceptNote;

/** Accepts findings as was answered: by a note that is put into the program and saved, or by a line of the project's accept file. */
final class Accepting {

	private final Acceptance answer;

	Accepting(Acceptance answer) {
		this.answer = answer;
	}

	/** Accepts them all; what cannot be is said in one message. */
	void accept(Shell shell, List<AuditedFinding> findings) {
		List<String> failed = new ArrayList<>();
		for (AuditedFinding finding : findings) {
			try {
				Optional<String> complaint = answer.inProgram() ? note(finding) : line(finding);
				complaint.ifPresent(failed::add);
			} catch (CoreException | IOException | BadLocationException cannot) {
				failed.add(finding.program().getName() + ": " + cannot.getMessage());
			}
		}
		if (!failed.isEmpty()) {
			MessageDialog.openWarning(shell, "Accept", String.join("\n", failed.stream().distinct().limit(10).toList()));
		}
	}

	private Optional<String> line(AuditedFinding finding) throws IOException, CoreException {
		return ProjectAcceptFile.add(finding.program(), finding.fingerprint(), finding.rule(), answer);
	}

	private Optional<String> note(AuditedFinding finding) throws CoreException, BadLocationException {
		ITextFileBufferManager buffers = FileBuffers.getTextFileBufferManager();
		IPath path = finding.program().getFullPath();
		buffers.connect(path, LocationKind.IFILE, new NullProgressMonitor());
		try {
			ITextFileBuffer buffer = buffers.getTextFileBuffer(path, LocationKind.IFILE);
			if (buffer.isDirty()) {
				return Optional.of(finding.program().getName() + " has changes that are not saved; save it and audit it again.");
			}
			IDocument document = buffer.getDocument();
			CheckedText before = ProgramCheck.of(finding.program()).run(document.get(), 0);
			Optional<AllowNote> note = finding.marked().in(before).flatMap(found -> AcceptNote.of(before, found, answer.reason()));
			if (note.isEmpty()) {
				return Optional.of(AcceptNote.noPlace(finding.marked()));
			}
			AcceptNote.put(document, note.get(), before);
			buffer.commit(new NullProgressMonitor(), false);
			return Optional.empty();
		} finally {
			buffers.disconnect(path, LocationKind.IFILE, new NullProgressMonitor());
		}
	}
}
