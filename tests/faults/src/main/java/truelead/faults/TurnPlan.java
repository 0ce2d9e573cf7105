package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans one good lathe program from a seed. */
final class TurnPlan {
	private static final double POINT = 0.5 / Math.tan(Math.toRadians(59));
	private final Job job;
	private final Dice dice;
	private final Callouts callouts;
	private int tools;
	private int ids;

	private TurnPlan(long seed) {
		this.job = new Job(seed);
		this.dice = new Dice(seed);
		job.hand = Optional.of(Hand.of(dice));
		job.inch = dice.chance(0.4);
		job.perRev = dice.chance(0.85);
		job.unitStated = job.inch || dice.chance(0.93);
		job.talk = dice.pick(Job.Talk.BEFORE, Job.Talk.BEHIND, Job.Talk.BEHIND, Job.Talk.LIST, Job.Talk.BOTH);
		this.callouts = new Callouts(dice, job.inch);
	}

	static Job plan(long seed) {
		TurnPlan plan = new TurnPlan(seed);
		plan.fill();
		return plan.job;
	}

	private void fill() {
		double bar = up(dice.between(30, 60));
		if (dice.chance(0.4)) {
			outside(TurnWork.Style.FACE, bar);
		}
		if (dice.chance(0.5)) {
			outside(dice.pick(TurnWork.Style.MOVES, TurnWork.Style.PASSES, TurnWork.Style.CONTOUR), bar);
		}
		boolean centre = dice.chance(0.75);
		if (centre) {
			centre();
		}
		if (!centre || dice.chance(0.25)) {
			live(dice.pick(Turned.At.FACE, Turned.At.FACE, Turned.At.SIDE), bar);
		}
		if (dice.chance(0.4)) {
			singlePoint(!centre && dice.chance(0.5));
		}
		boolean stops = dice.chance(0.4);
		job.ops.forEach(o -> o.stop = stops);
		if (dice.chance(0.25)) {
			job.stock = dice.pick("STEEL", "STEEL, 22 HRC", "ALUMINIUM", "STAINLESS STEEL");
		}
	}

	private double up(double mm) {
		return job.inch ? 25.4 * Figures.up(mm / 25.4, 2) : Figures.up(mm * 2, 0) / 2;
	}

	private Tool tool(Tool.Kind kind, double diameter, String name) {
		tools += dice.chance(0.8) ? 1 : dice.whole(1, 2);
		return new Tool(tools, kind, diameter, callouts.maybeLower(name));
	}

	private void outside(TurnWork.Style style, double bar) {
		String name = style == TurnWork.Style.FACE ? dice.pick("FACE", "FACING TOOL", "CNMG 80 DEG")
				: dice.pick("OD ROUGH", "TURNING TOOL", "OD TURN", "");
		job.ops.add(new TurnWork(ids++, tool(Tool.Kind.TURNING, 0, name), dice.pick(120, 160, 200), style, bar, bar - 4));
	}

	private void centre() {
		Turned t = turned(Turned.At.CENTRE, 3, 27);
		t.bored = t.size.diameter() > 18 && !t.formed && !t.size.taper() && dice.chance(0.7);
		if (dice.chance(0.6)) {
			TurnDrill spot = new TurnDrill(ids++, tool(Tool.Kind.SPOT, 6, dice.pick("CENTER DRILL", "CENTRE DRILL", "SPOT DRILL", "SPOT")),
					1500, t);
			spot.depth = up(Math.min(2, t.size.drill() * 0.4));
			spot.perTurn = 0.06;
			spot.spots = true;
			job.ops.add(spot);
		}
		double d = t.bored ? up(t.hole() * 0.8) : t.hole();
		TurnDrill drill = drill(t, d, t.bored ? callouts.diameter(d) : "");
		drill.style = dice.pick(TurnDrill.Style.FEED, TurnDrill.Style.PECKS, TurnDrill.Style.CYCLE, TurnDrill.Style.FACE_PECK);
		if (t.bored) {
			drill.depth = up(t.drillTip + 3);
			TurnBore bore = new TurnBore(ids++, tool(Tool.Kind.BORING, 0, dice.pick("BORING BAR", "ID BAR", "BORE")),
					Planner.turns(90, t.hole()));
			bore.from = d;
			bore.to = t.hole();
			bore.depth = t.drillTip;
			bore.style = dice.pick(TurnBore.Style.values());
			job.ops.add(bore);
		}
		TurnTap tap = tap(t);
		tap.form = t.left ? dice.pick(TurnTap.Form.SYNCHRONISED, TurnTap.Form.IN_AND_OUT)
			: dice.pick(TurnTap.Form.CYCLE, TurnTap.Form.RIGID, TurnTap.Form.SYNCHRONISED, TurnTap.Form.IN_AND_OUT);
		tap.spindle = t.left ? 4 : 3;
		tap.lift = tap.cycle() && dice.chance(0.2) ? 2.54 : 0;
	}

	private void live(Turned.At at, double bar) {
		Turned t = turned(at, 3, at == Turned.At.SIDE ? 8 : 12.7);
		// holes from the outside end before the middle of the part
		t.across = at == Turned.At.FACE ? up(bar * 0.6) : Math.max(bar, up(2 * t.drillTip + 5));
		t.along = -up(dice.between(8, 25));
		int n = dice.pick(1, 2, 3, 4, 4, 6);
		List<Double> angles = new ArrayList<>();
		for (int i = 0; i < n; i++) {
			angles.add(i * 360.0 / n);
		}
		t.angles = List.copyOf(angles);
		boolean minutes = job.perRev && dice.chance(0.7);
		int turns = dice.pick(3, 3, 13, 33);
		boolean stopsFirst = dice.chance(0.4);
		for (TurnOp op : List.of(drill(t, t.hole(), ""), tap(t))) {
			op.otherMode = minutes;
			op.spindle = turns;
			op.stopsFirst = stopsFirst;
			op.lift = at == Turned.At.FACE && dice.chance(0.3) ? 2.54 : 0;
		}
	}

