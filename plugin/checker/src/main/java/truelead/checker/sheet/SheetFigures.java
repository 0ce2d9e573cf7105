package truelead.checker.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import truelead.checker.rule.Figures;
import truelead.checker.thread.BoltLimits;
import truelead.checker.thread.Hand;
import truelead.checker.thread.Limits;
import truelead.checker.turn.SinglePoint;

/** The numbers of a threading operation as people read them, each with where it comes from; reports and the editor show the same. */
public final class SheetFigures {

	/** A name and what stands behind it; never empty. */
	public record Figure(String name, String value) {
	}

	/** So many passes of a turned thread are told one by one. */
	private static final int MOST_PASSES = 24;

	private SheetFigures() {
	}

	/** What is known of an operation, in the order of a machinist's questions: which thread, how, with what, how fast, how deep. */
	public static List<Figure> of(ThreadSheet sheet) {
		return sheet instanceof TurnedSheet turned ? turned(turned) : inHoles((OperationSheet) sheet);
	}

	private static List<Figure> inHoles(OperationSheet sheet) {
		Figures figures = new Figures(sheet.unit());
		List<Figure> all = common(sheet, figures, sheet.turns() > 0 ? ", " + Figures.turns(sheet.turns()) + " turns" : "");
		add(all, "depth called out", sheet.depth());
		add(all, "cut diameter", Double.isNaN(sheet.cutDiameter()) ? "" : figures.fine(sheet.cutDiameter()));
		add(all, "lead of the tool", sheet.leadLength() > 0 ? figures.length(sheet.leadLength())
				+ sheet.tool().facts().leadTurns().map(turns -> ", " + turns.origin()).orElse("") : "");
		return all;
	}

	/** Which thread, how, with what, how fast; {@code turns} is said behind what a turn advances. */
	private static List<Figure> common(ThreadSheet sheet, Figures figures, String turns) {
		List<Figure> all = new ArrayList<>();
		add(all, "thread", sheet.thread().map(fact -> fact.value().designation() + ", " + fact.origin()).orElse("nothing names it"));
		add(all, "limits", sheet.limits().map(SheetFigures::limits).or(() -> sheet.boltLimits().map(SheetFigures::limits)).orElse(""));
		add(all, "made by", sheet.method() + ", line " + (sheet.block().outermost().line() + 1));
		add(all, "tool", tool(sheet));
		add(all, "spindle", sheet.revolutions() + ", " + sheet.turning());
		add(all, "feed", sheet.feed());
		add(all, "a turn", turn(sheet, figures, turns));
		return all;
	}

	private static List<Figure> turned(TurnedSheet sheet) {
		Figures figures = new Figures(sheet.unit());
		List<Figure> all = common(sheet, figures, "");
		add(all, "hand", hand(sheet) + (sheet.hand().isPresent() ? ", by spindle and way of the passes" : ""));
		add(all, "starts", starts(sheet));
		add(all, sheet.cut().inside() ? "bore" : "outside", prepared(sheet.cut(), figures));
		add(all, "along Z", along(sheet, figures));
		add(all, "left behind it", room(sheet, figures).orElse(""));
		add(all, "first pass", first(sheet, figures));
		add(all, "passes", passes(sheet, figures));
		add(all, "height by the cycle", Double.isNaN(sheet.height()) ? "" : figures.fine(sheet.height()));
		add(all, "goes to", diameter(sheet.diameter(), figures) + ", line " + (sheet.deepBy().outermost().line() + 1));
		return all;
	}

	/** The hand that a turned thread gets, in words. */
	public static String hand(TurnedSheet sheet) {
		return sheet.hand().map(hand -> hand == Hand.RIGHT ? "right" : "left").orElse("not known");
	}

	/** The starts of a turned thread, in words. */
	public static String starts(TurnedSheet sheet) {
		return sheet.starts() > 0 ? "" + sheet.starts() : "not known";
	}

	private static String along(TurnedSheet sheet, Figures figures) {
		return level(sheet.from(), figures) + " to " + level(sheet.to(), figures);
	}

	/** How far the first pass of a turned thread goes, as far as the program says it. */
	public static String first(TurnedSheet sheet, Figures figures) {
		return sheet.dividedByControl() ? Double.isNaN(sheet.firstDepth()) ? "depth not known" : figures.fine(sheet.firstDepth()) + " deep"
				: "to " + diameter(sheet.firstDiameter(), figures);
	}

	/** How many passes cut a turned thread. */
	public static String count(TurnedSheet sheet) {
		return !sheet.counted() ? "as many as the control makes" : sheet.passes() < SinglePoint.MOST ? "" + sheet.passes()
				: SinglePoint.MOST + " or more";
	}

	private static String passes(TurnedSheet sheet, Figures figures) {
		List<Double> all = sheet.diameters();
		String listed = all.stream().limit(MOST_PASSES).map(one -> Double.isNaN(one) ? "not known" : figures.coordinate(one))
				.collect(Collectors.joining(" \u00b7 "));
		return count(sheet) + (all.size() < 2 || sheet.dividedByControl() ? "" : ": " + listed + (all.size() > MOST_PASSES
				? " \u2026" : ""));
	}

