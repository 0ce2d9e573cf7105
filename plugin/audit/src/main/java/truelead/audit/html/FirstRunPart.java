package truelead.audit.html;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.checker.program.LengthUnit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.sheet.TurnedSheet;
import truelead.checker.work.ThreadMilling;

/**
 * The sheet that goes to the machine with a new program and is signed: the order of proving it out, what to watch at each threading tool.
 */
final class FirstRunPart {

	/**
	 * How far above the part the deepest tool stays while the program is run above it, mm; round in either unit (common practice, no
	 * source).
	 */
	private static final double CLEAR = 5;
	private static final double CLEAR_INCH = 0.2 * 25.4;

	/** What is said of a tool by what it threads in holes. */
	private interface OfHoles<T> {

		List<T> say(List<OperationSheet> uses);
	}

	private final Audited.Checked program;
	private final List<OperationSheet> sheets;
	private final List<TurnedSheet> turned;

	FirstRunPart(Audited.Checked program, ProgramThreads threads) {
		this.program = program;
		this.sheets = threads.operations();
		this.turned = threads.turned();
	}

	void write(Html html) {
		Verdict verdict = Verdict.of(program);
		html.raw("<section class=\"sheet\"><h2>First-run sheet</h2>\n")
				.element("p", "class=\"named\"", "Program " + program.source().shown());
		verdict.write(html);
		html.raw("<p class=\"caution\"><strong>Caution.</strong> A broken tap or a tool torn out of the work can hurt. Doors shut, nobody "
				+ "reaches in while" + " the spindle turns. Feed hold, feed override and speed override do nothing on most controls while "
				+ "a tap is in the hole" + (turned.isEmpty() ? "" : " or a threading pass runs") + ".</p>\n");
		html.raw("<h3>In this order</h3><ol class=\"tick\">");
		order().forEach(step -> html.element("li", "", step));
		html.raw("</ol>\n");
		Map<Integer, List<OperationSheet>> tools = new LinkedHashMap<>();
		sheets.forEach(sheet -> tools.computeIfAbsent(sheet.tool().index(), any -> new ArrayList<>()).add(sheet));
		if (!tools.isEmpty() || !turned.isEmpty()) {
			String at = turned.isEmpty() ? "at the first hole" : tools.isEmpty() ? "at the first pass" : "at the first hole or pass";
			html.raw("<h3>What to watch</h3><table class=\"list written\">").heads(List.of("tool", "before it goes in", at, "seen by"));
			inOrder(uses -> List.of(List.of(uses.get(0).tool().name() + " " + uses.get(0).name(), before(uses.get(0)), first(uses), "")),
					sheet -> List.of(FirstTurned.watch(sheet)), tools).forEach(html::cells);
			html.raw("</table>\n");
		}
		stops(html, tools);
		accepted(html);
		html.raw("<table class=\"sign\"><tr><td>machine</td><td>first part good</td><td>name</td><td>date</td></tr></table></section>\n");
	}

	/** What there is to say of each tool, in the order they come; what is the same for several parts, as in a loop over them, once. */
	private <T> List<T> inOrder(OfHoles<T> ofHoles, Function<TurnedSheet, List<T>> ofTurned, Map<Integer, List<OperationSheet>> tools) {
		Map<Integer, List<T>> said = new TreeMap<>();
		tools.forEach((tool, uses) -> said.computeIfAbsent(tool, any -> new ArrayList<>()).addAll(ofHoles.say(uses)));
		turned.forEach(sheet -> said.computeIfAbsent(sheet.tool().index(), any -> new ArrayList<>()).addAll(ofTurned.apply(sheet)));
		return said.values().stream().flatMap(List::stream).distinct().toList();
	}

