package truelead.checker.callout;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import truelead.checker.thread.ToolKind;

/** Finds the angle of a tool's point, or of the edge that it cuts, in a comment; radians. */
final class PointAngle {

	private static final Set<Double> BARE_ANGLES = Set.of(60.0, 82.0, 90.0, 100.0, 118.0, 120.0, 135.0, 140.0, 142.0, 145.0);
	private static final double SHARPEST = Math.toRadians(30);
	private static final double FLATTEST = Math.toRadians(180);

	private final PartRow row;
	private final List<Part> parts;
	private final boolean drillsAlone;

	/** @param drillsAlone whether the comment names drills and no other tool */
	PointAngle(PartRow row, boolean drillsAlone) {
		this.row = row;
		this.parts = row.parts();
		this.drillsAlone = drillsAlone;
	}

	/** The angle of the point; a drill with inserts leaves a floor that is all but flat (common practice, no source). */
	OptionalDouble said() {
		for (Part part : parts) {
			if (part instanceof Part.Angle angle && angle.radians() >= SHARPEST - 1e-9 && angle.radians() <= FLATTEST + 1e-9) {
				return OptionalDouble.of(angle.radians());
			}
		}
		return row.has(Meaning.FLAT_DRILL) || withInserts() ? OptionalDouble.of(FLATTEST) : OptionalDouble.empty();
	}

	/** DRILL D40.5 WITH INSERTS: not the inserts that a tapped hole is for. */
	private boolean withInserts() {
		return drillsAlone && row.has(Meaning.INSERT) && !row.has(Meaning.FOR) && parts.stream().noneMatch(p -> p instanceof Part.Thread
				|| p instanceof Part.Word w && w.meaning().threading());
	}

	/**
	 * COUNTERSINK 90, NC SPOT DRILL 120: the number of a tool for edges that is one of their angles, without a unit (common practice, no
	 * source).
	 */
	static boolean is(ToolKind kind, Dimension size) {
		return edges(kind) && size.unit().isEmpty() && BARE_ANGLES.contains(size.value());
	}

	private static boolean edges(ToolKind kind) {
		return kind == ToolKind.COUNTERSINK || kind == ToolKind.SPOT_DRILL || kind == ToolKind.CENTRE_DRILL;
	}

	/** SPOT DRILL 90 D10: of two numbers the one that is no diameter but an angle, radians. */
	OptionalDouble besides(ToolKind kind, Dimension size) {
		return !edges(kind) ? OptionalDouble.empty() : parts.stream().filter(p -> p instanceof Part.Amount a && a.role() == Part.Role.PLAIN
				&& !a.dimension().equals(size) && a.dimension().unit().isEmpty() && BARE_ANGLES.contains(a.dimension().value()))
				.mapToDouble(p -> Math.toRadians(((Part.Amount) p).dimension().value())).findFirst();
	}
}
