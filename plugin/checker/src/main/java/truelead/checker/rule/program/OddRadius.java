package truelead.checker.rule.program;

import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.Plane;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Written;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.ThreadMilling;
import truelead.grammar.Element;

/**
 * An arc written with R that begins and ends on the circle of a helix and goes round another centre: a wrong R, one with the sign of the
 * long way round, or an arc that turns the other way. A lead-in begins inside the circle, and a lead-out ends there.
 *
 * @param arc  the arc
 * @param pass the helix before or behind it
 */
record OddRadius(Step.Arc arc, MillPass pass) {

	/** What ends of arcs may lie beside their circle, as a part of the radius (common practice, no source). */
	private static final double PART = 0.01;
	/** What rounding leaves between a radius and half a chord, mm, and between an angle and half a turn. */
	private static final double FULL_HALF = 1e-3;
	/**
	 * How far from the middle the centre of an arc lies that goes the short way, as a part of the radius: at 200 degrees between the ends
	 * twice the sine of 10 (geometry).
	 */
	private static final double SHORT = 0.3;
	/** Change of radius of a taper pipe thread along the axis, a ratio. */
	private static final double TAPER = ThreadSpec.PIPE_TAPER / 2;

	/** The arc next to a helix that is one; empty where there is none. */
	static Optional<OddRadius> of(MillPass pass) {
		Optional<Step> before = pass.entry().isEmpty() ? Optional.empty() : Optional.of(pass.entry().get(pass.entry().size() - 1));
		return odd(before, pass).or(() -> behind(pass));
	}

	/** The arc behind a helix that is one; empty where there is none. */
	static Optional<OddRadius> behind(MillPass pass) {
		return odd(pass.exit().stream().findFirst(), pass);
	}

	private static Optional<OddRadius> odd(Optional<Step> step, MillPass pass) {
		return step.filter(Step.Arc.class::isInstance).map(Step.Arc.class::cast).filter(arc -> arc.byRadius() && pass.first().byRadius()
				&& arc.rise() != 0 && onCircle(arc.from(), pass) && onCircle(arc.to(), pass) && anotherCircle(arc, pass))
				.map(arc -> new OddRadius(arc, pass));
	}

	/** Whether its R is another one, takes the long way round, or the arc turns the other way. */
	private static boolean anotherCircle(Step.Arc arc, MillPass pass) {
		double open = grows(pass) == 0 ? FULL_HALF : PART * pass.radius();
		boolean other = Math.abs(arc.startRadius() - radius(arc, pass)) > open
				&& !(halfCircle(arc) && pass.helix().stream().noneMatch(OddRadius::halfCircle));
		return turnsBack(arc, pass) || Math.abs(arc.sweep()) > Math.PI + FULL_HALF || other || shortWay(arc, pass);
	}

	/**
	 * Whether an arc of the right R goes the short way where its ends lie more than half a turn apart on the circle, as where a block
	 * between is left out.
	 */
	private static boolean shortWay(Step.Arc arc, MillPass pass) {
		double[] centre = pass.centre();
		Plane plane = pass.place().plane();
		double away = Math.hypot(arc.centre().along(plane.first()) - centre[0], arc.centre().along(plane.second()) - centre[1]);
		return Math.abs(arc.sweep()) < Math.PI - FULL_HALF && away > SHORT * pass.radius()
				&& Math.abs(arc.startRadius() - radius(arc, pass)) <= PART * pass.radius();
	}

	/** Whether an arc turns the other way than a helix; half a circle round the middle, as from one pass to the next, does so rightly. */
	private static boolean turnsBack(Step.Arc arc, MillPass pass) {
		return arc.sweep() > 0 != pass.counterclockwise() && !halfCircle(arc);
	}

	/** What the radius of a helix changes by along the axis, mm a mm; 0 where that is no taper of a pipe thread. */
	private static double grows(MillPass pass) {
		double grows = (fromMiddle(pass.last().to(), pass) - fromMiddle(pass.first().from(), pass)) / (pass.endLevel() - pass.startLevel());
		return Math.abs(grows) > TAPER / 2 && Math.abs(grows) < 2 * TAPER ? grows : 0;
	}

	/** The radius of a helix at the level of an arc, mm. */
	private static double radius(Step.Arc arc, MillPass pass) {
		return (radius(arc.from(), pass) + radius(arc.to(), pass)) / 2;
	}

	private static double radius(Point point, MillPass pass) {
		return pass.radius() + grows(pass) * (point.along(pass.axis()) - (pass.startLevel() + pass.endLevel()) / 2);
	}

