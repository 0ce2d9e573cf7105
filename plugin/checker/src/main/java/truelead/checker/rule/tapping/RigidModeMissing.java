package truelead.checker.rule.tapping;

import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** The machine profile asks for a rigid-tap code before a tapping cycle, and none is in force. */
public final class RigidModeMissing extends TappingRule {

	public RigidModeMissing() {
		super("rigid-mode-missing");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.NO_TAP);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (!work.shop().profile().yes(ProfileKey.RIGID_TAP_REQUIRED) || tapping.cycle().isEmpty() || !tapping.method().taps()
				|| tapping.wanted().holder().value().floats()) {
			return;
		}
		tapping.strokes().typical().stream().filter(stroke -> stroke.modal().rigid().isEmpty()).findFirst().ifPresent(stroke -> found.accept(draft(work, tapping)));
	}

	private Draft draft(Work work, Tapping tapping) {
		String message = "no rigid-tap code is in force: spindle and feed are not synchronised, and a rigid holder takes no difference; the rigid-tap code "
				+ "with S before the cycle";
		return Draft.of(this, Severity.ERROR, Location.of(tapping.block()), message).from("rigid-tap code", "asked for before a tapping cycle",
				"machine profile " + work.shop().profile().name());
	}
}
