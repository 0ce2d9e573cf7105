package truelead.checker.rule.hole;

import java.util.Set;
import java.util.stream.Collectors;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * A thread that one tap begins and another finishes: plug tap first, bottoming tap behind it, or one tap in two depths. How deep it is in
 * the end the last one says.
 */
final class CutDeeperLater {

	/** Pitches and levels that are the same, mm. */
	private static final double SAME = 1e-3;

	/** Operations behind it that are looked at (a choice of ours): the finishing tap comes soon. */
	private static final int SOON = 50;

	private CutDeeperLater() {
	}

	/**
	 * Whether a later operation cuts the same thread in holes of this one, and deeper than a stroke of it. To be asked only where something
	 * would be said: it looks beyond the operation's own holes.
	 */
	static boolean is(Tapping tapping, TapStroke stroke, Work work) {
		work.dependsOnAll();
		return work.operationsOfProgram().stream().filter(later -> later.firstOrder() > stroke.order()).limit(SOON)
				.filter(later -> later instanceof Tapping && same(tapping, later))
				.filter(later -> later.tool().index() != tapping.tool().index() || !stops(stroke.order(), later.firstOrder(), work))
				.anyMatch(later -> deeper((Tapping) later, tapping, stroke));
	}

	/** Whether the program stops between two steps: where the same tap goes on behind it, the part may have been turned over. */
	private static boolean stops(int from, int to, Work work) {
		return work.course().eventsAfter(from).stream().takeWhile(event -> event.order() <= to)
				.anyMatch(event -> event.event().kind() == Step.EventKind.STOP);
	}

	private static boolean deeper(Tapping later, Tapping tapping, TapStroke stroke) {
		Set<Place> places = tapping.strokes().stream().map(TapStroke::place).collect(Collectors.toSet());
		return later.strokes().stream().anyMatch(deeper -> stroke.direction() * (deeper.bottom() - stroke.bottom()) > SAME
				&& places.contains(deeper.place()));
	}

	private static boolean same(ThreadingOperation one, ThreadingOperation other) {
		return one.wanted().statedThread().map(Fact::value).filter(first -> other.wanted().statedThread().map(Fact::value)
				.filter(second -> same(first, second)).isPresent()).isPresent();
	}

	private static boolean same(ThreadSpec one, ThreadSpec other) {
		return Math.abs(one.diameter() - other.diameter()) < SAME && Math.abs(one.lead() - other.lead()) < SAME
				&& one.hand() == other.hand();
	}
}
