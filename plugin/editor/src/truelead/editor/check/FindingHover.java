package truelead.editor.check;

import java.util.List;
import org.eclipse.jface.text.IInformationControlCreator;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextHover;
import org.eclipse.jface.text.ITextHoverExtension;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.DefaultInformationControl;

/** Tells of the findings under the mouse: the fact, the numbers behind it and where each came from. */
public final class FindingHover implements ITextHover, ITextHoverExtension {

	@Override
	public String getHoverInfo(ITextViewer viewer, IRegion region) {
		List<FindingAnnotation> found = ShownFindings.at(model(viewer), region.getOffset(), region.getLength());
		return found.isEmpty() ? null : FindingText.html(found);
	}

	@Override
	public IRegion getHoverRegion(ITextViewer viewer, int offset) {
		IAnnotationModel model = model(viewer);
		for (FindingAnnotation annotation : ShownFindings.at(model, offset, 0)) {
			Position position = model.getPosition(annotation);
			if (position != null) {
				return new Region(position.getOffset(), position.getLength());
			}
		}
		return null;
	}

	@Override
	public IInformationControlCreator getHoverControlCreator() {
		return parent -> new DefaultInformationControl(parent, false);
	}

	private static IAnnotationModel model(ITextViewer viewer) {
		return ((ISourceViewer) viewer).getAnnotationModel();
	}
}
