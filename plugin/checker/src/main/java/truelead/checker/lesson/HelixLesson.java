package truelead.checker.lesson;

import java.util.List;
import truelead.checker.lesson.Plot.Curve;
import truelead.checker.lesson.Plot.Dash;

/** The helix of a thread mill in a hole: size, lead, hand, entry and feed. */
final class HelixLesson implements Lesson {

	/** Points of the curve (a choice of ours). */
	private static final int PARTS = 36;
	/** A difference nobody measures, mm (a choice of ours). */
	private static final double NOTHING = 0.0005;

	@Override
	public String name() {
		return "helix";
	}

	@Override
	public String title() {
		return "The helix of a thread mill";
	}

	@Override
	public String introduction() {
		return "The centre of the cutter runs on a circle of half the difference of thread and cutter, rises one pitch a turn, and the two "
				+ "senses together make the hand. The"
				+ " edge runs faster than the centre, which is what F moves. Move the numbers, and try the slips people make between "
				+ "radius and diameter.";
	}

	@Override
	public List<Control> controls() {
		return List.of(Control.number("diameter", "Diameter D of the thread", "mm", 2, 120, 0.5, 16),
				Control.number("pitch", "Pitch P", "mm", 0.2, 8, 0.05, 2),
				Control.number("flat", "Flat at the cutter's tip", "mm", 0, 1, 0.005, 0.25),
				Control.number("cutter", "Cutter across its edges", "mm", 1, 100, 0.1, 12),
				Control.number("radius", "Radius of the helix as worked out", "mm", 0.05, 60, 0.05, 2),
				Control.choice("slip", "What was typed for it", 0, "the radius", "the diameter instead", "without taking the cutter off",
						"half of it"),
				Control.number("rise", "Rise in a turn", "mm", 0.05, 10, 0.05, 2), Control.choice("sense", "Sense of the arcs", 0,
						"G3, counter-clockwise", "G2, clockwise"),
				Control.choice("way", "Way of the helix", 0, "up, out of the hole", "down, into it"),
				Control.choice("hand", "Hand wanted", 0, "right", "left"),
				Control.number("depth", "Length of thread", "mm", 1, 150, 0.5, 20),
				Control.number("entryAngle", "Entry, angle about the hole", "degrees", 10, 180, 5, 90),
				Control.number("entryRise", "Rise of the entry", "mm", 0, 5, 0.05, 0.5), Control.number("speed", "Speed S", "rev/min", 50,
						12000, 50, 1600),
				Control.number("teeth", "Teeth", "", 1, 12, 1, 4), Control.number("toothFeed", "Feed a tooth", "mm", 0.005,
						0.5, 0.005, 0.08),
				Control.number("feed", "Feed F, at the centre", "mm/min", 1, 5000, 1, 128));
	}

	@Override
	public List<Reading> readings() {
		return List.of(new Reading("needed", "Radius that fits, (D - cutter) / 2", "mm", 4, ""),
				new Reading("path", "Radius the centre runs on", "mm", 4, ""),
				new Reading("cut", "Major diameter cut", "mm", 4, ""), new Reading("size", "Off in diameter", "mm", 4, ""),
				new Reading("middle", "Pitch diameter cut", "mm", 4, ""), new Reading("lead", "Off in a turn", "mm", 4, ""),
				new Reading("drift", "Off over the length of thread", "mm", 3, ""),
				new Reading("worth", "That is worth on the pitch diameter", "mm", 3, ""),
				new Reading("turns", "Turns of the helix", "", 2, ""),
				new Reading("enters", "Cutter to the sides of the hole (P off D)", "mm", 3, ""),
				new Reading("entryRight", "Rise that the entry needs", "mm", 4, ""), new Reading("entryOff", "Entry off by", "mm", 4, ""),
				new Reading("edgeFeed", "Feed at the edge wanted, S x teeth x feed a tooth", "mm/min", 1, ""),
				new Reading("centreFeed", "F that gives it", "mm/min", 1, ""),
				new Reading("edgeOf", "Feed at the edge from F", "mm/min", 1, ""),
				new Reading("toothOf", "Feed a tooth from F", "mm", 4, ""),
				new Reading("length", "Way of the centre in a turn", "mm", 3, ""), new Reading("time", "Time for a turn", "s", 2, ""));
	}

	@Override
	public List<Plot> plots() {
		return List.of(
				new Plot("The hole from above", "mm", "mm", true,
						List.of(new Curve("wall", "thread at D", Dash.SOLID), new Curve("reach", "where the edge reaches", Dash.DOTS),
								new Curve("centre", "path of the centre", Dash.LONG),
								new Curve("tool", "cutter", Dash.SHORT), new Curve("entry", "entry", Dash.MIXED))),
				new Plot("The helix unrolled", "turns", "mm along the axis", false,
						List.of(new Curve("programmed", "programmed", Dash.SOLID), new Curve("needs", "what the thread needs",
								Dash.LONG))));
	}

	@Override
	public List<String> sentences() {
		return List.of("Radius and cutter give the thread its size.",
				"The thread comes out {size:3} mm off in diameter: radius {needed:3} mm is right, the centre runs on {path:3} mm.",
				"Each turn rises as the pitch does.",
				"Each turn is {lead:4} mm off, {drift:3} mm over the length: worth {worth:3} mm on the pitch diameter.",
				"Sense and way make a right-hand thread, as wanted.", "Sense and way make a left-hand thread, as wanted.",
				"Sense and way make a left-hand thread, and a right-hand one is wanted: no screw will go in. Change the sense or the "
				+ "way, not both.",
				"Sense and way make a right-hand thread, and a left-hand one is wanted: no screw will go in. Change the sense or the "
				+ "way, not both.",
				"With M3 and a right-hand cutter it climbs.", "With M3 and a right-hand cutter it cuts conventionally.",
				"The entry should rise {entryRight:4} mm and is {entryOff:4} mm off: it cuts a thread beside the thread.",
				"F{feed:0} moves the centre; the edge goes {edgeOf:0} mm/min, {toothOf:4} mm a tooth.",
				"The cutter does not go into the hole.",
				"F would be right at the edge, and the control moves the centre: teeth take {times:2} times what they should. "
				+ "F{centreFeed:1} is right.");
	}

