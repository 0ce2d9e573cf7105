package truelead.editor.folding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotationModel;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import truelead.checker.edit.Fold;
import truelead.checker.edit.Folds;
import truelead.editor.check.CheckedText;
import truelead.editor.check.LiveCheck;
import truelead.grammar.ProgramText;

/** Keeps what can be folded in an editor in step with its checks; worked out on the thread of the check. What is folded stays folded. */
public final class ProgramFolding implements LiveCheck.Listener {

	/** More folds than this help nobody and cost the screen's time. */
	private static final int MOST = 2000;

	private final ProjectionViewer viewer;

	public ProgramFolding(ProjectionViewer viewer) {
		this.viewer = viewer;
	}

	@Override
	public void checked(CheckedText checked) {
		ProjectionAnnotationModel model = viewer.getProjectionAnnotationModel();
		if (model == null) {
			return;
		}
		Set<Position> wanted = positions(checked);
		List<Annotation> gone = new ArrayList<>();
		for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
			Annotation annotation = all.next();
			Position position = model.getPosition(annotation);
			if (position == null || position.isDeleted() || !wanted.remove(new Position(position.getOffset(), position.getLength()))) {
				gone.add(annotation);
			}
		}
		Map<Annotation, Position> fresh = new HashMap<>();
		wanted.forEach(position -> fresh.put(new ProjectionAnnotation(), position));
		if (!gone.isEmpty() || !fresh.isEmpty()) {
			model.modifyAnnotations(gone.toArray(Annotation[]::new), fresh, new Annotation[0]);
		}
	}

	private static Set<Position> positions(CheckedText checked) {
		ProgramText text = checked.program().text();
		Set<Position> positions = new HashSet<>();
		for (Fold fold : Folds.of(checked.result().work(), MOST)) {
			int start = text.lineStart(fold.first());
			int end = fold.last() + 1 < text.lineCount() ? text.lineStart(fold.last() + 1) : text.length();
			positions.add(new Position(start, end - start));
		}
		return positions;
	}
}
