package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The S of the rigid-tap block and the S in force in the cycle differ, or the speed changes between the passes of a thread that a lathe
 * cuts.
 */
public final class SpeedChanged extends TappingRule {

	public SpeedChanged() {
		super("speed-changed");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.TWO_SPEEDS);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		work.course().singlePoints().forEach(turned -> TurnedSpindle.speed(this, turned).map(Draft::finding).ifPresent(found));
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		for (TapStroke stroke : tapping.strokes().typical()) {
			Optional<Setting> rigid = stroke.modal().rigid().filter(Setting::known);
			if (rigid.isPresent() && stroke.speed().known() && Math.abs(rigid.get().value() - stroke.speed().value()) > 1e-6) {
				found.accept(draft(tapping, stroke, rigid.get()));
				return;
			}
		}
	}

	private Draft draft(Tapping tapping, TapStroke stroke, Setting rigid) {
		String message = "the rigid-tap block says S" + Figures.number(rigid.value(), 1) + ", the cycle runs at S"
				+ Figures.number(stroke.speed().value(), 1) + ": feed and turn fall out of step, or the control stops; one speed for both";
		Draft draft = Draft.of(this, Severity.ERROR, stroke.speed(), stroke.block(), message)
				.programmed("speed of the rigid-tap block", "S" + Figures.number(rigid.value(), 1), rigid)
				.programmed("speed in the cycle", "S" + Figures.number(stroke.speed().value(), 1), stroke.speed());
		rigid.word().ifPresent(word -> draft.related(Location.of(word), "the speed of the rigid-tap block"));
		tapping.wanted().statedThread().flatMap(t -> TapFeed.of(tapping, stroke).filter(f -> !f.perTurn()).filter(f -> {
			double lead = t.value().lead();
			return Math.abs(f.feed().value() * stroke.modal().unit().mm() - lead * rigid.value()) < 0.001 * lead * rigid.value();
		})).flatMap(f -> stroke.speed().word()).flatMap(word -> Draft.change(word, rigid.value(), 1, false,
				"F and the thread fit the speed of the rigid-tap block; see that it is the tap's")).ifPresent(draft::fix);
		return draft;
	}
}
