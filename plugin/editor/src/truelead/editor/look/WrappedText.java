package truelead.editor.look;

import org.eclipse.jface.text.DefaultInformationControl;
import org.eclipse.jface.text.TextPresentation;
import org.eclipse.swt.graphics.Drawable;
import org.eclipse.swt.graphics.GC;

/**
 * Plain text beside a list: its lines stay lines, as blocks of a program must, and what is too long for the room goes on in the next one.
 */
public final class WrappedText implements DefaultInformationControl.IInformationPresenter,
		DefaultInformationControl.IInformationPresenterExtension {

	@Override
	@Deprecated
	public String updatePresentation(org.eclipse.swt.widgets.Display display, String text, TextPresentation presentation,
			int width, int height) {
		return updatePresentation((Drawable) display, text, presentation, width, height);
	}

	@Override
	public String updatePresentation(Drawable drawable, String text, TextPresentation presentation, int width, int height) {
		GC gc = new GC(drawable);
		try {
			StringBuilder wrapped = new StringBuilder();
			for (String line : text.split("\n", -1)) {
				wrap(gc, line, width, wrapped);
			}
			return wrapped.toString().stripTrailing();
		} finally {
			gc.dispose();
		}
	}

	private static void wrap(GC gc, String line, int width, StringBuilder wrapped) {
		StringBuilder row = new StringBuilder();
		for (String word : line.split(" ", -1)) {
			if (!row.isEmpty() && gc.textExtent(row + " " + word).x > width) {
				wrapped.append(row).append('\n');
				row.setLength(0);
			}
			row.append(row.isEmpty() ? "" : " ").append(word);
		}
		wrapped.append(row).append('\n');
	}
}
