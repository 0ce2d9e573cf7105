package truelead.checker.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import truelead.checker.rule.Figures;
import truelead.checker.thread.Limits;

/** The numbers of a threading operation as people read them, each with where it comes from; reports and the editor show the same. */
public final class SheetFigures {

	/** A name and what stands behind it; never empty. */
	public record Figure(String name, String value) {
	}

	private SheetFigures() {
	}

	/** What is known of an operation, in the order of a machinist's questions: which thread, how, with what, how fast, how deep. */
	public static List<Figure> of(OperationSheet sheet) {
		Figures figures = new Figures(sheet.unit());
		List<Figure> all = new ArrayList<>();
		add(all, "thread", sheet.thread().map(fact -> fact.value().designation() + ", " + fact.origin()).orElse("nothing names it"));
		add(all, "limits", sheet.limits().map(SheetFigures::limits).orElse(""));
		add(all, "made by", sheet.method() + ", line " + (sheet.block().outermost().line() + 1));
		add(all, "tool", tool(sheet));
		add(all, "spindle", (Double.isNaN(sheet.speed()) ? "speed not known" : "S" + Figures.number(sheet.speed(), 2)) + ", " + sheet.turning());
		add(all, "feed", sheet.feed());
		add(all, "a turn", turn(sheet, figures));
		add(all, "depth called out", sheet.depth());
		add(all, "cut diameter", Double.isNaN(sheet.cutDiameter()) ? "" : figures.fine(sheet.cutDiameter()));
		add(all, "lead of the tool", sheet.leadLength() > 0 ? figures.length(sheet.leadLength())
				+ sheet.tool().facts().leadTurns().map(turns -> ", " + turns.origin()).orElse("") : "");
		return all;
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

	private static String tool(OperationSheet sheet) {
		String said = sheet.tool().comments().stream().map(comment -> comment.text().strip()).filter(text -> !text.isEmpty()).limit(3).collect(Collectors.joining("; "));
		return sheet.tool().name() + (said.isEmpty() ? "" : ", " + said);
	}

	private static String turn(OperationSheet sheet, Figures figures) {
		if (Double.isNaN(sheet.advance())) {
			return "";
		}
		String unit = " " + figures.symbol();
		String error = figures.advance(sheet.feedError());
		return "advances " + figures.advance(sheet.advance()) + unit + (Double.isNaN(sheet.lead()) ? ""
				: ", the thread needs " + figures.advance(sheet.lead()) + unit + " (" + (sheet.feedError() > 0 ? "+" : "") + error + ")")
				+ (sheet.turns() > 0 ? ", " + Figures.turns(sheet.turns()) + " turns" : "");
	}

	private static String length(Figures figures, double mm) {
		return Double.isNaN(mm) ? "not known" : figures.length(mm);
	}
}
