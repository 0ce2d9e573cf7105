package truelead.checker.lesson;

import java.util.List;
import truelead.checker.lesson.Plot.Curve;
import truelead.checker.lesson.Plot.Dash;

/** A tap whose feed does not fit its pitch, turn by turn: lag = turns x (F/S - P) (kinematics), and what gives way. */
final class FeedLesson implements Lesson {

	/** Parts that the depth is looked at in (a choice of ours). */
	static final int PARTS = 120;
	/** A lag that nobody sees, mm (a choice of ours). */
	private static final double NOTHING = 0.0005;

	@Override
	public String name() {
		return "feed";
	}

	@Override
	public String title() {
		return "A tap led off its pitch";
	}

	@Override
	public String introduction() {
		return "A tap advances one pitch a turn whether the feed does or not. What the feed is off in a turn adds up over the depth, and "
				+ "something has to give:"
				+ " first the holder, as far as its travel goes, then the flanks of the thread, then the tap. Move the numbers.";
	}

	@Override
	public List<Control> controls() {
		return List.of(Control.number("diameter", "Diameter D", "mm", 1, 64, 0.5, 6),
				Control.number("pitch", "Pitch P", "mm", 0.2, 8, 0.05, 1),
				Control.number("speed", "Speed S", "rev/min", 10, 6000, 10, 800), Control.choice("mode", "Feed mode", 0, "per minute",
						"per revolution"),
				Control.number("feed", "Feed F", "mm/min or mm/rev", 0.1, 12000, 1, 790),
				Control.number("decimals", "Decimals that F is written with", "", 0, 4, 1, 3),
				Control.number("depth", "Depth of the tap in the part", "mm", 1, 150, 0.5, 15),
				Control.number("height", "R plane above the part", "mm", 0, 50, 0.5, 3),
				Control.choice("holder", "Holder", 0, "rigid", "synchronised, with a little travel", "tension and compression"),
				Control.number("travel", "Travel of the holder, either way", "mm", 0, 15, 0.1, 0.5),
				Control.number("stiffness", "Stiffness of the holder in its travel", "N/mm", 5, 2000, 5, 500),
				Control.number("turning", "What the spindle really turns, of S", "%", 90, 110, 0.5, 100),
				Control.number("acceleration", "Spindle's acceleration", "rev/s²", 5, 500, 5, 80),
				Control.number("force", "Specific cutting force of the stock", "N/mm²", 400, 3500, 50, 2100),
				Control.number("lead", "Lead of the tap", "turns", 1, 10, 0.5, 2.5),
				Control.number("threads", "Threads on the tap", "", 4, 40, 1, 16),
				Control.choice("kind", "Kind of tap", 0, "cutting", "forming"));
	}

	@Override
	public List<Reading> readings() {
		String none = "not in this depth";
		return List.of(new Reading("written", "F as written", "", 4, ""), new Reading("right", "F that fits", "", 4, ""),
				new Reading("advance", "Advance a turn", "mm", 4, ""),
				new Reading("error", "Off in a turn, F/S - P", "mm", 4, ""), new Reading("turns", "Turns to depth", "", 1, ""),
				new Reading("lag", "Off at the bottom", "mm", 3, ""), new Reading("used", "Travel of the holder used", "mm", 3, ""),
				new Reading("full", "Travel used up at turn", "", 1, none), new Reading("axial", "Axial force at the bottom", "N", 0, ""),
				new Reading("pressure", "Load on the flanks", "N/mm²", 1, ""),
				new Reading("shaved", "Shaved off the flanks at the mouth", "mm", 3, ""),
				new Reading("oversize", "That is worth on the pitch diameter", "mm", 3, ""), new Reading("torque", "Torque at the bottom",
						"N m", 1, ""),
				new Reading("strain", "Strength of the tap used", "%", 0, ""),
				new Reading("breaks", "Likely to break at turn", "", 1, none),
				new Reading("early", "Where the tap is half as strong, at turn", "", 1, none),
				new Reading("late", "Where it is twice as strong, at turn", "", 1, none),
				new Reading("runUp", "Run-up of the spindle, along the axis", "mm", 2, ""),
				new Reading("overrun", "Tap goes on while the spindle stops", "mm", 2, ""),
				new Reading("reversal", "Travel of the holder needed at the bottom", "mm", 2, ""));
	}

