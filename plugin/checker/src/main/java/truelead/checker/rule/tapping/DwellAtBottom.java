package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Step;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** A dwell in a tapping cycle: while the feed stands, the spindle must stand too, or the holder pays. */
public final class DwellAtBottom extends TappingRule {

	/** Longer than this a dwell is a slip of the unit, s (common practice, no source). */
	private static final double LONG = 3;

	public DwellAtBottom() {
		super("dwell-at-bottom");
	}

	@Override
	public boolean isOfWords() {
		return true;
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		Optional<Setting> dwell = tapping.strokes().typical().stream().flatMap(DwellAtBottom::cycle)
				.flatMap(cycle -> cycle.word('P').stream()).filter(p -> p.known() && p.value() > 0).findFirst();
		if (dwell.isEmpty() || !tapping.method().taps()) {
			return;
		}
		boolean point = dwell.get().word().map(w -> w.written().indexOf('.') >= 0).orElse(false);
		boolean seconds = point || work.shop().profile().is(ProfileKey.DWELL_UNIT, "s");
		double time = dwell.get().value() / (seconds ? 1 : 1000);
		boolean floats = tapping.wanted().holder().value().floats();
		String said = dwell.get().word().map(Figures::written).orElse("P" + Figures.number(dwell.get().value(), 3));
		Optional<Double> rev = Optional.of(tapping.strokes()).filter(s -> !s.isEmpty()).map(s -> s.get(0).speed()).filter(Setting::known)
				.map(s -> s.value() / 60 * time);
		String message = said + " dwells " + Figures.number(time, 3) + " s at the bottom"
				+ (floats ? ": the spindle runs on" + rev.map(r -> " for up to " + Figures.turns(r) + " turns").orElse("")
						+ " and the floating holder is pulled; leave it out" : time > LONG
						? ": more than 3 s in a cut thread, the unit may be wrong; leave it out or write it in the machine's unit"
						: ": a synchronised cycle needs none");
		Draft draft = Draft.of(this, floats || time > LONG ? Severity.WARNING : Severity.INFORMATION, dwell.get(), tapping.block(), message)
				.programmed("dwell", Figures.number(time, 3) + " s", dwell.get()).from("unit of a dwell", seconds ? "s" : "ms",
						point ? "written with a decimal point" : "machine profile " + work.shop().profile().name());
		if (tapping.wanted().holder().at().isPresent()) {
			draft.known("holder", tapping.wanted().holder().said(), tapping.wanted().holder());
		}
		dwell.get().word().filter(WordRef::literal).ifPresent(word -> draft.fix(Removal.of(word, floats,
				"the cycle reverses at the bottom by itself; a floating holder needs no dwell")));
		found.accept(draft);
	}

	private static Stream<Cycle> cycle(TapStroke stroke) {
		return stroke.step() instanceof Step.Stroke step ? Stream.of(step.cycle()) : Stream.empty();
	}
}
