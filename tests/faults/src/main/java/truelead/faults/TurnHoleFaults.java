package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Holes of lathe programs that are missing, too small, too big, too shallow; threads too short. */
final class TurnHoleFaults {
	private static final double POINT = 0.5 / Math.tan(Math.toRadians(59));

	private TurnHoleFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("lathe: one hole not drilled", "hole-missing", live((job, tap, drill, dice) -> {
			drill.angles = without(drill.angles, dice.whole(0, drill.angles.size() - 1));
			return Aim.join(Aim.numbers(tap), all(tap));
		})));
		all.add(Fault.of("lathe: one hole never threaded", "hole-skipped", live((job, tap, drill, dice) -> {
			if (tap.angles.size() < 3) {
				return List.of();
			}
			tap.angles = without(tap.angles, dice.whole(1, tap.angles.size() - 1));
			return Aim.join(Aim.join(Aim.numbers(tap), all(drill)), Aim.numbers(drill));
		})));
		all.add(Fault.of("lathe: holes drilled on another circle", "hole-missing hole-off-position", live((job, tap, drill, dice) -> {
			if (tap.turned.at != Turned.At.FACE || !tap.cycle()) {
				return List.of();
			}
			double off = new Pen(job.inch).unit(tap.turned.across + dice.pick(-6, -3, 3, 6));
			for (String role : List.of("place", "cycle")) {
				Aim.edit(job, tap, role, (tape, block) -> block.swap('X', Word.of('X', off, job.inch ? 4 : 3)));
			}
			return Aim.join(Aim.numbers(tap), Aim.join(all(tap), all(drill)));
		})).beside("hole-skipped"));
		all.add(drilled("lathe: drill too small", "drill-too-small", s -> s.diameter() - 1.35 * s.pitch() - 0.05));
		all.add(drilled("lathe: drill too big", "drill-too-big", s -> s.diameter() - 0.55 * s.pitch()));
		all.add(Fault.of("lathe: bored too big", "drill-too-big", Aim.at(TurnBore.class, b -> true, (job, bore, dice) -> {
			TurnTap tap = job.ops.stream().filter(TurnTap.class::isInstance).map(TurnTap.class::cast).filter(t -> t.turned.bored)
					.findFirst().orElse(null);
			if (tap == null || !tap.turned.known()) {
				return List.of();
			}
			bore.to = tap.turned.size.diameter() - 0.5 * tap.turned.size.pitch();
			return Aim.join(Aim.numbers(tap), Aim.marks(bore, "cycle"));
		})));
		all.add(Fault.of("lathe: hole shallower than the tap goes", "drill-too-shallow", drill((job, tap, drill, dice) -> {
			drill.depth = tap.tip - tap.turned.size.pitch() * dice.between(0.5, 2);
			return tap.turned.bored ? List.of() : Aim.join(Aim.numbers(tap), Aim.numbers(drill));
		})));
		all.add(Fault.of("lathe: tap runs into the drill point", "drill-too-shallow", drill((job, tap, drill, dice) -> {
			drill.depth = tap.tip + 0.4 * POINT * tap.turned.hole();
			return tap.turned.bored || !tap.turned.named || tap.turned.hole() < 4 ? List.of()
					: Aim.join(Aim.numbers(tap), Aim.numbers(drill));
		})));
		all.add(Fault.of("lathe: thread shorter than called out", "thread-too-short",
				TurnFaults.tap(t -> t.turned.depthNoted && t.turned.known() && t.turned.at != Turned.At.SIDE, (job, tap, dice) -> {
			tap.tip = tap.turned.depth + dice.between(-0.6, 0.4) * tap.turned.size.pitch();
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("lathe: drill in the tapping cycle", "drill-in-tapping-cycle",
				Aim.at(TurnDrill.class, d -> !d.spots && d.tool.name.contains("DRILL") && said(d), (job, drill, dice) -> {
				if (drill.turned.at == Turned.At.CENTRE) {
					drill.style = TurnDrill.Style.CYCLE;
				}
				drill.wrongCode = drill.turned.at == Turned.At.SIDE ? 88 : 84;
				return Aim.numbers(drill);
			})).beside("feed-off-pitch", "feed-missing", "hole-missing", "drill-too-big", "drill-too-small", "drill-too-shallow",
					"threaded-twice", "hole-skipped"));
		all.add(Fault.of("lathe: sign of the depth lost", "plane-heights-wrong",
				TurnFaults.tap(t -> t.cycle() && t.turned.at == Turned.At.CENTRE && t.tip > t.plane + 1, (job, tap, dice) -> {
				Aim.edit(job, tap, "cycle", (tape, block) ->
						block.swap('Z', Word.of('Z', new Pen(job.inch).unit(tap.tip), job.inch ? 4 : 3)));
				return Aim.numbers(tap);
			})));
		return all;
	}

	private static boolean said(TurnDrill drill) {
		return drill.turned.named;
	}

	private interface Put {
		List<String> put(Job job, TurnTap tap, TurnDrill drill, Dice dice);
	}

	private static Fault.Setter drill(Put put) {
		return TurnFaults.tap(t -> !t.turned.through, (job, tap, dice) -> put.put(job, tap, drilling(job, tap), dice));
	}

	private static Fault.Setter live(Put put) {
		return TurnFaults.tap(t -> t.angles.size() > 1, (job, tap, dice) -> put.put(job, tap, drilling(job, tap), dice));
	}

	private static TurnDrill drilling(Job job, TurnTap tap) {
		return job.ops.stream().filter(TurnDrill.class::isInstance).map(TurnDrill.class::cast).filter(d -> d.turned == tap.turned
				&& !d.spots).findFirst().orElseThrow();
	}

	private static List<Double> without(List<Double> angles, int index) {
		List<Double> rest = new ArrayList<>(angles);
		rest.remove(index);
		return List.copyOf(rest);
	}

	private static List<String> all(TurnOp op) {
		return Aim.marks(op, "hole-0", "hole-1", "hole-2", "hole-3", "hole-4", "hole-5");
	}

	private interface Drill {
		double diameter(Size size);
	}

	private static Fault drilled(String name, String rule, Drill diameter) {
		return Fault.of(name, rule, drill((job, tap, drill, dice) -> {
			Size size = tap.turned.size;
			double d = Math.round(diameter.diameter(size) * 10) / 10.0;
			boolean wrong = rule.endsWith("small") ? d < size.minor() - 0.03 : d > size.minor() + 0.3 * size.pitch();
			if (!wrong || tap.turned.formed || tap.turned.size.taper() || tap.turned.bored || !tap.turned.known() || !tap.turned.named) {
				return List.of();
			}
			drill.tool.name = job.inch ? "DRILL " + Figures.trim(d, 1) + "MM" : "DRILL " + Figures.trim(d, 1);
			return Aim.join(Aim.join(Aim.numbers(tap), Aim.numbers(drill)), Aim.marks(drill, "change", "title"));
		}));
	}
}
