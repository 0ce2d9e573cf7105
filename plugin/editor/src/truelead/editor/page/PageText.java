package truelead.editor.page;

import java.util.List;
import java.util.Optional;
import org.eclipse.jface.resource.FontRegistry;
import org.eclipse.jface.resource.JFaceColors;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.PlatformUI;
import truelead.editor.look.BlockLook;

/** Shows a passage, to be read and copied; a click or the enter key follows a link, Tab goes to the next one. */
public final class PageText {

	private static final int MARGIN = 10;

	private final StyledText widget;
	private Passage shown = new Passage("", List.of(), List.of());

	public PageText(Composite parent) {
		widget = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.MULTI);
		widget.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
		widget.setLineSpacing(2);
		widget.addListener(SWT.MouseUp, event -> {
			if (event.button == 1 && widget.getSelectionCount() == 0) {
				linkAt(event).ifPresent(link -> link.link().run());
			}
		});
		widget.addListener(SWT.MouseMove,
				event -> widget.setCursor(linkAt(event).map(link -> event.display.getSystemCursor(SWT.CURSOR_HAND)).orElse(null)));
		widget.addListener(SWT.KeyDown, event -> {
			if (event.keyCode == SWT.CR || event.keyCode == SWT.KEYPAD_CR) {
				link(widget.getSelection().x).ifPresent(link -> link.link().run());
			}
		});
		widget.addListener(SWT.Traverse, this::traverse);
	}

	public StyledText widget() {
		return widget;
	}

	/** Shows it from its beginning. */
	public void show(Passage passage) {
		shown = passage;
		widget.setText(passage.text());
		passage.looks().forEach(this::look);
		int digit = digit();
		for (Passage.Indent indent : passage.lines()) {
			int width = indent.digits() * digit;
			if (indent.whole()) {
				widget.setLineIndent(indent.line(), 1, width);
			}
			widget.setLineWrapIndent(indent.line(), 1, indent.whole() ? width + 2 * digit : width);
		}
		widget.setSelection(0);
		widget.setTopPixel(0);
	}

	/** Puts a heading at the top; stays where it is if there is none of these words. */
	public void goTo(String heading) {
		if (!widget.isDisposed()) {
			shown.looks().stream().filter(look -> look.style() == Passage.Style.HEADING
					&& shown.text().startsWith(heading + "\n", look.start())).findFirst().ifPresent(look -> {
				widget.setSelection(look.start());
				widget.setTopIndex(widget.getLineAtOffset(look.start()));
				widget.setTopPixel(widget.getTopPixel() - MARGIN);
			});
		}
	}

	/** Shows the same once more, such as in another theme's colours. */
	public void again() {
		int top = widget.getTopIndex();
		show(shown);
		widget.setTopIndex(top);
	}

	private int digit() {
		GC gc = new GC(widget);
		try {
			gc.setFont(JFaceResources.getTextFont());
			return gc.textExtent("0").x;
		} finally {
			gc.dispose();
		}
	}

	private void look(Passage.Look look) {
		switch (look.style()) {
			case TITLE -> widget.setStyleRange(styled(look, JFaceResources.getHeaderFont(), SWT.NORMAL));
			case HEADING, STRONG -> widget.setStyleRange(styled(look, null, SWT.BOLD));
			case CODE -> widget.setStyleRange(styled(look, JFaceResources.getTextFont(), SWT.NORMAL));
			case SAID -> widget.setStyleRange(styled(look, null, SWT.ITALIC));
			case LINK -> link(look);
			case PROGRAM -> program(look);
			case MARKED -> mark(look);
		}
	}

	private StyleRange styled(Passage.Look look, Font font, int fontStyle) {
		StyleRange style = new StyleRange(look.start(), look.length(), null, null, fontStyle);
		style.font = font;
		return style;
	}

	private void link(Passage.Look look) {
		StyleRange style = styled(look, null, SWT.NORMAL);
		style.underline = true;
		style.foreground = JFaceColors.getHyperlinkText(widget.getDisplay());
		widget.setStyleRange(style);
	}

	/** A block in the colours of the editor. */
	private void program(Passage.Look look) {
		widget.setStyleRange(styled(look, JFaceResources.getTextFont(), SWT.NORMAL));
		var colours = PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry();
		FontRegistry fonts = JFaceResources.getFontRegistry();
		for (BlockLook.Piece piece : BlockLook.of(shown.text().substring(look.start(), look.start() + look.length()))) {
			int font = piece.kind().font();
			StyleRange style = new StyleRange(look.start() + piece.span().start(), piece.span().length(),
					colours.get(piece.kind().colour()), null);
			style.font = (font & SWT.BOLD) != 0 ? fonts.getBold(JFaceResources.TEXT_FONT)
					: (font & SWT.ITALIC) != 0 ? fonts.getItalic(JFaceResources.TEXT_FONT) : JFaceResources.getTextFont();
			if (style.length > 0) {
				widget.setStyleRange(style);
			}
		}
	}

	/** What a finding points at is underlined as the editor does it, whatever colour it has. */
	private void mark(Passage.Look look) {
		for (StyleRange style : widget.getStyleRanges(look.start(), look.length())) {
			style.underline = true;
			style.underlineStyle = SWT.UNDERLINE_ERROR;
			style.underlineColor = JFaceColors.getErrorText(widget.getDisplay());
			widget.setStyleRange(style);
		}
	}

	private Optional<Passage.Look> linkAt(Event event) {
		int offset = widget.getOffsetAtPoint(new Point(event.x, event.y));
		return offset < 0 ? Optional.empty() : link(offset);
	}

	private Optional<Passage.Look> link(int offset) {
		return shown.looks().stream().filter(look -> look.style() == Passage.Style.LINK && look.holds(offset)).findFirst();
	}

	/** Tab and Shift+Tab go from link to link, and at the last one out of the text. */
	private void traverse(Event event) {
		List<Passage.Look> links = shown.looks().stream().filter(look -> look.style() == Passage.Style.LINK).toList();
		int from = widget.getSelection().x;
		Optional<Passage.Look> next = switch (event.detail) {
			case SWT.TRAVERSE_TAB_NEXT -> links.stream().filter(look -> look.start() > from || from == 0 && look.start() == 0).findFirst();
			case SWT.TRAVERSE_TAB_PREVIOUS -> links.stream().filter(look -> look.start() < from).reduce((before, last) -> last);
			default -> Optional.empty();
		};
		if (event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
			event.doit = next.isEmpty();
		}
		next.ifPresent(link -> {
			widget.setSelection(link.start(), link.start() + link.length());
			widget.showSelection();
		});
	}
}
