package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import truelead.checker.machine.LengthUnit;
import truelead.checker.thread.ThreadSpec;

/** A whole program: spot and countersink, drill, thread; a row of holes along X, 3 D apart, surface at Z0. */
final class ProgramBlocks {
	private static final double APART = 3;
	private static final double PECK_OVER = 3;
	private static final double CHAMFER = 1.03;
	private final Method method;
	private final Request request;
	private final HolePlan hole;
	private final Figure figure;
	private final List<String> lines = new ArrayList<>();

	ProgramBlocks(Method method, Request request, HolePlan hole) {
		this.method = method;
		this.request = request;
		this.hole = hole;
		this.figure = new Figure(request.unit());
	}

	/** How deep the spotting drill goes for a chamfer just over the thread's diameter, mm. */
	static double spotDepth(Request request) {
		return CHAMFER * request.thread().diameter() / 2;
	}

	List<String> lines() {
		head();
		spot();
		drill();
		tool(3, method.tap() ? new TapBlocks(request, method, hole).toolComment() : new MillBlocks(request, hole).toolComment());
		wanted();
		if (method.tap()) {
			TapBlocks tap = new TapBlocks(request, method, hole);
			start(tap.speed(), tap.spindle(), 3);
			RigidTap rigid = RigidTap.of(request.profile());
			rigid.on(tap.speed()).ifPresent(lines::add);
			cycle(tap.cycle());
			rigid.off().ifPresent(lines::add);
		} else {
			MillBlocks mill = new MillBlocks(request, hole);
			start(mill.speed(), "M3", 3);
			for (int i = 0; i < request.count(); i++) {
				lines.addAll(mill.hole(x(i)));
			}
		}
		stop();
		lines.add("M30");
		lines.add("%");
		return List.copyOf(lines);
	}

	private void head() {
		lines.add("%");
		lines.add("(" + name() + ", " + request.count() + (request.count() == 1 ? " HOLE)" : " HOLES)"));
		request.stock().filter(s -> !s.words().isEmpty()).ifPresent(s -> lines.add("(STOCK: " + s.words().toUpperCase(Locale.ROOT) + ")"));
		lines.add("(SURFACE: Z0)");
		lines.add((request.unit() == LengthUnit.MM ? "G21" : "G20") + " G17 G40 G49 G80 G90 G94");
	}

	private void spot() {
		double depth = spotDepth(request);
		tool(1, "SPOT DRILL DIA " + figure.word(Math.ceil(1.2 * request.thread().diameter())) + " 90 DEG, CHAMFERS TO " + figure.word(2 * depth));
		double speed = round(SpeedBand.speed(2 * SpeedBand.of(method, request).start(), request.thread().diameter()));
		start(speed, "M3", 1);
		cycle("G81 Z-" + figure.word(depth) + " R" + figure.word(figure.clear(2.5, 0.1)) + " F" + feed(speed * 0.05));
		stop();
	}

	private void drill() {
		double d = hole.drill().diameter();
		tool(2, "DRILL " + (hole.drill().unit() == LengthUnit.MM ? "DIA " + figure.word(d) : hole.drill().name() + " DIA " + figure.word(d)) + " 118 DEG");
		double speed = round(SpeedBand.speed(2 * SpeedBand.of(method, request).start(), d));
		start(speed, "M3", 2);
		boolean peck = hole.drillTip() > PECK_OVER * d;
		cycle((peck ? "G83" : "G81") + " Z-" + figure.word(hole.drillTip()) + " R" + figure.word(figure.clear(2.5, 0.1)) + (peck ? " Q" + figure.word(d) : "")
				+ " F" + feed(speed * 0.015 * d));
		stop();
	}

	private void tool(int number, String comment) {
		lines.add("T" + number + " M6 (" + comment + ")");
	}

	private void start(double speed, String spindle, int number) {
		lines.add("G0 G90 G54 X0. Y0. S" + Figure.plain(speed, 1) + " " + spindle);
		lines.add("G43 Z" + figure.word(figure.clear(25, 1)) + " H" + number + " M8");
	}

	private void cycle(String cycle) {
		lines.add("G98 " + cycle);
		for (int i = 1; i < request.count(); i++) {
			lines.add("X" + figure.word(x(i)));
		}
		lines.add("G80");
	}

	private void stop() {
		lines.add("G0 Z" + figure.word(figure.clear(25, 1)) + " M9");
		lines.add("M5");
	}

	private double x(int index) {
		return index * APART * request.thread().diameter();
	}

	private void wanted() {
		lines.add("(THREAD: " + name() + ", DEPTH " + figure.word(request.depth()) + (request.through() ? ", THROUGH" : ", BLIND") + ", COUNT " + request.count() + ")");
		if (request.through()) {
			lines.add("(HOLE: THROUGH " + figure.word(request.depth()) + ")");
		}
	}

	private String name() {
		ThreadSpec spec = request.thread();
		return spec.designation().toUpperCase(Locale.ROOT);
	}

	private String feed(double mm) {
		return figure.word(Math.max(mm, 1));
	}

	private static double round(double speed) {
		return Math.max(50, Math.min(8000, Math.floor(speed / 10) * 10));
	}
}
