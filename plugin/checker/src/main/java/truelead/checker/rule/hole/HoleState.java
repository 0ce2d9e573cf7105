package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Hole;
import truelead.checker.rule.DrillsThatTap;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** What the threading tool finds at a place. Each place has one state, so that one missing hole is one finding. */
enum HoleState {
	/** A hole was made there before. */
	MADE,
	/** It is made there only afterwards. */
	MADE_LATER,
	/** One was made beside it, nearer than half the thread's diameter. */
	BESIDE,
	/** Nothing made one. */
	MISSING,
	/** Place or cuts are not known. */
	UNKNOWN;

	/** The visits that find this state; those of one kind find the same but where no hole is made at all, which a hole beside decides. */
	List<Visit> of(Visits visits, Work work, double diameter) {
		if (this == MADE_LATER) {
			return visits.where(visit -> of(work, visits.operation(), visit, diameter) == this);
		}
		List<Visit> open = visits.where(visit -> !visit.hole().madeBefore(visit.order()) || visit.off() > 0);
		return open.isEmpty() ? open : open.stream().filter(visit -> of(work, visits.operation(), visit, diameter) == this).toList();
	}

	/** The state of a visit of an operation; {@code diameter} is the thread's nominal one, mm, NaN where not known. */
	static HoleState of(Work work, ThreadingOperation operation, Visit visit, double diameter) {
		if (visit.hole().madeBefore(visit.order())) {
			return visit.off() > work.shop().profile().positionTolerance() ? BESIDE : MADE;
		}
		if (!visit.hole().place().known() || work.cutsAtUnknownPlaces()) {
			return UNKNOWN;
		}
		if (visit.hole().made()) {
			return MADE_LATER;
		}
		if (DrillsThatTap.of(work).before(visit.hole().place(), visit.order()) || ThroughTwin.is(work, operation, visit)) {
			return UNKNOWN;
		}
		return beside(work, visit, diameter).isPresent() ? BESIDE : MISSING;
	}

	/** The nearest hole made beside a place. */
	static Optional<Hole> beside(Work work, Visit visit, double diameter) {
		if (visit.off() > 0 && visit.hole().madeBefore(visit.order())) {
			return Optional.of(visit.hole());
		}
		double reach = Double.isNaN(diameter) ? 0 : diameter / 2;
		return reach > 0 ? work.holeBeside(visit.hole().place(), reach, visit.order()) : Optional.empty();
	}
}
