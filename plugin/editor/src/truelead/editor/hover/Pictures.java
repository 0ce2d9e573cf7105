package truelead.editor.hover;

import java.util.Optional;
import truelead.checker.drawing.Drawing;
import truelead.checker.rule.Finding;
import truelead.checker.sheet.Drawings;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.work.Work;
import truelead.editor.look.SharpPicture;

/** Pictures of findings, made of the checker's drawings on whatever thread asks. */
final class Pictures {

	private Pictures() {
	}

	/** The picture of a finding's drawing, for a light ground and for a dark one, and the same in words. */
	record Picture(SharpPicture onLight, SharpPicture onDark, String text) {
	}

	/** The picture beside a finding; empty where there is nothing to draw. */
	static Optional<Picture> of(Finding finding, Work work) {
		Optional<ThreadSheet> sheet = new ProgramThreads(work).about(finding);
		Optional<Drawing> light = sheet.flatMap(known -> Drawings.of(finding, known, SharpPicture.inkOn(false)));
		Optional<SharpPicture> onLight = light.flatMap(SharpPicture::of);
		Optional<SharpPicture> onDark = sheet.flatMap(known -> Drawings.of(finding, known, SharpPicture.inkOn(true)))
				.flatMap(SharpPicture::of);
		return onLight.isEmpty() || onDark.isEmpty() ? Optional.empty()
				: Optional.of(new Picture(onLight.get(), onDark.get(), light.get().text()));
	}
}
