package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Comments, counts, stock and tools that do not go with what is done. */
final class SayingFaults {
	private SayingFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("another number of holes than called out", "count-differs",
				Aim.at(Op.class, SayingFaults::said, (job, op, dice) -> {
			Feature f = op.features.get(0);
			if (Character.isDigit(op.tool.name.charAt(0)) && op.tool.name.contains("X M") || op.tool.name.startsWith(f.holes() + "X ")) {
				return List.of();
			}
			op.tool.name = (f.holes() + dice.pick(1, 2)) + "X " + f.size.name() + (f.left ? " LH" : "") + tool(job, op);
			return told(op);
		})));
		all.add(Fault.of("two sources name two threads", "callout-conflict",
				Aim.tap(t -> t.feature.size.series().metric() && !t.feature.callout.isEmpty() && !t.feature.left, (job, tap, dice) -> {
				Size size = tap.feature.size;
				double other = size.pitch() >= 1.5 ? size.pitch() - 0.5 : size.pitch() * 1.5;
				tap.notes.removeIf(n -> n.startsWith("THREAD"));
				tap.notes.add("THREAD: " + size.name());
				tap.tool.name = "M" + Figures.trim(size.diameter(), 1) + "X" + Figures.trim(other, 2) + tool(job, tap);
				List<String> marks = told(tap);
				marks.add("list");
				return marks;
			})).beside("feed-off-pitch", "drill-too-big", "drill-too-small"));
		all.add(Fault.of("nothing names the thread", "callout-missing", Aim.tap(t -> true, (job, tap, dice) -> {
			tap.tool.name = "TAP";
			tap.notes.removeIf(n -> n.startsWith("THREAD"));
			return told(tap);
		})).beside("drill-too-big", "drill-too-small"));
		all.add(Fault.of("pitch of no series", "pitch-not-standard",
				Aim.tap(t -> t.feature.size.series() == Series.METRIC_COARSE && t.feature.size.diameter() >= 5
						&& !t.feature.callout.isEmpty() && t.feature.method == Feature.Method.CUT, (job, tap, dice) -> {
			Size size = tap.feature.size;
			tap.advance = size.pitch() - 0.03;
			tap.notes.removeIf(n -> n.startsWith("THREAD"));
			tap.tool.name = "M" + Figures.trim(size.diameter(), 1) + "X" + Figures.trim(tap.advance, 2)
					+ (tap.feature.left ? " LH" : "") + " TAP";
			return told(tap);
		})));
		all.add(Fault.of("spiral point tap in a blind hole", "tap-wrong-for-hole",
				Aim.tap(t -> !t.feature.through && t.feature.method == Feature.Method.CUT && t.feature.depthNoted
						&& OrderWords.depthSaid(t.feature, t.tool), (job, tap, dice) -> {
			tap.notes.removeIf(n -> n.startsWith("THREAD"));
			tap.notes.add("THREAD: " + plain(tap.feature) + ", DEPTH "
					+ new Callouts(dice, job.inch).length(tap.feature.depth) + ", BLIND");
			tap.tool.name = plain(tap.feature) + " SPIRAL POINT TAP";
			return told(tap);
		})));
		all.add(Fault.of("forming in cast iron", "method-wrong-for-stock", Aim.tap(t -> t.feature.method == Feature.Method.FORM,
				(job, tap, dice) -> {
			job.stock = "CAST IRON";
			return Aim.join(told(tap), List.of("stock"));
		})));
		all.add(Fault.of("cutting tap in hardened steel", "method-wrong-for-stock", Aim.tap(t -> t.feature.method == Feature.Method.CUT,
				(job, tap, dice) -> {
			job.stock = "STEEL, " + dice.pick("54 HRC", "58 HRC");
			return job.features.size() == 1 ? Aim.join(told(tap), List.of("stock")) : List.of();
		})).beside("speed-over-limit", "tap-wrong-for-hole"));
		all.add(Fault.of("much deeper than it pays", "deep-thread",
				Aim.tap(t -> !t.feature.through && t.feature.method == Feature.Method.CUT && !t.feature.depthNoted && t.feature.known()
						&& t.feature.surfaceKnown(), (job, tap, dice) -> {
			double more = 3.5 * tap.feature.size.diameter();
			tap.tip += more;
			HoleMaking drill = job.drilling(tap.feature);
			drill.depth.put(tap.feature, drill.depth.get(tap.feature) + more);
			return told(tap);
		})).beside("reach-too-short"));
		return all;
	}

	private static boolean said(Op op) {
		return (op instanceof Tapping || op instanceof ThreadMilling) && !op.features.get(0).callout.isEmpty();
	}

	private static String plain(Feature f) {
		return f.size.name() + (f.size.series().unified() ? " " + f.size.series() : "") + (f.left ? " LH" : "");
	}

	private static String tool(Job job, Op op) {
		if (op instanceof ThreadMilling mill) {
			return " THREAD MILL " + new Callouts(new Dice(job.seed), job.inch).diameter(mill.cutter);
		}
		return op.features.get(0).method == Feature.Method.FORM ? " FORM TAP" : " TAP";
	}

	private static List<String> told(Op op) {
		return Aim.join(Aim.join(Aim.numbers(op), Aim.marks(op, "title", "change", "note")), List.of("list"));
	}
}
