package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.TapLead;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.TapStyle;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** A through thread is tapped much deeper than wall and lead need: what lies below is hit. */
public final class TapThroughFixture extends TappingRule {

	/** What is left free below a through hole, mm, or as many pitches if that is more (common practice, no source). */
	private static final double ALLOWANCE = 3;

	/** The longest lead of a tap that nobody names, turns: plug 3 to 5 (ASME B94.9), form B 3.5 to 5.5 (DIN 2197). */
	private static final double LONGEST = 6;

	public TapThroughFixture() {
		super("tap-through-fixture");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.HITS_BELOW);
	}

	@Override
	public boolean isOfWords() {
		return true;
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.HEIGHTS_MISREAD);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		Optional<Fact<Double>> wall = tapping.wanted().wall().filter(Fact::stated);
		boolean through = tapping.wanted().through().map(Fact::value).orElse(wall.isPresent());
		if (wall.isEmpty() || !through || tapping.wanted().thread().isEmpty() || tapping.strokes().isEmpty() || !tapping.method().taps()
				|| tapping.tool().facts().has(TapStyle.WITH_DRILL)) {
			return;
		}
		TapStroke stroke = tapping.strokes().get(0);
		double pitch = tapping.wanted().thread().get().value().pitch();
		TapLead lead = TapLead.of(tapping.tool().facts());
		double allowance = Math.max(ALLOWANCE, ALLOWANCE * pitch);
		double longest = lead.turns().stated() ? lead.length(pitch) : Math.max(LONGEST * pitch, lead.length(pitch));
		double most = wall.get().value() + longest + allowance;
		double depth = stroke.direction() * (stroke.bottom() - tapping.wanted().surface().value());
		if (depth > most + 1e-6 && tapping.wanted().surface().source() != FactSource.IMPLIED) {
			found.accept(draft(tapping, stroke, wall.get(), lead, pitch, depth, allowance));
		}
	}

	private Draft draft(Tapping tapping, TapStroke stroke, Fact<Double> wall, TapLead lead, double pitch, double depth, double allowance) {
		Figures figures = new Figures(stroke.modal().unit());
		double enough = Math.ceil((wall.value() + lead.length(pitch) + pitch) * 10) / 10;
		String message = "the tap goes " + figures.length(depth) + " deep through a wall of " + figures.length(wall.value()) + ": "
				+ figures.length(depth - wall.value()) + " below it, where its " + lead.said() + " needs "
				+ figures.length(lead.length(pitch)) + ", and hits what lies there; " + figures.length(enough) + " is enough";
		Setting z = stroke.step() instanceof Step.Stroke s
				? s.cycle().word("XYZ".charAt(stroke.place().plane().axis())).orElse(Setting.NONE) : Setting.NONE;
		Draft draft = Draft.of(this, Severity.WARNING, z, stroke.block(), message).programmed("depth", figures.length(depth), z)
				.known("wall", figures.length(wall.value()), wall)
				.known("lead of the tap", figures.length(lead.length(pitch)), lead.turns())
				.from("free below", figures.length(allowance), "common practice, no source")
				.known("surface", figures.length(tapping.wanted().surface().value()), tapping.wanted().surface());
		if (stroke.step() instanceof Step.Stroke s) {
			LevelFix.depth(s, tapping.wanted().surface().value() + stroke.direction() * enough, false, "see what lies below the part")
					.ifPresent(draft::fix);
		}
		return draft;
	}
}
