package truelead.checker.hole;

import java.util.List;

/**
 * A hole that an edit has changed.
 *
 * @param cuts   in the order of execution
 * @param visits numbers of the steps that thread there, in order
 */
public record Spot(Place place, List<Link> cuts, List<Integer> visits) {

	/** A cut of a row. */
	public record Link(CutRow row, int index) {

		public int order() {
			return row.order(index);
		}
	}

	public Spot {
		cuts = List.copyOf(cuts);
		visits = List.copyOf(visits);
	}

	/** Whether nothing is done here any more. */
	public boolean gone() {
		return cuts.isEmpty() && visits.isEmpty();
	}

	/** Whether a cut makes the hole. */
	public boolean made() {
		return cuts.stream().anyMatch(link -> link.row().first().kind().makesHole());
	}
}
