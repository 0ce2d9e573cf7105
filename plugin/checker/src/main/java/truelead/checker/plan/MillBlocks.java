package truelead.checker.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import truelead.checker.profile.Meaning;
import truelead.checker.thread.Hand;

/**
 * The helix of a thread mill from the bottom up: half arc from the centre climbing P/4, full turns of P, half arc back. G3 for a right-hand
 * thread, which climb mills; G2 for a left-hand one. A comb goes round once; a single form as often as the depth has pitches.
 */
final class MillBlocks {
	/**
	 * How far behind the centre a compensated path begins, a share of the radius, so that the move that starts compensation is longer than
	 * the cutter's radius (common practice, no source).
	 */
	private static final double BEHIND = 0.1;
	private final Request request;
	private final Method method;
	private final HolePlan hole;
	private final Figure figure;
	private final MillCut cut;
	private final Dialect dialect;

	MillBlocks(Request request, Method method, HolePlan hole) {
		this.request = request;
		this.method = method;
		this.hole = hole;
		this.figure = new Figure(request.unit());
		this.cut = MillCut.of(method, request, hole);
		this.dialect = new Dialect(request.profile());
	}

	MillCut cut() {
		return cut;
	}

	String toolComment() {
		String thread = request.thread().designation().toUpperCase(Locale.ROOT);
		return method.tool() + " DIA " + figure.word(cut.cutter()) + (method == Method.COMB_MILL ? " " + thread : " SINGLE FORM " + thread);
	}

	/** The blocks at one hole. */
	List<String> hole(double x, int offset) {
		List<String> lines = new ArrayList<>();
		lines.add("G0 X" + figure.word(x) + " Y0.");
		for (double radius : cut.radii()) {
			if (request.options().contains(Request.Option.COMPENSATION)) {
				compensated(lines, x, radius, offset);
			} else {
				pass(lines, x, radius);
			}
		}
		lines.add("G0 Z" + figure.word(ProgramBlocks.clear(request)));
		return lines;
	}

	/** Every pass turns once a pitch of the depth, a comb once, and one more for the way in and out, at the centre's feed; minutes. */
	double minutes() {
		double turns = (method == Method.COMB_MILL ? 1 : Math.ceil(hole.toolTip() / request.thread().lead()) + 1) + 1;
		return cut.radii().size() * turns * Math.PI * (request.thread().diameter() - cut.cutter()) / cut.centre();
	}

	/** The centre's path. */
	private void pass(List<String> lines, double x, double radius) {
		double pitch = request.thread().lead();
		double z = plunge(lines) + pitch / 4;
		lines.add(arc() + " X" + figure.word(x + radius) + " Y0. Z" + figure.word(z) + " I" + figure.word(radius / 2) + " J0. F" + feed(1));
		z = turns(lines, x, radius, z) + pitch / 4;
		lines.add(arc() + " X" + figure.word(x) + " Y0. Z" + figure.word(z) + " I" + figure.word(-radius / 2) + " J0.");
	}

	/** The wall's path: compensation starts on a straight move in the middle of the hole and ends on one there. */
	private void compensated(List<String> lines, double x, double radius, int offset) {
		double pitch = request.thread().lead();
		double wall = radius + cut.cutter() / 2;
		double entry = figure.even((radius * (1 + BEHIND) + cut.cutter()) / 2);
		double z = plunge(lines) + pitch / 4;
		String side = request.thread().hand() == Hand.LEFT ? dialect.g(Meaning.COMPENSATION_RIGHT, 42).orElse("G42")
				: dialect.g(Meaning.COMPENSATION_LEFT, 41).orElse("G41");
		lines.add("G1 " + side + " D" + offset + " X" + figure.word(x + wall - 2 * entry) + " Y0. F" + feed(1));
		lines.add(arc() + " X" + figure.word(x + wall) + " Y0. Z" + figure.word(z) + " I" + figure.word(entry) + " J0.");
		z = turns(lines, x, wall, z) + pitch / 4;
		lines.add(arc() + " X" + figure.word(x + wall - 2 * entry) + " Y0. Z" + figure.word(z) + " I" + figure.word(-entry) + " J0.");
		lines.add("G1 " + dialect.g(Meaning.COMPENSATION_OFF, 40).orElse("G40") + " X" + figure.word(x) + " Y0.");
	}

	/** Goes down in the middle; the level, mm. */
	private double plunge(List<String> lines) {
		lines.add("G0 Z" + figure.word(2 * request.thread().lead()));
		lines.add("G1 Z" + figure.word(-hole.toolTip()) + " F" + feed(4));
		return -hole.toolTip();
	}

	private double turns(List<String> lines, double x, double radius, double from) {
		double pitch = request.thread().lead();
		double z = from;
		do {
			z += pitch;
			lines.add(arc() + " X" + figure.word(x + radius) + " Y0. Z" + figure.word(z) + " I" + figure.word(-radius) + " J0.");
		} while (method != Method.COMB_MILL && z < pitch / 4);
		return z;
	}

	private String arc() {
		return request.thread().hand() == Hand.LEFT ? "G2" : "G3";
	}

	/** So many times the centre's feed. */
	private String feed(double times) {
		return figure.word(cut.centre() * times);
	}
}
