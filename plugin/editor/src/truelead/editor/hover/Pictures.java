package truelead.editor.hover;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import truelead.checker.drawing.Drawing;
import truelead.checker.drawing.Ink;
import truelead.checker.rule.Finding;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.Sheets;
import truelead.checker.work.Work;

/** Pictures of findings, made of the checker's drawings on whatever thread asks. */
final class Pictures {

	private Pictures() {
	}

	/** The picture of a finding's drawing, for a light ground and for a dark one, and the same in words. */
	record Picture(ImageData onLight, ImageData onDark, String text) {
	}

	/** The picture beside a finding; empty where there is nothing to draw. */
	static Optional<Picture> of(Finding finding, Work work) {
		if (finding.operation() < 0 || finding.operation() >= work.operations().size()) {
			return Optional.empty();
		}
		OperationSheet sheet = Sheets.of(work.operations().get(finding.operation()));
		Optional<Drawing> light = Drawings.of(finding, sheet, Ink.BLACK);
		Optional<ImageData> onLight = light.flatMap(drawing -> image(drawing.svg()));
		Optional<ImageData> onDark = Drawings.of(finding, sheet, Ink.WHITE).flatMap(drawing -> image(drawing.svg()));
		return onLight.isEmpty() || onDark.isEmpty() ? Optional.empty() : Optional.of(new Picture(onLight.get(), onDark.get(), light.get().text()));
	}

	private static Optional<ImageData> image(String svg) {
		try {
			return Optional.of(new ImageLoader().load(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)))[0]);
		} catch (SWTException notLoaded) {
			ILog.of(Pictures.class).error("A drawing could not be shown", notLoaded);
			return Optional.empty();
		}
	}
}