	private static String prepared(SinglePoint cut, Figures figures) {
		return cut.bore().map(bore -> bore.cut().diameter().map(wide -> diameter(wide.value(), figures)).orElse("diameter not known")
				+ to(bore.floor(), figures) + ", " + bore.cut().tool().name() + " " + bore.cut().kind().name().toLowerCase(Locale.ROOT)
				+ ", line " + (bore.cut().step().block().outermost().line() + 1))
				.or(() -> cut.shaft().map(shaft -> "turned" + to(shaft.floor(), figures) + ", line "
						+ (shaft.turned().block().outermost().line() + 1))).orElse("");
	}

	/**
	 * What is left behind a turned thread up to the shoulder, or in its bore, or how far it goes on there; empty where that is not known.
	 */
	public static Optional<String> room(TurnedSheet sheet, Figures figures) {
		double room = sheet.room();
		if (Double.isNaN(room)) {
			return Optional.empty();
		}
		boolean shoulder = sheet.cut().shaft().filter(SinglePoint.Shaft::wider).isPresent();
		String end = sheet.cut().inside() ? "the end of the bore" : shoulder ? "the shoulder" : "the end of what is turned";
		return Optional.of(figures.length(Math.abs(room)) + (room >= 0 ? " to " : shoulder && !sheet.cut().inside() ? " into "
				: " beyond ") + end);
	}

	private static String to(double level, Figures figures) {
		return Double.isNaN(level) || Double.isInfinite(level) ? "" : " to " + level(level, figures);
	}

	/** A place along Z, mm. */
	public static String level(double mm, Figures figures) {
		return Double.isNaN(mm) ? "not known" : "Z" + figures.coordinate(mm);
	}

	/** A diameter, mm. */
	public static String diameter(double mm, Figures figures) {
		return Double.isNaN(mm) ? "not known" : "diameter " + figures.fine(mm);
	}

	/** What is known of one hole of an operation. */
	public static List<Figure> of(OperationSheet sheet, HoleSheet hole) {
		Figures figures = new Figures(sheet.unit());
		List<Figure> all = new ArrayList<>();
		add(all, "hole", hole.label() + ", line " + (hole.block().outermost().line() + 1));
		add(all, "hole made by", hole.madeBy());
		add(all, "hole diameter", length(figures, hole.drill()));
		add(all, "full diameter to", length(figures, hole.drillFull()));
		add(all, "drill point at", length(figures, hole.drillTip()));
		add(all, "end of tool at", length(figures, hole.tip()));
		add(all, "clear below the tool", sheet.through().orElse(false) ? "through" : length(figures, hole.clearance()));
		add(all, "full thread to", length(figures, hole.fullThread()));
		add(all, "R above", length(figures, hole.start()));
		return all;
	}

	private static void add(List<Figure> all, String name, String value) {
		if (!value.isEmpty()) {
			all.add(new Figure(name, value));
		}
	}

	private static String limits(Limits limits) {
		Figures figures = new Figures(limits.unit());
		String minor = limits.minorMinMm().isPresent() ? "minor diameter " + figures.fine(limits.minorMinMm().getAsDouble())
				+ (limits.minorMaxMm().isPresent() ? " to " + figures.fine(limits.minorMaxMm().getAsDouble()) : "") + ", " : "";
		String pitch = limits.pitchMinMm().isPresent() ? "pitch diameter " + figures.fine(limits.pitchMinMm().getAsDouble())
				+ (limits.pitchMaxMm().isPresent() ? " to " + figures.fine(limits.pitchMaxMm().getAsDouble()) : "") + ", " : "";
		return (limits.threadClass().isEmpty() ? "" : limits.threadClass() + ": ") + minor + pitch + limits.source();
	}

	private static String limits(BoltLimits limits) {
		Figures figures = new Figures(limits.unit());
		return limits.threadClass() + ": major diameter " + figures.fine(limits.majorMinMm()) + " to " + figures.fine(limits.majorMaxMm())
				+ ", pitch diameter " + figures.fine(limits.pitchMinMm()) + " to " + figures.fine(limits.pitchMaxMm()) + ", "
				+ limits.source();
	}

	private static String tool(ThreadSheet sheet) {
		String said = sheet.tool().comments().stream().map(comment -> comment.text().strip()).filter(text -> !text.isEmpty()).limit(3)
				.collect(Collectors.joining("; "));
		return sheet.tool().name() + (said.isEmpty() ? "" : ", " + said);
	}

	private static String turn(ThreadSheet sheet, Figures figures, String turns) {
		if (Double.isNaN(sheet.advance())) {
			return "";
		}
		String unit = " " + figures.symbol();
		String error = figures.advance(sheet.feedError());
		return "advances " + figures.advance(sheet.advance()) + unit
				+ (Double.isNaN(sheet.lead()) ? "" : ", the thread needs " + figures.advance(sheet.lead()) + unit + " ("
						+ (sheet.feedError() > 0 ? "+" : "") + error + ")") + turns;
	}

	private static String length(Figures figures, double mm) {
		return Double.isNaN(mm) ? "not known" : figures.length(mm);
	}
}
