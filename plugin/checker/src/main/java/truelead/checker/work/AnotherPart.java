package truelead.checker.work;

import java.util.List;
import java.util.TreeSet;
import truelead.checker.callout.PartTurned;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Step;
import truelead.checker.tool.StopComments;
import truelead.checker.turn.SinglePoint;

/**
 * Where a program stops for the part to be turned over or another one to be clamped, so that the same place is another hole. A comment at
 * M0 or M1 says it, or nothing is said at M0 and all begins again behind it; on a lathe M0 without a comment is enough.
 */
public final class AnotherPart {

	private final boolean lathe;
	/** Numbers of the steps, of stops that are said to be for another part, and of those of which nothing is said. */
	private final TreeSet<Integer> said = new TreeSet<>();
	private final TreeSet<Integer> bare = new TreeSet<>();

	private AnotherPart(Work work) {
		this(work.shop().profile().isLathe(), work.course().events());
	}

	/** @param events the stops among them count, in the order of execution */
	AnotherPart(boolean lathe, List<TimedEvent> events) {
		this.lathe = lathe;
		for (TimedEvent timed : events) {
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

	/**
	 * The cuts that make a hole before a step: those behind the last stop at which the part is said to be turned, if it is drilled again
	 * there; else all, since it may go through.
	 */
	public static List<Cut> making(Work work, Hole hole, int before) {
		List<Cut> making = hole.makingBefore(before);
		// a single cut is the one whatever stops there are, and is not looked for among thousands of events at every edit
		Integer stop = making.size() < 2 ? null : work.derived(AnotherPart.class, AnotherPart::new).said.lower(before);
		List<Cut> behind = stop == null ? List.of() : making.stream().filter(cut -> cut.order() > stop).toList();
		return behind.isEmpty() ? making : behind;
	}

	/**
	 * A hole as it is before a step: without what was cut there in another part, or another end of it, before the last stop at which the
	 * part is said to be turned.
	 */
	public static Hole inPart(Work work, Hole hole, int before) {
		List<Cut> all = hole.makingBefore(before);
		List<Cut> making = making(work, hole, before);
		return making.size() == all.size() ? hole
				: new Hole(hole.place(), hole.cuts().stream().filter(cut -> cut.order() >= making.get(0).order()).toList());
	}

	/**
	 * Whether a lathe cuts one of two threads on another part, or another end of it, than the other one, by the stops between their tools.
	 */
	public static boolean between(Work work, SinglePoint one, SinglePoint other) {
		int earlier = Math.min(one.tool().firstOrder(), other.tool().firstOrder());
		int later = Math.max(one.tool().firstOrder(), other.tool().firstOrder());
		return work.derived(AnotherPart.class, AnotherPart::new).last(later) > earlier;
	}

	/** Number of the last stop before a step at which a lathe's part may be turned; -1 where there is none. */
	int last(int before) {
		Integer turned = said.lower(before);
		Integer silent = lathe ? bare.lower(before) : null;
		return Math.max(turned == null ? -1 : turned, silent == null ? -1 : silent);
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