	@Override
	public List<String> grounds() {
		return List.of("Radius (D - cutter) / 2, one pitch a turn, F at the centre = F at the edge x radius / (radius + cutter / "
				+ "2): geometry.",
				"Pitch diameter = diameter cut - 1.732 (P/2 - flat), a lead error d is worth 1.732 d: geometry of the 60 degree flank "
				+ "(ISO 68-1).",
				"Counter-clockwise and rising is right-handed: geometry.",
				"An entry rises as the thread does over its angle about the hole, a quarter pitch for a half arc from the centre: "
				+ "geometry. Half a pitch there is customary too.",
				"The hole is taken as D - P: common practice.");
	}

	@Override
	public Outcome outcome(Values values) {
		double pitch = values.of("pitch");
		double diameter = values.of("diameter");
		double cutter = values.of("cutter");
		double path = slipped(values);
		double edge = path + cutter / 2;
		double cut = 2 * path + cutter;
		double rise = values.of("rise");
		double drift = (rise - pitch) * values.of("depth") / pitch;
		double entryRight = pitch * values.of("entryAngle") / 360;
		double edgeFeed = values.of("speed") * values.of("teeth") * values.of("toothFeed");
		double round = 2 * Math.PI * path;
		double length = Math.sqrt(round * round + rise * rise);
		Outcome outcome = new Outcome();
		outcome.put("needed", (diameter - cutter) / 2);
		outcome.put("path", path);
		outcome.put("cut", cut);
		outcome.put("size", cut - diameter);
		outcome.put("middle", cut - Math.sqrt(3) * (pitch / 2 - values.of("flat")));
		outcome.put("lead", rise - pitch);
		outcome.put("drift", drift);
		outcome.put("worth", Math.sqrt(3) * Math.abs(drift));
		outcome.put("turns", values.of("depth") / rise);
		outcome.put("enters", diameter - pitch - cutter);
		outcome.put("entryRight", entryRight);
		outcome.put("entryOff", values.of("entryRise") - entryRight);
		outcome.put("edgeFeed", edgeFeed);
		outcome.put("centreFeed", edgeFeed * path / edge);
		outcome.put("feed", values.of("feed"));
		outcome.put("edgeOf", values.of("feed") * edge / path);
		outcome.put("toothOf", values.of("feed") * edge / path / (values.of("speed") * values.of("teeth")));
		outcome.put("times", edge / path);
		outcome.put("length", length);
		outcome.put("time", length / values.of("feed") * 60);
		outcome.put("wall", Track.circle(0, 0, diameter / 2));
		outcome.put("reach", Track.circle(0, 0, edge));
		outcome.put("centre", Track.circle(0, 0, path));
		outcome.put("tool", Track.circle(path, 0, cutter / 2));
		outcome.put("entry", entry(path, values.of("entryAngle"), values.of("sense") == 1));
		double end = values.of("depth") / Math.max(rise, pitch);
		double way = values.of("way") == 1 ? -1 : 1;
		outcome.put("programmed", Track.through(0, 0, end, way * rise * end));
		outcome.put("needs", Track.through(0, 0, end, way * pitch * end));
		judge(outcome, values);
		return outcome;
	}

	/** The radius as it comes out of a slip, mm. */
	private static double slipped(Values values) {
		double radius = values.of("radius");
		return switch ((int) values.of("slip")) {
			case 1 -> 2 * radius;
			case 2 -> radius + values.of("cutter") / 2;
			case 3 -> radius / 2;
			default -> radius;
		};
	}

	/** The way in from the centre: over 90 degrees about the hole it is a half arc. */
	private static Track entry(double path, double degrees, boolean clockwise) {
		double[] across = new double[PARTS + 1];
		double[] up = new double[PARTS + 1];
		for (int i = 0; i <= PARTS; i++) {
			double part = (double) i / PARTS;
			double radius = path * Math.sin(Math.PI / 2 * part);
			double angle = Math.toRadians(degrees) * (part - 1) * (clockwise ? -1 : 1);
			across[i] = radius * Math.cos(angle);
			up[i] = radius * Math.sin(angle);
		}
		return new Track(across, up);
	}

	private static void judge(Outcome outcome, Values values) {
		outcome.say(Math.abs(outcome.number("size")) < NOTHING ? 0 : 1);
		outcome.say(Math.abs(outcome.number("lead")) < NOTHING ? 2 : 3);
		boolean counter = values.of("sense") == 0;
		boolean right = counter == (values.of("way") == 0);
		boolean wanted = values.of("hand") == 0;
		outcome.say(right == wanted ? right ? 4 : 5 : right ? 7 : 6);
		outcome.say(counter ? 8 : 9);
		if (Math.abs(outcome.number("entryOff")) >= NOTHING) {
			outcome.say(10);
		}
		outcome.say(11);
		if (outcome.number("enters") <= 0) {
			outcome.say(12);
		}
		if (Math.abs(values.of("feed") - outcome.number("edgeFeed")) < 0.01 * outcome.number("edgeFeed")) {
			outcome.say(13);
		}
	}
}
