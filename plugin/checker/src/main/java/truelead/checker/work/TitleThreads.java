package truelead.checker.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.thread.Callout;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolListLine;

/**
 * The threads that the comments above the first tool name, such as {@code (FLANGE, 12X M10)}: what an operation makes that nothing nearer
 * speaks of, if the hole it goes into suits exactly one of them. Their counts speak of the part, which may be one of several on the table,
 * or be turned over.
 */
final class TitleThreads {

	private final List<LineComment> comments;

	TitleThreads(List<LineComment> comments) {
		this.comments = comments.stream().filter(comment -> ToolListLine.read(comment.text()).isEmpty()).toList();
	}

	/** A thread of the title, with what is said of its depth. */
	record Titled(Fact<ThreadSpec> thread, LineComment comment, Callout callout) {
	}

	/** The one thread that suits the hole of an operation; none where the hole is not known. */
	Optional<Titled> of(AsCut cut) {
		Map<String, Titled> suiting = new LinkedHashMap<>();
		for (LineComment comment : comments) {
			for (Callout callout : Callouts.read(comment, cut)) {
				if (cut.suitsHole(callout.spec())) {
					suiting.putIfAbsent(callout.spec().withoutClass().designation(),
							new Titled(Callouts.fact(comment, callout, FactSource.TITLE, callout.spec()), comment, callout));
				}
			}
		}
		return suiting.size() == 1 ? suiting.values().stream().findFirst() : Optional.empty();
	}
}