	private List<String> order() {
		double deepest = sheets.stream().flatMap(sheet -> sheet.holes().stream()).mapToDouble(HoleSheet::tip).filter(tip -> tip > 0)
				.max().orElse(0);
		Figures figures = new Figures(program.result().work().shop().unit().value());
		List<String> order = new ArrayList<>();
		order.add("Findings of this audit settled or accepted below, with a name.");
		order.add("Tools in the pockets as listed, lengths and offsets measured, taps held as the program expects.");
		order.add("Machine profile right for this control: " + program.result().work().shop().profile().name() + ".");
		boolean lathe = program.result().work().shop().profile().isLathe();
		order.add(lathe ? "Run clear of the part: work offset shifted along Z away from the chuck by more than any tool goes in, overrides "
				+ "as in production." : deepest > 0 ? "Run above the part: work offset raised by at least " + figures.length(deepest
						+ (figures.unit() == LengthUnit.INCH ? CLEAR_INCH : CLEAR)) + " (deepest tool end " + figures.length(deepest)
				+ " below the top), overrides as in production."
				: "Run above the part with the work offset raised, overrides as in production.");
		order.add("Offset set back, single block, rapids at a quarter, to the first " + (turned.isEmpty() ? "hole" : "hole or pass")
				+ " of each tool.");
		if (!sheets.isEmpty() || turned.isEmpty()) {
			order.add("Drill and gauge one hole by pin before the first tap goes in.");
			order.add("First thread gauged before the second hole.");
		}
		order.addAll(turned.isEmpty() ? List.of() : FirstTurned.ORDER);
		return order;
	}

	private static String before(OperationSheet sheet) {
		Figures figures = new Figures(sheet.unit());
		String way = sheet.operation() instanceof ThreadMilling ? "Cutter offset entered; start a little small and open up. "
				: "Feed and speed override at 100 %. ";
		String turn = sheet.lead() > 0 ? ", " + figures.advance(sheet.lead()) + " " + figures.symbol() + " a turn needed" : "";
		return way + sheet.revolutions() + " " + sheet.turning() + ", " + sheet.feed() + turn + ".";
	}

	private static String first(List<OperationSheet> uses) {
		HoleSheet hole = uses.stream().flatMap(sheet -> sheet.holes().stream()).findFirst().orElse(null);
		OperationSheet sheet = uses.get(0);
		Figures figures = new Figures(sheet.unit());
		if (hole == null) {
			return "line " + (sheet.block().outermost().line() + 1) + ": place not known, go by hand wheel or single block.";
		}
		String start = hole.start() > 0 ? "stop at " + figures.length(hole.start()) + " above the top, " : "";
		String depth = Double.isNaN(hole.tip()) ? "depth not known." : "then " + figures.length(hole.tip()) + " deep"
				+ (Double.isNaN(hole.clearance()) || sheet.through().orElse(false) ? "."
						: hole.clearance() < 0 ? ", which is " + figures.length(-hole.clearance())
						+ " below the full diameter: settle that first."
								: ", " + figures.length(hole.clearance()) + " clear below.");
		return "line " + (hole.block().outermost().line() + 1) + ", " + hole.label() + ": " + start + "look, " + depth;
	}

	private void stops(Html html, Map<Integer, List<OperationSheet>> tools) {
		List<String> stops = inOrder(FirstRunPart::stops, FirstTurned::stops, tools);
		if (!stops.isEmpty()) {
			html.raw("<h3>Stops to insert for the first part</h3>").list(stops);
		}
	}

	private static List<String> stops(List<OperationSheet> uses) {
		List<String> stops = new ArrayList<>();
		OperationSheet sheet = uses.get(0);
		sheet.tool().change().ifPresent(change -> stops.add("M1 before line " + (change.outermost().line() + 1)
				+ ": pin in the drilled hole before " + sheet.tool().name() + " " + sheet.name()));
		if (sheet.holes().size() > 1) {
			stops.add("single block after line " + (sheet.holes().get(0).block().outermost().line() + 1) + ": gauge the first thread of "
					+ sheet.tool().name());
		}
		return stops;
	}

	private void accepted(Html html) {
		List<Judged> open = program.findings().stream()
				.filter(judged -> !judged.known() && judged.finding().severity() != Severity.INFORMATION).toList();
		if (open.isEmpty()) {
			return;
		}
		html.raw("<h3>Findings: settled or accepted</h3><table class=\"list written settled\">")
				.heads(List.of("line", "finding", "reason", "name"));
		for (Judged judged : open.subList(0, Math.min(40, open.size()))) {
			html.cells(List.of("" + (judged.finding().at().line() + 1), judged.finding().rule() + ": " + judged.finding().message(),
					judged.acceptance().map(why -> why.reason()).orElse(""), judged.acceptance().map(why -> why.person()).orElse("")));
		}
		html.raw("</table>\n");
	}
}
