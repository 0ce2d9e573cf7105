package truelead.faults;

import java.util.ArrayList;
import java.util.List;

/** Plans one good program from a seed: what a careful machinist would run without a second thought. */
final class Planner {
	private final Job job;
	private final Dice dice;
	private final Callouts callouts;
	private int tools;
	private int ids;

	private Planner(long seed) {
		this.job = new Job(seed);
		this.dice = new Dice(seed);
		job.inch = dice.chance(0.42);
		job.rs274 = dice.chance(0.3);
		job.perRev = dice.chance(0.12);
		job.unitStated = job.inch || dice.chance(0.95);
		job.preselected = dice.chance(0.15);
		job.talk = dice.pick(Job.Talk.BEFORE, Job.Talk.BEFORE, Job.Talk.BEHIND, Job.Talk.BEHIND, Job.Talk.LIST, Job.Talk.BOTH);
		this.callouts = new Callouts(dice, job.inch);
	}

	/** One seed in five plans a lathe program, the others programs for mills. */
	static Job plan(long seed) {
		if (Math.floorMod(seed, 5) == 3) {
			return TurnPlan.plan(seed);
		}
		Planner planner = new Planner(seed);
		planner.fill();
		Particulars.add(planner.job);
		return planner.job;
	}

	private void fill() {
		int count = dice.chance(0.75) ? 1 : dice.whole(2, 3);
		for (int i = 0; i < count; i++) {
			job.features.add(feature(i));
		}
		FeaturePlan.stock(job, dice);
		if (dice.chance(0.25)) {
			clearing(Clearing.Work.FACE, Tool.Kind.FACE_MILL, 50);
		}
		if (dice.chance(0.2)) {
			clearing(Clearing.Work.POCKET, Tool.Kind.END_MILL, dice.pick(8, 10, 12));
		}
		spots();
		for (Feature feature : job.features) {
			HoleMaking hole = hole(feature);
			job.ops.add(hole);
			if (dice.chance(0.4)) {
				chamfer(feature);
			}
			if (!dice.chance(0.3) || job.features.size() == 1) {
				job.ops.add(threading(feature));
			}
		}
		for (Feature feature : job.features) {
			if (job.ops.stream().noneMatch(o -> o.features.contains(feature) && (o instanceof Tapping || o instanceof ThreadMilling))) {
				job.ops.add(threading(feature));
			}
		}
		if (dice.chance(0.25)) {
			clearing(Clearing.Work.CONTOUR, Tool.Kind.END_MILL, dice.pick(10, 12, 16));
		}
		boolean stops = dice.chance(0.3);
		job.ops.forEach(o -> o.stop = stops);
	}

	private Feature feature(int index) {
		boolean foreign = dice.chance(0.12);
		boolean inchThread = job.inch != foreign;
		List<Size> choice = new ArrayList<>();
		for (Size size : Sizes.ALL) {
			boolean inchSize = size.series().inchDrills();
			boolean fits = size.series() == Series.G ? dice.chance(0.5) : inchSize == inchThread;
			if (fits && !(size.taper() && dice.chance(0.3))) {
				choice.add(size);
			}
		}
		return new FeaturePlan(job, dice, callouts).feature(dice.pick(choice), index);
	}

	private Tool tool(Tool.Kind kind, double diameter, String name) {
		tools += dice.chance(0.8) ? 1 : dice.whole(1, 3);
		return new Tool(tools, kind, diameter, callouts.maybeLower(name));
	}

	/** Revolutions a minute for a cutting speed in m/min, on a number one would type. */
	static double turns(double speed, double diameter) {
		double s = Math.min(speed * 1000 / (Math.PI * diameter), 8000);
		double grain = s > 2000 ? 100 : s > 500 ? 20 : s > 100 ? 10 : 5;
		return Math.max(grain, Math.round(s / grain) * grain);
	}

