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

	private final List<LineComment> comments;

	TitleThreads(List<LineComment> comments) {
		this.comments = comments.stream().filter(comment -> ToolListLine.read(comment.text()).isEmpty()).toList();
	}

	/** The one thread that suits the hole of an operation; none where the hole is not known. */
	Optional<Fact<ThreadSpec>> of(AsCut cut) {
		Map<String, Fact<ThreadSpec>> suiting = new LinkedHashMap<>();
		for (LineComment comment : comments) {
			for (Callout callout : Callouts.read(comment, cut)) {
				if (cut.suitsHole(callout.spec())) {
					suiting.putIfAbsent(callout.spec().withoutClass().designation(),
							Callouts.fact(comment, callout, FactSource.CALLOUT, callout.spec()));
				}
			}
		}
		return suiting.size() == 1 ? suiting.values().stream().findFirst() : Optional.empty();
	}
}
