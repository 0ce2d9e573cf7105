package truelead.editor.look;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageDataProvider;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import truelead.checker.drawing.Drawing;
import truelead.checker.drawing.Ink;

/**
 * A drawing of the checker as pixels, made on any thread.
 *
 * @param plain at a zoom of 100 percent
 * @param twice at 200 percent
 */
public record SharpPicture(ImageData plain, ImageData twice) {

	/** A drawing smaller than this part of its own size cannot be read. */
	private static final double SMALLEST = 0.7;

	/** The drawing at its own size; empty where the platform cannot load it. */
	public static Optional<SharpPicture> of(Drawing drawing) {
		return of(drawing, Integer.MAX_VALUE);
	}

	/** The drawing no wider than some pixels at 100 percent, as far as it can still be read. */
	public static Optional<SharpPicture> of(Drawing drawing, int width) {
		String svg = drawing.svg();
		try {
			double scale = Math.max(SMALLEST, Math.min(1, width / size(svg, "width=\"")));
			return Optional.of(new SharpPicture(load(svg, scale), load(svg, 2 * scale)));
		} catch (SWTException notLoaded) {
			ILog.of(SharpPicture.class).error("A drawing could not be shown", notLoaded);
			return Optional.empty();
		}
	}

	/** The ink that shows on a ground; for any thread. */
	public static Ink inkOn(boolean dark) {
		return dark ? Ink.WHITE : Ink.BLACK;
	}

	/** Whether a ground is dark. */
	public static boolean dark(Color ground) {
		RGB colour = ground.getRGB();
		return colour.red + colour.green + colour.blue < 3 * 128;
	}

	/** The picture for a screen; whoever asks for it disposes of it. */
	public Image on(Display display) {
		ImageDataProvider provider = zoom -> zoom == 100 ? plain : zoom == 200 ? twice : null;
		return new Image(display, provider);
	}

	/** The view box stays, only the size it is drawn at is another, so that it is as sharp at any. */
	private static ImageData load(String svg, double scale) {
		int head = svg.indexOf('>');
		String resized = resized(resized(svg.substring(0, head), "width=\"", scale), "height=\"", scale) + svg.substring(head);
		return new ImageLoader().load(new ByteArrayInputStream(resized.getBytes(StandardCharsets.UTF_8)))[0];
	}

	private static String resized(String head, String attribute, double scale) {
		int from = head.indexOf(" " + attribute) + 1 + attribute.length();
		return head.substring(0, from) + Math.round(size(head, attribute) * scale) + head.substring(head.indexOf('"', from));
	}

	private static double size(String svg, String attribute) {
		int from = svg.indexOf(" " + attribute) + 1 + attribute.length();
		return Double.parseDouble(svg.substring(from, svg.indexOf('"', from)));
	}
}
