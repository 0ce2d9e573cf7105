package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import truelead.checker.profile.Meaning;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.ThreadSpec;

/** A whole program of a mill: spot, drill, break the edge, thread; a row of holes along X, 3 D apart, surface at Z0. */
final class ProgramBlocks {
	/** Distance of the holes in a row, in diameters of the thread (a choice of ours). */
	private static final double APART = 3;
	/** A hole deeper than this is pecked, in diameters (common practice, no source). */
	private static final double PECK_OVER = 3;
	private final Method method;
	private final Request request;
	private final HolePlan hole;
	private final Figure figure;
	private final Dialect dialect;
	private final Edge edge;
	private final List<String> lines = new ArrayList<>();

	ProgramBlocks(Method method, Request request, HolePlan hole) {
		this.method = method;
		this.request = request;
		this.hole = hole;
		this.figure = new Figure(request.unit());
		this.dialect = new Dialect(request.profile());
		this.edge = Edge.of(request);
	}

	List<String> lines() {
		lines.addAll(head(request));
		lines.add(dialect.head(request.unit(), request.feedPerRev()));
		int last = spot(0);
		last = drill(last);
		last = edge.after() ? countersink(last) : last;
		if (method.tap()) {
			tap(last);
		} else {
			mill(last);
		}
		lines.add(m(Meaning.PROGRAM_END, 30));
		lines.add("%");
		return List.copyOf(lines);
	}

	/** The lines that say what is made of what. */
	static List<String> head(Request request) {
		List<String> head = new ArrayList<>();
		head.add("%");
		head.add("(" + name(request) + ", " + request.count() + (request.count() == 1 ? " HOLE)" : " HOLES)"));
		request.stock().filter(s -> !s.words().isEmpty()).ifPresent(s -> head.add("(STOCK: " + s.words().toUpperCase(Locale.ROOT) + ")"));
		head.add("(SURFACE: Z0)");
		return head;
	}

	/** The notes on the thread, behind its tool. */
	static List<String> wanted(Request request, HolePlan hole) {
		Figure figure = new Figure(request.unit());
		List<String> notes = new ArrayList<>();
		notes.add("(THREAD: " + name(request) + ", DEPTH " + figure.word(request.depth())
				+ (!request.through() ? ", BLIND" : hole.toolTip() > request.wall() ? ", THROUGH" : "") + ", COUNT "
				+ request.count() + ")");
		if (request.through()) {
			notes.add("(HOLE: THROUGH " + figure.word(request.wall()) + ")");
		}
		return notes;
	}

	/** The clear level above the part, mm: 25 mm or 1 in, more where a run-up asks for it. */
	static double clear(Request request) {
		Figure figure = new Figure(request.unit());
		return Math.max(figure.clear(25, 1), figure.unit().mm() * Math.ceil(6 * request.thread().lead() / figure.unit().mm()));
	}

	/** rev/min for a drill of high speed steel of a diameter, mm. */
	static double drilling(Request request, double diameter) {
		return Math.max(50, Math.min(8000, Math.floor(SpeedBand.speed(SpeedBand.drilling(request), diameter) / 10) * 10));
	}

	/** Feed of a drill in a turn, mm: 0.015 of its diameter, up to 0.3 (common practice, no source). */
	static double drillFeed(double diameter) {
		return Math.min(0.3, Math.max(0.005, 0.015 * diameter));
	}

	/** What a drill's comment says. */
	static String drillComment(Request request, HolePlan hole) {
		Figure figure = new Figure(request.unit());
		double d = hole.drill().diameter();
		boolean named = hole.drill().unit() == LengthUnit.INCH && !hole.source().startsWith("on hand")
				&& hole.drill().name().chars().anyMatch(c -> !Character.isDigit(c));
		// a bare 3 in an inch program is read as millimetres, as few drills are of 3 inch
		String unit = request.unit() == LengthUnit.INCH && !named ? " IN" : "";
		return "DRILL " + (named ? hole.drill().name() + " " : "") + "DIA " + figure.word(d) + unit + " 118 DEG";
	}

	private int spot(int last) {
		int number = request.rack().free(last + 1);
		tool(number, edge.spotComment(figure));
		double speed = drilling(request, edge.spotSize());
		start(speed, m(Meaning.SPINDLE_CLOCKWISE, 3), number);
		cycle(dialect.g(Meaning.DRILL, 81).orElse("G81") + " Z-" + figure.word(edge.spotDepth()) + level(figure.clear(2.5, 0.1)) + " F"
				+ feed(edge.feed(), speed));
		stop();
		return number;
	}