	@Override
	public List<Plot> plots() {
		return List.of(
				new Plot("How far the feed and the thread are apart", "turns in the part", "mm along the axis", false,
						List.of(new Curve("apart", "apart (behind is below 0)", Dash.SOLID),
								new Curve("holder", "taken by the holder", Dash.LONG),
								new Curve("cut", "shaved off the flanks", Dash.DOTS))),
				new Plot("Axial force", "turns in the part", "N", false, List.of(new Curve("pull", "axial force", Dash.SOLID))),
				new Plot("Strength of the tap used", "turns in the part", "% (100 breaks)", false,
						List.of(new Curve("load", "likely", Dash.SOLID), new Curve("weak", "half as strong", Dash.LONG),
								new Curve("strong", "twice as strong", Dash.DOTS),
								new Curve("limit", "breaks", Dash.MIXED))));
	}

	@Override
	public List<String> sentences() {
		return List.of("F fits: {advance:4} mm a turn is the pitch, and nothing has to give.",
				"The feed falls behind: {error:4} mm a turn, {lag:3} mm after {turns:1} turns. The tap wants to go deeper than it is led "
				+ "and is held back.",
				"The feed runs ahead: {error:4} mm a turn, {lag:3} mm after {turns:1} turns. The tap is pushed deeper than its "
				+ "thread goes.",
				"The holder takes nearly all of it, {used:3} of {travel:2} mm.",
				"The holder's travel of {travel:2} mm is used up at turn {full:1}; from there the flanks pay.",
				"Nothing but the flanks can give: {axial:0} N press on them at the bottom, {pressure:1} N/mm².",
				"At the mouth {shaved:3} mm are shaved off the width of the thread, of {ridge:3} at the pitch line: {oversize:3} mm on the "
				+ "pitch diameter.",
				"More is shaved off the flanks at the mouth, {shaved:3} mm, than the thread is wide at its pitch line, {ridge:3} mm: no "
				+ "thread is left there.",
				"A tap of this size would likely break about turn {breaks:1}; the estimate may be off by a factor of two either way.",
				"The tap likely holds with {strain:0} % of its strength used; were it half as strong as supposed, it would break about "
				+ "turn {early:1}.",
				"The tap holds: {strain:0} % of its strength is used.",
				"The spindle needs {runUp:2} mm to come up to speed, and R leaves {height:2} mm: it is still gaining speed in the part.",
				"The feed stops at depth, the spindle needs {stop:2} turns more: the tap goes {overrun:2} mm deeper by itself. Bottom of "
				+ "the hole and travel of the holder must have that room.",
				"Feed and spindle are not coupled: at {turning:1} % of S a feed a minute is off although F is right; a feed a "
				+ "turn is not.");
	}

	@Override
	public List<String> grounds() {
		return List.of("Off = turns x (F/S - P) and run-up (S/60)² P / (2 a): kinematics.",
				"Flanks: every thread of the tap in the hole shaves the error of a turn, chip 0.5413 P x error a thread (geometry of ISO "
				+ "68-1, 5/8 of the triangle's height); a"
				+ " widening d is worth 1.732 d on the pitch diameter (geometry of the 60 degree flank).",
				"Specific cutting force and torque kc P² D / 8000: from memory. Forming takes 2.5 times as much: common "
				+ "practice, no source.", "Spindle, collet and tap in line 20,000 N/mm, friction 0.15: from memory, an order of magnitude.",
				"Breaking: the tap's core as a round bar of 0.58 D and 1000 N/mm² in torsion, von Mises with the axial force: from memory. "
				+ "Real taps differ, chips that jam are" + " not in it; read it with a factor of two either way.",
				"Rigid and synchronised holders are taken to run with a coupled spindle: the feed follows what the spindle really turns. "
				+ "Tension and compression is taken to run"
				+ " uncoupled, so its reversal goes deeper. Its spring is taken as linear from the middle.");
	}

