package truelead.editor.hover;

import org.eclipse.jface.text.IInformationControlCreator;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewer;
import org.eclipse.jface.text.information.IInformationProvider;
import org.eclipse.jface.text.information.IInformationProviderExtension;
import org.eclipse.jface.text.information.IInformationProviderExtension2;

/** Tells at a key what the hover tells with the mouse, of what the caret stands in or behind. */
public final class AtCaret implements IInformationProvider, IInformationProviderExtension, IInformationProviderExtension2 {

	private final ProgramHover hover;

	public AtCaret(ProgramHover hover) {
		this.hover = hover;
	}

	@Override
	public IRegion getSubject(ITextViewer viewer, int offset) {
		IRegion here = hover.getHoverRegion(viewer, offset);
		return here == null && offset > 0 ? hover.getHoverRegion(viewer, offset - 1) : here;
	}

	@Override
	public Object getInformation2(ITextViewer viewer, IRegion subject) {
		return hover.getHoverInfo2(viewer, subject);
	}

	@Override
	@Deprecated
	public String getInformation(ITextViewer viewer, IRegion subject) {
		return hover.getHoverInfo(viewer, subject);
	}

	@Override
	public IInformationControlCreator getInformationPresenterControlCreator() {
		return ToldControl::new;
	}
}
