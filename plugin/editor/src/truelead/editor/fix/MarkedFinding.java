package truelead.editor.fix;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.ui.PlatformUI;
import truelead.checker.lesson.Filled;
import truelead.checker.lesson.Filling;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;
import truelead.editor.check.FindingMarkers;
import truelead.editor.check.ProgramCheck;
import truelead.editor.lesson.LessonView;

/**
 * A finding as a view of the workbench lists it, by which it is found again in the text.
 *
 * @param program the program that was checked
 * @param line    from 0
 * @param lesson  the one that tells more about it
 */
public record MarkedFinding(IFile program, String rule, String message, int line, Optional<Lesson> lesson) {

	/** A finding in the text that was just checked. */
	record Found(CheckedText checked, Finding finding) {
	}

	/** What a marker tells of; empty for one that is not ours. */
	public static Optional<MarkedFinding> of(IMarker marker) {
		String rule = marker.getAttribute(FindingMarkers.RULE, "");
		if (rule.isEmpty() || !(marker.getResource() instanceof IFile file) || !file.isAccessible()) {
			return Optional.empty();
		}
		return Optional.of(new MarkedFinding(file, rule, marker.getAttribute(IMarker.MESSAGE, ""),
				marker.getAttribute(IMarker.LINE_NUMBER, 1) - 1, Lessons.named(marker.getAttribute(FindingMarkers.LESSON, ""))));
	}

	/** Checks the program and gives the finding; for any thread but the UI's. */
	Optional<Found> found() {
		CheckedText checked = ProgramCheck.of(program).run(text(), 0);
		return in(checked).map(finding -> new Found(checked, finding));
	}

	/** The finding in a text that was checked: same rule and message, and of those the nearest. */
	public Optional<Finding> in(CheckedText checked) {
		return checked.shown().stream().filter(finding -> finding.rule().equals(rule) && finding.message().equals(message))
				.min((a, b) -> Integer.compare(Math.abs(a.at().line() - line), Math.abs(b.at().line() - line)));
	}

	/** Opens the lesson with the finding's numbers, or does what is given where it has gone or no lesson fits it. */
	public void showWhy(Runnable otherwise) {
		Job job = Job.create("Lesson of " + rule, (ICoreRunnable) monitor -> {
			Optional<Filled> filled = found().flatMap(found -> new Filling(found.checked().result()).of(found.finding()));
			Consumer<Filled> show = LessonView::show;
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> filled.ifPresentOrElse(show, otherwise));
		});
		job.setUser(true);
		job.schedule();
	}

	/** The text as an open editor has it, else as it is on disk. */
	private String text() {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(program.getFullPath(), LocationKind.IFILE);
		if (buffer != null) {
			return buffer.getDocument().get();
		}
		try {
			FileBuffers.getTextFileBufferManager().connect(program.getFullPath(), LocationKind.IFILE, null);
			try {
				return FileBuffers.getTextFileBufferManager().getTextFileBuffer(program.getFullPath(), LocationKind.IFILE)
						.getDocument().get();
			} finally {
				FileBuffers.getTextFileBufferManager().disconnect(program.getFullPath(), LocationKind.IFILE, null);
			}
		} catch (CoreException unreadable) {
			ILog.of(MarkedFinding.class).log(unreadable.getStatus());
			return "";
		}
	}
}
