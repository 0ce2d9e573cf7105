package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Feeds, speeds, directions and modes of threading on a lathe. */
final class TurnFaults {
	private TurnFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(scaled("lathe: feed far off the pitch", "feed-off-pitch", t -> true, 0.8, 0.88, 1.07, 1.12, 1.3, 1.5));
		all.add(scaled("lathe: feed a little off the pitch", "feed-off-pitch", t -> t.form != TurnTap.Form.IN_AND_OUT, 0.965, 0.975,
				1.025, 1.035));
		all.add(scaled("lathe: feed with the point slipped", "feed-off-pitch", t -> true, 0.1, 10));
		all.add(scaled("lathe: feed of the other unit", "inch-metric-mixup", t -> true, 25.4, 1 / 25.4));
		all.add(Fault.of("lathe: feed of the other mode", "feed-in-wrong-mode",
				tap(t -> t.turned.known() && t.form != TurnTap.Form.SYNCHRONISED, (job, tap, dice) -> {
			tap.wrongValue = true;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: live tap without its feed mode", "feed-in-wrong-mode per-rev-left-on",
				tap(t -> t.turned.known() && t.otherMode, (job, tap, dice) -> {
			tap.modeBefore = false;
			tap.modeAfter = false;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: feed mode of the live tap left on", "per-rev-left-on", tap(t -> t.otherMode, (job, tap, dice) -> {
			int next = job.ops.indexOf(tap) + 1;
			if (next >= job.ops.size() || job.hand.orElseThrow().modeAtEachTool()) {
				return List.of();
			}
			tap.modeAfter = false;
			Op then = job.ops.get(next);
			return then instanceof TurnThread || then instanceof TurnTap ? List.of()
				: Aim.join(Aim.marks(then, "cycle", "feed", "hole-0"), Aim.marks(tap, "mode", "cycle"));
		})).beside("feed-in-wrong-mode"));
		all.add(Fault.of("lathe: F forgotten", "feed-missing", tap(TurnTap::cycle, (job, tap, dice) -> {
			Aim.edit(job, tap, "cycle", (tape, block) -> block.drop('F'));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: spindle turns the wrong way", "spindle-wrong-way", tap(t -> t.turned.known() && t.spindle != 33,
				(job, tap, dice) -> {
			tap.spindle = tap.spindle > 4 ? 14 : 7 - tap.spindle;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: S0", "spindle-not-turning", tap(t -> true, (job, tap, dice) -> {
			for (String role : List.of("start", "rigid")) {
				Aim.edit(job, tap, role, (tape, block) -> block.swap('S', Word.whole('S', 0)));
			}
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: no S in the program", "spindle-not-turning", tap(t -> true, (job, tap, dice) -> {
			job.edits.add(tape -> tape.all().forEach(b -> {
				if (!b.has('G', 50)) {
					b.drop('S');
				}
			}));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: S of the rigid-tap block differs", "speed-changed feed-off-pitch",
				tap(t -> t.form == TurnTap.Form.RIGID && t.turned.known(), (job, tap, dice) -> {
				Aim.edit(job, tap, "rigid", (tape, block) ->
						block.swap('S', Word.whole('S', Math.rint(tap.speed * dice.pick(0.6, 1.5)) + 7)));
				return job.perRev != tap.otherMode ? List.of() : Aim.numbers(tap);
			})));
		all.add(Fault.of("lathe: no way to come up to speed", "start-too-close", tap(t -> t.turned.known() && t.turned.at != Turned.At.SIDE,
				(job, tap, dice) -> {
			tap.plane = tap.turned.size.pitch() * 0.45;
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "place"));
		})));
		all.add(Fault.of("lathe: tap in a drilling cycle", "tap-in-drilling-cycle", tap(t -> t.cycle() && t.turned.at != Turned.At.SIDE,
				(job, tap, dice) -> {
			tap.wrongCode = 83;
			tap.form = TurnTap.Form.CYCLE;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: cycle left on", "cycle-left-on", tap(t -> t.cycle() && !t.turned.live(), (job, tap, dice) -> {
			Aim.edit(job, tap, "cancel", Tape::remove);
			Hand.Home home = job.hand.orElseThrow().home();
			int next = job.ops.indexOf(tap) + 1;
			return home != Hand.Home.BOTH && home != Hand.Home.EACH || next >= job.ops.size() ? List.of()
				: Aim.join(Aim.numbers(tap), Aim.join(Aim.marks(tap, "home"), Aim.marks(job.ops.get(next), "change")));
		})));
		all.add(Fault.of("lathe: overrides open while feeding in and out", "override-open", tap(t -> t.form == TurnTap.Form.IN_AND_OUT,
				(job, tap, dice) -> {
			tap.overridesLocked = false;
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "out", "reverse"));
		})));
		all.add(Fault.of("lathe: feed out unequal to feed in", "override-open", tap(t -> t.form == TurnTap.Form.IN_AND_OUT,
				(job, tap, dice) -> {
			tap.outFactor = 1.4;
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "out", "reverse"));
		})).beside("feed-off-pitch"));
		all.add(Fault.of("lathe: lead of a single-point thread", "feed-off-pitch inch-metric-mixup",
				Aim.at(TurnThread.class, t -> true, (job, thread, dice) -> {
			thread.advance *= dice.pick(0.5, 0.8, 0.9, 1.1, 1.25, 1.5, 0.1, 25.4);
			return Aim.numbers(thread);
		})));
		all.add(Fault.of("lathe: feed a minute for a single-point thread", "feed-in-wrong-mode",
				Aim.at(TurnThread.class, t -> true, (job, thread, dice) -> {
			thread.advance *= thread.speed;
			return Aim.numbers(thread);
		})));
		all.add(Fault.of("lathe: taper left on for a parallel thread", "taper-off",
				Aim.at(TurnThread.class, t -> t.style != TurnThread.Style.MOVES, (job, thread, dice) -> {
			// the other way than the taper of a pipe
			double taper = dice.pick(0.2, 0.3) * (thread.inside ? -1 : 1) * thread.size.pitch() / (job.inch ? 25.4 : 1);
			Aim.edit(job, thread, "cycle", (tape, block) ->
					block.with(Word.of(thread.style == TurnThread.Style.ONE_BLOCK ? 'I' : 'R', taper, 4)));
			return Aim.numbers(thread);
		})));
		all.add(Fault.of("lathe: surface speed left on for the tap", "speed-over-limit", tap(t -> !t.turned.live(), (job, tap, dice) -> {
			Aim.edit(job, tap, "start", (tape, block) -> block.drop('G', 97));
			Aim.edit(job, tap, "start", (tape, block) -> block.words.add(0, Word.g(96)));
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: tap runs dry", "coolant-off", tap(t -> true, (job, tap, dice) -> {
			tap.coolant = false;
			if (tap.spindle == 13 || !job.hand.orElseThrow().coolantOffAtHome()
					|| job.ops.stream().noneMatch(o -> o instanceof TurnDrill)) {
				return List.of();
			}
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "change"));
		})));
		return all;
	}

	static Fault.Setter tap(Predicate<TurnTap> fits, Aim.Put<TurnTap> put) {
		return Aim.at(TurnTap.class, fits, put);
	}

	private static Fault scaled(String name, String rule, Predicate<TurnTap> fits, double... factors) {
		return Fault.of(name, rule, tap(t -> t.turned.known() && fits.test(t), (job, tap, dice) -> {
			tap.advance *= factors[dice.whole(0, factors.length - 1)];
			// a feed of the other unit is no mistake where no unit is stated
			return rule.equals("inch-metric-mixup") && !job.unitStated ? List.of() : Aim.numbers(tap);
		}));
	}
}
