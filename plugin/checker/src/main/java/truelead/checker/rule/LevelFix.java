package truelead.checker.rule;

import java.util.Optional;
import truelead.checker.machine.Step;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** Changes the depth or the R level of a canned cycle. */
public final class LevelFix {

	private LevelFix() {
	}

	/**
	 * Moves the bottom of a cycle to another level in mm; empty where its word is computed, is an X word, which may be a diameter, or a
	 * scale is in force.
	 */
	public static Optional<Fix> depth(Step.Stroke stroke, double level, boolean safe, String why) {
		return move(stroke, "XYZ".charAt(stroke.modal().plane().axis()), level - stroke.bottom(), safe, why);
	}

	/** Moves the R level of a cycle to another level in mm, its bottom left where it is; empty where that takes more than one word. */
	public static Optional<Fix> start(Step.Stroke stroke, double level, boolean safe, String why) {
		return !stroke.relative() ? move(stroke, 'R', level - stroke.rLevel(), safe, why) : Optional.empty();
	}

	/** The word of a cycle that says its depth. */
	public static Optional<WordRef> depthWord(Step.Stroke stroke) {
		return stroke.cycle().word("XYZ".charAt(stroke.modal().plane().axis())).flatMap(Setting::word);
	}

	private static Optional<Fix> move(Step.Stroke stroke, char address, double by, boolean safe, String why) {
		Optional<Setting> setting = stroke.cycle().word(address);
		if (stroke.modal().plane().axis() == 0 || setting.isEmpty() || !setting.get().known() || stroke.modal().scaled()
				|| Double.isNaN(by)) {
			return Optional.empty();
		}
		double unit = stroke.modal().unit().mm();
		return setting.get().word().flatMap(word -> Draft.change(word, setting.get().value() + by / unit, unit == 1 ? 2 : 3, safe, why));
	}
}
