package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the machine, the tool, the wall or the class does not allow. */
final class ToolFaults {
	private ToolFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("no rigid-tap code on a machine that asks for one", "rigid-mode-missing",
				Aim.tap(t -> Aim.cycle(t), (job, tap, dice) -> {
			if (job.rs274) {
				return List.of();
			}
			job.machine = Optional.of(Machine.strict());
			Particulars.rigid(job);
			tap.form = Tapping.Form.CYCLE;
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("rigid tapping not ended on a machine that keeps it", "rigid-mode-left-on",
				Aim.tap(t -> t.form == Tapping.Form.RIGID, (job, tap, dice) -> {
			job.machine = Optional.of(Machine.keepsRigid());
			tap.rigidEnded = false;
			List<String> marks = new ArrayList<>(List.of("end"));
			job.ops.forEach(o -> marks.addAll(Aim.marks(o, "change", "rigid", "cycle", "call", "hole-0")));
			return marks;
		})).beside("speed-changed"));
		all.add(Fault.of("more torque than the spindle has", "torque-high", Aim.tap(t -> t.feature.known() && !t.feature.size.taper(),
				(job, tap, dice) -> {
			// kc of steel 2100 N/mm2, from memory; M = kc P^2 D / 8000
			Size size = tap.feature.size;
			job.stock = "STEEL";
			double torque = 2100 * size.pitch() * size.pitch() * size.diameter() / 8000 * (tap.feature.method == Feature.Method.FORM ? 2.5
					: 1);
			job.machine = Optional.of(Machine.weak(Math.max(0.02, 0.6 * torque)));
			return job.rs274 ? List.of() : Aim.join(Aim.numbers(tap), List.of("stock"));
		})));
		all.add(Fault.of("tool shorter than the hole is deep", "reach-too-short",
				Aim.at(Op.class, o -> threads(o) && o.features.get(0).surfaceKnown(), (job, op, dice) -> {
			Feature f = op.features.get(0);
			op.notes.removeIf(n -> n.contains("REACH"));
			op.notes.add(Particulars.reach(op, new Callouts(dice, job.inch).length(f.tip * dice.between(0.5, 0.9))));
			return Aim.join(op instanceof Tapping ? Aim.numbers(op) : MillingFaults.helix((ThreadMilling) op), Aim.marks(op, "note"));
		})));
		all.add(Fault.of("too little wall left below the drill", "wall-too-thin",
				Aim.at(Op.class, o -> threads(o) && thin(o.features.get(0)), (job, op, dice) -> {
			Feature f = op.features.get(0);
			op.notes.removeIf(n -> n.contains("WALL"));
			op.notes.add("HOLE: WALL " + new Callouts(dice, job.inch).length(f.drillTip + 0.1 * f.hole()));
			if (!f.note.contains("BLIND")) {
				op.notes.removeIf(n -> n.startsWith("THREAD"));
				op.notes.add("THREAD: " + new Callouts(dice, job.inch).plain(f.size, f.left) + ", BLIND");
			}
			return Aim.join(Aim.hole(job.drilling(f), f, 0), Aim.join(Aim.numbers(job.drilling(f)), Aim.marks(op, "note")));
		})));
		all.add(Fault.of("feed of the edge at the cutter's centre", "edge-feed-high",
				Aim.mill(m -> m.feature.known() && !m.feature.size.taper() && m.compensation == ThreadMilling.Compensation.NONE,
						(job, mill, dice) -> {
			if (job.perRev) {
				return List.of();
			}
			mill.feed = Math.max(8, Math.rint(mill.speed * 0.12));
			mill.notes.removeIf(n -> n.contains("TEETH"));
			mill.notes.add("TOOL: T" + mill.tool.number + ", TEETH 3, FZ " + (job.inch ? "0.0016" : "0.04"));
			return MillingFaults.helix(mill);
		})));
		all.add(Fault.of("limit of the tap above the class", "tap-limit-against-class",
				Aim.tap(t -> t.feature.known() && !t.feature.callout.isEmpty() && (t.feature.size.series().unified()
						|| t.feature.size.series().metric()), (job, tap, dice) -> {
			Size size = tap.feature.size;
			String mark = size.series().metric() ? (size.pitch() < 0.5 || dice.chance(0.5) ? "6G" : "7G")
					: "H" + (int) Math.ceil(tolerance2B(size) / 0.0005 + 2);
			tap.notes.removeIf(n -> n.contains("LIMIT"));
			tap.notes.add("TOOL: T" + tap.tool.number + ", LIMIT " + mark);
			return Aim.join(Aim.numbers(tap), Aim.marks(tap, "note"));
		})));
		all.add(Fault.of("many parts on a plate and no stop to gauge one", "no-check-stop",
				Aim.at(Op.class, o -> threads(o) && o.features.get(0).pattern.count() > 4, (job, op, dice) -> {
				Feature f = op.features.get(0);
				f.offsets = f.method == Feature.Method.FORM ? List.of(54, 55, 56, 57, 58, 59)
						: List.of(54, 55, 56, 57, 58, 59).subList(0, 1 + 26 / f.pattern.count());
				if (f.holes() <= (f.method == Feature.Method.FORM ? 50 : 25)) {
					return List.of();
				}
				job.ops.forEach(o -> o.stop = false);
				return Aim.join(Aim.numbers(op), op instanceof ThreadMilling mill ? MillingFaults.helix(mill) : List.of());
			})).beside("count-differs"));
		all.add(Fault.of("drill fed far too fast", "drill-feed-high",
				Aim.at(HoleMaking.class, h -> h.tool.kind == Tool.Kind.DRILL && h.tool.diameter >= 3.2 && h.style != HoleMaking.Style.HELIX
						&& h.features.get(0).named, (job, hole, dice) -> {
			hole.feed = Math.rint(hole.speed * hole.tool.diameter * dice.between(0.2, 0.4));
			return Aim.numbers(hole);
		})));
		all.add(Fault.of("drill turning ten times too fast", "drill-feed-low",
				Aim.at(HoleMaking.class, h -> h.tool.kind == Tool.Kind.DRILL && h.tool.diameter >= 3.2 && h.style == HoleMaking.Style.CYCLE
						&& h.features.get(0).named, (job, hole, dice) -> {
			double diameter = hole.tool.diameter;
			boolean rubs = Math.PI * diameter * hole.speed / 100 > 160 && hole.feed / hole.speed / diameter < 0.03;
			if (!rubs || job.perRev || !job.unitStated || hole.features.get(0).drillTip > 11 * diameter) {
				return List.of();
			}
			hole.speed *= 10;
			return Aim.numbers(hole);
		})));
		all.add(Fault.of("thread mill fed ten times too far at one hole", "mill-feed-off",
				Aim.mill(m -> m.places.size() > 2 && m.feature.offsets.size() == 1 && m.feature.known() && !m.feature.size.taper(),
						(job, mill, dice) -> {
			job.edits.add(tape -> Stream.of("in", "on").flatMap(role -> tape.marked(mill.mark(role)).stream())
					.filter(block -> block.has('F')).reduce((one, other) -> other).ifPresent(block -> block.words.replaceAll(word ->
							word.letter() == 'F' ? Word.of('F', word.value() * 10, word.decimals()) : word)));
			return MillingFaults.helix(mill);
		})));
		all.add(Fault.of("no speed for the drill", "spindle-not-turning",
				Aim.at(HoleMaking.class, h -> h.tool.kind == Tool.Kind.DRILL && h.features.get(0).named, (job, hole, dice) -> {
			Aim.edit(job, hole, "start", (tape, block) -> block.swap('S', Word.whole('S', 0)));
			return Aim.numbers(hole);
		})));
		all.add(Fault.of("drill in the tapping cycle", "drill-in-tapping-cycle",
				Aim.at(HoleMaking.class, h -> h.tool.kind == Tool.Kind.DRILL && h.style == HoleMaking.Style.CYCLE
						&& h.features.get(0).named, (job, hole, dice) -> {
			hole.code = 84;
			return Aim.numbers(hole);
		})).beside("hole-missing", "drill-too-big", "drill-too-small", "feed-off-pitch", "threaded-twice", "drill-too-shallow",
				"hole-skipped", "rigid-mode-missing"));
		all.add(Fault.of("the way to cut in hard stock", "climb-or-conventional",
				Aim.mill(m -> m.feature.known() && m.feature.size.pitch() >= 1, (job, mill, dice) -> {
			job.stock = "STEEL, " + dice.pick("42 HRC", "46 HRC", "52 HRC");
			return job.features.stream().allMatch(f -> f.method == Feature.Method.MILL)
					? Aim.join(MillingFaults.helix(mill), List.of("stock")) : List.of();
		})).beside("passes-too-heavy"));
		all.add(Fault.of("drill that leaves no room in a tight class", "class-out-of-reach",
				Aim.tap(t -> t.feature.size.series().metric() && t.feature.named && t.feature.method == Feature.Method.CUT
						&& t.feature.size.pitch() >= 0.5 && !t.feature.left, (job, tap, dice) -> {
			Size size = tap.feature.size;
			double d = Math.floor((size.minor() + 0.8 * tolerance6H(size) - 0.015) * 100) / 100;
			job.machine = Optional.of(Machine.loose(0.05));
			tap.notes.removeIf(n -> n.startsWith("THREAD"));
			tap.tool.name = size.name() + "-5H TAP";
			job.drilling(tap.feature).tool.name = job.inch ? "DRILL " + Figures.trim(d, 2) + "MM" : "DRILL " + Figures.trim(d, 2);
			return job.rs274 ? List.of() : Aim.join(Aim.numbers(tap), Aim.marks(tap, "change", "title"));
		})));
		return all;
	}

	private static boolean threads(Op op) {
		return op instanceof Tapping || op instanceof ThreadMilling;
	}

	private static boolean thin(Feature f) {
		return !f.through && f.named && f.surfaceKnown();
	}

	/**
	 * Minor diameter tolerance of grade 6, mm (ISO 965-1): 433 P - 190 P^1.22 up to P 0.8, 230 P^0.7 above, micrometres; grade 5 is 0.8 of
	 * it.
	 */
	private static double tolerance6H(Size size) {
		double p = size.pitch();
		return (p <= 0.8 ? 433 * p - 190 * Math.pow(p, 1.22) : 230 * Math.pow(p, 0.7)) / 1000;
	}

	/**
	 * Pitch diameter tolerance of class 2B, inch (ASME B1.1): 1.3 (0.0015 cbrt D + 0.0015 sqrt Le + 0.015 cbrt P^2), Le the diameter or 9
	 * P.
	 */
	private static double tolerance2B(Size size) {
		double d = size.diameter() / 25.4;
		double p = size.pitch() / 25.4;
		return 1.3 * (0.0015 * Math.cbrt(d) + 0.0015 * Math.sqrt(Math.max(d, 9 * p)) + 0.015 * Math.cbrt(p * p));
	}
}
