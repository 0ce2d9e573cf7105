package truelead.editor.check;

import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.DefaultAnnotationHover;
import org.eclipse.jface.text.source.ISourceViewer;

/** Tells of the findings of a line at the ruler; where there are none, of what other annotations stand there. */
public final class FindingRulerHover extends DefaultAnnotationHover {

	@Override
	public String getHoverInfo(ISourceViewer viewer, int line) {
		try {
			IRegion region = viewer.getDocument().getLineInformation(line);
			List<FindingAnnotation> found = ShownFindings.at(viewer.getAnnotationModel(), region.getOffset(), region.getLength());
			if (!found.isEmpty()) {
				return found.stream().map(Annotation::getText).distinct().collect(Collectors.joining("\n"));
			}
		} catch (BadLocationException gone) {
			return null;
		}
		return super.getHoverInfo(viewer, line);
	}

	@Override
	protected boolean isIncluded(Annotation annotation) {
		return !"truelead.editor.saved".equals(annotation.getType());
	}
}
