package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import truelead.checker.thread.HolderKind;

/**
 * What one comment says of threads and tools.
 *
 * @param callouts threads to be cut, in the order written; a thread that a drill prepares for is not among them
 * @param tools    tools named, in the order written
 * @param holder   how a tap is held, where it is said
 * @param thickness how thick the part is that it speaks of, where it says so
 * @param drillsThrough whether it names a drill and says that its holes go through
 */
public record CommentReading(List<Callout> callouts, List<ToolDescription> tools, Optional<HolderKind> holder,
		Optional<Dimension> thickness, boolean drillsThrough) {

	public CommentReading {
		callouts = List.copyOf(callouts);
		tools = List.copyOf(tools);
	}

	/** A comment that says nothing of the kind. */
	public static final CommentReading NOTHING = new CommentReading(List.of(), List.of(), Optional.empty(), Optional.empty(), false);

	/** The tool that the comment is about: the first one named. */
	public Optional<ToolDescription> tool() {
		return tools.stream().findFirst();
	}
}
