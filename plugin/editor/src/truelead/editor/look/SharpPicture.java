package truelead.editor.look;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
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

/**
 * A drawing of the checker as pixels for every zoom that screens were seen to have, made on any thread; for another zoom it is made when a
 * screen asks.
 */
public final class SharpPicture {

	/** Percent, until a screen has said what it asks for. */
	private static final Set<Integer> USUAL = Set.of(100, 200);

	/**
	 * What screens have asked for, percent; of all pictures, so that the second one for a screen is made off its thread, and no other than
	 * it needs.
	 */
	private static final Set<Integer> ASKED = ConcurrentHashMap.newKeySet();

	/** A drawing smaller than this part of its own size cannot be read, and a larger one shows no more. */
	private static final double SMALLEST = 0.7;
	private static final double LARGEST = 5;

	private final String svg;
	private final double scale;
	private final Map<Integer, ImageData> byZoom = new ConcurrentHashMap<>();

	private SharpPicture(String svg, double scale) {
		this.svg = svg;
		this.scale = scale;
		(ASKED.isEmpty() ? USUAL : ASKED).forEach(this::at);
	}

	/** The drawing at its own size; empty where the platform cannot load it. */
	public static Optional<SharpPicture> of(Drawing drawing) {
		return of(drawing.svg(), 1);
	}

	/** The drawing as large as some room takes, pixels at 100 percent, as far as it can still be read. */
	public static Optional<SharpPicture> filling(Drawing drawing, int width, int height) {
		double fitting = Math.min((width - 1) / size(drawing.svg(), "width=\""), (height - 1) / size(drawing.svg(), "height=\""));
		return of(drawing.svg(), Math.max(SMALLEST, Math.min(LARGEST, fitting)));
	}

	private static Optional<SharpPicture> of(String svg, double scale) {
		try {
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
			ASKED.add(zoom);
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