	private int drill(int last) {
		double d = hole.drill().diameter();
		int number = request.rack().drill(d).orElseGet(() -> request.rack().free(last + 1));
		tool(number, drillComment(request, hole));
		double speed = drilling(request, d);
		start(speed, m(Meaning.SPINDLE_CLOCKWISE, 3), number);
		boolean peck = hole.drillTip() > PECK_OVER * d;
		cycle((peck ? dialect.g(Meaning.PECK_DRILL, 83).orElse("G83") : dialect.g(Meaning.DRILL, 81).orElse("G81")) + " Z-"
				+ figure.word(hole.drillTip()) + level(figure.clear(2.5, 0.1)) + (peck ? " Q" + figure.word(d) : "") + " F"
				+ feed(drillFeed(d), speed));
		stop();
		return request.rack().drill(d).isPresent() ? last : number;
	}

	private int countersink(int last) {
		int number = request.rack().free(last + 1);
		tool(number, edge.countersinkComment(figure));
		double speed = drilling(request, 2 * request.thread().diameter());
		start(speed, m(Meaning.SPINDLE_CLOCKWISE, 3), number);
		cycle(dialect.g(Meaning.DRILL, 81).orElse("G81") + " Z-" + figure.word(edge.depth()) + level(figure.clear(2.5, 0.1)) + " F"
				+ feed(0.1, speed));
		stop();
		return number;
	}

	private void tap(int last) {
		TapBlocks tap = new TapBlocks(request, method, hole);
		int number = request.rack().taps(request.thread()).getOrDefault(method, request.rack().free(last + 1));
		tool(number, tap.toolComment());
		lines.addAll(wanted(request, hole));
		start(tap.speed(), tap.spindle().equals("M4") ? m(Meaning.SPINDLE_COUNTERCLOCKWISE, 4) : m(Meaning.SPINDLE_CLOCKWISE, 3), number);
		RigidTap rigid = RigidTap.of(request.profile());
		rigid.on(tap.speed()).ifPresent(lines::add);
		cycle(tap.cycle(dialect, level(tap.plane())));
		rigid.off().ifPresent(lines::add);
		stop();
	}

	private void mill(int last) {
		MillBlocks mill = new MillBlocks(request, method, hole);
		int number = MillCut.pocket(method, request, hole).orElseGet(() -> request.rack().free(last + 1));
		tool(number, mill.toolComment());
		lines.addAll(wanted(request, hole));
		if (request.feedPerRev()) {
			lines.add(dialect.feedMode(false));
		}
		start(mill.cut().speed(), m(Meaning.SPINDLE_CLOCKWISE, 3), number);
		for (int i = 0; i < request.count(); i++) {
			lines.addAll(mill.hole(x(i), number));
		}
		stop();
	}

	private void tool(int number, String comment) {
		lines.add(dialect.tool(number) + " (" + comment + ")");
	}

	private void start(double speed, String spindle, int number) {
		lines.add("G0 G90 G54 X0. Y0. S" + Figure.plain(speed, 1) + " " + spindle);
		lines.add(dialect.g(Meaning.LENGTH_OFFSET, 43).orElse("G43") + " Z" + figure.word(clear(request)) + " H" + number + " "
				+ m(Meaning.COOLANT_ON, 8));
	}

	private String level(double plane) {
		return " R" + figure.word(dialect.r(plane, clear(request)));
	}

	private void cycle(String cycle) {
		lines.add(dialect.g(Meaning.RETURN_INITIAL, 98).map(g -> g + " ").orElse("") + cycle);
		for (int i = 1; i < request.count(); i++) {
			lines.add("X" + figure.word(x(i)));
		}
		lines.add(dialect.g(Meaning.CYCLE_OFF, 80).orElse("G80"));
	}

	private void stop() {
		lines.add("G0 Z" + figure.word(clear(request)) + " " + m(Meaning.COOLANT_OFF, 9));
		lines.add(m(Meaning.SPINDLE_STOP, 5));
	}

	private String m(Meaning meaning, double usual) {
		return dialect.m(meaning, usual).orElse("M" + Figure.plain(usual, 0));
	}

	private double x(int index) {
		return index * APART * request.thread().diameter();
	}

	private String feed(double advance, double speed) {
		return request.feedPerRev() ? figure.word(Math.max(advance, figure.unit().mm() * 0.0005))
				: figure.word(Math.max(advance * speed, 1));
	}

	private static String name(Request request) {
		ThreadSpec spec = request.thread();
		return spec.designation().toUpperCase(Locale.ROOT);
	}
}
