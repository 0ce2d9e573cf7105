package truelead.checker.plan;

import java.util.Optional;
import java.util.stream.IntStream;
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

	/** The number of a tap for a method and thread; empty where the list has none. */
	static Optional<Integer> tap(Method method, ThreadSpec thread, Job job) {
		return IntStream.range(0, POCKETS).filter(n -> serves(job.tool(n), method, thread)).boxed().findFirst();
	}

	private static boolean serves(ToolFacts tool, Method method, ThreadSpec thread) {
		boolean same = tool.thread().map(Fact::value).filter(t -> t.sameThread(thread)).isPresent();
		if (!same || !tool.isTap() || !method.tap()) {
			return false;
		}
		boolean forms = tool.kind().filter(k -> k.value() == ToolKind.FORM_TAP).isPresent();
		Method is = forms ? Method.FORM_TAP
				: tool.has(TapStyle.SPIRAL_POINT) ? Method.SPIRAL_POINT : tool.has(TapStyle.SPIRAL_FLUTE) ? Method.SPIRAL_FLUTE : Method.STRAIGHT_FLUTE;
		return is == method;
	}
}
