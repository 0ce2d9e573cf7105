package truelead.checker.lesson;

import java.util.List;
import truelead.checker.job.TapTorque;
import truelead.checker.lesson.Plot.Curve;
import truelead.checker.lesson.Plot.Dash;

/**
 * A blind hole, its drill point and the tap in it: where the tap's end is against the cone, and what the drill's diameter does to the
 * torque.
 */
final class DepthLesson implements Lesson {

	/** Points of the curve (a choice of ours). */
	private static final int PARTS = 40;
	/** A thousandth of an inch, mm (by definition). */
	private static final double THOUSANDTH = 0.0254;
	/** Part of the hole that the flutes leave free (from memory). */
	private static final double FLUTES = 0.4;
	/** Percent of thread that the usual forming torque is given for (common practice). */
	private static final double FORMED = 65;

	@Override
	public String name() {
		return "depth";
	}

	@Override
	public String title() {
		return "A tap in a blind hole";
	}

	@Override
	public String introduction() {
		return "The depth of a drill is written to its point, the depth of a tap to its end. Between the full thread and the end of the "
				+ "tap stands its lead, between the"
				+ " end of the full diameter and the drill's depth its point, and between the two there must be room, for chips and for "
				+ "the tap to stop. Move the numbers.";
	}

	@Override
	public List<Control> controls() {
		return List.of(Control.number("diameter", "Diameter D", "mm", 1, 64, 0.5, 6),
				Control.number("pitch", "Pitch P", "mm", 0.2, 8, 0.05, 1),
				Control.number("drill", "Drill", "mm", 0.5, 64, 0.05, 5), Control.number("angle", "Point angle of the drill", "degrees",
						60, 180, 1, 118),
				Control.number("drillTip", "Depth of the drill's point", "mm", 1, 200, 0.5, 16),
				Control.number("tapTip", "Depth of the tap's end", "mm", 1, 200, 0.5, 14),
				Control.number("wanted", "Full thread wanted", "mm", 0, 200, 0.5, 12), Control.number("lead", "Lead of the tap", "turns", 1,
						10, 0.5, 2.5),
				Control.number("leadAngle", "Angle of the lead", "degrees", 3, 30, 1, 15),
				Control.choice("kind", "Kind of tap", 0, "cutting", "forming"),
				Control.number("loose", "Chips lie looser than the stock, by", "times", 1, 10, 0.5, 3),
				Control.number("force", "Specific cutting force of the stock", "N/mm²", 400, 3500, 50, 2100));
	}

	@Override
	public List<Reading> readings() {
		return List.of(new Reading("point", "Length of the drill's point", "mm", 3, ""),
				new Reading("full", "Full diameter down to", "mm", 3, ""),
				new Reading("room", "Room below the tap", "mm", 3, ""), new Reading("roomUsual", "Room that is usual", "mm", 2, ""),
				new Reading("nose", "Front end of the tap, across", "mm", 3, ""),
				new Reading("contact", "Tap meets the cone at", "mm", 3, ""),
				new Reading("until", "Way left until it does", "mm", 3, ""), new Reading("thread", "Full thread down to", "mm", 3, ""),
				new Reading("missing", "Thread that is missing", "mm", 3, ""),
				new Reading("reach", "For the thread wanted, end of the tap to", "mm", 2, ""),
				new Reading("needed", "and point of the drill to", "mm", 2, ""),
				new Reading("percent", "Height of thread, of 1.299 P", "%", 1, ""), new Reading("torque", "Torque", "N m", 2, ""),
				new Reading("pinched", "Torque with a drill a thousandth of an inch smaller", "N m", 2, ""),
				new Reading("pinch", "That is more by", "%", 1, ""),
				new Reading("chips", "Loose chips fill flutes and room to", "%", 0, ""));
	}

	@Override
	public List<Plot> plots() {
		return List.of(new Plot("The hole and the tap in it, cut through", "mm from the middle", "mm from the top, down negative", true,
				List.of(new Curve("hole", "drilled hole", Dash.SOLID), new Curve("tap", "tap at depth", Dash.LONG),
						new Curve("goal", "full thread wanted", Dash.DOTS))), new Plot("Torque by drill", "drill, mm", "N m", false,
								List.of(new Curve("twist", "torque", Dash.SOLID), new Curve("here", "this drill", Dash.SHORT))));
	}

	@Override
	public List<String> sentences() {
		return List.of("The tap meets the cone {over:2} mm before its depth: it is stopped while the feed goes on, and breaks.",
				"The tap's end goes {into:2} mm into the cone, and would meet it {until:2} mm further.",
				"Room below the tap is {room:2} mm; {roomUsual:2} mm is usual, for chips and for stopping.",
				"Room below the tap is {room:2} mm, which does.",
				"Full thread goes to {thread:2} mm, {missing:2} mm short of what is wanted.",
				"Full thread goes to {thread:2} mm, as wanted.",
				"For the thread wanted the end of the tap goes to {reach:2} mm and the point of the drill to {needed:2} mm.",
				"This drill leaves {percent:1} % of thread. A thousandth of an inch less takes {pinch:1} % more torque.",
				"Chips that stay in the hole would fill flutes and room to {chips:0} %: they pack, and the tap jams. Spiral flutes that "
				+ "carry them out, a forming tap or a deeper hole help.");
	}

