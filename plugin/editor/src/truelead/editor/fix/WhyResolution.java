package truelead.editor.fix;

import org.eclipse.core.resources.IMarker;
import org.eclipse.swt.graphics.Image;
import org.eclipse.ui.IMarkerResolution2;
import truelead.checker.lesson.Lesson;
import truelead.editor.lesson.LessonView;

/** Opens the lesson of a finding from the Problems view; changes nothing. */
final class WhyResolution implements IMarkerResolution2 {

	private final MarkedFinding finding;
	private final Lesson lesson;

	/** For a finding that a lesson tells more about. */
	WhyResolution(MarkedFinding finding, Lesson lesson) {
		this.finding = finding;
		this.lesson = lesson;
	}

	@Override
	public void run(IMarker marker) {
		finding.showWhy(() -> LessonView.show(lesson));
	}

	@Override
	public String getLabel() {
		return "Show me why: " + lesson.title();
	}

	@Override
	public String getDescription() {
		return lesson.introduction();
	}

	@Override
	public Image getImage() {
		return null;
	}
}
