package truelead.checker.rule.hole;

import java.util.List;
import java.util.function.Consumer;
import truelead.checker.hole.Place;
import truelead.checker.machine.Rotary;
import truelead.checker.rule.AnotherThread;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.NamedRule;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** A rule that looks at the holes of each threading operation; every finding names the operation's block and tool change. */
abstract class HoleRule extends NamedRule {

	HoleRule(String name) {
		super(name);
	}

	@Override
	public final void check(Work work, Consumer<Finding> found) {
		for (ThreadingOperation operation : work.operations()) {
			Visits visits = Visits.of(operation, work);
			if (!visits.isEmpty()) {
				check(operation, visits, work, draft -> found.accept(draft.on(operation).finding()));
			}
		}
		work.course().singlePoints().stream().filter(turned -> AnotherThread.turned(turned).isEmpty())
				.forEach(turned -> turned(turned, work, draft -> found.accept(draft.finding())));
	}

	/** Looks at a thread that a lathe cuts by a single point; nothing, unless a rule says so. */
	void turned(SinglePoint turned, Work work, Consumer<Draft> found) {
	}

	abstract void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found);

	/** The nominal diameter of the thread of an operation, mm; NaN where nothing tells it. */
	static double diameter(ThreadingOperation operation) {
		return operation.wanted().thread().map(t -> t.value().diameter())
				.orElseGet(() -> operation.wanted().diameterOnly().map(d -> d.value())
						.orElseGet(() -> operation.tool().facts().diameter().map(d -> d.value()).orElse(Double.NaN)));
	}

	/** A place in the program's unit: {@code X30 Y10}, {@code X30 Y10 A90} where a rotary axis is turned. */
	static String at(Place place, Figures figures) {
		String letters = "XYZ";
		return letters.charAt(place.plane().first()) + figures.coordinate(place.u()) + " " + letters.charAt(place.plane().second())
				+ figures.coordinate(place.v()) + turned(place.rotary());
	}

	private static String turned(Rotary rotary) {
		StringBuilder text = new StringBuilder();
		for (int axis = 0; axis < 3; axis++) {
			if (rotary.along(axis) != 0 && !Double.isNaN(rotary.along(axis))) {
				text.append(' ').append("ABC".charAt(axis)).append(Figures.number(rotary.along(axis), 3));
			}
		}
		return text.toString();
	}

	/** The other blocks of a finding on several places, at most ten of them. */
	static Draft others(Draft draft, List<Visit> visits, String what) {
		visits.stream().skip(1).limit(10).forEach(visit -> draft.related(visit.block(), what));
		return draft;
	}

	/** {@code , and at 2 more places}; nothing for one place. */
	static String more(List<Visit> visits) {
		int more = visits.size() - 1;
		return more < 1 ? "" : ", and at " + more + (more == 1 ? " more place" : " more places");
	}
}
