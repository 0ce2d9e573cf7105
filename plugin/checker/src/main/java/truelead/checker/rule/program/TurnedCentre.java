package truelead.checker.rule.program;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.Plane;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadMilling;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * A turn of a helix whose centre lies on the other side of its start, as with the sign of I or J lost: it closes, but the path turns back
 * on itself where it joins the arc before it. About the centre on the right side the path goes on smoothly (geometry).
 *
 * @param pass   the turn
 * @param before the arc before it
 */
record TurnedCentre(MillPass pass, Step.Arc before) {

	/**
	 * Arcs that go on in one direction to this are smooth, those that are as near to the opposite one turn back; the rest is rounding of
	 * the coordinates.
	 */
	private static final double SMOOTH = Math.toRadians(10);
	private static final double JOINED = 1e-3;
	/** How near the middle the cutter comes down, a part of the radius (common practice, no source). */
	private static final double NEAR = 0.1;

	/** The first turn of an operation that is one; empty where none is. */
	static Optional<TurnedCentre> of(ThreadMilling milling) {
		Set<Step.Arc> turned = new HashSet<>();
		Optional<TurnedCentre> first = Optional.empty();
		for (MillPass pass : milling.passes().typical()) {
			Optional<TurnedCentre> one = of(pass).filter(it -> !turned.contains(it.before()));
			one.ifPresent(it -> turned.add(it.pass().last()));
			first = first.or(() -> one);
		}
		return first;
	}

	private static Optional<TurnedCentre> of(MillPass pass) {
		List<Step> entry = pass.entry();
		if (entry.isEmpty() || !(entry.get(entry.size() - 1) instanceof Step.Arc before) || pass.first().byRadius()
				|| before.modal().plane() != pass.place().plane()) {
			return Optional.empty();
		}
		Plane plane = pass.place().plane();
		double kink = Math.abs(Math.IEEEremainder(before.heading(before.to()) - pass.first().heading(pass.first().from()), 2 * Math.PI));
		Point turned = mirrored(pass.first(), plane);
		// the arc before goes round that centre, or the cutter came down there
		boolean meant = Stream.concat(Stream.of(before.centre()), cameDown(pass).stream())
				.anyMatch(point -> point.distanceInPlane(turned, plane) < NEAR * pass.radius());
		boolean joined = meant && before.to().distanceInPlane(pass.first().from(), plane) < JOINED;
		return joined && kink > Math.PI - SMOOTH && before.sweep() > 0 == pass.first().sweep() > 0
				? Optional.of(new TurnedCentre(pass, before)) : Optional.empty();
	}

	/** The centre with the other sign, on the other side of the start. */
	private static Point mirrored(Step.Arc arc, Plane plane) {
		Point start = arc.from();
		return start.with(plane.first(), 2 * start.along(plane.first()) - arc.centre().along(plane.first()))
				.with(plane.second(), 2 * start.along(plane.second()) - arc.centre().along(plane.second()));
	}

	/** Where the cutter was before it led in. */
	private static Optional<Point> cameDown(MillPass pass) {
		Step first = pass.entry().get(0);
		return first instanceof Step.Move move ? Optional.of(move.from()) : first instanceof Step.Arc arc ? Optional.of(arc.from())
				: Optional.empty();
	}

	/** The finding; where one number says the centre, its sign is turned. */
	Draft draft(ArcNotClosed rule, ThreadMilling milling) {
		Step.Arc arc = pass.first();
		Figures figures = new Figures(arc.modal().unit());
		Plane plane = pass.place().plane();
		BlockRef block = arc.block();
		List<Element.Word> words = block.file().text().block(block.line()).words().stream()
				.filter(word -> "IJK".indexOf(word.address()) >= 0 && !(word.value() instanceof Expression.Number number
						&& number.value() == 0)).toList();
		Location at = words.isEmpty() ? Location.of(block) : new Location(block.file(), block.line(), words.get(0).span());
		String written = words.size() == 1 && words.get(0).value() instanceof Expression.Number
				? block.file().text().line(block.line()).substring(at.span().start(), at.span().end()) : "";
		String right = written.contains("-") ? written.replace("-", "") : written.isEmpty() ? ""
				: written.charAt(0) + "-" + written.substring(1).replace("+", "").strip();
		Optional<Draft> other = again(rule).or(() -> wholeBefore(rule));
		if (other.isPresent()) {
			return other.get().on(milling).related(before.block(), "the arc before it");
		}
		Draft draft = Draft.of(rule, Severity.ERROR, at, "the centre of this arc, " + at(arc.centre(), plane, figures)
				+ ", lies on the other side of its start than that of the arc before it: the path turns back on itself there; "
				+ (right.isEmpty() ? "the centre's words with the other sign" : right)).on(milling)
				.programmed("centre", at(arc.centre(), plane, figures), block).related(before.block(), "the arc before it");
		if (!right.isEmpty()) {
			draft.fix(new Fix("Change " + Figures.tight(written) + " to " + Figures.tight(right), false,
					"see that the arc is meant to go on round the helix", List.of(new Edit(at, right))));
		}
		return draft;
	}

	/** The block before it stands twice: the other one goes round nowhere. */
	private Optional<Draft> again(ArcNotClosed rule) {
		return words(pass.first().block()).equals(words(before.block())) && !pass.first().block().sameBlock(before.block())
				? Optional.of(Draft.of(rule, Severity.ERROR, Location.of(pass.first().block()), "this arc is the one before it again, and "
						+ "goes round another centre from where that ends: it cuts into the thread; take one of the two out"))
				: Optional.empty();
	}

	/** The arc before it says no end, as this one does, and so comes back to its start: this one begins on the wrong side. */
	private Optional<Draft> wholeBefore(ArcNotClosed rule) {
		Plane plane = pass.place().plane();
		String axes = "" + "XYZ".charAt(plane.first()) + "XYZ".charAt(plane.second());
		boolean whole = before.from().distanceInPlane(before.to(), plane) < JOINED && !says(before.block(), axes)
				&& says(pass.first().block(), axes);
		return whole ? Optional.of(Draft.of(rule, Severity.ERROR, Location.of(before.block()), "this arc says no end and goes all the way "
				+ "round to its start, the one behind it goes on from the other side of the helix: it turns back on itself there; the end "
				+ "of this arc")) : Optional.empty();
	}

	private static boolean says(BlockRef block, String axes) {
		return block.file().text().block(block.line()).words().stream().anyMatch(word -> axes.indexOf(word.address()) >= 0);
	}

	/** The words of a block but for its number. */
	private static List<String> words(BlockRef block) {
		String text = block.file().text().line(block.line());
		return block.file().text().block(block.line()).words().stream().filter(word -> word.address() != 'N')
				.map(word -> text.substring(word.span().start(), word.span().end())).toList();
	}

	private static String at(Point centre, Plane plane, Figures figures) {
		double mm = figures.unit().mm();
		return "XYZ".charAt(plane.first()) + Figures.number(centre.along(plane.first()) / mm, 4) + " " + "XYZ".charAt(plane.second())
				+ Figures.number(centre.along(plane.second()) / mm, 4);
	}
}
