package truelead.workbench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Display;

/**
 * Takes pictures of the whole screen into a folder.
 *
 * @param prefix what the names of the pictures begin with
 */
record Camera(Path folder, String prefix) {

	/** What the screen's parts take to come to rest, ms. */
	private static final int REST = 700;

	/** Takes a picture once the screen has come to rest. */
	void take(String name) {
		Screen.idle(REST);
		Display display = Display.getCurrent();
		Rectangle all = display.getBounds();
		Image image = new Image(display, all.width, all.height);
		GC gc = new GC(display);
		gc.copyArea(image, all.x, all.y);
		gc.dispose();
		ImageLoader loader = new ImageLoader();
		loader.data = new ImageData[] { image.getImageData(100) };
		image.dispose();
		try {
			Files.createDirectories(folder);
		} catch (IOException cannot) {
			throw new UncheckedIOException(cannot);
		}
		loader.save(folder.resolve(prefix + "-" + name + ".png").toString(), SWT.IMAGE_PNG);
	}
}
