package truelead.checker.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.ToolListLine;
import truelead.checker.thread.Callout;
import truelead.checker.thread.ThreadSpec;

/**
 * The threads that the comments above the first tool name, such as {@code (FLANGE, 12X M10)}: what an operation makes that nothing nearer
 * speaks of, if the hole it goes into suits exactly one of them. Their counts and depths are not taken, since they speak of the part.
 */
final class TitleThreads {

	/** How far a hole may be below the largest, or above the smallest, that a thread is cut or formed in, a part of the pitch. */
	private static final double AMISS = 0.25;

	private final List<LineComment> comments;

	TitleThreads(List<LineComment> comments) {
		this.comments = comments.stream().filter(comment -> ToolListLine.read(comment.text()).isEmpty()).toList();
	}

	/**
	 * The one thread that suits a hole.
	 *
	 * @param drill   diameter of the hole before threading, mm, where it is known; where it is not, nothing is taken
	 * @param implied lead that the operation cuts, mm; NaN where it is not known
	 */
	Optional<Fact<ThreadSpec>> of(Optional<Double> drill, double implied) {
		if (drill.isEmpty()) {
			return Optional.empty();
		}
		Map<String, Fact<ThreadSpec>> suiting = new LinkedHashMap<>();
		for (LineComment comment : comments) {
			for (Callout callout : Callouts.read(comment, implied)) {
				if (suits(callout.spec(), drill.get())) {
					suiting.putIfAbsent(callout.spec().withoutClass().designation(),
							Callouts.fact(comment, callout, FactSource.CALLOUT, callout.spec()));
				}
			}
		}
		return suiting.size() == 1 ? suiting.values().stream().findFirst() : Optional.empty();
	}

	/** Between a hole for a full thread and one for half of it, and a little beyond for a drill that is wrong. */
	private static boolean suits(ThreadSpec spec, double hole) {
		double fullDepth = 1.0825 * spec.pitch();
		return hole > spec.diameter() - fullDepth - AMISS * spec.pitch() && hole < spec.diameter() - fullDepth / 2 + AMISS * spec.pitch();
	}
}
