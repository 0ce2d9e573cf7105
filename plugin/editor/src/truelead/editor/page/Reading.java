package truelead.editor.page;

import java.util.Optional;
import truelead.help.HelpPage;

/**
 * What the guide is opened with.
 *
 * @param finding message of the finding that led there; empty where none did
 * @param why     the way to the lesson that tells more about it
 */
public record Reading(HelpPage page, String finding, Optional<Why> why) {

	/**
	 * A way to a lesson.
	 *
	 * @param words what stands on it
	 */
	public record Why(String words, Runnable show) {
	}
}
