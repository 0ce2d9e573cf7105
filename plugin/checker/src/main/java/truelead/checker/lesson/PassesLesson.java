package truelead.checker.lesson;

import java.util.List;
import truelead.checker.lesson.Plot.Curve;
import truelead.checker.lesson.Plot.Dash;

/**
 * A thread that a lathe cuts in passes. Seen from a fixed angle of the spindle the point of a pass is at start + lag - F n after n turns,
 * towards the start counted up, where the axis follows late by a time T: lag = F S T (kinematics). Two passes whose places differ by other
 * than a whole pitch do not run in one groove.
 */
final class PassesLesson implements Lesson {

	/** A difference nobody measures, mm (a choice of ours). */
	private static final double NOTHING = 0.0005;
	/** Part of F that the feed may still be short of when the thread begins (a choice of ours). */
	private static final double SHORT = 0.02;
	/** Grooves drawn side by side (a choice of ours). */
	private static final int GROOVES = 3;
	/** Part of the depth, and mm, that a first pass takes at most, as the rule passes-too-heavy has it (common practice, no source). */
	private static final double MUCH = 0.6;
	private static final double MUCH_MM = 0.45;

	@Override
	public String name() {
		return "passes";
	}

	@Override
	public String title() {
		return "A thread turned in passes";
	}

	@Override
	public String introduction() {
		return "A lathe cuts a thread in passes, and each has to find the groove of the one before. Where it begins along Z, how fast the "
				+ "spindle turns and F decide where a pass lies; how the depth is divided decides what the point bears. The last pass here "
				+ "is moved apart from those before it. Move the numbers.";
	}

	@Override
	public List<Control> controls() {
		return List.of(Control.number("diameter", "Diameter D", "mm", 2, 300, 0.5, 30),
				Control.number("pitch", "Pitch P", "mm", 0.2, 10, 0.05, 1.5), Control.number("starts", "Starts", "", 1, 8, 1, 1),
				Control.choice("side", "Thread", 0, "in a bore", "on a bolt"),
				Control.number("length", "Length of thread", "mm", 1, 200, 0.5, 20),
				Control.number("feed", "Feed F of the passes", "mm/rev", 0.1, 20, 0.05, 1.5),
				Control.number("lastFeed", "Feed F of the last pass", "mm/rev", 0.1, 20, 0.05, 1.5),
				Control.number("speed", "Speed S of the passes", "rev/min", 10, 4000, 10, 600),
				Control.number("lastSpeed", "Speed S of the last pass", "rev/min", 10, 4000, 10, 600),
				Control.number("begin", "Last pass begins further out along Z by", "mm", -20, 20, 0.05, 0),
				Control.number("approach", "Way from the start to the thread", "mm", 0, 50, 0.5, 5),
				Control.number("late", "Time by which the axis follows late", "ms", 0, 100, 1, 33),
				Control.number("depth", "Depth of thread, on the radius", "mm", 0.05, 6, 0.01, 0.82),
				Control.number("first", "First pass, on the radius", "mm", 0.02, 6, 0.01, 0.25),
				Control.number("least", "Least pass, on the radius", "mm", 0.01, 0.5, 0.01, 0.04),
				Control.choice("division", "How the depth is divided", 0, "chips alike: first x root of n", "the same depth each pass"),
				Control.choice("infeed", "Infeed", 0, "straight in", "along one flank"),
				Control.number("force", "Specific cutting force of the stock", "N/mm²", 400, 3500, 50, 2100));
	}

	@Override
	public List<Reading> readings() {
		String none = "F is right";
		return List.of(new Reading("lead", "Lead the thread needs, P x starts", "mm", 4, ""),
				new Reading("error", "F off the lead, in a turn", "mm", 4, ""),
				new Reading("off", "Over the length of thread", "mm", 3, ""),
				new Reading("binds", "A screw binds after turns", "", 1, none),
				new Reading("lag", "The axis lags in the passes, F S T", "mm", 3, ""),
				new Reading("lastLag", "and in the last pass", "mm", 3, ""),
				new Reading("mouth", "Last pass beside the groove, at the mouth", "mm", 3, ""),
				new Reading("end", "and at the end", "mm", 3, ""), new Reading("cut", "Cut off the flank", "mm", 3, ""),
				new Reading("oversize", "That is worth on the pitch diameter", "mm", 3, ""),
				new Reading("need", "Run-up that the axis needs", "mm", 2, ""), new Reading("passes", "Passes", "", 0, ""),
				new Reading("heavy", "Largest chip", "mm²", 3, ""), new Reading("heavyAt", "in pass", "", 0, ""),
				new Reading("force", "Force on the point there", "N", 0, ""),
				new Reading("part", "First pass, of the depth", "%", 0, ""),
				new Reading("final", "Last pass takes, on the radius", "mm", 3, ""));
	}

