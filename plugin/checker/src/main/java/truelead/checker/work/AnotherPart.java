package truelead.checker.work;

import java.util.List;
import java.util.TreeSet;
import truelead.checker.callout.PartTurned;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;

/**
 * Where a program stops for the part to be turned over or another one to be clamped, so that the same place is another hole. A comment at M0 or M1 says
 * it, or nothing is said at M0 and all begins again behind it; on a lathe M0 without a comment is enough.
 */
public final class AnotherPart {

	private final boolean lathe;
	/** Numbers of the steps, of stops that are said to be for another part, and of those of which nothing is said. */
	private final TreeSet<Integer> said = new TreeSet<>();
	private final TreeSet<Integer> bare = new TreeSet<>();

	private AnotherPart(Work work) {
		lathe = work.shop().profile().isLathe();
		for (TimedEvent timed : work.course().events()) {
			boolean stop = timed.event().kind() == Step.EventKind.STOP;
			if (stop || timed.event().kind() == Step.EventKind.OPTIONAL_STOP) {
				List<String> comments = StopComments.of(timed.event().block());
				if (comments.stream().anyMatch(PartTurned::says)) {
					said.add(timed.order());
				} else if (stop && comments.isEmpty()) {
					bare.add(timed.order());
				}
			}
		}
	}

	/** Whether a place is another hole at a later step than it was at an earlier one. */
	public static boolean between(Work work, Hole hole, int earlier, int later) {
		return work.derived(AnotherPart.class, AnotherPart::new).between(hole, earlier, later);
	}

	private boolean between(Hole hole, int earlier, int later) {
		if (!said.subSet(earlier, later).isEmpty()) {
			return true;
		}
		return bare.subSet(earlier, later).stream().anyMatch(stop -> lathe || again(hole, stop, later));
	}

	/** Whether the tool that made a hole makes it once more behind a stop. */
	private static boolean again(Hole hole, int stop, int later) {
		return hole.making().stream().anyMatch(cut -> cut.order() > stop && cut.order() <= later && cut.tool().number() > 0
				&& hole.makingBefore(stop).stream().anyMatch(before -> before.tool().number() == cut.tool().number()));
	}
}
