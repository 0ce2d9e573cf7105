package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.machine.Step;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.Tapping;
import truelead.checker.work.TimedEvent;
import truelead.checker.work.Work;

/** Rigid tapping, which the end of the cycle does not end on this machine, is still on at the next tool change or at the program's end. */
public final class RigidModeLeftOn extends TappingRule {

	public RigidModeLeftOn() {
		super("rigid-mode-left-on");
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (work.shop().profile().yes(ProfileKey.RIGID_TAP_ENDS_WITH_CYCLE) || tapping.strokes().isEmpty()) {
			return;
		}
		Optional<WordRef> rigid = tapping.strokes().get(tapping.strokes().size() - 1).modal().rigidWord();
		Optional<TimedEvent> next = work.course().eventsAfter(tapping.lastOrder()).stream()
				.filter(e -> e.event().kind() == Step.EventKind.TOOL_CHANGE || e.event().kind() == Step.EventKind.PROGRAM_END
						|| e.event().kind() == Step.EventKind.RIGID_OFF || e.event().kind() == Step.EventKind.RIGID_ON)
				.findFirst();
		if (rigid.isPresent() && next.isPresent() && next.get().event().modal().rigidWord().equals(rigid)
				&& next.get().event().kind() != Step.EventKind.RIGID_OFF) {
			String code = Figures.written(rigid.get());
			String message =
					code + " is still on at this block: the next cycle or spindle word is taken for rigid tapping; cancel it behind G80";
			found.accept(Draft.of(this, Severity.ERROR, Location.of(next.get().event().block()), message)
					.related(Location.of(rigid.get()), "the rigid-tap code").from("end of rigid tapping", "not by the end of the cycle",
							"machine profile " + work.shop().profile().name()));
		}
	}
}
