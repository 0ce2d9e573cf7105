package truelead.editor.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.IWorkspace;
import org.eclipse.core.resources.WorkspaceJob;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.checker.program.Location;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.ProgramThreads;
import truelead.editor.EditorIds;

/** Findings of saved programs as markers of our own type, for the Problems view. Markers of other types are never touched. */
public final class FindingMarkers {

	/** Marker attribute: the rule's name. */
	public static final String RULE = "truelead.rule";

	/** Marker attribute: the fixes on offer, as {@link FixOffer} writes them. */
	public static final String FIXES = "truelead.fixes";

	/** Marker attribute: the name of the lesson that shows why; empty where none does. */
	public static final String LESSON = "truelead.lesson";

	private FindingMarkers() {
	}

	/** Makes the file carry these findings' markers soon, on a worker thread. */
	public static void schedule(IFile file, CheckedText checked) {
		WorkspaceJob job = new WorkspaceJob("Findings of " + file.getName()) {
			@Override
			public IStatus runInWorkspace(IProgressMonitor monitor) throws CoreException {
				try {
					show(file, checked);
				} catch (CoreException failed) {
					if (file.isAccessible()) {
						throw failed;
					}
				}
				return Status.OK_STATUS;
			}
		};
		job.setRule(file.getWorkspace().getRuleFactory().markerRule(file));
		job.setSystem(true);
		job.schedule();
	}

	/** Makes the file carry these findings' markers, and touches nothing where it already does. */
	static void show(IFile file, CheckedText checked) throws CoreException {
		if (!file.isAccessible()) {
			return;
		}
		ProgramThreads threads = new ProgramThreads(checked.result().work());
		List<Map<String, Object>> wanted = checked.shown().stream().map(finding -> attributes(checked, threads, finding)).sorted(ORDER)
				.toList();
		IMarker[] present = file.findMarkers(EditorIds.MARKER, false, IResource.DEPTH_ZERO);
		if (same(present, wanted)) {
			return;
		}
		file.getWorkspace().run(monitor -> {
			file.deleteMarkers(EditorIds.MARKER, false, IResource.DEPTH_ZERO);
			for (Map<String, Object> attributes : wanted) {
				file.createMarker(EditorIds.MARKER, attributes);
			}
		}, file.getWorkspace().getRuleFactory().markerRule(file), IWorkspace.AVOID_UPDATE, null);
	}

	private static final Comparator<Map<String, Object>> ORDER = Comparator.comparing((Map<String, Object> attributes) ->
			(Integer) attributes.get(IMarker.CHAR_START)).thenComparing(attributes -> (String) attributes.get(RULE))
			.thenComparing(attributes -> (String) attributes.get(IMarker.MESSAGE));

	private static boolean same(IMarker[] present, List<Map<String, Object>> wanted) throws CoreException {
		if (present.length != wanted.size()) {
			return false;
		}
		List<Map<String, Object>> there = new ArrayList<>();
		for (IMarker marker : present) {
			Map<String, Object> attributes = new HashMap<>(marker.getAttributes());
			if (!attributes.containsKey(IMarker.CHAR_START) || !attributes.containsKey(RULE)) {
				return false;
			}
			there.add(attributes);
		}
		there.sort(ORDER);
		return there.equals(wanted);
	}

	private static Map<String, Object> attributes(CheckedText checked, ProgramThreads threads, Finding finding) {
		Location place = checked.placeOf(finding);
		Map<String, Object> attributes = new HashMap<>();
		attributes.put(IMarker.MESSAGE, finding.message());
		attributes.put(IMarker.SEVERITY, severityOf(finding.severity()));
		attributes.put(IMarker.LINE_NUMBER, place.line() + 1);
		attributes.put(IMarker.CHAR_START, place.offset());
		attributes.put(IMarker.CHAR_END, place.offset() + place.span().length());
		attributes.put(IMarker.LOCATION, "line " + (place.line() + 1) + ", " + finding.rule());
		attributes.put(RULE, finding.rule());
		attributes.put(LESSON, Lessons.of(finding.rule(), threads.about(finding)).map(Lesson::name).orElse(""));
		attributes.put(FIXES, FixOffer.written(FixOffer.of(checked, finding)));
		return attributes;
	}

	private static int severityOf(Severity severity) {
		return switch (severity) {
			case ERROR -> IMarker.SEVERITY_ERROR;
			case WARNING -> IMarker.SEVERITY_WARNING;
			case INFORMATION -> IMarker.SEVERITY_INFO;
		};
	}
}
