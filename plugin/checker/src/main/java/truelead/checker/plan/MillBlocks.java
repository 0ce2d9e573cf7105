package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import truelead.checker.thread.Hand;

/**
 * The helix of a single-form thread mill from the bottom up: half arc from the centre climbing P/4, full turns of P, half arc back. G3 for a
 * right-hand thread, which climb mills; G2 for a left-hand one. The feed is at the cutter's centre: edge feed times (D - dc) / D.
 */
final class MillBlocks {
	private static final double CUTTER = 0.65;
	private static final double OF_HOLE = 0.85;
	private static final double FEED_A_TOOTH = 0.004;
	private static final double FASTEST = 8000;
	private static final double HARD = 40;
	private static final double COARSE = 1.5;
	private static final double ROUGH = 0.35 * 0.5413;
	private final Request request;
	private final HolePlan hole;
	private final Figure figure;

	MillBlocks(Request request, HolePlan hole) {
		this.request = request;
		this.hole = hole;
		this.figure = new Figure(request.unit());
	}

	/** The cutter's diameter, mm: below 0.7 D, and well inside the hole. */
	double cutter() {
		double step = request.unit().mm() == 1 ? 0.1 : 0.005 * request.unit().mm();
		return Math.floor(Math.min(CUTTER * request.thread().diameter(), OF_HOLE * hole.drill().diameter()) / step) * step;
	}

	String toolComment() {
		return "THREAD MILL DIA " + figure.word(cutter()) + " SINGLE FORM " + request.thread().designation().toUpperCase(Locale.ROOT);
	}

	double speed() {
		double speed = SpeedBand.speed(SpeedBand.of(Method.THREAD_MILL, request).start(), cutter());
		return Math.max(50, Math.min(FASTEST, Math.floor(speed / 10) * 10));
	}

	/** The blocks at one hole. */
	List<String> hole(double x) {
		List<String> lines = new ArrayList<>();
		lines.add("G0 X" + figure.word(x) + " Y0.");
		double radius = figure.even((request.thread().diameter() - cutter()) / 2);
		if (twoPasses()) {
			pass(lines, x, figure.even(radius - ROUGH * request.thread().pitch()));
		}
		pass(lines, x, radius);
		lines.add("G0 Z" + figure.word(2 * request.thread().diameter()));
		return lines;
	}

	/** A turn for each pitch of the depth and two for the way in and out, in every pass, at the centre's feed; minutes. */
	double minutes() {
		double turns = Math.ceil(hole.toolTip() / request.thread().lead()) + 2;
		return (twoPasses() ? 2 : 1) * turns * Math.PI * (request.thread().diameter() - cutter()) / feed();
	}

	private boolean twoPasses() {
		return request.hardness() >= HARD || request.thread().pitch() > COARSE;
	}

	/** mm/min at the cutter's centre. */
	private double feed() {
		double diameter = request.thread().diameter();
		return Math.max(1, FEED_A_TOOTH * cutter() * 3 * speed() * (diameter - cutter()) / diameter);
	}

	private void pass(List<String> lines, double x, double radius) {
		double pitch = request.thread().lead();
		double z = -hole.toolTip();
		String arc = request.thread().hand() == Hand.LEFT ? "G2" : "G3";
		double feed = feed();
		lines.add("G0 Z" + figure.word(2 * pitch));
		lines.add("G1 Z" + figure.word(z) + " F" + figure.word(feed * 4));
		z += pitch / 4;
		lines.add(arc + " X" + figure.word(x + radius) + " Y0. Z" + figure.word(z) + " I" + figure.word(radius / 2) + " J0. F" + figure.word(feed));
		while (z < pitch / 4) {
			z += pitch;
			lines.add(arc + " X" + figure.word(x + radius) + " Y0. Z" + figure.word(z) + " I" + figure.word(-radius) + " J0.");
		}
		z += pitch / 4;
		lines.add(arc + " X" + figure.word(x) + " Y0. Z" + figure.word(z) + " I" + figure.word(-radius / 2) + " J0.");
	}
}
