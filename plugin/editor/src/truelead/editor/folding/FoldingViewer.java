package truelead.editor.folding;

import java.util.Iterator;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ISlaveDocumentManager;
import org.eclipse.jface.text.projection.ProjectionDocument;
import org.eclipse.jface.text.projection.ProjectionDocumentManager;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IOverviewRuler;
import org.eclipse.jface.text.source.IVerticalRuler;
import org.eclipse.jface.text.source.projection.ProjectionAnnotation;
import org.eclipse.jface.text.source.projection.ProjectionAnnotationModel;
import org.eclipse.jface.text.source.projection.ProjectionViewer;
import org.eclipse.swt.widgets.Composite;

/**
 * A viewer with folds that shows the program's own document for as long as no fold is closed. Left to itself the platform would copy all of
 * the text for the screen as soon as there is something to fold, and hold the screen for half a second in a program of a million blocks.
 */
public final class FoldingViewer extends ProjectionViewer {

	public FoldingViewer(Composite parent, IVerticalRuler ruler, IOverviewRuler overview, boolean overviewVisible, int styles) {
		super(parent, ruler, overview, overviewVisible, styles);
	}

	@Override
	protected ISlaveDocumentManager createSlaveDocumentManager() {
		return new ProjectionDocumentManager() {
			@Override
			public IDocument createSlaveDocument(IDocument master) {
				boolean whole = isProjectionMode() && !(getVisibleDocument() instanceof ProjectionDocument)
						&& !folded(getProjectionAnnotationModel());
				return whole ? null : super.createSlaveDocument(master);
			}
		};
	}

	/** No document for the screen means that the program's own stays there; it is let go only with the program. */
	@Override
	protected void setVisibleDocument(IDocument document) {
		if (document != null || getDocument() == null) {
			super.setVisibleDocument(document);
		}
	}

	private static boolean folded(ProjectionAnnotationModel folds) {
		for (Iterator<Annotation> all = folds.getAnnotationIterator(); all.hasNext();) {
			if (all.next() instanceof ProjectionAnnotation fold && fold.isCollapsed()) {
				return true;
			}
		}
		return false;
	}
}
