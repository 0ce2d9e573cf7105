package truelead.editor.command;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.projection.ProjectionAnnotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotationModel;
import org.eclipse.jface.text.source.projection.ProjectionViewer;

/** The folds that are closed; a change of all of the text needs them open, or the platform forgets them. */
record ClosedFolds(ProjectionAnnotationModel model, List<ProjectionAnnotation> closed) {

	/** Opens those of a viewer. */
	static ClosedFolds open(ISourceViewer viewer) {
		ProjectionAnnotationModel model = viewer instanceof ProjectionViewer folding ? folding.getProjectionAnnotationModel() : null;
		List<ProjectionAnnotation> closed = new ArrayList<>();
		if (model != null) {
			for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
				if (all.next() instanceof ProjectionAnnotation fold && fold.isCollapsed()) {
					closed.add(fold);
				}
			}
		}
		ClosedFolds folds = new ClosedFolds(model, closed);
		closed.forEach(ProjectionAnnotation::markExpanded);
		folds.tell();
		return folds;
	}

	/** Closes them again. */
	void close() {
		closed.forEach(ProjectionAnnotation::markCollapsed);
		tell();
	}

	private void tell() {
		if (!closed.isEmpty()) {
			model.modifyAnnotations(null, null, closed.toArray(Annotation[]::new));
		}
	}
}
