package truelead.checker.work;

import java.util.Collections;
import java.util.List;
import truelead.checker.program.InOrder;
import truelead.checker.tool.Compensations;
import truelead.checker.turn.Parting;
import truelead.checker.turn.SinglePoint;

/**
 * The course of the program besides cutting.
 *
 * @param events        all but calls and returns, in the order of execution, at most 100,000; whoever gives them changes them no more
 * @param compensation  every change of cutter radius compensation; at most 10,000 that stand by themselves
 * @param subprogramAlone whether the file is a subprogram alone, so that what its caller set is not known
 * @param toItsEnd      whether the program is followed to where it ends, so that nothing may come behind what is known
 * @param singlePoints  threads that a lathe cuts by a single point, one for each tool and lead, at most 1,000; partings: where it cuts
 *                      across
 */
public record Course(List<TimedEvent> events, Compensations compensation, boolean subprogramAlone, boolean toItsEnd,
		List<SinglePoint> singlePoints, List<Parting> partings) {

	public Course {
		singlePoints = List.copyOf(singlePoints);
		// not copied: they are many, and an edit makes the list anew
		events = Collections.unmodifiableList(events);
	}

	/** The same with other compensation. */
	Course with(Compensations other) {
		return other == compensation ? this : new Course(events, other, subprogramAlone, toItsEnd, singlePoints, partings);
	}

	/** The events behind a step. */
	public List<TimedEvent> eventsAfter(int order) {
		return events.subList(InOrder.before(events, TimedEvent::order, order + 1), events.size());
	}
}
