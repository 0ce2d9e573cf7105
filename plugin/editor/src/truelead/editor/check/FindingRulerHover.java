package truelead.editor.check;

import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;
import java.util.stream.Collectors;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IInformationControlCreator;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.DefaultAnnotationHover;
import org.eclipse.jface.text.source.IAnnotationHoverExtension;
import org.eclipse.jface.text.source.ILineRange;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.LineRange;

/** Tells of the findings of a line at the ruler; where there are none, of what other annotations stand there. */
public final class FindingRulerHover extends DefaultAnnotationHover implements IAnnotationHoverExtension {

	private final BooleanSupplier quiet;
	private final IntSupplier below;

	/**
	 * @param quiet whether nothing is to be told now
	 * @param below how many pixels below the top of the line it is told
	 */
	public FindingRulerHover(BooleanSupplier quiet, IntSupplier below) {
		this.quiet = quiet;
		this.below = below;
	}

	@Override
	public IInformationControlCreator getHoverControlCreator() {
		return parent -> new TipBelow(parent, below.getAsInt());
	}

	@Override
	public boolean canHandleMouseCursor() {
		return false;
	}

	@Override
	public ILineRange getHoverLineRange(ISourceViewer viewer, int line) {
		return new LineRange(line, 1);
	}

	@Override
	public Object getHoverInfo(ISourceViewer viewer, ILineRange lines, int visible) {
		return quiet.getAsBoolean() ? null : getHoverInfo(viewer, lines.getStartLine());
	}

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
