package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Holes that are missing, elsewhere, too small, too big, too shallow, or made in the wrong order. */
final class HoleFaults {
	private static final double POINT = 0.5 / Math.tan(Math.toRadians(59));

	private HoleFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("one hole not drilled", "hole-missing cycle-left-on", threading((job, op, f, dice) -> {
			int n = f.pattern.count();
			if (n < 2) {
				return List.of();
			}
			int i = dice.whole(0, n - 1);
			HoleMaking drill = job.drilling(f);
			List<Place> places = new ArrayList<>(f.pattern.places());
			places.remove(i);
			drill.places.put(f, places);
			return Aim.hole(op, f, i);
		})));
		all.add(Fault.of("one hole drilled off position", "hole-off-position", threading((job, op, f, dice) -> {
			if (!f.known()) {
				return List.of();
			}
			int i = dice.whole(0, f.pattern.count() - 1);
			List<Place> places = new ArrayList<>(f.pattern.places());
			double by = Math.max(0.06, f.size.diameter() * dice.between(0.03, 0.2));
			places.set(i, places.get(i).shifted(dice.pick(by, -by), dice.pick(0.0, by)));
			job.drilling(f).places.put(f, places);
			return Aim.join(Aim.hole(op, f, i), Aim.hole(job.drilling(f), f, i));
		})));
		all.add(Fault.of("one hole never threaded", "hole-skipped", threading((job, op, f, dice) -> {
			int n = f.pattern.count();
			if (n < 3) {
				return List.of();
			}
			int i = dice.whole(1, n - 1);
			List<Place> places = new ArrayList<>(f.pattern.places());
			places.remove(i);
			if (op instanceof Tapping tap) {
				tap.places = places;
			} else {
				((ThreadMilling) op).places = places;
			}
			return Aim.join(Aim.join(Aim.hole(job.drilling(f), f, i), Aim.marks(job.drilling(f), "cycle", "holes")), Aim.numbers(op));
		})).beside("count-differs"));
		all.add(drilled("drill too small", "drill-too-small", Feature.Method.CUT, s -> s.diameter() - 1.35 * s.pitch() - 0.05));
		all.add(drilled("cut thread drilled as for forming", "drill-too-big", Feature.Method.CUT, s -> s.diameter() - 0.46 * s.pitch()));
		all.add(drilled("drill too big", "drill-too-big", Feature.Method.CUT, s -> s.diameter() - 0.6 * s.pitch()));
		all.add(drilled("formed thread drilled as for cutting", "drill-too-small", Feature.Method.FORM,
				s -> s.diameter() - 1.05 * s.pitch()));
		all.add(drilled("drill too big for forming", "drill-too-big", Feature.Method.FORM, s -> s.diameter() - 0.2 * s.pitch()));
		all.add(Fault.of("hole shallower than the tap goes", "drill-too-shallow", Aim.tap(HoleFaults::blind, (job, tap, dice) -> {
			deep(job, tap.feature, tap.tip - tap.feature.size.pitch() * dice.between(0.5, 2));
			return both(job, tap);
		})));
		all.add(Fault.of("tap runs into the drill point", "drill-too-shallow", Aim.tap(t -> blind(t) && job(t), (job, tap, dice) -> {
			deep(job, tap.feature, tap.tip + 0.4 * POINT * tap.feature.hole());
			return both(job, tap);
		})));
		all.add(Fault.of("no room for chips below the tap", "drill-too-shallow",
				Aim.tap(t -> blind(t) && t.feature.named && t.feature.method == Feature.Method.CUT, (job, tap, dice) -> {
			deep(job, tap.feature, tap.tip + POINT * tap.feature.hole() + 0.8 * tap.feature.size.pitch());
			return both(job, tap);
		})));
		all.add(Fault.of("thread shorter than called out", "thread-too-short",
				Aim.tap(t -> t.feature.depthNoted && said(t) && t.feature.surfaceKnown(), (job, tap, dice) -> {
			tap.tip = tap.feature.depth + dice.between(-0.6, 0.4) * tap.feature.size.pitch();
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("thread does not come through", "not-through", Aim.tap(t -> t.feature.wallNoted && t.feature.surfaceKnown(),
				(job, tap, dice) -> {
			tap.tip = tap.feature.wall - dice.between(0.1, 2) * tap.feature.size.pitch();
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("tap through the far face into the fixture", "tap-through-fixture",
				Aim.tap(t -> t.feature.known() && t.feature.wallNoted && t.feature.surfaceKnown(), (job, tap, dice) -> {
			tap.tip = tap.feature.wall + 8 * tap.feature.size.pitch() + 15;
			return Aim.numbers(tap);
		})).beside("deep-thread", "reach-too-short"));
		all.addAll(OrderFaults.all());
		return all;
	}

	/** A fault of either way of threading. */
	interface Threading {
		List<String> put(Job job, Op op, Feature feature, Dice dice);
	}

	static Fault.Setter threading(Threading put) {
		return (job, dice) -> {
			if (job.features.isEmpty()) {
				return List.of();
			}
			Feature feature = dice.pick(job.features);
			return put.put(job, job.threading(feature), feature, dice);
		};
	}

	private static boolean blind(Tapping tap) {
		return !tap.feature.through;
	}

	/** The point of a drill is long enough to run into. */
	private static boolean job(Tapping tap) {
		return tap.feature.hole() > 4 && tap.feature.named;
	}

	private static boolean said(Tapping tap) {
		return tap.feature.note.contains("DEPTH") || tap.tool.name.contains("DEPTH") || tap.tool.name.contains("DEEP");
	}

	private static void deep(Job job, Feature feature, double tip) {
		job.drilling(feature).depth.put(feature, tip);
	}

	private static List<String> both(Job job, Op op) {
		return Aim.join(Aim.numbers(op), Aim.marks(job.drilling(op.features.get(0)), "cycle", "hole-0"));
	}

	private interface Drill {
		double diameter(Size size);
	}

	/** Another drill, named with its diameter in millimetres to the tenth. */
	private static Fault drilled(String name, String rule, Feature.Method method, Drill drill) {
		return Fault.of(name, rule, Aim.tap(t -> t.feature.method == method && t.feature.known() && t.feature.named
				&& !t.feature.size.taper() && t.feature.size.diameter() > 2.9, (job, tap, dice) -> {
			Size size = tap.feature.size;
			double d = Math.round(drill.diameter(size) * 10) / 10.0;
			HoleMaking hole = job.drilling(tap.feature);
			double percent = (size.diameter() - d) / (0.0068 * size.pitch());
			boolean wrong = method == Feature.Method.FORM ? rule.endsWith("small") ? percent > 80 : percent < 50
				: rule.endsWith("small") ? d < size.minor() - 0.03 : d > size.minor() + 0.3 * size.pitch();
			if (!wrong) {
				return List.of();
			}
			hole.tool.name = job.inch ? "DRILL " + Figures.trim(d, 1) + "MM" : "DRILL " + Figures.trim(d, 1);
			return Aim.join(both(job, tap), Aim.marks(hole, "change", "title"));
		}));
	}
}
