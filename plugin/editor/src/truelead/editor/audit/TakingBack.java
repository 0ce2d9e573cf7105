package truelead.editor.audit;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.ITextFileBufferManager;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import truelead.audit.standing.AcceptFile;
import truelead.audit.standing.NoteCut;
import truelead.checker.job.Allowance;
import truelead.editor.check.ProjectAcceptFile;
import truelead.grammar.ProgramText;

/** Takes acceptances back: cuts notes out of programs and saves them, and lines out of the accept file. */
final class TakingBack {

	private final IProject project;
	private final List<String> failed = new ArrayList<>();

	private TakingBack(IProject project) {
		this.project = project;
	}

	/** Takes them all back, and says what could not be, one sentence each. */
	static List<String> of(IProject project, List<AcceptedFinding> accepted) {
		TakingBack work = new TakingBack(project);
		// from below, so that what is cut moves no note that is still to be cut
		accepted.stream().filter(one -> one.note().isPresent()).sorted(Comparator.comparing(AcceptedFinding::line).reversed())
				.forEach(one -> work.note(one.program().orElseThrow(), one.note().get()));
		List<AcceptFile.Entry> entries = accepted.stream().map(AcceptedFinding::entry).flatMap(Optional::stream).toList();
		if (!entries.isEmpty()) {
			work.lines(entries);
		}
		return work.failed;
	}

	private void lines(List<AcceptFile.Entry> entries) {
		IFile file = ProjectAcceptFile.of(project);
		try {
			if (!AcceptFile.remove(file.getLocation().toFile().toPath(), entries)) {
				failed.add(file.getName() + " has changed since it was read; open this page again.");
			}
			file.refreshLocal(IResource.DEPTH_ZERO, new NullProgressMonitor());
		} catch (IOException | CoreException cannot) {
			failed.add(file.getName() + ": " + cannot.getMessage());
		}
	}

	private void note(IFile program, Allowance note) {
		ITextFileBufferManager buffers = FileBuffers.getTextFileBufferManager();
		try {
			buffers.connect(program.getFullPath(), LocationKind.IFILE, new NullProgressMonitor());
			try {
				cut(program, note, buffers.getTextFileBuffer(program.getFullPath(), LocationKind.IFILE));
			} finally {
				buffers.disconnect(program.getFullPath(), LocationKind.IFILE, new NullProgressMonitor());
			}
		} catch (CoreException | BadLocationException cannot) {
			failed.add(program.getName() + ": " + cannot.getMessage());
		}
	}

	private void cut(IFile program, Allowance note, ITextFileBuffer buffer) throws BadLocationException, CoreException {
		if (buffer.isDirty()) {
			failed.add(program.getName() + " has changes that are not saved; save it first.");
			return;
		}
		IDocument document = buffer.getDocument();
		boolean same = note.at().line() < document.getNumberOfLines() && note.at().file().text().line(note.at().line())
				.equals(document.get(document.getLineOffset(note.at().line()), document.getLineInformation(note.at().line()).getLength()));
		Optional<NoteCut> cut = same ? NoteCut.of(ProgramText.of(document.get()), note) : Optional.empty();
		if (cut.isEmpty()) {
			failed.add(program.getName() + ", line " + (note.at().line() + 1) + ": the note is not there any more.");
			return;
		}
		document.replace(cut.get().offset(), cut.get().length(), "");
		buffer.commit(new NullProgressMonitor(), false);
	}
}
