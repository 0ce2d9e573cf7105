package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Cutter radius compensation that is missing, left on, or begun on an arc; and pipe threads milled straight. */
final class CompensationFaults {
	private CompensationFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("contour without compensation", "comp-missing",
				Aim.mill(m -> m.feature.known() && m.compensation == ThreadMilling.Compensation.CONTOUR, (job, mill, dice) -> {
				Aim.edit(job, mill, "compensation", (tape, block) -> {
					block.drop('G', 41);
					block.drop('G', 42);
					block.drop('D');
				});
				Aim.edit(job, mill, "off-path", (tape, block) -> block.drop('G', 40));
				return MillingFaults.helix(mill);
			})));
		all.add(Fault.of("compensation left on", "comp-left-on", Aim.mill(m -> m.compensation != ThreadMilling.Compensation.NONE,
				(job, mill, dice) -> {
			mill.cancelled = false;
			List<String> marks = Aim.join(MillingFaults.helix(mill), Aim.marks(mill, "home", "off", "dry"));
			int next = job.ops.indexOf(mill) + 1;
			marks.addAll(next < job.ops.size() ? Aim.marks(job.ops.get(next), "change", "place", "start", "length") : List.of("end"));
			return marks;
		})).beside("cutter-too-big", "drill-too-big", "drill-too-small"));
		all.add(Fault.of("compensation begun on the arc", "comp-started-on-arc",
				Aim.mill(m -> m.compensation != ThreadMilling.Compensation.NONE, (job, mill, dice) -> {
			mill.compensationOnArc = true;
			return MillingFaults.helix(mill);
		})));
		// a comb cutter carries the taper in its own form
		all.add(Fault.of("pipe thread milled straight", "taper-off",
				Aim.mill(m -> m.feature.known() && m.feature.size.taper() && m.turns > 2, (job, mill, dice) -> {
			mill.taperOff = true;
			return MillingFaults.helix(mill);
		})));
		all.add(Fault.of("end of an arc off its circle", "arc-not-closed",
				Aim.mill(m -> m.arcs == ThreadMilling.Arcs.HALVES && !m.radiusWords && !m.feature.size.taper(), (job, mill, dice) -> {
				job.edits.add(tape -> tape.marked(mill.mark("helix")).stream().skip(1).findFirst().ifPresent(block -> {
					Word i = block.words.stream().filter(w -> w.letter() == 'I').findFirst().orElseThrow();
					block.swap('I', Word.of('I', i.value() + (job.inch ? 0.008 : 0.2), i.decimals()));
				}));
				return MillingFaults.helix(mill);
			})).beside("helix-off-size", "helix-uneven"));
		all.add(Fault.of("whole profile in one pass in hard steel", "passes-too-heavy",
				Aim.mill(m -> m.feature.known() && m.feature.size.pitch() >= 1.25, (job, mill, dice) -> {
			job.stock = "STEEL, 48 HRC";
			mill.rough = 0;
			return onlyMills(job) ? Aim.join(MillingFaults.helix(mill), List.of("stock")) : List.of();
		})).beside("climb-or-conventional"));
		return all;
	}

	private static boolean onlyMills(Job job) {
		return job.features.stream().allMatch(f -> f.method == Feature.Method.MILL);
	}
}
