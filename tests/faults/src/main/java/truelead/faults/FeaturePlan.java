package truelead.faults;

import java.util.List;

/** Plans the holes of one thread: where, how deep, through or blind, and what of it the program says. */
final class FeaturePlan {
	private static final double POINT = 0.5 / Math.tan(Math.toRadians(59));
	private final Job job;
	private final Dice dice;
	private final Callouts callouts;

	FeaturePlan(Job job, Dice dice, Callouts callouts) {
		this.job = job;
		this.dice = dice;
		this.callouts = callouts;
	}

	Feature feature(Size size, int index) {
		double d = size.diameter();
		Feature.Method method = Feature.Method.CUT;
		if (size.formed() && dice.chance(0.3)) {
			method = Feature.Method.FORM;
		} else if (d >= 8 && (d > 25 || dice.chance(0.4))) {
			method = Feature.Method.MILL;
		}
		Pattern pattern = Pattern.of(dice, 2.5 * d, job.unit(), dice.whole(0, 4) * grain(), index * 450 + dice.whole(0, 4) * grain());
		Feature f = new Feature(size, method, pattern);
		f.left = !size.taper() && size.series() != Series.G && dice.chance(0.05);
		f.surface = dice.chance(0.12) ? -grain() * dice.whole(2, 6) : 0;
		f.surfaceNoted = f.surface < 0 ? dice.chance(0.5) : dice.chance(0.1);
		depths(f);
		f.way = way(f);
		if (dice.chance(0.1)) {
			f.offsets = List.of(54, 55);
		}
		return f;
	}

	private double grain() {
		return job.inch ? 3.175 : 2.5;
	}

	private double up(double mm) {
		return job.inch ? 25.4 * Figures.up(mm / 25.4, 2) : Figures.up(mm * 2, 0) / 2;
	}

	private void depths(Feature f) {
		Size size = f.size;
		double p = size.pitch();
		double d = size.diameter();
		boolean tapped = f.method != Feature.Method.MILL;
		f.through = size.taper() || dice.chance(0.4);
		f.lead = f.method == Feature.Method.FORM ? 3 : 5;
		double wanted = up(d * dice.between(0.8, 1.3));
		f.depth = wanted;
		double room = dice.between(2.3, 4) * p;
		if (size.taper()) {
			f.depth = 0;
			f.tip = up(tapped ? 11 * p : 7 * p);
			f.drillTip = up(f.tip + room + POINT * size.drill());
			return;
		}
		if (f.through) {
			f.wall = wanted;
			f.wallNoted = dice.chance(0.5);
			f.depth = 0;
			f.tip = tapped ? up(f.wall + (f.lead + 0.3) * p) : up(f.wall + 0.3 * p);
			double past = f.wall + POINT * f.hole() + 0.5;
			f.drillTip = up(f.wallNoted ? Math.max(past, tapped ? 0 : f.tip + p + POINT * f.hole())
					: Math.max(past, f.tip + room + POINT * f.hole()));
		} else {
			f.depthNoted = dice.chance(0.5);
			f.tip = tapped ? up(f.depth + (f.depthNoted ? f.lead : 1) * p) : up(f.depth + 0.3 * p);
			f.drillTip = up(f.tip + Math.max(room, p + 1) + POINT * f.hole());
		}
	}

	private Feature.Way way(Feature f) {
		int n = f.pattern.count();
		boolean tapped = f.method != Feature.Method.MILL;
		if (n < 2 || !tapped || dice.chance(0.5)) {
			return Feature.Way.LIST;
		}
		return switch (dice.whole(0, 3)) {
			case 0 -> f.pattern.shape() == Pattern.Shape.ROW ? Feature.Way.REPEAT : Feature.Way.LIST;
			case 1 -> f.pattern.shape() == Pattern.Shape.ROW || f.pattern.shape() == Pattern.Shape.CIRCLE ? Feature.Way.LOOP
					: Feature.Way.LIST;
			case 2 -> Feature.Way.SUB;
			default -> job.rs274 ? Feature.Way.LIST : Feature.Way.MACRO;
		};
	}

	/** A stock that suits every method of the job, said in a note now and then. */
	static void stock(Job job, Dice dice) {
		if (dice.chance(0.25)) {
			job.stock = dice.pick("STEEL", "STEEL, 22 HRC", "ALUMINIUM", "STAINLESS STEEL");
		}
	}

	/** What the note before the cycle says of the hole: the wall or the surface. */
	static List<String> notes(Feature f, Callouts callouts) {
		List<String> notes = new java.util.ArrayList<>();
		if (f.surfaceNoted) {
			notes.add("SURFACE: Z" + callouts.length(f.surface));
		}
		if (f.wallNoted) {
			notes.add("HOLE: THROUGH " + callouts.length(f.wall));
		}
		return notes;
	}
}