	@Override
	public List<String> grounds() {
		return List.of("Point of the drill d/2 / tan(angle/2), contact (d - nose)/2 / tan(angle/2) below the full diameter: geometry.",
				"Front end of the tap: drill less the lead on both sides at its angle, 15 degrees for form C of DIN 2197, 8 with spiral "
				+ "point: from memory.", "Room of 2 P for cutting and 1 P for forming: common practice, no source.",
				"Percent of thread (D - d) / (1.299 P), Machinery's Handbook; formed (D - d) / (0.0068 P), the same.",
				"Torque kc P² D / 8000 for a full thread: from memory; scaled with the cross-section of the chip (geometry). Forming 2.5 "
				+ "times as much at 65 %, common practice,"
				+ " scaled with the percentage, a rough guess. Read torques to a factor of two, differences better.",
				"Short chips lie some 3 times looser than the stock, curled ones up to 10; flutes leave 0.4 of the hole free: "
				+ "from memory.");
	}

	@Override
	public Outcome outcome(Values values) {
		double pitch = values.of("pitch");
		double diameter = values.of("diameter");
		double drill = values.of("drill");
		boolean forming = values.of("kind") == 1;
		double slope = Math.tan(Math.toRadians(values.of("angle")) / 2);
		double point = drill / 2 / slope;
		double full = values.of("drillTip") - point;
		double leadLength = values.of("lead") * pitch;
		double nose = Math.max(0, drill - 2 * leadLength * Math.tan(Math.toRadians(values.of("leadAngle"))));
		double contact = full + (drill - nose) / 2 / slope;
		double tip = values.of("tapTip");
		double thread = Math.max(0, tip - leadLength);
		double usual = (forming ? 1 : 2) * pitch;
		double percent = 100 * (diameter - drill) / (0.75 * Math.sqrt(3) * pitch);
		double torque = torque(values, drill);
		double pinched = torque(values, drill - THOUSANDTH);
		Outcome outcome = new Outcome();
		outcome.put("point", point);
		outcome.put("full", full);
		outcome.put("room", full - tip);
		outcome.put("into", tip - full);
		outcome.put("over", tip - contact);
		outcome.put("roomUsual", usual);
		outcome.put("nose", nose);
		outcome.put("contact", contact);
		outcome.put("until", contact - tip);
		outcome.put("thread", thread);
		outcome.put("missing", Math.max(0, values.of("wanted") - thread));
		outcome.put("needed", values.of("wanted") + leadLength + usual + point);
		outcome.put("reach", values.of("wanted") + leadLength);
		outcome.put("percent", percent);
		outcome.put("torque", torque);
		outcome.put("pinched", pinched);
		outcome.put("pinch", torque > 0 ? 100 * (pinched / torque - 1) : 0);
		double volume = forming ? 0 : groove(values, drill) * Math.PI * (diameter + drill) / 2 * thread / pitch;
		double space = Math.PI / 4 * drill * drill * (FLUTES * tip + Math.max(0, full - tip) + point / 3);
		outcome.put("chips", 100 * values.of("loose") * volume / space);
		outcome.put("hole", Track.through(-drill / 2, 0, -drill / 2, -full, 0, -full - point, drill / 2, -full, drill / 2, 0));
		outcome.put("tap", Track.through(-diameter / 2, 0, -diameter / 2, -thread, -nose / 2, -tip, nose / 2, -tip, diameter / 2, -thread,
				diameter / 2, 0));
		outcome.put("goal", Track.through(-diameter / 2, -values.of("wanted"), diameter / 2, -values.of("wanted")));
		outcome.put("twist", byDrill(values, diameter, pitch));
		outcome.put("here", Track.through(drill, 0, drill, torque));
		judge(outcome, usual);
		return outcome;
	}

	private static void judge(Outcome outcome, double usual) {
		double room = outcome.number("room");
		outcome.say(outcome.number("until") <= 0 ? 0 : room < 0 ? 1 : room < usual ? 2 : 3);
		outcome.say(outcome.number("missing") > 0 ? 4 : 5);
		if (room < usual || outcome.number("missing") > 0) {
			outcome.say(6);
		}
		outcome.say(7);
		if (outcome.number("chips") > 100) {
			outcome.say(8);
		}
	}

	private static Track byDrill(Values values, double diameter, double pitch) {
		double[] at = new double[PARTS + 1];
		double[] up = new double[PARTS + 1];
		for (int i = 0; i <= PARTS; i++) {
			at[i] = diameter - 1.2 * pitch + 0.8 * pitch * i / PARTS;
			up[i] = torque(values, at[i]);
		}
		return new Track(at, up);
	}

	/** Cross-section of the groove of a turn, mm²: a 60 degree groove with a flat of P/8 at D, open at the drill's diameter (ISO 68-1). */
	private static double groove(Values values, double drill) {
		double pitch = values.of("pitch");
		double height = Math.max(0, values.of("diameter") - drill) / 2;
		return height * (pitch / 8 + height * Math.tan(Math.PI / 6));
	}

	/** Torque at a drill's diameter, N m. */
	private static double torque(Values values, double drill) {
		double pitch = values.of("pitch");
		double diameter = values.of("diameter");
		double usual = TapTorque.cutting(values.of("force"), pitch, diameter);
		if (values.of("kind") == 1) {
			return TapTorque.FORMING * usual * Math.max(0, diameter - drill) / (0.0068 * pitch) / FORMED;
		}
		double basic = diameter - 2 * TapLoad.FLANK * pitch;
		return usual * groove(values, drill) / groove(values, basic);
	}
}
