package truelead.checker.rule;

import truelead.checker.job.Fact;
import truelead.checker.job.ToolFacts;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ToolKind;

/** How messages name the kind of a tool, and whether it forms. */
public final class ToolName {

	private ToolName() {
	}

	/** {@code form tap}, {@code spot drill}; {@code tool} where nobody says. */
	public static String of(ToolFacts facts) {
		return facts.kind().map(Fact::value).map(kind -> kind == ToolKind.CUTTING_TAP || kind == ToolKind.TAP ? "tap" : kind.words())
				.orElse("tool");
	}

	/** Whether a tap forms its thread as against cutting it. */
	public static boolean forms(ToolFacts facts) {
		return facts.kind().filter(k -> k.value() == ToolKind.FORM_TAP).isPresent();
	}

	/** Whether chips go ahead of the tap. */
	public static boolean spiralPoint(ToolFacts facts) {
		return facts.has(TapStyle.SPIRAL_POINT);
	}
}