	private static double fromMiddle(Point point, MillPass pass) {
		Plane plane = pass.place().plane();
		double[] centre = pass.centre();
		return Math.hypot(point.along(plane.first()) - centre[0], point.along(plane.second()) - centre[1]);
	}

	/** Whether R is half the way between the ends, as it is for half a circle: of two halves of a turn that one is right. */
	private static boolean halfCircle(Step.Arc arc) {
		return Math.abs(2 * arc.startRadius() - arc.from().distanceInPlane(arc.to(), arc.modal().plane())) < FULL_HALF;
	}

	private static boolean onCircle(Point point, MillPass pass) {
		return Math.abs(fromMiddle(point, pass) - radius(point, pass)) <= Math.max(PART * pass.radius(),
				0.01 + 3 * Written.open(pass.resolution()));
	}

	/** The finding; the R of the helix is typed where it is written so. */
	Draft draft(ArcNotClosed rule, ThreadMilling milling) {
		Figures figures = new Figures(arc.modal().unit());
		double circle = radius(arc, pass);
		if (turnsBack(arc, pass)) {
			return turned(rule, milling);
		}
		boolean longWay = Math.abs(arc.sweep()) > Math.PI && Math.abs(arc.startRadius() - circle) <= PART * circle;
		Optional<Element.Word> own = radius(arc.block());
		Optional<Element.Word> right = radius(pass.first().block());
		Location at = own.map(word -> new Location(arc.block().file(), arc.block().line(), word.span())).orElse(Location.of(arc.block()));
		boolean shortWay = shortWay(arc, pass);
		if (!longWay && !shortWay && own.isPresent() && right.isPresent() && text(arc.block(), own.get())
				.equals(text(pass.first().block(), right.get()))) {
			return Draft.of(rule, Severity.ERROR, Location.of(arc.block()), "this arc goes round another centre than the helix, with the "
					+ "same R: between its ends that makes a circle of R " + figures.fine(arc.startRadius()) + ", beside it one of "
					+ figures.fine(circle) + "; see the end points of both").on(milling)
					.programmed("radius", figures.fine(arc.startRadius()), arc.block()).related(pass.block(), "the helix");
		}
		Draft draft = Draft.of(rule, Severity.ERROR, at, "this arc goes round another centre than the helix: R "
				+ (shortWay ? "takes the short way, " + Figures.number(Math.toDegrees(Math.abs(arc.sweep())), 0)
						+ " degrees, between ends that are more than half a turn apart on its circle; the block that is left out before "
						+ "it, or R with a minus" : longWay ? "with a minus takes the long way round, "
						+ Figures.number(Math.toDegrees(Math.abs(arc.sweep())), 0) + " degrees" : figures.fine(arc.startRadius())
						+ ", the circle has " + figures.fine(circle)) + (shortWay ? ""
								: "; R" + Figures.number(circle / figures.unit().mm(), 4))).on(milling)
				.programmed("radius", figures.fine(arc.startRadius()), arc.block()).from("radius of the helix", figures.fine(circle),
						"the arcs beside it");
		if (own.isPresent() && right.isPresent() && grows(pass) == 0 && !shortWay) {
			String text = text(pass.first().block(), right.get());
			draft.fix(new Fix("Change R to " + text, false, "see that the arc is meant to go on round the helix",
					List.of(new Edit(at, text))));
		}
		return draft;
	}

	/** The finding about one that turns the other way. */
	private Draft turned(ArcNotClosed rule, ThreadMilling milling) {
		boolean left = pass.counterclockwise() != arc.modal().mirrored();
		return Draft.of(rule, Severity.ERROR, BlockText.word(arc.block(), "G"), "this arc goes " + (left ? "clockwise"
				: "counter-clockwise") + ", the arcs of the helix beside it " + (left ? "counter-clockwise" : "clockwise")
				+ ": it turns back round another centre and cuts into the thread; " + (left ? "G3" : "G2")).on(milling)
				.programmed("radius", new Figures(arc.modal().unit()).fine(arc.startRadius()), arc.block())
				.related(pass.block(), "the helix");
	}

	private static String text(BlockRef block, Element.Word word) {
		return block.file().text().line(block.line()).substring(word.span().start(), word.span().end());
	}

	private static Optional<Element.Word> radius(BlockRef block) {
		return block.file().text().block(block.line()).words().stream().filter(word -> word.address() == 'R').findFirst();
	}
}