	@Override
	public List<Plot> plots() {
		return List.of(
				new Plot("Grooves at the mouth, cut along the axis", "mm along the axis", "mm into the wall", true,
						List.of(new Curve("others", "passes before the last", Dash.SOLID), new Curve("last", "last pass", Dash.LONG))),
				new Plot("How far the last pass lies beside the groove", "mm from the mouth", "mm along the axis", false,
						List.of(new Curve("beside", "last pass", Dash.SOLID),
								new Curve("upper", "nothing is left of the thread", Dash.MIXED),
								new Curve("lower", "the same on the other side", Dash.DOTS))),
				new Plot("What each pass takes", "pass", "mm² of chip", false,
						List.of(new Curve("chip", "chip", Dash.SOLID), new Curve("mean", "mean of all", Dash.DOTS))));
	}

	@Override
	public List<String> sentences() {
		return List.of("The last pass runs in the groove of those before.",
				"The last pass lies {mouth:3} mm beside the groove at the mouth: {begin:3} mm by where it begins, {lagged:3} mm because "
				+ "the axis lags {lastLag:3} mm in it and {lag:3} mm in the others.",
				"F of the last pass differs by {differs:4} mm a turn: {drift:3} mm from the mouth to the end.",
				"It cuts {cut:3} mm off the flank, of {ridge:3} mm that the thread is wide at its pitch line: {oversize:3} mm on the pitch "
				+ "diameter.",
				"It cuts off all that the thread is wide at its pitch line, {ridge:3} mm: nothing of the thread is left there.",
				"F is the lead of the thread.",
				"F is {error:4} mm off the lead {lead:4} mm in a turn, {off:3} mm over the length. Were all of the tolerance of a middle "
				+ "class there as play, {play:3} mm on the pitch diameter, a screw would bind after {binds:1} turns.",
				"{passes:0} passes; number {heavyAt:0} takes most, {heavy:3} mm², which is {force:0} N on the point.",
				"The groove is wider the deeper it is: at the same depth each, the heaviest pass takes {ratio:1} times what the first "
				+ "takes.",
				"The first pass takes {part:0} % of the depth at once: more than six tenths breaks the point.",
				"Fed straight in, the point cuts with both flanks and the two chips jam in the groove.",
				"Fed along one flank, one side cuts and the other rubs; a degree or so less than the flank lets it clear.",
				"The axis needs {need:2} mm to come up to F, and {approach:2} mm are there: the first threads are short of lead, in every "
				+ "pass alike where S is the same.");
	}

	@Override
	public List<String> grounds() {
		return List.of("Place of a pass = start + lag - F x turns, lag = F S T, run-up F S T (a - 1 - ln a) until the feed is within a of "
				+ "F: kinematics of an axis that follows late by a time T.",
				"T of 33 ms, which is F S / 1800 for the lag: from memory, drives differ. Within 2 % of F: a choice of ours.",
				"The thread is P/2 wide at its pitch line, a widening d is worth 1.732 d on the pitch diameter: geometry of the 60 degree "
				+ "flank (ISO 68-1).",
				"Tolerance of the pitch diameter, grade 6: 0.09 P^0.4 D^0.1 mm on a bolt, 1.32 times that in a hole (formulas of ISO "
				+ "965-1, with D itself).",
				"Chip of a point with a flat of P/8: geometry. Force = specific cutting force x chip: from memory, an order of magnitude.",
				"Six tenths of the depth at first, where that is more than 0.45 mm: common practice, no source.");
	}

	@Override
	public Outcome outcome(Values values) {
		Outcome outcome = new Outcome();
		lead(outcome, values);
		chips(outcome, values);
		place(outcome, values);
		judge(outcome, values);
		return outcome;
	}

	/** Whether F is the lead of the thread, and how far a screw goes in where it is not. */
	private static void lead(Outcome outcome, Values values) {
		double lead = values.of("pitch") * Math.rint(values.of("starts"));
		double error = values.of("feed") - lead;
		double play = (values.of("side") == 0 ? 1.32 : 1) * 0.09 * Math.pow(values.of("pitch"), 0.4) * Math.pow(values.of("diameter"), 0.1);
		outcome.put("lead", lead);
		outcome.put("error", error);
		outcome.put("off", error * values.of("length") / lead);
		outcome.put("play", play);
		outcome.put("binds", Math.abs(error) < NOTHING ? Double.NaN : play / (Math.sqrt(3) * Math.abs(error)));
	}

