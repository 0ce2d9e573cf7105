package truelead.faults;

import java.util.Optional;

/**
 * What some programs and folders say besides: the machine's profile, and notes of reach, wall, teeth and limit of the tools. All of it
 * fits.
 */
final class Particulars {
	private final Job job;
	private final Dice dice;
	private final Callouts callouts;

	private Particulars(Job job) {
		this.job = job;
		this.dice = new Dice(job.seed ^ 0x3C6EF372L);
		this.callouts = new Callouts(dice, job.inch);
	}

	static void add(Job job) {
		Particulars particulars = new Particulars(job);
		if (!job.rs274 && particulars.dice.chance(0.2)) {
			job.machine = Optional.of(Machine.of(particulars.dice));
		}
		for (Feature feature : job.features) {
			particulars.note(feature, job.threading(feature));
		}
		rigid(job);
	}

	/** On a machine that asks for it, and by a hand that writes it anywhere, every cycle has its rigid-tap code. */
	static void rigid(Job job) {
		boolean any = job.ops.stream().anyMatch(op -> op instanceof Tapping tap && tap.form == Tapping.Form.RIGID);
		if (any || job.machine.map(Machine::rigidRequired).orElse(false)) {
			job.ops.stream().filter(Tapping.class::isInstance).map(Tapping.class::cast).filter(Aim::cycle)
					.forEach(t -> t.form = Tapping.Form.RIGID);
		}
	}

	private void note(Feature feature, Op op) {
		if (dice.chance(0.08) && feature.surfaceKnown()) {
			op.notes.add(reach(op, callouts.length(feature.tip + dice.between(3, 20))));
		}
		if (dice.chance(0.2) && feature.note.contains("BLIND") && feature.surfaceKnown()) {
			op.notes.add("HOLE: WALL " + callouts.length(feature.drillTip + feature.hole()));
		}
		if (op instanceof ThreadMilling mill && dice.chance(0.2)
				&& mill.feed < 1.05 * mill.speed * 0.12 * (feature.size.diameter() - mill.cutter) / feature.size.diameter()) {
			op.notes.add(teeth(mill));
		}
		if (op instanceof Tapping && feature.size.series().unified() && feature.method == Feature.Method.CUT && dice.chance(0.2)) {
			op.notes.add("TOOL: T" + op.tool.number + ", LIMIT " + dice.pick("H1", "H2", "H3"));
		}
	}

	static String reach(Op op, String length) {
		return "TOOL: T" + op.tool.number + ", REACH " + length;
	}

	/** Three teeth and 0.04 mm a tooth, as the generator's feeds have it. */
	String teeth(ThreadMilling mill) {
		return "TOOL: T" + mill.tool.number + ", TEETH 3, FZ " + (job.inch ? "0.0016" : "0.04");
	}
}
