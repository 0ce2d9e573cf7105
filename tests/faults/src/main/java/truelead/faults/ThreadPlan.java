package truelead.faults;

/** Plans the threading operation of a feature: tap or thread mill, how it is driven, and what the program says of it. */
final class ThreadPlan {
	/** Hands out tools from the next free pocket. */
	interface Pockets {
		Tool tool(Tool.Kind kind, double diameter, String name);
	}

	private final Job job;
	private final Dice dice;
	private final Callouts callouts;
	private final int id;
	private final Pockets pockets;

	ThreadPlan(Job job, Dice dice, Callouts callouts, int id, Pockets pockets) {
		this.job = job;
		this.dice = dice;
		this.callouts = callouts;
		this.id = id;
		this.pockets = pockets;
	}

	Op threading(Feature f) {
		Op op = f.method == Feature.Method.MILL ? mill(f) : tap(f);
		op.notes.addAll(FeaturePlan.notes(f, callouts));
		boolean note = dice.chance(0.25) || f.depthNoted && dice.chance(0.5);
		if (note) {
			String text = "THREAD: " + callouts.plain(f.size, f.left) + (f.depthNoted ? ", DEPTH " + callouts.length(f.depth) : "")
				+ (f.through ? dice.pick("", ", THROUGH") : dice.pick("", ", BLIND"));
			f.note = text;
			op.notes.add(text);
		}
		return op;
	}

	private String said(Feature f, String tool) {
		if (dice.chance(0.06)) {
			// nothing names the thread, or only the note does
			return tool;
		}
		f.callout = callouts.thread(f.size, f.left);
		// "D11 3/8 NPT" could be read as eleven and three eighths
		boolean joins = Character.isDigit(f.callout.charAt(0)) && Character.isDigit(tool.charAt(tool.length() - 1));
		String text = dice.chance(0.25) ? tool + (joins ? " - " : " ") + f.callout : f.callout + " " + tool;
		if (f.depthNoted && dice.chance(0.5)) {
			text += dice.chance(0.5) ? " DEPTH " + callouts.length(f.depth) : " " + callouts.length(f.depth) + " DEEP";
		}
		if (f.through && !f.size.taper() && !f.wallNoted && dice.chance(0.3)) {
			text += " THRU";
		}
		if (dice.chance(0.08) && f.offsets.size() == 1) {
			text = f.holes() + "X " + text;
		}
		return text;
	}

	private Tapping tap(Feature f) {
		boolean form = f.method == Feature.Method.FORM;
		String kind = form ? callouts.formingTap() : callouts.cuttingTap(f.through, f.size.taper());
		double s = Planner.turns(dice.between(form ? 10 : 6, form ? 22 : 15), f.size.diameter());
		if (s > 3000) {
			s = 2400;
		}
		Tool tool = pockets.tool(form ? Tool.Kind.FORM_TAP : Tool.Kind.TAP, f.size.diameter(), said(f, kind));
		Tapping tap = new Tapping(id, tool, s, f);
		tap.spindle = f.left ? 4 : 3;
		tap.code = f.left ? 74 : 84;
		double r = f.size.pitch() * 3.2;
		tap.plane = job.inch ? 25.4 * Math.max(0.2, Figures.up(r / 25.4, 1)) : Math.max(dice.pick(3, 5), Math.ceil(r));
		tap.form = job.rs274 ? dice.pick(Tapping.Form.SYNCHRONISED, Tapping.Form.SYNCHRONISED, Tapping.Form.CYCLE, Tapping.Form.IN_AND_OUT)
				: dice.pick(Tapping.Form.CYCLE, Tapping.Form.CYCLE, Tapping.Form.RIGID, Tapping.Form.RIGID, Tapping.Form.RIGID,
						Tapping.Form.IN_AND_OUT);
		if (tap.form == Tapping.Form.IN_AND_OUT) {
			tap.overridesLocked = true;
		}
		if (tap.form == Tapping.Form.SYNCHRONISED || tap.form == Tapping.Form.IN_AND_OUT) {
			f.way = f.way == Feature.Way.MACRO ? Feature.Way.LIST : f.way;
		} else {
			tap.says = dice.pick(Tapping.Says.START, Tapping.Says.START, Tapping.Says.CYCLE, Tapping.Says.VARIABLE);
			tap.perRev = !job.perRev && dice.chance(0.2);
			tap.relative = f.way == Feature.Way.LIST && dice.chance(0.12);
		}
		return tap;
	}

	private ThreadMilling mill(Feature f) {
		double d = f.size.diameter();
		double p = f.size.pitch();
		double largest = Math.min(d * (f.size.series().coarse() || f.size.taper() ? 0.66 : 0.74), f.size.drill() - 0.8);
		double cutter = job.inch ? 25.4 * Math.floor(largest / 25.4 * 20) / 20 : Math.floor(largest * 2) / 2;
		boolean comb = dice.chance(0.4);
		double edge = Planner.turns(80, cutter);
		String about = "THREAD MILL " + (dice.chance(0.8) || f.size.taper() ? callouts.diameter(cutter) : dice.pick("DIA. ", "DIA ")
				+ callouts.length(cutter));
		if (comb && dice.chance(0.5)) {
			about += f.size.tpi() > 0 && job.inch ? " " + Figures.trim(f.size.tpi(), 1) + " TPI" : " P" + callouts.length(p);
		}
		Tool tool = pockets.tool(Tool.Kind.THREAD_MILL, cutter, said(f, about));
		ThreadMilling mill = new ThreadMilling(id, tool, edge, f);
		mill.cutter = cutter;
		mill.size = f.size.taper() ? d : d + dice.between(0.004, 0.02) * Math.sqrt(d) + 0.006;
		mill.comb = comb;
		mill.feed = Math.max(5, Math.rint(edge * 0.12 * (d - cutter) / d));
		mill.compensation = f.size.taper() ? ThreadMilling.Compensation.NONE
				: dice.pick(ThreadMilling.Compensation.NONE, ThreadMilling.Compensation.NONE, ThreadMilling.Compensation.CONTOUR,
						ThreadMilling.Compensation.WEAR);
		mill.arcs = comb ? dice.pick(ThreadMilling.Arcs.CIRCLES, ThreadMilling.Arcs.HALVES)
				: dice.pick(ThreadMilling.Arcs.CIRCLES, ThreadMilling.Arcs.HALVES, ThreadMilling.Arcs.HALVES,
						job.rs274 ? ThreadMilling.Arcs.TURNS : ThreadMilling.Arcs.LOOP, ThreadMilling.Arcs.LOOP);
		mill.radiusWords = mill.arcs == ThreadMilling.Arcs.HALVES && dice.chance(0.4);
		mill.down = !comb && dice.chance(0.15);
		mill.tip = f.tip;
		mill.turns = comb ? 1 : (int) Math.ceil(f.tip / p) + 1;
		mill.rough = p > 1.5 && !f.size.taper() && dice.chance(0.5) ? 0.3 * p : 0;
		if (mill.compensation == ThreadMilling.Compensation.NONE && dice.chance(0.25)) {
			mill.entryRise = 0.5;
		}
		return mill;
	}
}
