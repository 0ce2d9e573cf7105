package truelead.audit.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.SheetFigures;
import truelead.checker.sheet.TurnedSheet;

/** What the first-run sheet says of threads that a lathe cuts by a single point (common practice, no source). */
final class FirstTurned {

	/** Steps of proving out that come behind those of holes. */
	static final List<String> ORDER = List.of("Outside or bore measured before the first pass of a turned thread.",
			"Wear offset of each threading tool set to leave some depth; first pass looked at: lead by a pitch gauge, hand by eye.",
			"Turned threads gauged and taken to size before the second part.");

	private FirstTurned() {
	}

	/** A line of what to watch: tool, before it goes in, at the first pass, and room for a name. */
	static List<String> watch(TurnedSheet sheet) {
		return List.of(sheet.tool().name() + " " + sheet.name(), before(sheet), first(sheet), "");
	}

	private static String before(TurnedSheet sheet) {
		Figures figures = new Figures(sheet.unit());
		String turn = sheet.lead() > 0 ? ", " + figures.advance(sheet.lead()) + " " + figures.symbol() + " a turn needed" : "";
		return "Feed and speed override at 100 %, left alone until the last pass. " + sheet.revolutions() + " " + sheet.turning() + ", "
				+ sheet.feed() + turn + ".";
	}

	private static String first(TurnedSheet sheet) {
		Figures figures = new Figures(sheet.unit());
		String wall = Double.isNaN(sheet.prepared()) ? "" : ", " + (sheet.cut().inside() ? "bore" : "outside turned") + " to "
				+ SheetFigures.level(sheet.prepared(), figures);
		return "line " + line(sheet.block()) + ": stop before the pass, at " + SheetFigures.level(sheet.from(), figures)
				+ ", look; first pass " + SheetFigures.first(sheet, figures) + ", ends at " + SheetFigures.level(sheet.to(), figures) + wall
				+ "; deepest to " + SheetFigures.diameter(sheet.diameter(), figures) + ".";
	}

	/** Where to stop for the first part. */
	static List<String> stops(TurnedSheet sheet) {
		boolean inside = sheet.cut().inside();
		String what = sheet.tool().name() + " " + sheet.name();
		List<String> stops = new ArrayList<>();
		sheet.tool().change().ifPresent(change -> stops.add("M1 before line " + line(change) + ": " + (inside ? "bore" : "outside")
				+ " measured" + limits(sheet) + " before " + what));
		stops.add("M1 behind line " + line(sheet.lastBlock()) + ", where the tool is clear of the part: thread of " + what + " gauged"
				+ (sheet.thread().isEmpty() ? "" : inside ? " by plug gauge" : " by ring gauge") + " before the part is moved");
		return stops;
	}

	/** Between which diameters the bore, or the outside, must be. */
	private static String limits(TurnedSheet sheet) {
		Optional<String> bore = sheet.limits().filter(limits -> limits.minorMinMm().isPresent() && limits.minorMaxMm().isPresent())
				.map(limits -> range(limits.minorMinMm().getAsDouble(), limits.minorMaxMm().getAsDouble(), limits.unit()));
		return bore.or(() -> sheet.boltLimits().map(limits -> range(limits.majorMinMm(), limits.majorMaxMm(), limits.unit()))).orElse("");
	}

	private static String range(double least, double most, LengthUnit unit) {
		Figures figures = new Figures(unit);
		return ", " + figures.coordinate(least) + " to " + figures.fine(most) + ",";
	}

	private static int line(BlockRef block) {
		return block.outermost().line() + 1;
	}
}
