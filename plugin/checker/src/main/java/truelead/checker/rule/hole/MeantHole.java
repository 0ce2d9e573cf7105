package truelead.checker.rule.hole;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Fix;
import truelead.checker.rule.WordText;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The hole that a tap was meant for where it goes to a place without one: it is made with the others of the operation, nothing threads it,
 * and there are as many of those as places without a hole. One of the two places is the slip.
 *
 * @param visit    the tap at the place without a hole
 * @param hole     the hole
 * @param likelier whose place is the slip more likely
 */
record MeantHole(Visit visit, Hole hole, Culprit likelier) {

	/** Whose place is wrong. */
	enum Culprit { TAP, DRILL, EITHER }

	/** Places without a hole, and operations of a program, in which the hole is looked for (a choice of ours). */
	private static final int FEW = 50;
	/** Where an operation has more places, an edit would wait for it (a choice of ours). */
	private static final int MANY = 2000;
	private static final double SAME = 1e-3;

	/** The hole that the first of some visits was meant for; empty where nothing tells which, or whether any. */
	static Optional<MeantHole> of(ThreadingOperation operation, List<Visit> missing, Work work) {
		if (missing.size() > FEW || work.operationsOfProgram().size() > FEW || work.group(operation).stream()
				.mapToInt(one -> Visits.of(one, work).size()).sum() > MANY || !work.evaluated() || work.unthreaded().isEmpty()) {
			return Optional.empty();
		}
		Set<String> ways = new HashSet<>();
		for (ThreadingOperation one : work.group(operation)) {
			Visits.of(one, work).typical().stream().filter(visit -> visit.hole().madeBefore(visit.order()))
					.forEach(visit -> ways.add(LeftHoles.making(visit.hole().cuts(), visit.order(), false)));
		}
		Place first = missing.get(0).hole().place();
		List<Hole> left = work.derived(LeftHoles.class, LeftHoles::new).made(ways).stream()
				.filter(hole -> hole.place().comparable(first)).toList();
		if (left.size() != missing.stream().map(visit -> visit.hole().place()).distinct().count()) {
			return Optional.empty();
		}
		List<Hole> inLine = left.stream().filter(hole -> left.size() == 1 || inLine(hole.place(), first)).toList();
		return inLine.stream().filter(hole -> inLine.size() == 1).findFirst()
				.map(hole -> new MeantHole(missing.get(0), hole, likelier(operation, hole, first, work)));
	}

	/**
	 * Several tools agree on the place of the hole, or its numbers are those of other holes, in a row with them or on the other side of
	 * zero, and the tap's are not: then the tap is wrong; or the other way round.
	 */
	private static Culprit likelier(ThreadingOperation operation, Hole hole, Place tapped, Work work) {
		if (hole.cuts().stream().map(cut -> cut.tool().index()).distinct().count() > 1) {
			return Culprit.TAP;
		}
		List<Place> others = work.group(operation).stream().flatMap(one -> Visits.of(one, work).stream())
				.map(visit -> visit.hole().place()).filter(place -> !place.equals(tapped)).toList();
		int drilled = inRows(hole.place(), others);
		int threaded = inRows(tapped, others);
		return drilled == threaded ? Culprit.EITHER : drilled > threaded ? Culprit.TAP : Culprit.DRILL;
	}

	/** How many of a place's two numbers are those of another place, but for their signs. */
	private static int inRows(Place place, List<Place> others) {
		return (others.stream().anyMatch(other -> Math.abs(Math.abs(other.u()) - Math.abs(place.u())) < SAME) ? 1 : 0)
				+ (others.stream().anyMatch(other -> Math.abs(Math.abs(other.v()) - Math.abs(place.v())) < SAME) ? 1 : 0);
	}

	/** What to type, given how messages name the place of the hole. */
	String said(String place) {
		return switch (likelier) {
			case TAP -> place + ", where the hole is made and never threaded";
			case DRILL -> "drill here and not at " + place + ", where the hole is never threaded";
			case EITHER -> place + ", where the hole is made and never threaded, or drill here in its stead";
		};
	}

	/** Whether one of the two numbers of a place alone is another one, as where one is typed wrong. */
	private static boolean inLine(Place hole, Place place) {
		return Math.abs(hole.u() - place.u()) < SAME != Math.abs(hole.v() - place.v()) < SAME;
	}

	/** The place of the hole in the block, where one word alone of it is another number; empty where that is computed or shifted. */
	Optional<Fix> fix() {
		Place place = visit.hole().place();
		if (likelier != Culprit.TAP || !inLine(hole.place(), place)) {
			return Optional.empty();
		}
		boolean first = Math.abs(hole.place().u() - place.u()) > SAME;
		char address = "XYZ".charAt(first ? place.plane().first() : place.plane().second());
		double unit = visit.modal().unit().mm();
		double typed = first ? place.u() : place.v();
		double meant = first ? hole.place().u() : hole.place().v();
		return WordText.saying(visit.block(), address, typed, unit).flatMap(word -> Draft.change(word, meant / unit, 4, false,
						"see that the tap is meant for the hole that nothing threads"));
	}
}
