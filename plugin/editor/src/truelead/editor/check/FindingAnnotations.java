package truelead.editor.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.IAnnotationModelExtension;
import truelead.checker.program.Location;
import truelead.checker.rule.Finding;

/** Puts findings into an annotation model: new ones in, gone ones out, in one change, and nobody else's touched. */
final class FindingAnnotations {

	/** More than this in one program help nobody and cost the screen's time. */
	private static final int MOST = 2000;

	private FindingAnnotations() {
	}

	/** Makes the model show these findings of the checked text and no others of ours. */
	static void show(CheckedText checked, IDocument document, IAnnotationModel model) {
		Map<Annotation, Position> added = new HashMap<>();
		List<Finding> findings = checked.shown();
		for (Finding finding : findings.subList(0, Math.min(MOST, findings.size()))) {
			Location place = checked.placeOf(finding);
			int start = Math.min(place.offset(), document.getLength());
			int end = Math.min(start + Math.max(1, place.span().length()), document.getLength());
			added.put(new FindingAnnotation(checked, finding), new Position(start, end - start));
		}
		List<Annotation> removed = new ArrayList<>();
		for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
			if (all.next() instanceof FindingAnnotation old) {
				removed.add(old);
			}
		}
		((IAnnotationModelExtension) model).replaceAnnotations(removed.toArray(Annotation[]::new), added);
	}
}
