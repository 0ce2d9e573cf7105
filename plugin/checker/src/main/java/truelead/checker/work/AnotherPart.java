package truelead.checker.work;

import java.util.List;
import java.util.TreeSet;
import java.util.stream.IntStream;
import truelead.checker.callout.PartTurned;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/**
 * Where a program stops for the part to be turned over or another one to be clamped, so that the same place is another hole. A comment at M0 or M1 says
 * it, or nothing is said at M0 and all begins again behind it; on a lathe M0 without a comment is enough.
 */
public final class AnotherPart {

	/** Lines of nothing but comments beside a stop that speak of it (a choice of ours). */
	private static final int LINES = 3;

	private final boolean lathe;
	/** Numbers of the steps, of stops that are said to be for another part, and of those of which nothing is said. */
	private final TreeSet<Integer> said = new TreeSet<>();
	private final TreeSet<Integer> bare = new TreeSet<>();

	private AnotherPart(Work work) {
		lathe = work.shop().profile().is(ProfileKey.KIND, "turning");
		for (TimedEvent timed : work.course().events()) {
			boolean stop = timed.event().kind() == Step.EventKind.STOP;
			if (stop || timed.event().kind() == Step.EventKind.OPTIONAL_STOP) {
				List<String> comments = comments(timed.event().block());
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

	/** What is said beside a stop: in its own line, and in lines of comments alone above and below it. */
	private static List<String> comments(BlockRef stop) {
		ProgramText text = stop.file().text();
		int from = stop.line();
		int to = stop.line();
		while (from > 0 && stop.line() - from < LINES && text.block(from - 1).words().isEmpty()) {
			from--;
		}
		while (to + 1 < text.lineCount() && to - stop.line() < LINES && text.block(to + 1).words().isEmpty()) {
			to++;
		}
		return IntStream.rangeClosed(from, to).boxed().flatMap(line -> text.block(line).elements().stream()).filter(Element.Comment.class::isInstance)
				.map(element -> ((Element.Comment) element).text()).toList();
	}
}
