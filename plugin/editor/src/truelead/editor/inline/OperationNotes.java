package truelead.editor.inline;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.ITextViewerExtension5;
import org.eclipse.jface.text.Position;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.events.PaintEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import truelead.checker.program.Location;
import truelead.checker.summary.ThreadNotes;
import truelead.checker.work.Work;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.CheckedText;
import truelead.editor.look.Kind;
import truelead.editor.settings.EditorSettings;

/**
 * A quiet note behind the block of each thread, in holes and turned: the thread, the feed check, the depth. It is painted behind the text
 * and is no part of it, so no line moves, and what underlines the text ends with it. A note stays at its block while the text is edited,
 * until the next check.
 */
public final class OperationNotes {

	private static final int GAP = 3;
	private static final String MORE = "\u2026";

	private final CheckedEditor editor;
	private final StyledText widget;
	private List<Note> notes = List.of();

	/** A note and the place of its block's first character, which moves with the text. */
	private record Note(Position place, String text) {
	}

	private OperationNotes(CheckedEditor editor) {
		this.editor = editor;
		this.widget = editor.viewer().getTextWidget();
	}

	/** Puts the notes into an editor, and keeps them in step with its checks; a change of settings is followed by one. */
	public static void install(CheckedEditor editor) {
		OperationNotes painted = new OperationNotes(editor);
		painted.widget.addPaintListener(painted::paint);
		editor.check().addListener(painted::checked);
		editor.check().last().ifPresent(painted::checked);
	}

	private void checked(CheckedText checked) {
		Map<Integer, String> byLine = notesOf(checked);
		onScreen(() -> place(checked, byLine));
	}

	private void onScreen(Runnable work) {
		Display display = PlatformUI.getWorkbench().getDisplay();
		display.asyncExec(() -> {
			if (!widget.isDisposed()) {
				work.run();
			}
		});
	}

	private static Map<Integer, String> notesOf(CheckedText checked) {
		Map<Integer, String> byLine = new TreeMap<>();
		Work work = checked.result().work();
		if (EditorSettings.showsNotes() && ThreadNotes.threads(work) <= EditorSettings.mostNotes()) {
			ThreadNotes.of(work, block -> checked.here(Location.of(block)))
					.forEach(note -> byLine.putIfAbsent(note.block().line(), note.text()));
		}
		return byLine;
	}

	private void place(CheckedText checked, Map<Integer, String> byLine) {
		IDocument document = editor.viewer() == null ? null : editor.viewer().getDocument();
		if (document == null || document.getLength() != checked.program().text().length()) {
			return;
		}
		notes.forEach(note -> document.removePosition(note.place));
		List<Note> fresh = new ArrayList<>();
		byLine.forEach((line, text) -> {
			Position place = new Position(checked.program().text().lineStart(line));
			try {
				document.addPosition(place);
				fresh.add(new Note(place, text));
			} catch (BadLocationException edited) {
				return;
			}
		});
		notes = fresh;
		widget.redraw();
	}

	private void paint(PaintEvent event) {
		if (notes.isEmpty() || editor.viewer() == null || editor.viewer().getDocument() == null) {
			return;
		}
		event.gc.setForeground(PlatformUI.getWorkbench().getThemeManager().getCurrentTheme().getColorRegistry()
				.get(Kind.NUMBERING.colour()));
		event.gc.setFont(widget.getFont());
		int gap = GAP * event.gc.textExtent("0").x;
		for (Note note : notes) {
			int end = note.place.isDeleted() ? -1 : widgetEnd(editor.viewer().getDocument(), note.place.getOffset());
			if (end >= 0 && end <= widget.getCharCount()) {
				int line = widget.getLineAtOffset(end);
				int y = widget.getLinePixel(line);
				if (y < event.y + event.height && y + widget.getLineHeight(end) > event.y) {
					Point at = widget.getLocationAtOffset(end);
					event.gc.drawString(fitting(event.gc, note.text, widget.getClientArea().width - at.x - gap), at.x + gap, at.y, true);
				}
			}
		}
	}

	/** As much of a note as there is room for, with a mark where that is not all of it; the mouse on the block tells it in full. */
	private static String fitting(GC gc, String note, int width) {
		if (gc.stringExtent(note).x <= width) {
			return note;
		}
		int most = Math.max(0, (width - gc.stringExtent(MORE).x) / Math.max(1, gc.stringExtent("0").x));
		String part = note.substring(0, Math.min(most, note.length())).stripTrailing();
		return part.isEmpty() ? "" : part + MORE;
	}

	/** The end of the line that an offset is in, as the widget counts; -1 where it is folded away. */
	private int widgetEnd(IDocument document, int offset) {
		try {
			IRegion line = document.getLineInformationOfOffset(offset);
			int end = line.getOffset() + line.getLength();
			return editor.viewer() instanceof ITextViewerExtension5 folding ? folding.modelOffset2WidgetOffset(end) : end;
		} catch (BadLocationException edited) {
			return -1;
		}
	}
}
