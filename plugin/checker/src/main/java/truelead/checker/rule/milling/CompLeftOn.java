package truelead.checker.rule.milling;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step;
import truelead.checker.machine.Step.EventKind;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.tool.CompensationChange;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.TimedEvent;
import truelead.checker.work.Work;

/**
 * A thread mill's compensation is still on at the next tool change or at the program's end: the next tool runs off its path by the old
 * radius. Or any tool's is on in a tapping cycle.
 */
public final class CompLeftOn implements Rule {

	/** Holes that are looked at one by one. */
	private static final int MOST = 2_000;

	@Override
	public String name() {
		return "comp-left-on";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.PART_UNKNOWN, Slip.NO_TAP);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		if (!work.shop().profile().isLathe()) {
			work.tappings().forEach(tapping -> inCycle(work, tapping).ifPresent(found));
		}
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<TimedEvent> end = work.course().eventsAfter(operation.lastOrder()).stream()
					.filter(e -> (e.event().kind() == EventKind.TOOL_CHANGE || e.event().kind() == EventKind.PROGRAM_END))
					.findFirst();
			Optional<CompensationChange> last = end.flatMap(e -> work.course().compensation().before(e.order()))
					.filter(change -> change.after() != Compensation.OFF && change.tool().index() == operation.tool().index());
			if (last.isPresent()) {
				found.accept(finding(operation, end.orElseThrow(), last.get()));
			} else {
				onTheWay(work, operation).ifPresent(found);
			}
		}
	}

	/** A tapping cycle under compensation, which most controls refuse (common practice, no source). */
	private Optional<Finding> inCycle(Work work, Tapping tapping) {
		return tapping.strokes().typical().stream().filter(stroke -> stroke.step() instanceof Step.Stroke
				&& stroke.modal().compensation() != Compensation.OFF).findFirst().map(stroke -> {
			String code = stroke.modal().compensation() == Compensation.LEFT ? "G41" : "G42";
			Draft draft = Draft.of(this, Severity.ERROR, Location.of(stroke.block()), code + " is still on in the tapping cycle: the "
					+ "control stops, or the tap goes down beside its hole by a cutter's radius; G40 before it").on(tapping);
			work.course().compensation().before(stroke.order()).ifPresent(change -> draft.related(change.step().block(), "where " + code
					+ " began"));
			return draft.finding();
		});
	}

	/** Compensation that is still on when the cutter goes up and over to another hole. */
	private Optional<Finding> onTheWay(Work work, ThreadMilling operation) {
		if (operation.passes().typical().stream().noneMatch(CompLeftOn::goesUp) || operation.passes().size() > MOST) {
			return Optional.empty();
		}
		MillPass before = null;
		for (MillPass pass : operation.passes()) {
			int first = before == null ? 0 : before.order();
			if (before != null && !before.place().equals(pass.place()) && goesUp(before)
					&& work.course().compensation().before(pass.order()).filter(change -> change.order() < first).isPresent()) {
				return Optional.of(onTheWay(operation, before, pass));
			}
			before = pass;
		}
		return Optional.empty();
	}

	private static boolean goesUp(MillPass pass) {
		return pass.compensation() != Compensation.OFF && pass.exit().stream().anyMatch(step -> step instanceof Step.Move move
				&& move.rapid() && move.from().along(pass.axis()) != move.to().along(pass.axis())
				&& move.modal().compensation() != Compensation.OFF);
	}

	private Finding onTheWay(ThreadMilling operation, MillPass before, MillPass next) {
		String code = before.compensation() == Compensation.LEFT ? "G41" : "G42";
		Step out = before.last();
		for (Step step : before.exit()) {
			if (step instanceof Step.Move move && move.from().along(before.axis()) != move.to().along(before.axis())) {
				break;
			}
			out = step;
		}
		return Draft.of(this, Severity.ERROR, Location.of(out.block()),
				code + " is still on when the cutter goes up and over to the next hole: it goes down there beside the place by the "
				+ "cutter's radius, at the wall; G40 on the straight move of the lead-out").on(operation)
				.related(next.block(), "the next hole").finding();
	}

	private Finding finding(ThreadMilling operation, TimedEvent end, CompensationChange on) {
		String code = on.after() == Compensation.LEFT ? "G41" : "G42";
		String where = end.event().kind() == EventKind.TOOL_CHANGE ? "the tool change" : "the program's end";
		return Draft.of(this, Severity.ERROR, Location.of(end.event().block()), code + " is still on at " + where
				+ ": the next path is shifted by this cutter's radius; G40 on a straight move after the lead-out").on(operation)
				.related(on.step().block(), "where " + code + " began").finding();
	}
}
