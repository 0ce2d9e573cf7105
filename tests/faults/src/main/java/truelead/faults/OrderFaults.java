package truelead.faults;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Faults of order and height, and of what the program says of the hole. */
final class OrderFaults {
	private OrderFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("threaded before it is drilled", "threaded-before-drilled", HoleFaults.threading((job, op, f, dice) -> {
			Collections.swap(job.ops, job.ops.indexOf(op), job.ops.indexOf(job.drilling(f)));
			return Aim.join(Aim.join(Aim.hole(op, f, 0), Aim.numbers(op)), Aim.marks(job.drilling(f), "cycle", "hole-0"));
		})));
		all.add(Fault.of("drilled again after threading", "drilled-after-threading", HoleFaults.threading((job, op, f, dice) -> {
			HoleMaking first = job.drilling(f);
			HoleMaking again = new HoleMaking(90, first.tool, first.speed, first.feed);
			again.features.add(f);
			again.depth.put(f, first.depth.get(f));
			again.style = first.style;
			again.code = 81;
			job.ops.add(job.ops.indexOf(op) + 1, again);
			return Aim.join(Aim.numbers(op), Aim.marks(again, "cycle", "hole-0", "holes", "change"));
		})));
		all.add(Fault.of("a hole threaded twice", "threaded-twice",
				Aim.tap(t -> Aim.cycle(t) && t.feature.way == Feature.Way.LIST && !t.relative && !t.moved(), (job, tap, dice) -> {
				Place again = tap.places.get(0);
				Pen pen = new Pen(job.inch);
				job.edits.add(tape -> tape.first(tap.mark("cancel"))
						.ifPresent(b -> tape.before(b, new Block(Word.of('X', pen.unit(again.x()), pen.decimals),
								Word.of('Y', pen.unit(again.y()), pen.decimals)).mark(tap.mark("again")))));
				return Aim.marks(tap, "again", "hole-0", "cycle");
			})).beside("count-differs"));
		all.add(Fault.of("a repeat count without a step", "threaded-twice",
				Aim.tap(t -> Aim.cycle(t) && t.feature.way == Feature.Way.LIST && !t.relative && !t.moved(), (job, tap, dice) -> {
				Aim.edit(job, tap, "cycle", (tape, block) -> block.with(Word.whole(job.rs274 ? 'L' : 'K', 2)));
				return Aim.marks(tap, "hole-0", "cycle");
			})).beside("count-differs"));
		all.add(Fault.of("sign of the depth lost", "plane-heights-wrong",
				Aim.tap(t -> Aim.cycle(t) && !t.relative && t.feature.surface == 0 && t.tip > t.plane + 1, (job, tap, dice) -> {
				double up = new Pen(job.inch).unit(tap.tip);
				Aim.edit(job, tap, Aim.macro(tap) ? "call" : "cycle", (tape, block) -> block.swap('Z', Word.of('Z', up, job.inch ? 4 : 3)));
				return Aim.numbers(tap);
			})));
		all.add(Fault.of("R plane inside the stock", "plane-heights-wrong start-too-close",
				Aim.tap(t -> Aim.cycle(t) && t.feature.surfaceNoted, (job, tap, dice) -> {
			tap.plane = -Math.min(3, tap.tip / 3);
			return Aim.numbers(tap);
		})).beside("start-too-close", "plane-heights-wrong"));
		all.add(Fault.of("absolute heights under incremental distance", "plane-heights-wrong",
				Aim.tap(t -> t.relative && t.feature.surface == 0, (job, tap, dice) -> {
			Pen pen = new Pen(job.inch);
			Aim.edit(job, tap, "cycle", (tape, block) -> {
				block.swap('Z', Word.of('Z', pen.unit(-tap.tip), pen.decimals));
				block.swap('R', Word.of('R', pen.unit(tap.plane), pen.decimals));
			});
			return Aim.numbers(tap);
		})));
		all.add(Fault.of("countersink smaller than the thread", "countersink-too-small",
				Aim.at(HoleMaking.class, o -> o.tool.kind == Tool.Kind.CHAMFER, (job, op, dice) -> {
			Feature f = op.features.get(0);
			op.depth.put(f, op.depth.get(f) * 0.75);
			if (f.size.taper() || f.size.diameter() < 4 || job.ops.indexOf(op) > job.ops.indexOf(job.threading(f)) || spotted(job, f)
					|| !f.surfaceKnown() || !f.known()) {
				return List.of();
			}
			return Aim.join(Aim.marks(op, "cycle", "hole-0", "change"), Aim.numbers(job.threading(f)));
		})));
		return all;
	}

	/** True where the spot drill has already broken the edge. */
	private static boolean spotted(Job job, Feature feature) {
		return job.ops(HoleMaking.class, feature).stream()
			.anyMatch(o -> o.tool.kind == Tool.Kind.SPOT && 2 * o.depth.get(feature) >= feature.size.diameter());
	}
}