	/** Where the last pass lies beside the others. */
	private static void place(Outcome outcome, Values values) {
		double pitch = values.of("pitch");
		double feed = values.of("feed");
		double lag = feed * values.of("speed") * values.of("late") / 60_000;
		double lastLag = values.of("lastFeed") * values.of("lastSpeed") * values.of("late") / 60_000;
		double differs = values.of("lastFeed") - feed;
		double whole = values.of("begin") + lastLag - lag - differs * values.of("approach") / feed;
		double mouth = whole - pitch * Math.floor(whole / pitch + 0.5);
		double drift = differs == 0 ? 0 : -differs * values.of("length") / feed;
		// so far a shallower groove lies within the last one, whose flanks are as much further apart
		double within = outcome.number("final") * Math.tan(Math.PI / 6);
		double beside = Math.max(Math.abs(mouth), Math.abs(mouth + drift));
		double cut = beside > pitch / 2 ? pitch / 2 : Math.max(0, beside - within);
		outcome.put("lag", lag);
		outcome.put("lastLag", lastLag);
		outcome.put("lagged", lastLag - lag);
		outcome.put("begin", values.of("begin"));
		outcome.put("differs", differs);
		outcome.put("mouth", mouth);
		outcome.put("drift", drift);
		outcome.put("end", mouth + drift);
		outcome.put("cut", cut);
		outcome.put("ridge", pitch / 2);
		outcome.put("oversize", Math.sqrt(3) * cut);
		outcome.put("need", lag * (SHORT - 1 - Math.log(SHORT)));
		outcome.put("approach", values.of("approach"));
		outcome.put("beside", Track.through(0, mouth, values.of("length"), mouth + drift));
		outcome.put("upper", Track.through(0, pitch / 2, values.of("length"), pitch / 2));
		outcome.put("last", grooves(pitch, mouth, values.of("lastFeed") / Math.rint(values.of("starts")), values.of("depth")));
		outcome.put("lower", Track.through(0, -pitch / 2, values.of("length"), -pitch / 2));
	}

	/** What the passes take. */
	private static void chips(Outcome outcome, Values values) {
		double pitch = values.of("pitch");
		double depth = values.of("depth");
		double first = Math.min(values.of("first"), depth);
		ThreadPasses passes = new ThreadPasses(pitch, depth, first, values.of("least"), values.of("division") == 1);
		List<Double> depths = passes.depths();
		List<Double> chips = passes.chips();
		int heavy = 0;
		// from nothing up to each and down again, so that the drawing begins at 0
		double[] across = new double[2 * chips.size() + 2];
		double[] up = new double[across.length];
		across[0] = 0.5;
		across[across.length - 1] = chips.size() + 0.5;
		double all = 0;
		for (int i = 0; i < chips.size(); i++) {
			heavy = chips.get(i) > chips.get(heavy) ? i : heavy;
			across[2 * i + 1] = i + 0.5;
			across[2 * i + 2] = i + 1.5;
			up[2 * i + 1] = chips.get(i);
			up[2 * i + 2] = chips.get(i);
			all += chips.get(i);
		}
		double before = depths.size() > 1 ? depths.get(depths.size() - 2) : 0;
		outcome.put("passes", depths.size());
		outcome.put("heavy", chips.get(heavy));
		outcome.put("heavyAt", heavy + 1.0);
		outcome.put("force", values.of("force") * chips.get(heavy));
		outcome.put("ratio", chips.get(heavy) / chips.get(0));
		outcome.put("part", 100 * first / depth);
		outcome.put("taken", first);
		outcome.put("final", depth - before);
		outcome.put("chip", new Track(across, up));
		outcome.put("mean", Track.through(0.5, all / chips.size(), chips.size() + 0.5, all / chips.size()));
		outcome.put("others", grooves(pitch, 0, values.of("feed") / Math.rint(values.of("starts")), before));
	}

	/** Grooves of a depth side by side, the middle of the first one at a place, the others in steps, mm. */
	private static Track grooves(double pitch, double at, double step, double depth) {
		double floor = pitch / 16;
		double mouth = floor + depth * Math.tan(Math.PI / 6);
		double[] points = new double[8 * GROOVES];
		for (int i = 0; i < GROOVES; i++) {
			double[] across = {-mouth, -floor, floor, mouth};
			for (int corner = 0; corner < across.length; corner++) {
				points[8 * i + 2 * corner] = at + i * step + across[corner];
				points[8 * i + 2 * corner + 1] = corner == 0 || corner == 3 ? 0 : -depth;
			}
		}
		return Track.through(points);
	}

	private static void judge(Outcome outcome, Values values) {
		if (outcome.number("cut") < NOTHING) {
			outcome.say(0);
		} else {
			outcome.say(1);
			if (Math.abs(outcome.number("drift")) >= NOTHING) {
				outcome.say(2);
			}
			outcome.say(outcome.number("cut") < outcome.number("ridge") - NOTHING ? 3 : 4);
		}
		outcome.say(Math.abs(outcome.number("error")) < NOTHING ? 5 : 6);
		outcome.say(7);
		if (values.of("division") == 1 && outcome.number("passes") > 1) {
			outcome.say(8);
		}
		if (outcome.number("part") > 100 * MUCH && outcome.number("taken") > MUCH_MM) {
			outcome.say(9);
		}
		outcome.say(values.of("infeed") == 0 ? 10 : 11);
		if (outcome.number("need") > values.of("approach")) {
			outcome.say(12);
		}
	}
}
