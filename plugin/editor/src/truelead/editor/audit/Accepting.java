package truelead.editor.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBufferManager;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IPath;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.swt.widgets.Shell;
import truelead.audit.result.Acceptance;
import truelead.audit.standing.AcceptFile;
import truelead.audit.standing.AllowNote;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;
import truelead.editor.check.ProgramCheck;
import truelead.editor.check.ProjectAcceptFile;

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
		IFile file = ProjectAcceptFile.of(finding.program().getProject());
		if (file.getLocation() == null) {
			return Optional.of(finding.program().getProject().getName() + " is on no disk, so it can have no accept file.");
		}
		AcceptFile.add(file.getLocation().toFile().toPath(), finding.fingerprint(), finding.rule(), finding.program().getName(), answer);
		file.refreshLocal(IResource.DEPTH_ZERO, new NullProgressMonitor());
		return Optional.empty();
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
			Optional<AllowNote> note = noteFor(finding, buffer.getDocument());
			if (note.isEmpty()) {
				return Optional.of(finding.rule() + " in " + finding.program().getName() + ", line " + (finding.line() + 1)
						+ ": no place for a note was found that accepts this finding and no other. The accept file can hold it.");
			}
			IDocument document = buffer.getDocument();
			CheckedText before = check(finding, document);
			document.replace(document.getLineOffset(note.get().line()), 0, note.get().text() + note.get().lineEnd(before.program().text()));
			buffer.commit(new NullProgressMonitor(), false);
			return Optional.empty();
		} finally {
			buffers.disconnect(path, LocationKind.IFILE, new NullProgressMonitor());
		}
	}

	private static CheckedText check(AuditedFinding finding, IDocument document) {
		return ProgramCheck.of(finding.program()).run(document.get(), 0);
	}

	private Optional<AllowNote> noteFor(AuditedFinding wanted, IDocument document) {
		CheckedText before = check(wanted, document);
		Optional<Finding> found = before.shown().stream().filter(finding -> finding.rule().equals(wanted.rule()) && finding.message().equals(wanted.message()))
				.findFirst();
		return found.flatMap(finding -> AllowNote.of(before.program(), before.result(), finding, answer.reason(),
				text -> ProgramCheck.of(wanted.program()).run(text.toString(), 0).result()));
	}
}