	@Override
	public Outcome outcome(Values values) {
		double pitch = values.of("pitch");
		double speed = values.of("speed");
		boolean perTurn = values.of("mode") == 1;
		boolean floats = values.of("holder") == 2;
		double ten = Math.pow(10, Math.rint(values.of("decimals")));
		double written = Math.floor(values.of("feed") * ten + 0.5) / ten;
		double really = floats ? speed * values.of("turning") / 100 : speed;
		double advance = perTurn ? written : written / really;
		double error = advance - pitch;
		double turns = values.of("depth") / pitch;
		double travel = values.of("holder") == 0 ? 0 : values.of("travel");
		TapLoad load = new TapLoad(pitch, values.of("diameter"), Math.abs(error), travel, values.of("stiffness"), values.of("force"),
				values.of("threads"), values.of("lead"), values.of("kind") == 1);
		Outcome outcome = new Outcome();
		outcome.put("written", written);
		outcome.put("right", perTurn ? pitch : pitch * speed);
		outcome.put("advance", advance);
		outcome.put("error", error);
		outcome.put("turns", turns);
		outcome.put("lag", error * turns);
		outcome.put("used", load.used(turns));
		outcome.put("travel", travel);
		outcome.put("axial", load.axial(turns));
		outcome.put("pressure", load.pressure(turns));
		outcome.put("shaved", load.shaved(turns));
		outcome.put("ridge", pitch / 2);
		outcome.put("oversize", Math.sqrt(3) * load.shaved(turns));
		outcome.put("torque", load.torque(turns));
		outcome.put("strain", 100 * load.strain(turns));
		double rate = really / 60;
		double stop = rate / (2 * values.of("acceleration")) * rate;
		outcome.put("stop", stop);
		outcome.put("runUp", stop * pitch);
		outcome.put("height", values.of("height"));
		outcome.put("turning", values.of("turning"));
		outcome.put("overrun", floats ? stop * pitch : 0);
		outcome.put("reversal", floats ? Math.abs(error * turns - stop * pitch) : load.used(turns));
		course(outcome, load, turns, error < 0 ? -1 : 1);
		judge(outcome, values, Math.abs(error * turns));
		return outcome;
	}

	private static void course(Outcome outcome, TapLoad load, double turns, int sign) {
		double[] at = new double[PARTS + 1];
		double[][] up = new double[7][PARTS + 1];
		for (int i = 0; i <= PARTS; i++) {
			at[i] = turns * i / PARTS;
			up[0][i] = sign * load.error() * at[i];
			up[1][i] = sign * load.used(at[i]);
			up[2][i] = load.shaved(at[i]);
			up[3][i] = load.axial(at[i]);
			up[4][i] = 100 * load.strain(at[i]);
			up[5][i] = TapLoad.DOUBT * up[4][i];
			up[6][i] = up[4][i] / TapLoad.DOUBT;
		}
		String[] names = {"apart", "holder", "cut", "pull", "load", "weak", "strong"};
		for (int i = 0; i < names.length; i++) {
			outcome.put(names[i], new Track(at, up[i]));
		}
		outcome.put("limit", Track.through(0, 100, turns, 100));
		outcome.put("full", load.travel() > 0 ? reached(at, magnitude(up[1]), load.travel() * (1 - 1e-6)) : Double.NaN);
		outcome.put("breaks", reached(at, up[4], 100));
		outcome.put("early", reached(at, up[5], 100));
		outcome.put("late", reached(at, up[6], 100));
	}

	private static double[] magnitude(double[] values) {
		double[] magnitude = values.clone();
		for (int i = 0; i < magnitude.length; i++) {
			magnitude[i] = Math.abs(magnitude[i]);
		}
		return magnitude;
	}

	/** Where a course first reaches a limit, between its points by a straight line; NaN where it does not. */
	private static double reached(double[] at, double[] up, double limit) {
		for (int i = 1; i < at.length; i++) {
			if (up[i] >= limit) {
				return at[i - 1] + (at[i] - at[i - 1]) * Math.max(0, Math.min(1, (limit - up[i - 1]) / (up[i] - up[i - 1])));
			}
		}
		return Double.NaN;
	}

	private static void judge(Outcome outcome, Values values, double off) {
		if (off < NOTHING) {
			outcome.say(0);
		} else {
			outcome.say(outcome.number("error") < 0 ? 1 : 2);
			boolean holder = outcome.number("travel") > 0;
			boolean full = !Double.isNaN(outcome.number("full"));
			outcome.say(!holder ? 5 : full ? 4 : 3);
			if (outcome.number("shaved") >= NOTHING) {
				outcome.say(outcome.number("shaved") < outcome.number("ridge") ? 6 : 7);
			}
		}
		outcome.say(!Double.isNaN(outcome.number("breaks")) ? 8 : !Double.isNaN(outcome.number("early")) ? 9 : 10);
		boolean floats = values.of("holder") == 2;
		if (!floats && outcome.number("runUp") > outcome.number("height")) {
			outcome.say(11);
		}
		if (floats) {
			outcome.say(12);
			if (values.of("turning") != 100 && values.of("mode") == 0) {
				outcome.say(13);
			}
		}
	}
}
