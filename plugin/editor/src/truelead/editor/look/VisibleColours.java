package truelead.editor.look;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextListener;
import org.eclipse.jface.text.ITextViewerExtension5;
import org.eclipse.jface.text.IViewportListener;
import org.eclipse.jface.text.JFaceTextUtil;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.TextPresentation;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.themes.ITheme;

/**
 * Colours the lines on the screen, and no others: the cost of a key or a scroll does not grow with the program. A line's pieces depend on
 * its text alone, so they are kept by text.
 */
public final class VisibleColours {

	/** As many lines as fill a few screens. */
	private static final int KEPT = 2000;

	private final ISourceViewer viewer;
	private final StyledText widget;
	private final Map<String, List<BlockLook.Piece>> kept = new LinkedHashMap<>(64, 0.75f, true) {
		private static final long serialVersionUID = 1;

		@Override
		protected boolean removeEldestEntry(Map.Entry<String, List<BlockLook.Piece>> eldest) {
			return size() > KEPT;
		}
	};
	private final IPropertyChangeListener themeListener = event -> colourSoon();
	private final ITextListener textListener = event -> {
		if (event.getViewerRedrawState()) {
			colour();
		}
	};
	private final IViewportListener scrollListener = top -> colour();
	/** The first line on the screen when it was coloured last. */
	private int coloured = -1;

	public VisibleColours(ISourceViewer viewer) {
		this.viewer = viewer;
		this.widget = viewer.getTextWidget();
		viewer.addTextListener(textListener);
		viewer.addViewportListener(scrollListener);
		widget.addListener(SWT.Resize, event -> colourSoon());
		// whoever scrolls the widget past the viewer tells no listener of the viewport
		widget.addListener(SWT.Paint, event -> {
			if (widget.getTopIndex() != coloured) {
				colourSoon();
			}
		});
		PlatformUI.getWorkbench().getThemeManager().addPropertyChangeListener(themeListener);
		colourSoon();
	}

	/** Lets go of the workbench; the viewer goes on its own. */
	public void dispose() {
		PlatformUI.getWorkbench().getThemeManager().removePropertyChangeListener(themeListener);
	}

	private void colourSoon() {
		if (!widget.isDisposed()) {
			widget.getDisplay().asyncExec(this::colour);
		}
	}

	private void colour() {
		IDocument document = viewer.getDocument();
		if (widget.isDisposed() || document == null || widget.getCharCount() == 0) {
			return;
		}
		coloured = widget.getTopIndex();
		try {
			int top = Math.max(0, JFaceTextUtil.getPartialTopIndex(widget));
			int bottom = Math.min(widget.getLineCount() - 1, JFaceTextUtil.getPartialBottomIndex(widget) + 1);
			colour(document, top, bottom);
		} catch (BadLocationException changedMeanwhile) {
			colourSoon();
		}
	}

	/** Colours widget lines; each run of them that is a run in the document too is one presentation. */
	private void colour(IDocument document, int top, int bottom) throws BadLocationException {
		ITheme theme = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme();
		int line = top;
		while (line <= bottom) {
			int first = modelLine(line);
			int last = first;
			while (++line <= bottom && modelLine(line) == last + 1) {
				last++;
			}
			if (first >= 0 && last < document.getNumberOfLines()) {
				viewer.changeTextPresentation(presentation(document, first, last, theme.getColorRegistry()), false);
			}
		}
	}

	private int modelLine(int widgetLine) {
		return viewer instanceof ITextViewerExtension5 folding ? folding.widgetLine2ModelLine(widgetLine) : widgetLine;
	}

	private TextPresentation presentation(IDocument document, int first, int last, ColorRegistry colours) throws BadLocationException {
		int start = document.getLineOffset(first);
		IRegion end = document.getLineInformation(last);
		IRegion extent = new Region(start, end.getOffset() + end.getLength() - start);
		TextPresentation presentation = new TextPresentation(extent, 64);
		presentation.setDefaultStyleRange(new StyleRange(extent.getOffset(), extent.getLength(), null, null));
		for (int line = first; line <= last; line++) {
			IRegion region = document.getLineInformation(line);
			String text = document.get(region.getOffset(), region.getLength());
			for (BlockLook.Piece piece : kept.computeIfAbsent(text, BlockLook::of)) {
				int font = piece.kind().font() | (piece.skipped() ? SWT.ITALIC : 0);
				StyleRange style = new StyleRange(region.getOffset() + piece.span().start(), piece.span().length(),
						colours.get(piece.kind().colour()), null, font);
				if (style.length > 0) {
					presentation.addStyleRange(style);
				}
			}
		}
		return presentation;
	}
}