	private void clearing(Clearing.Work work, Tool.Kind kind, double diameter) {
		double mm = job.inch ? 25.4 * Math.round(diameter / 25.4 * 8) / 8.0 : diameter;
		String name = kind == Tool.Kind.FACE_MILL ? "FACE MILL " + callouts.length(mm)
				: dice.pick("END MILL " + callouts.length(mm), "ENDMILL D" + callouts.length(mm), callouts.length(mm) + " FLAT ENDMILL",
						"END MILL " + callouts.diameter(mm));
		double s = turns(90, mm);
		double lead = dice.pick(0.5, 0.8, 1.0, 1.25, 1.5, 2.0);
		job.ops.add(new Clearing(ids++, tool(kind, mm, name), s, Math.rint(s * 0.15), work, job.inch ? 406.4 : 400, job.inch ? -63.5
				: -60, lead));
	}

	private void spots() {
		if (!dice.chance(0.6)) {
			return;
		}
		double s = 1800;
		Tool tool = tool(Tool.Kind.SPOT, 16, dice.pick("SPOT DRILL", "90 DEG SPOT DRILL", "CENTER DRILL", "NC SPOT DRILL 90", "SPOT"));
		HoleMaking spot = new HoleMaking(ids++, tool, s, Math.rint(s * 0.08));
		spot.code = dice.chance(0.3) ? 82 : 81;
		spot.features.addAll(job.features);
		spot.plane = job.inch ? 2.54 : 2;
		for (Feature feature : job.features) {
			boolean chamfers = tool.name.contains("90") && feature.size.diameter() <= 13 && dice.chance(0.5);
			double chamfer = feature.size.diameter() * 1.08 / 2;
			spot.depth.put(feature, round(chamfers ? chamfer : Math.min(1.5, feature.size.drill() * 0.4)));
		}
		job.ops.add(spot);
	}

	private double round(double mm) {
		return job.inch ? 25.4 * Figures.up(mm / 25.4, 3) : Figures.up(mm, 1);
	}

	private HoleMaking hole(Feature feature) {
		double d = feature.hole();
		boolean bored = feature.method == Feature.Method.MILL && d > 12 && !feature.size.taper() && dice.chance(0.5);
		boolean named = dice.chance(0.9);
		HoleMaking hole;
		if (bored) {
			double mill = job.inch ? 25.4 * Math.floor(d * 0.65 / 25.4 * 8) / 8 : Math.floor(d * 0.65 / 2) * 2;
			double s = turns(90, mill);
			hole = new HoleMaking(ids++, tool(Tool.Kind.END_MILL, mill, "END MILL " + callouts.diameter(mill)), s, Math.rint(s * 0.1));
			hole.style = HoleMaking.Style.HELIX;
		} else {
			double s = turns(22, d);
			String name = named ? callouts.drill(feature.holeName(), feature.size.series().inchDrills())
					: dice.pick("DRILL", "DRILL FOR TAP");
			hole = new HoleMaking(ids++, tool(Tool.Kind.DRILL, d, name), s, Math.max(1, Math.rint(s * Math.min(0.3, 0.02 * d))));
			hole.style = dice.chance(0.1) ? HoleMaking.Style.PLUNGE : HoleMaking.Style.CYCLE;
			hole.code = dice.pick(81, 83, 83, 73);
			hole.peck = job.inch ? 25.4 * 0.1 : 3;
		}
		hole.features.add(feature);
		hole.depth.put(feature, feature.drillTip);
		hole.plane = job.inch ? 2.54 : 2;
		hole.relative = hole.style == HoleMaking.Style.CYCLE && feature.way == Feature.Way.LIST && dice.chance(0.12);
		feature.named = named && !bored;
		return hole;
	}

	private void chamfer(Feature feature) {
		double d = feature.size.diameter();
		if (d > 22) {
			return;
		}
		double s = turns(40, d);
		Tool tool = tool(Tool.Kind.CHAMFER, 25, dice.pick("CHAMFER MILL 90 DEG", "90 DEG COUNTERSINK", "COUNTERSINK 90",
				"90 DEGREE CHAMFER"));
		HoleMaking chamfer = new HoleMaking(ids++, tool, s, Math.rint(s * 0.1));
		chamfer.features.add(feature);
		chamfer.plane = job.inch ? 2.54 : 2;
		chamfer.depth.put(feature, round(d * 1.06 / 2));
		chamfer.code = dice.chance(0.5) ? 82 : 81;
		job.ops.add(chamfer);
	}

	private Op threading(Feature feature) {
		return new ThreadPlan(job, dice, callouts, ids++, this::tool).threading(feature);
	}
}
