package truelead.editor.fix;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.ITextFileBuffer;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IMarkerResolution;
import org.eclipse.ui.IMarkerResolutionGenerator2;
import truelead.checker.rule.Finding;
import truelead.editor.check.CheckedText;
import truelead.editor.check.FindingMarkers;
import truelead.editor.check.ProgramCheck;

/** Offers the fixes of a finding in the Problems view: the same ones as in the editor. */
public final class FixResolutions implements IMarkerResolutionGenerator2 {

	@Override
	public boolean hasResolutions(IMarker marker) {
		return marker.getAttribute(FindingMarkers.FIXABLE, false);
	}

	@Override
	public IMarkerResolution[] getResolutions(IMarker marker) {
		if (!(marker.getResource() instanceof IFile file) || !file.isAccessible()) {
			return new IMarkerResolution[0];
		}
		ProgramCheck check = ProgramCheck.of(file);
		CheckedText checked = check.run(textOf(file), 0);
		return findingOf(marker, checked).map(finding -> Fixes.of(check, checked, finding)).orElse(List.of()).stream()
				.map(FixResolution::new).toArray(IMarkerResolution[]::new);
	}

	/** The finding that a marker tells of: same rule and message, and of those the nearest in the text. */
	private static Optional<Finding> findingOf(IMarker marker, CheckedText checked) {
		String rule = marker.getAttribute(FindingMarkers.RULE, "");
		String message = marker.getAttribute(IMarker.MESSAGE, "");
		int line = marker.getAttribute(IMarker.LINE_NUMBER, 1) - 1;
		return checked.shown().stream().filter(finding -> finding.rule().equals(rule) && finding.message().equals(message))
				.min((a, b) -> Integer.compare(Math.abs(a.at().line() - line), Math.abs(b.at().line() - line)));
	}

	/** The text as an open editor has it, else as it is on disk. */
	private static String textOf(IFile file) {
		ITextFileBuffer buffer = FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE);
		if (buffer != null) {
			return buffer.getDocument().get();
		}
		try {
			FileBuffers.getTextFileBufferManager().connect(file.getFullPath(), LocationKind.IFILE, null);
			try {
				return FileBuffers.getTextFileBufferManager().getTextFileBuffer(file.getFullPath(), LocationKind.IFILE).getDocument().get();
			} finally {
				FileBuffers.getTextFileBufferManager().disconnect(file.getFullPath(), LocationKind.IFILE, null);
			}
		} catch (CoreException unreadable) {
			ILog.of(FixResolutions.class).log(unreadable.getStatus());
			return "";
		}
	}
}
