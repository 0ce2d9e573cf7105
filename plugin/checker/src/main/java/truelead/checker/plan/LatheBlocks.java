package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.profile.Meaning;
import truelead.checker.program.LengthUnit;

/**
 * A whole program of a lathe: one hole on the centreline, X0, the part turning, F in a turn; front face at Z0. Pecks are written out, so
 * that every lathe drills them.
 */
final class LatheBlocks {
	/** From where a tool feeds in above the face, mm; 0.1 in an inch program (common practice, no source). */
	private static final double CLEAR = 2.5;
	/** A hole deeper than this is pecked, in diameters (common practice, no source). */
	private static final double PECK_OVER = 3;
	/** A peck starts this far above the last one's end, mm (common practice, no source). */
	private static final double ABOVE = 0.5;
	private final Method method;
	private final Request request;
	private final HolePlan hole;
	private final Figure figure;
	private final Dialect dialect;
	private final List<String> lines = new ArrayList<>();

	LatheBlocks(Method method, Request request, HolePlan hole) {
		this.method = method;
		this.request = request;
		this.hole = hole;
		this.figure = new Figure(request.unit());
		this.dialect = new Dialect(request.profile());
	}

	List<String> lines() {
		lines.addAll(ProgramBlocks.head(request));
		lines.add(String.join(" ", request.unit() == LengthUnit.MM ? dialect.g(Meaning.MILLIMETRE, 21).orElse("G21")
				: dialect.g(Meaning.INCH, 20).orElse("G20"), dialect.g(Meaning.PLANE_ZX, 18).orElse("G18"),
				dialect.g(Meaning.COMPENSATION_OFF, 40).orElse("G40"), dialect.g(Meaning.CYCLE_OFF, 80).orElse("G80"),
				dialect.feedMode(request.feedPerRev())));
		Edge edge = Edge.of(request);
		int last = request.rack().free(1);
		tool(last, edge.spotComment(figure));
		start(ProgramBlocks.drilling(request, edge.spotSize()), m(Meaning.SPINDLE_CLOCKWISE, 3), figure.clear(CLEAR, 0.1));
		feedTo(edge.spotDepth(), edge.feed(), ProgramBlocks.drilling(request, edge.spotSize()));
		stop();
		last = drill(last);
		if (edge.after()) {
			last = request.rack().free(last + 1);
			double speed = ProgramBlocks.drilling(request, 2 * request.thread().diameter());
			tool(last, edge.countersinkComment(figure));
			start(speed, m(Meaning.SPINDLE_CLOCKWISE, 3), figure.clear(CLEAR, 0.1));
			feedTo(edge.depth(), 0.1, speed);
			stop();
		}
		tap(last);
		lines.add(m(Meaning.PROGRAM_END, 30));
		lines.add("%");
		return List.copyOf(lines);
	}

	private int drill(int last) {
		double d = hole.drill().diameter();
		int number = request.rack().drill(d).orElseGet(() -> request.rack().free(last + 1));
		double speed = ProgramBlocks.drilling(request, d);
		tool(number, ProgramBlocks.drillComment(request, hole));
		start(speed, m(Meaning.SPINDLE_CLOCKWISE, 3), figure.clear(CLEAR, 0.1));
		double peck = hole.drillTip() > PECK_OVER * d ? d : hole.drillTip();
		for (double z = Math.min(peck, hole.drillTip()); ; z = Math.min(z + peck, hole.drillTip())) {
			feedTo(z, ProgramBlocks.drillFeed(d), speed);
			if (z > hole.drillTip() - 1e-9) {
				break;
			}
			lines.add("G0 Z" + figure.word(figure.clear(CLEAR, 0.1)));
			lines.add("G0 Z" + figure.word(ABOVE - z));
		}
		stop();
		return request.rack().drill(d).isPresent() ? last : number;
	}

	private void tap(int last) {
		TapBlocks tap = new TapBlocks(request, method, hole);
		int number = request.rack().taps(request.thread()).getOrDefault(method, request.rack().free(last + 1));
		tool(number, tap.toolComment());
		lines.addAll(ProgramBlocks.wanted(request, hole));
		start(tap.speed(), tap.spindle().equals("M4") ? m(Meaning.SPINDLE_COUNTERCLOCKWISE, 4) : m(Meaning.SPINDLE_CLOCKWISE,
				3), tap.plane());
		RigidTap rigid = RigidTap.of(request.profile());
		rigid.on(tap.speed()).ifPresent(lines::add);
		lines.add(tap.cycle(dialect, ""));
		lines.add(dialect.g(Meaning.CYCLE_OFF, 80).orElse("G80"));
		rigid.off().ifPresent(lines::add);
		stop();
	}

	private void tool(int number, String comment) {
		lines.add(dialect.tool(number) + " (" + comment + ")");
	}

	private void start(double speed, String spindle, double level) {
		lines.add(dialect.g(Meaning.CONSTANT_SPINDLE_SPEED, 97).orElse("G97") + " S" + Figure.plain(speed, 1) + " " + spindle);
		lines.add("G0 X0. Z" + figure.word(ProgramBlocks.clear(request)) + " " + m(Meaning.COOLANT_ON, 8));
		lines.add("G0 Z" + figure.word(level));
	}

	private void feedTo(double depth, double advance, double speed) {
		String feed = request.feedPerRev() ? figure.word(advance) : figure.word(Math.max(1, advance * speed));
		lines.add("G1 Z" + figure.word(-depth) + " F" + feed);
	}

	private void stop() {
		lines.add("G0 Z" + figure.word(ProgramBlocks.clear(request)) + " " + m(Meaning.COOLANT_OFF, 9));
		lines.add("G28 U0. W0.");
		lines.add(m(Meaning.SPINDLE_STOP, 5));
	}

	private String m(Meaning meaning, double usual) {
		return dialect.m(meaning, usual).orElse("M" + Figure.plain(usual, 0));
	}
}
