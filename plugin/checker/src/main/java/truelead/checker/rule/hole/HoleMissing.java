package truelead.checker.rule.hole;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.NotFollowed;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Nothing made a hole at the place before it is threaded. */
public final class HoleMissing extends HoleRule {

	public HoleMissing() {
		super("hole-missing");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.HOLE_MISSED, Slip.STEPS_ADD_UP);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_TOOL, Slip.DRILLING_CYCLE, Slip.NO_TAP, Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.LEFT_ON, Slip.OTHER_AXIS,
				Slip.DISTANCE_MODE, Slip.DRILLED_LATE, Slip.OTHER_THREAD_CUT, Slip.NO_CENTRE, Slip.CENTRE_WITH_RADIUS,
				Slip.BLOCK_LEFT_OUT);
	}

	@Override
	void check(ThreadingOperation operation, Visits visits, Work work, Consumer<Draft> found) {
		double diameter = diameter(operation);
		List<Visit> missing = HoleState.MISSING.of(visits, work, diameter);
		if (missing.isEmpty()) {
			return;
		}
		boolean others = work.once(name() + operation.group(), () -> anyMade(work.group(operation), work)) || otherHand(operation, work);
		if (others && missing.size() <= Unread.before(missing.get(0).block(), work)) {
			return;
		}
		List<Hole> meant = others ? List.of() : MissedPattern.of(operation, missing, work);
		Optional<Cut> spot = others || !meant.isEmpty() ? Optional.empty() : spotted(operation, missing);
		Optional<ToolUse> idle = others || !meant.isEmpty() || spot.isPresent() ? Optional.empty() : IdleDrill.before(operation, work);
		Visit first = missing.get(0);
		Figures figures = new Figures(first.modal().unit());
		Optional<NotFollowed> call = NotHere.drilling(first.order(), work);
		Optional<MeantHole> left = others && call.isEmpty() ? MeantHole.of(operation, missing, work) : Optional.empty();
		String message = "nothing in this program makes a hole at " + at(first.hole().place(), figures) + " before "
				+ operation.tool().name() + " goes in" + (others ? more(missing) : nor(missing))
				+ (call.isPresent() ? ": by the program that line " + (call.get().block().line() + 1) + " calls, which is not here?"
						: others ? left.map(hole -> "; " + hole.said(at(hole.hole().place(), figures)))
								.orElse("; other holes of the operation are made here: drill it with them, or take its place out")
						: why(spot, idle, meant, first, figures));
		boolean elsewhere = call.isPresent() || !others && meant.isEmpty() && spot.isEmpty() && idle.isEmpty();
		Draft draft = Draft.of(this, elsewhere ? Severity.INFORMATION : Severity.ERROR, Location.of(first.block()), message)
				.programmed("place", at(first.hole().place(), figures), first.block())
				.from("same place", "within " + figures.fine(work.shop().profile().positionTolerance()), "machine profile "
						+ work.shop().profile().name());
		idle.flatMap(ToolUse::change).ifPresent(change -> draft.related(change, "the drill that cuts nothing"));
		call.ifPresent(to -> draft.related(to.block(), "calls a program that is not here"));
		spot.ifPresent(cut -> draft.related(cut.block(), "the block that centres it"));
		left.ifPresent(hole -> draft.related(hole.hole().making().get(0).block(), "makes the hole that nothing threads"));
		left.flatMap(MeantHole::fix).ifPresent(draft::fix);
		meant.stream().limit(1).forEach(hole -> draft.related(hole.making().get(0).block(), "makes holes that nothing threads"));
		found.accept(others(draft, missing, "also without a hole"));
	}

	private static boolean anyMade(List<ThreadingOperation> operations, Work work) {
		return operations.stream().flatMap(o -> Visits.of(o, work).typical().stream()).anyMatch(v -> v.hole().madeBefore(v.order()));
	}

	/** Whether holes are made here for the same thread of the other hand, which the tool mills too. */
	private boolean otherHand(ThreadingOperation operation, Work work) {
		Optional<ThreadSpec> thread = operation.wanted().statedThread().map(Fact::value);
		if (!(operation instanceof ThreadMilling) || thread.isEmpty()) {
			return false;
		}
		double diameter = thread.get().diameter();
		double lead = thread.get().lead();
		return work.once(name() + operation.tool().index() + ' ' + diameter + ' ' + lead,
				() -> anyMade(work.operations().stream().filter(other -> other instanceof ThreadMilling
						&& other.tool().index() == operation.tool().index()
						&& other.wanted().statedThread().filter(t -> t.value().diameter() == diameter
								&& t.value().lead() == lead).isPresent()).toList(), work));
	}

	private static String why(Optional<Cut> spot, Optional<ToolUse> idle, List<Hole> meant, Visit first, Figures figures) {
		if (spot.isPresent()) {
			return "; " + spot.get().tool().name() + " centres it, so nothing was there before";
		}
		if (idle.isPresent()) {
			double size = idle.get().facts().diameter().orElseThrow().value();
			return "; " + idle.get().name() + ", a drill of " + figures.length(size) + " for it, moves and cuts nothing: give it its cycle";
		}
		return meant.isEmpty() ? ": made elsewhere?" : instead(meant, first, figures);
	}

	/**
	 * What marks all the places for a drill that never comes: a centre drill, or a spot drill that would not touch the wall of a hole made
	 * elsewhere.
	 */
	private static Optional<Cut> spotted(ThreadingOperation operation, List<Visit> missing) {
		double minor = operation.wanted().statedThread()
				.map(t -> t.value().diameter() - 2 * t.value().system().profileOverPitch() * t.value().pitch()).orElse(0.0);
		Fact<Double> surface = operation.wanted().surface();
		double level = surface.stated() ? surface.value() : 0;
		double half = operation instanceof Tapping tapping && !tapping.strokes().isEmpty()
				? level + (tapping.strokes().get(0).bottom() - level) / 2 : Double.NaN;
		Optional<Cut> first = Optional.empty();
		for (Visit visit : missing) {
			Optional<Cut> spot = visit.hole().edgeBefore(visit.order()).stream()
					.filter(cut -> cut.tip() > half && centres(cut, level, minor)).findFirst();
			if (spot.isEmpty()) {
				return Optional.empty();
			}
			first = first.or(() -> spot);
		}
		return first;
	}

	/** Nobody goes into a hole with a centre drill, or with a spot drill that leaves its edge as it was. */
	private static boolean centres(Cut cut, double level, double minor) {
		return switch (cut.tool().facts().kind().map(Fact::value).orElse(ToolKind.COUNTERSINK)) {
			case CENTRE_DRILL -> true;
			case SPOT_DRILL -> cut.widthAt(level).filter(wide -> wide.value() < minor).isPresent();
			default -> false;
		};
	}

	private static String nor(List<Visit> missing) {
		int more = missing.size() - 1;
		return more == 0 ? "" : ", nor at its " + more + (more == 1 ? " other place" : " other places");
	}

	/** What the tool was most likely meant for. */
	private static String instead(List<Hole> meant, Visit first, Figures figures) {
		Place place = meant.get(0).place();
		boolean shifted = !place.comparable(first.hole().place());
		String holes = meant.size() == 1 ? "the hole at " : meant.size() + " holes, the first at ";
		return "; " + holes + at(place, figures) + (shifted ? " under another work offset or shift" : "")
				+ (meant.size() == 1 ? " is" : ", are") + " made and never threaded: see " + (shifted ? "G54 to G59, shifts and rotation"
						: "the positions") + " of the tool";
	}
}
