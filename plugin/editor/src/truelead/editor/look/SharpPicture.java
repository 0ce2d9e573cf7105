package truelead.editor.look;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
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

/** A drawing of the checker as pixels for every zoom that screens were seen to have, made on any thread; for another zoom it is made when a screen asks. */
public final class SharpPicture {

	/** Percent; of all pictures, so that the second one for a screen is made off its thread. */
	private static final Set<Integer> ZOOMS = ConcurrentHashMap.newKeySet();

	static {
		ZOOMS.addAll(List.of(100, 200));
	}

	/** A drawing smaller than this part of its own size cannot be read. */
	private static final double SMALLEST = 0.7;

	private final String svg;
	private final double scale;
	private final Map<Integer, ImageData> byZoom = new ConcurrentHashMap<>();

	private SharpPicture(String svg, double scale) {
		this.svg = svg;
		this.scale = scale;
		ZOOMS.forEach(this::at);
	}

	/** The drawing at its own size; empty where the platform cannot load it. */
	public static Optional<SharpPicture> of(Drawing drawing) {
		return of(drawing, Integer.MAX_VALUE);
	}

	/** The drawing no wider than some pixels at 100 percent, as far as it can still be read. */
	public static Optional<SharpPicture> of(Drawing drawing, int width) {
		String svg = drawing.svg();
		try {
			double scale = Math.max(SMALLEST, Math.min(1, width / size(svg, "width=\"")));
			return Optional.of(new SharpPicture(svg, scale));
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
		ImageDataProvider provider = zoom -> {
			ZOOMS.add(zoom);
			return at(zoom);
		};
		return new Image(display, provider);
	}

	private ImageData at(int zoom) {
		return byZoom.computeIfAbsent(zoom, percent -> load(svg, scale * percent / 100));
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
