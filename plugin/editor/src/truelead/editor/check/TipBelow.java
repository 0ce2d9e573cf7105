package truelead.editor.check;

import org.eclipse.jface.text.DefaultInformationControl;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import truelead.editor.look.WrappedText;

/**
 * What is told of a line, so many pixels below it: the block that it is about stays to be seen. At the foot of the screen it stands above
 * the line.
 */
final class TipBelow extends DefaultInformationControl {

	private static final int WIDEST = 620;
	private static final int HIGHEST = 400;

	private final int below;

	TipBelow(Shell parent, int below) {
		super(parent, new WrappedText());
		this.below = below;
	}

	@Override
	public void setSizeConstraints(int width, int height) {
		super.setSizeConstraints(Math.max(width, WIDEST), Math.max(height, HIGHEST));
	}

	@Override
	public void setLocation(Point place) {
		Rectangle screen = getShell().getMonitor().getClientArea();
		int height = getBounds().height;
		boolean fits = place.y + below + height <= screen.y + screen.height;
		super.setLocation(new Point(place.x, fits ? place.y + below : place.y - height));
	}
}
