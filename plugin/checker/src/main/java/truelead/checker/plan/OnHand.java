package truelead.checker.plan;

import java.util.EnumMap;
import java.util.Map;
import truelead.checker.job.Fact;
import truelead.checker.job.Job;
import truelead.checker.job.ToolFacts;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/** Which taps for a thread stand in the shop's tool list; drills and thread mills of the list are not looked at. */
final class OnHand {
	private static final int POCKETS = 10_000;

	private OnHand() {
	}

	/** The first pocket with a tap for a thread, by the method that it is for. */
	static Map<Method, Integer> taps(ThreadSpec thread, Job job) {
		Map<Method, Integer> found = new EnumMap<>(Method.class);
		for (int pocket = 0; pocket < POCKETS; pocket++) {
			ToolFacts tool = job.tool(pocket);
			if (tool.isTap() && tool.thread().map(Fact::value).filter(t -> t.sameThread(thread)).isPresent()) {
				found.putIfAbsent(method(tool), pocket);
			}
		}
		return found;
	}

	/** A tap of no stated style has straight flutes. */
	private static Method method(ToolFacts tap) {
		boolean forms = tap.kind().filter(k -> k.value() == ToolKind.FORM_TAP).isPresent();
		return forms ? Method.FORM_TAP
				: tap.has(TapStyle.SPIRAL_POINT) ? Method.SPIRAL_POINT : tap.has(TapStyle.SPIRAL_FLUTE) ? Method.SPIRAL_FLUTE : Method.STRAIGHT_FLUTE;
	}
}
