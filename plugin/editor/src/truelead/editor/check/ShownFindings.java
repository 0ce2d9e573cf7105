package truelead.editor.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;

/** Which of our annotations stand where in a model, worst first. */
public final class ShownFindings {

	private ShownFindings() {
	}

	/** Those that touch a range of the document; none where there is no model. */
	public static List<FindingAnnotation> at(IAnnotationModel model, int offset, int length) {
		List<FindingAnnotation> found = new ArrayList<>();
		if (model == null) {
			return found;
		}
		for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
			if (all.next() instanceof FindingAnnotation annotation) {
				Position position = model.getPosition(annotation);
				if (position != null && position.getOffset() <= offset + length && offset <= position.getOffset() + position.getLength()) {
					found.add(annotation);
				}
			}
		}
		found.sort(Comparator.comparing((FindingAnnotation annotation) -> annotation.finding().severity())
				.thenComparing(annotation -> annotation.finding().rule()));
		return found;
	}
}
