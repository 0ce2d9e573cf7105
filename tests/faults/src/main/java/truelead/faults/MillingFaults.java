package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Helices off pitch, off size, of the wrong hand, too short; wrong entries, exits and compensation. */
final class MillingFaults {
	private MillingFaults() {
	}

	static List<Fault> all() {
		List<Fault> all = new ArrayList<>();
		all.add(Fault.of("helix off the pitch", "helix-off-pitch", Aim.mill(m -> m.feature.known(), (job, mill, dice) -> {
			mill.advance *= dice.pick(0.8, 0.9, 1.08, 1.15, 1.25);
			return helix(mill);
		})).beside("cutter-hits-bottom", "helix-too-short"));
		all.add(Fault.of("one arc of the helix climbs more", "helix-uneven", Aim.mill(m -> m.feature.known() && !m.feature.size.taper()
			&& (m.arcs == ThreadMilling.Arcs.HALVES || m.arcs == ThreadMilling.Arcs.CIRCLES && m.turns > 2), (job, mill, dice) -> {
			mill.unevenTurn = mill.turns / 2;
			return helix(mill);
		})));
		all.add(Fault.of("helix cuts too small", "helix-off-size", Aim.mill(MillingFaults::sized, (job, mill, dice) -> {
			mill.size = mill.feature.size.diameter() - 0.1 * mill.feature.size.pitch() - 0.05;
			mill.rough = 0;
			return helix(mill);
		})));
		all.add(Fault.of("helix cuts too big", "helix-off-size", Aim.mill(MillingFaults::sized, (job, mill, dice) -> {
			Size size = mill.feature.size;
			mill.size = size.diameter() + 0.2165 * size.pitch() + 1.6 * size.pitchTolerance() + 0.05;
			mill.rough = 0;
			return helix(mill);
		})));
		all.add(Fault.of("helix of the other hand", "helix-wrong-hand", Aim.mill(m -> m.feature.known(), (job, mill, dice) -> {
			mill.flip = -1;
			return helix(mill);
		})));
		all.add(Fault.of("helix ends too early", "helix-too-short",
				Aim.mill(m -> m.feature.known() && !m.comb && m.turns > 5 && !m.feature.size.taper() && (m.feature.wallNoted
						|| OrderWords.depthSaid(m.feature, m.tool)), (job, mill, dice) -> {
			mill.turns = mill.turns / 2;
			return helix(mill);
		})));
		all.add(Fault.of("mirror left on", "hand-mirrored helix-wrong-hand",
				Aim.mill(m -> m.feature.known() && m.feature.pattern.count() == 1, (job, mill, dice) -> {
			if (job.rs274) {
				return List.of();
			}
			job.edits.add(tape -> tape.first("safe")
					.ifPresent(b -> tape.after(b, new Block(Word.g(51.1), Word.of('X', 0, 3)).mark("mirror"))));
			List<String> marks = helix(mill);
			marks.add("mirror");
			return marks;
		})).beside("helix-wrong-hand", "hand-mirrored"));
		all.add(Fault.of("cutter as big as the hole", "cutter-too-big",
				Aim.mill(m -> m.feature.known() && m.rough == 0 && !m.feature.size.taper(), (job, mill, dice) -> {
			cutter(job, mill, mill.feature.size.drill() + 0.1);
			return helix(mill);
		})));
		all.add(Fault.of("cutter too big for the profile", "cutter-too-big",
				Aim.mill(m -> m.feature.known() && m.rough == 0 && m.feature.size.series().coarse()
						&& m.feature.size.drill() > 0.83 * m.feature.size.diameter(), (job, mill, dice) -> {
			cutter(job, mill, mill.feature.size.diameter() * 0.79);
			return helix(mill);
		})));
		all.add(Fault.of("comb cutter of another pitch", "cutter-pitch-mismatch",
				Aim.mill(m -> m.feature.known() && m.comb && m.feature.size.series().metric(), (job, mill, dice) -> {
			double other = mill.feature.size.pitch() == 1.5 ? 2 : 1.5;
			Callouts words = new Callouts(dice, job.inch);
			mill.tool.name = mill.feature.size.name() + (mill.feature.left ? " LH" : "") + " COMB THREAD MILL "
					+ words.diameter(mill.cutter) + (job.inch ? " PITCH " + other + "MM" : " P" + other);
			mill.feature.callout = mill.feature.size.name();
			return Aim.join(helix(mill), Aim.marks(mill, "title"));
		})));
		all.add(Fault.of("cutter reaches the drill point", "cutter-hits-bottom",
				Aim.mill(m -> !m.feature.through && !m.feature.size.taper() && m.feature.known(), (job, mill, dice) -> {
			HoleMaking drill = job.drilling(mill.feature);
			drill.depth.put(mill.feature, mill.tip - dice.between(0.3, 1.5));
			return Aim.join(helix(mill), Aim.marks(drill, "cycle", "hole-0"));
		})));
		all.add(Fault.of("straight into the wall", "entry-straight",
				Aim.mill(m -> m.feature.known() && !m.feature.size.taper() && m.compensation == ThreadMilling.Compensation.NONE && !m.down,
						(job, mill, dice) -> {
				mill.straightEntry = true;
				return helix(mill);
			})));
		all.add(Fault.of("lead-in does not climb", "entry-off-pitch", Aim.mill(m -> m.feature.known() && !m.down && !m.feature.size.taper(),
				(job, mill, dice) -> {
			mill.entryRise = dice.pick(0.0, 1.0, -0.25);
			return helix(mill);
		})));
		all.add(Fault.of("up before the cutter is free", "exit-scars-thread", Aim.mill(m -> m.feature.known() && !m.feature.size.taper()
			&& m.compensation == ThreadMilling.Compensation.NONE, (job, mill, dice) -> {
			if (!mill.comb && !mill.down) {
				mill.turns = Math.max(2, mill.turns - 2);
			}
			mill.earlyExit = true;
			return helix(mill);
		})).beside("helix-too-short"));
		all.addAll(CompensationFaults.all());
		return all;
	}

	private static boolean sized(ThreadMilling mill) {
		return mill.feature.known() && !mill.feature.size.taper() && mill.compensation != ThreadMilling.Compensation.WEAR;
	}

	private static void cutter(Job job, ThreadMilling mill, double diameter) {
		mill.cutter = job.inch ? 25.4 * Figures.round(diameter / 25.4, 3) : Figures.round(diameter, 1);
		mill.tool.name = mill.feature.size.name() + (mill.feature.left ? " LH" : "") + " THREAD MILL "
				+ new Callouts(new Dice(job.seed), job.inch).diameter(mill.cutter);
	}

	static List<String> helix(ThreadMilling mill) {
		return new ArrayList<>(Aim.marks(mill, "helix", "in", "entry", "on", "out", "off-path", "hole-0", "depth", "compensation", "start",
				"change", "note"));
	}
}
