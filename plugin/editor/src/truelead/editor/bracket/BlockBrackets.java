package truelead.editor.bracket;

import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewerExtension2;
import org.eclipse.jface.text.Region;
import org.eclipse.jface.text.source.ICharacterPairMatcher;
import org.eclipse.jface.text.source.ISourceViewer;
import org.eclipse.jface.text.source.MatchingCharacterPainter;
import org.eclipse.jface.util.IPropertyChangeListener;
import org.eclipse.ui.PlatformUI;
import truelead.checker.edit.Brackets;
import truelead.grammar.BlockReader;

/** Finds the other bracket for the one beside the caret; looks at one line alone, so its cost does not grow with the program. */
public final class BlockBrackets implements ICharacterPairMatcher {

	private static final int LONGEST = 4000;
	private static final String COLOUR = "truelead.editor.colour.numbering";

	private int anchor = LEFT;

	/** Makes a viewer draw a box round the other bracket, in a colour of the theme. */
	public static void install(ISourceViewer viewer) {
		MatchingCharacterPainter painter = new MatchingCharacterPainter(viewer, new BlockBrackets());
		painter.setColor(PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry().get(COLOUR));
		IPropertyChangeListener theme = event -> painter.setColor(PlatformUI.getWorkbench().getThemeManager().getCurrentTheme()
				.getColorRegistry().get(COLOUR));
		PlatformUI.getWorkbench().getThemeManager().addPropertyChangeListener(theme);
		viewer.getTextWidget().addDisposeListener(event -> PlatformUI.getWorkbench().getThemeManager().removePropertyChangeListener(theme));
		((ITextViewerExtension2) viewer).addPainter(painter);
	}

	@Override
	public IRegion match(IDocument document, int offset) {
		try {
			IRegion line = document.getLineInformationOfOffset(offset);
			if (line.getLength() > LONGEST) {
				return null;
			}
			var block = BlockReader.read(document.get(line.getOffset(), line.getLength()));
			int column = offset - line.getOffset();
			for (int at : new int[] { column - 1, column }) {
				var other = Brackets.partner(block, at);
				if (other.isPresent()) {
					int first = Math.min(at, other.getAsInt());
					int last = Math.max(at, other.getAsInt());
					anchor = at == first ? LEFT : RIGHT;
					return new Region(line.getOffset() + first, last - first + 1);
				}
			}
			return null;
		} catch (BadLocationException edited) {
			return null;
		}
	}

	@Override
	public int getAnchor() {
		return anchor;
	}

	@Override
	public void clear() {
		// keeps nothing
	}

	@Override
	public void dispose() {
		// holds nothing
	}
}
