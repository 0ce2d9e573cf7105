package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Wrong feeds, speeds, directions, modes and cycles of tapping. */
final class TappingFaults {
	private TappingFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(scaled("feed far off the pitch", "feed-off-pitch", 0.8, 0.88, 0.93, 1.07, 1.12, 1.3, 1.5));
		all.add(scaled("feed a little off the pitch", "feed-off-pitch", 0.965, 0.975, 1.025, 1.035));
		all.add(scaled("feed with the point slipped", "feed-off-pitch", 0.1, 10));
		all.add(scaled("feed of the other unit", "inch-metric-mixup", 25.4, 1 / 25.4));
		all.add(Fault.of("feed per revolution under feed per minute", "feed-in-wrong-mode", Aim.tap(t -> t.perRev && t.feature.known(),
				(job, tap, dice) -> {
			tap.modeBefore = false;
			tap.modeAfter = false;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("feed of the other mode", "feed-in-wrong-mode",
				Aim.tap(t -> t.feature.known() && t.form != Tapping.Form.SYNCHRONISED && t.says != Tapping.Says.VARIABLE,
						(job, tap, dice) -> {
			tap.wrongValue = true;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("feed left over from the last tool", "feed-missing", Aim.tap(t -> Aim.cycle(t) && !Aim.macro(t),
				TappingFaults::noFeed)));
		all.add(Fault.of("F0", "feed-missing", Aim.tap(t -> Aim.cycle(t), (job, tap, dice) -> {
			Aim.edit(job, tap, Aim.macro(tap) ? "call" : "cycle", (tape, block) -> block.swap('F', Word.of('F', 0, 0)));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("spindle turns the wrong way", "spindle-wrong-way", Aim.tap(Aim::known, (job, tap, dice) -> {
			tap.spindle = 7 - tap.spindle;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("cycle of the other hand", "spindle-wrong-way", Aim.tap(t -> Aim.cycle(t) && t.feature.known(),
				(job, tap, dice) -> {
			tap.code = 158 - tap.code;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("S0", "spindle-not-turning", Aim.tap(t -> t.says != Tapping.Says.VARIABLE || Aim.macro(t), (job, tap, dice) -> {
			for (String role : List.of("start", "rigid", "cycle")) {
				Aim.edit(job, tap, role, (tape, block) -> block.swap('S', Word.whole('S', 0)));
			}
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("no S in the program", "spindle-not-turning", Aim.tap(t -> t.says != Tapping.Says.VARIABLE || Aim.macro(t),
				(job, tap, dice) -> {
			if (job.ops.stream().anyMatch(o -> o instanceof Tapping t && t.says == Tapping.Says.VARIABLE)) {
				return List.of();
			}
			job.edits.add(tape -> tape.all().forEach(b -> b.drop('S')));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("spindle never started", "spindle-not-turning",
				Aim.tap(t -> t.form == Tapping.Form.CYCLE || t.form == Tapping.Form.SYNCHRONISED, (job, tap, dice) -> {
				Aim.edit(job, tap, "start", (tape, block) -> block.drop('M'));
				return Aim.numbers(tap);
			})));
		all.add(Fault.of("spindle stopped before the cycle", "spindle-not-turning",
				Aim.tap(t -> t.form == Tapping.Form.CYCLE && !Aim.macro(t), (job, tap, dice) -> {
			job.edits.add(tape -> tape.first(tap.mark("cycle"))
					.ifPresent(b -> tape.before(b, new Block(Word.m(5)).mark(tap.mark("start")))));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("S of the rigid-tap block and of the cycle differ", "speed-changed",
				Aim.tap(t -> t.form == Tapping.Form.RIGID && !Aim.macro(t), (job, tap, dice) -> {
			tap.says = Tapping.Says.CYCLE;
			tap.rigidSpeed = Planner.turns(8 * dice.pick(0.6, 1.6), tap.feature.size.diameter()) + 35;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("tap far too fast", "speed-over-limit", Aim.tap(t -> t.feature.size.diameter() > 7, (job, tap, dice) -> {
			tap.speed = Planner.turns(160, tap.feature.size.diameter());
			tap.rigidSpeed = tap.speed;
			return Aim.numbers(tap);
		})).beside("start-too-close"));
		all.add(Fault.of("no run-up above the surface", "start-too-close", Aim.tap(t -> t.feature.known() && t.feature.surfaceKnown(),
				(job, tap, dice) -> {
			tap.plane = tap.feature.size.pitch() * 0.45;
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "plane"));
		})));
		all.add(Fault.of("tap in a drilling cycle", "tap-in-drilling-cycle", Aim.tap(Aim::cycle, (job, tap, dice) -> {
			tap.code = dice.pick(81, 85 - 3);
			tap.form = Tapping.Form.CYCLE;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("overrides open while feeding in and out", "override-open", Aim.tap(t -> t.form == Tapping.Form.IN_AND_OUT,
				(job, tap, dice) -> {
			tap.overridesLocked = false;
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "out", "reverse"));
		})));
		all.add(Fault.of("feed out unequal to feed in", "override-open feed-off-pitch", Aim.tap(t -> t.form == Tapping.Form.IN_AND_OUT,
				(job, tap, dice) -> {
			tap.outFactor = 1.4;
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "out", "reverse"));
		})).beside("feed-off-pitch", "override-open"));
		all.add(Fault.of("dwell in the cycle", "dwell-at-bottom", Aim.tap(t -> Aim.cycle(t) && !Aim.macro(t), (job, tap, dice) -> {
			Aim.edit(job, tap, "cycle", (tape, block) -> block.with(Word.whole('P', job.rs274 ? 1 : 500)));
			return Aim.numbers(tap);
		})));
		all.addAll(ModeFaults.all());
		return all;
	}

	/** Feed or K off the pitch by one of the factors. */
	private static Fault scaled(String name, String rule, double... factors) {
		return Fault.of(name, rule, Aim.tap(t -> t.feature.known(), (job, tap, dice) -> {
			tap.advance *= factors[dice.whole(0, factors.length - 1)];
			// a feed of the other unit is no mistake where no unit is stated
			return rule.equals("inch-metric-mixup") && !job.unitStated ? List.of() : Aim.numbers(tap);
		}));
	}

	/** The F word is forgotten, and the last feed of the tool before does not happen to fit. */
	private static List<String> noFeed(Job job, Tapping tap, Dice dice) {
		int at = job.ops.indexOf(tap);
		if (at > 0 && job.ops.get(at - 1) instanceof HoleMaking hole) {
			double left = job.perRev ? hole.feed / hole.speed : hole.feed;
			double right = job.perRev || tap.perRev ? tap.advance : tap.advance * tap.speed;
			if (Math.abs(left / right - 1) < 0.05) {
				return List.of();
			}
		}
		Aim.edit(job, tap, "cycle", (tape, block) -> block.drop('F'));
		return Aim.numbers(tap);
	}
}