	private Turned turned(Turned.At at, double least, double most) {
		boolean inchThread = job.inch != dice.chance(0.1);
		List<Size> choice = Sizes.ALL.stream().filter(s -> (!s.taper() || at == Turned.At.CENTRE && dice.chance(0.5))
				&& s.diameter() >= least && s.diameter() <= most && (s.series() == Series.G ? dice.chance(0.3)
						: s.series().inchDrills() == inchThread)).toList();
		Turned t = new Turned(dice.pick(choice), at);
		t.formed = t.size.formed() && dice.chance(0.2);
		double p = t.size.pitch();
		t.depth = up(t.size.diameter() * dice.between(0.8, 1.3));
		t.left = at == Turned.At.CENTRE && !t.formed && !t.size.taper() && t.size.series() != Series.G && dice.chance(0.06);
		if (t.size.taper()) {
			t.depth = 0;
			t.tip = up(11 * p);
			t.drillTip = up(t.tip + 2.5 * p + POINT * t.size.drill());
			return t;
		}
		if (at == Turned.At.CENTRE && dice.chance(0.2)) {
			t.through = true;
			t.tip = up(t.depth + (t.formed ? 3.3 : 5.3) * p);
			t.drillTip = up(t.tip + Math.max(dice.between(2.3, 4) * p, p + 1) + POINT * t.hole());
			return t;
		}
		t.depthNoted = dice.chance(0.4);
		t.tip = up(t.depth + (t.depthNoted ? t.formed ? 3 : 5 : 1) * p);
		t.drillTip = up(t.tip + Math.max(dice.between(2.3, 4) * p, p + 1) + POINT * t.hole());
		return t;
	}

	private TurnDrill drill(Turned t, double d, String name) {
		t.named = dice.chance(0.9);
		String said = !name.isEmpty() ? "DRILL " + name : t.named ? callouts.drill(t.holeName(), t.size.series().inchDrills())
				: dice.pick("DRILL", "");
		TurnDrill drill = new TurnDrill(ids++, tool(Tool.Kind.DRILL, d, (t.live() && !said.isEmpty() ? dice.pick("", "LIVE ") : "") + said),
				Planner.turns(22, d), t);
		drill.perTurn = Figures.round(Math.min(0.3, 0.02 * d), 2);
		job.ops.add(drill);
		return drill;
	}

	private TurnTap tap(Turned t) {
		double s = Math.min(1200, Planner.turns(dice.between(6, 14), t.size.diameter()));
		String kind = t.formed ? callouts.formingTap() : callouts.cuttingTap(t.through, t.size.taper());
		String name = kind;
		if (dice.chance(0.94)) {
			t.callout = callouts.thread(t.size, t.left);
			name = dice.chance(0.25) ? kind + " " + t.callout : t.callout + " " + kind;
			if (t.through && dice.chance(0.5)) {
				name += " THRU";
			}
			if (t.depthNoted) {
				name += dice.chance(0.5) ? " DEPTH " + callouts.length(t.depth) : " " + callouts.length(t.depth) + " DEEP";
			}
		}
		TurnTap tap = new TurnTap(ids++, tool(t.formed ? Tool.Kind.FORM_TAP : Tool.Kind.TAP, t.size.diameter(),
			t.live() && !t.callout.isEmpty() && dice.chance(0.4) ? "LIVE " + name : name), s, t);
		tap.plane = up(Math.max(dice.pick(5, 8), 3.3 * t.size.pitch()));
		tap.form = dice.pick(TurnTap.Form.CYCLE, TurnTap.Form.CYCLE, TurnTap.Form.RIGID);
		job.ops.add(tap);
		return tap;
	}

	private void singlePoint(boolean inside) {
		boolean inchThread = job.inch != dice.chance(0.1);
		Size size = dice.pick(Sizes.ALL.stream().filter(s -> s.diameter() >= 14 && !s.taper() && s.series() != Series.G
			&& s.series().inchDrills() == inchThread).toList());
		double length = up(size.diameter() * dice.between(0.6, 1.2));
		if (inside) {
			double first = up(size.drill() * 0.8);
			Turned bore = new Turned(size, Turned.At.CENTRE);
			bore.drillTip = up(length + 8);
			drill(bore, first, callouts.diameter(first)).style = TurnDrill.Style.FEED;
			TurnBore bar = new TurnBore(ids++, tool(Tool.Kind.BORING, 0, dice.pick("BORING BAR", "ID BAR", "BORE")),
					Planner.turns(90, size.drill()));
			bar.from = first;
			bar.to = size.drill();
			bar.depth = up(length + 4);
			job.ops.add(bar);
		}
		String name = callouts.thread(size, false);
		String kind = inside ? dice.pick("ID THREAD", "INSIDE THREADING", "THREADING BAR")
				: dice.pick("OD THREAD", "THREADING TOOL", "THREAD 60 DEG");
		TurnThread thread = new TurnThread(ids++, tool(Tool.Kind.TURNING, 0, dice.chance(0.5) ? kind + " " + name : name + " " + kind),
			Math.min(1500, Planner.turns(70, size.diameter())), size);
		thread.inside = inside;
		thread.length = length;
		thread.style = dice.pick(TurnThread.Style.values());
		job.ops.add(thread);
	}
}
