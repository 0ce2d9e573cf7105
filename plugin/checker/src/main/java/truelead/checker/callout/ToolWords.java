package truelead.checker.callout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import truelead.checker.thread.Hand;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/** Finds the tools that the parts of a comment name: TAP DRILL is a drill, SPOT DRILL FOR 10-32 HOLES no tap. */
final class ToolWords {
	/** No chamfer of a drawing is longer, mm or in. */
	private static final double LONGEST_LEG = 5;
	private static final Set<String> DIES = Set.of("DIE", "CHASER", "CHASERS", "ROLLER");

	private record Named(ToolKind kind, int at) {
	}

	private final List<Part> parts;
	private final PartRow row;
	private final TapWords tap;
	private final List<Named> named = new ArrayList<>();

	ToolWords(List<Part> parts) {
		this.parts = parts;
		this.row = new PartRow(parts);
		this.tap = new TapWords(row);
	}

	/** The tools in the order written. */
	List<ToolDescription> read() {
		if (operationTitle()) {
			return List.of();
		}
		for (int i = 0; i < parts.size(); i++) {
			name(i);
		}
		dropPurposes();
		dropParts();
		nameLetterDrill();
		boolean threading = named.stream().anyMatch(n -> n.kind().threading());
		return named.stream().map(n -> describe(n, threading)).toList();
	}

	/**
	 * Programs that a machine wrote number their operations, (Drill2), and mean no size by it; tapping is called so too (common practice,
	 * no source).
	 */
	private boolean operationTitle() {
		return parts.size() == 2 && row.is(0, Meaning.DRILL) && parts.get(1) instanceof Part.Amount number
				&& number.start() == parts.get(0).end() && String.valueOf((long) number.dimension().value()).length() == number.end()
				- number.start();
	}

	/** LETTER F alone is a drill too. */
	private void nameLetterDrill() {
		for (int i = 0; i < parts.size() && named.isEmpty(); i++) {
			if (parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.LETTER_GAUGE) {
				add(ToolKind.DRILL, i);
			}
		}
	}

	private void name(int i) {
		Optional<Meaning> meaning = row.meaning(i);
		if (meaning.isEmpty() || Elsewhere.of(row, i) || depthSpokenOf(i) || row.is(i - 1, Meaning.APART)
				|| small(i - 1) && row.is(i - 2, Meaning.APART) || row.meaning(i + 1).filter(m -> m == Meaning.SUPPLY
						|| m == Meaning.VERB).isPresent() || i > 0 && row.is(0, Meaning.VERB) || i == 1 && row.is(0, Meaning.NO)
				&& parts.get(0).end() + 1 == parts.get(1).start()) {
			// BEFORE TAPPING, REAMER IN OP20, TAPPING FLUID, TAP IS DEAR, WATCH THE DRILL, NO TAP HERE: no tool that works here
			return;
		}
		switch (meaning.get()) {
			case TAP -> nameTap(i, TapHole.drilled(parts, i));
			case TAPPED -> {
				if (named.isEmpty() && !(i + 1 < parts.size() && Elsewhere.behindTapped(parts.get(i + 1)))) {
					add(ToolKind.TAP, i);
				}
			}
			case FORM_TAP -> {
				if (!tap.denied(i)) {
					add(ToolKind.FORM_TAP, i);
				}
			}
			case THREAD_MILL -> add(ToolKind.THREAD_MILL, i);
			case DIE -> add(ToolKind.DIE, i);
			case DIE_HEAD -> add(ToolKind.DIE_HEAD, i);
			case HOLDER -> {
				if (headOfDies(i)) {
					add(ToolKind.DIE_HEAD, i);
				}
			}
			case MILL -> nameMill(i);
			case UNDERCUT -> {
				if (CombinedCutter.grooves(parts.get(i))) {
					add(ToolKind.GROOVE_CUTTER, i);
				}
			}
			case CUTTER -> {
				if (row.is(row.previousWord(i), Meaning.THREAD) || Abbreviations.comb(parts, i - 1)) {
					add(ToolKind.THREAD_MILL, i);
				} else if (row.is(row.previousWord(i), Meaning.UNDERCUT)) {
					add(ToolKind.GROOVE_CUTTER, i);
				}
			}
			case DRILL -> nameDrill(i);
			case TAP_DRILL, FLAT_DRILL -> add(ToolKind.DRILL, i);
			case CENTRE_DRILL -> add(ToolKind.CENTRE_DRILL, i);
			case SPOT -> add(ToolKind.SPOT_DRILL, i);
			case REAM -> add(ToolKind.REAMER, i);
			case BORE -> add(ToolKind.BORING, i);
			case CHAMFER -> {
				if (!edge(i)) {
					add(ToolKind.COUNTERSINK, i);
				}
			}
			case COUNTERBORE -> add(ToolKind.COUNTERBORE, i);
			default -> { }
		}
	}

	/** DIE HEAD, CHASER HEAD, ROLLING HEAD: in German the first is an article. */
	private boolean headOfDies(int i) {
		boolean head = parts.get(i) instanceof Part.Word word && word.text().toUpperCase(Locale.ROOT).startsWith("HEAD");
		return head && (row.is(i - 1, Meaning.FORM) || row.is(i - 1, Meaning.DIE) || i > 0 && parts.get(i - 1) instanceof Part.Other before
				&& DIES.contains(before.text().toUpperCase(Locale.ROOT)));
	}

	/**
	 * CHAMFER 1X45, CHAMFER .02-.03: an edge of the drawing and no tool; 1 X 45 CHAMFER and 10 X 45 DEG CHAMFER ON OD too, unless a word
	 * for one stands beside it.
	 */
	private boolean edge(int i) {
		boolean tool = row.has(Meaning.MILL) || row.has(Meaning.CUTTER) || row.has(Meaning.TOOL) || row.has(Meaning.DRILL);
		boolean range = i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().length() > 2
				&& !Character.isLetter(o.text().charAt(0)) && o.text().indexOf('-') > 0;
		return range || leg(i + 1, LONGEST_LEG) || !tool && (IntStream.range(0, i).anyMatch(at -> leg(at, Double.MAX_VALUE))
				|| IntStream.range(i, parts.size()).anyMatch(at -> leg(at, LONGEST_LEG)));
	}

	/** .5 X 45, no longer than a length. */
	private boolean leg(int i, double longest) {
		return i + 1 < parts.size() && parts.get(i) instanceof Part.Amount leg && leg.dimension().value() <= longest
				&& parts.get(i + 1) instanceof Part.Angle angle && Math.abs(angle.radians() - Math.PI / 4) < 1e-9;
	}

	/** DRILL DEPTH CHECKED. */
	private boolean depthSpokenOf(int i) {
		return row.is(i + 1, Meaning.DEPTH) && row.is(i + 2, Meaning.VERB);
	}

	/** PRIMA DI MASCHIARE. */
	private boolean small(int i) {
		return i > 0 && parts.get(i) instanceof Part.Other o && o.text().length() <= 3;
	}

	private void nameTap(int i, boolean hole) {
		if (hole) {
			add(ToolKind.DRILL, i);
		}
		if (hole || row.meaning(row.nextWord(i)).filter(Meaning::drills).isPresent()) {
			return;
		}
		boolean forms = tap.forming() || IntStream.range(0, parts.size()).anyMatch(at -> row.is(at, Meaning.FORM_TAP) && !tap.denied(at));
		ToolKind kind = forms && tap.cutting() ? ToolKind.TAP : forms ? ToolKind.FORM_TAP
				: tap.styles().stream().anyMatch(s -> s.compareTo(TapStyle.STRAIGHT_FLUTE) <= 0) || row.has(Meaning.CUT)
				? ToolKind.CUTTING_TAP : ToolKind.TAP;
		if (named.stream().noneMatch(n -> n.kind() == ToolKind.FORM_TAP)) {
			add(kind, i);
		}
	}

	private void nameMill(int i) {
		// behind NPT and ACME a mill is one for threads
		boolean thread = row.near(i, 4, Meaning.THREAD) || row.near(i, 4, Meaning.TAP) && named.isEmpty() || shortThread(i)
				|| row.is(i - 1, Meaning.SERIES);
		if (thread) {
			add(ToolKind.THREAD_MILL, i);
		} else if (!followsTool(i)) {
			add(row.has(Meaning.UNDERCUT) ? ToolKind.GROOVE_CUTTER : ToolKind.END_MILL, i);
		}
	}

	/** THR MILL, and beside a thread or a pitch T-MILL, T.MILL and T/MILL, which else cut slots. */
	private boolean shortThread(int i) {
		if (i > 0 && parts.get(i - 1) instanceof Part.Word w && w.text().equals("THR")) {
			return true;
		}
		boolean letter = i > 1 && parts.get(i - 1) instanceof Part.Other sign && ("-/.".contains(sign.text()))
				&& (parts.get(i - 2) instanceof Part.Other t && t.text().equalsIgnoreCase("T") || parts.get(i - 2) instanceof Part.Code c
						&& c.letter().equalsIgnoreCase("T"));
		return letter && parts.stream().anyMatch(Abbreviations::speaksOfThreads);
	}

	private void nameDrill(int i) {
		if (abbreviated(i)) {
			nameTap(i, false);
		} else if (row.near(i, 2, Meaning.CENTRE) && !ToolSize.beforeCentre(parts, i + 1)) {
			add(ToolKind.CENTRE_DRILL, i);
		} else if (!followsTool(i) || row.is(row.previousWord(i), Meaning.TAP)) {
			add(ToolKind.DRILL, i);
		}
	}

	/** GEW.-BOHRER, GEWINDE-BOHRER: the word for a tap in two, joined by point or dash. */
	private boolean abbreviated(int i) {
		int before = i - 1;
		while (before >= 0 && row.joins(before)) {
			before--;
		}
		return before >= 0 && before < i - 1 && row.is(before, Meaning.THREAD)
				&& parts.get(before).end() == parts.get(before + 1).start();
	}

	private void add(ToolKind kind, int at) {
		boolean again = named.stream().anyMatch(n -> n.kind() == kind && n.at() >= at - 3);
		if (!again) {
			named.add(new Named(kind, at));
		}
	}

	/** SPOT DRILL and CHAMFER MILL are one tool each. */
	private boolean followsTool(int i) {
		int before = row.previousWord(i);
		return named.stream().anyMatch(n -> n.at() == before);
	}

	/** What stands behind FOR, or as TAPPED or TAP HOLES behind a drill, is what the hole is for and no tool. */
	private void dropPurposes() {
		if (named.isEmpty() || named.get(0).kind().threading()) {
			return;
		}
		int first = named.get(0).at();
		for (int i = first + 1; i < parts.size(); i++) {
			int at = i;
			boolean purpose = row.meaning(i).filter(m -> m == Meaning.FOR || m == Meaning.TAPPED).isPresent()
					|| row.is(i, Meaning.TAP) && row.is(row.nextWord(i), Meaning.HOLE);
			if (purpose) {
				named.removeIf(n -> n.at() >= at && n.kind().threading());
			}
		}
	}

	/** THREAD MILL WITH CHAMFER, DRILL-CHAMFER-THREAD MILL: what a thread mill does besides is no tool of its own. */
	private void dropParts() {
		Optional<Named> mill = named.stream().filter(n -> n.kind() == ToolKind.THREAD_MILL).findFirst();
		mill.ifPresent(thread -> named.removeIf(n -> n.kind() == ToolKind.COUNTERSINK && n.at() > thread.at()
				|| (n.kind() == ToolKind.DRILL || n.kind() == ToolKind.COUNTERSINK) && n.at() < thread.at() && CombinedCutter.leadsTo(row,
						n.at() + 1, thread.at())));
	}

	private ToolDescription describe(Named tool, boolean threading) {
		Optional<ThreadSpec> purpose = threading || tool.kind().threading() || row.has(Meaning.CLEARANCE) ? Optional.empty() : purpose();
		Set<TapStyle> styles = tool.kind().tap() ? tap.styles() : Set.of();
		Part at = parts.get(tool.at());
		Optional<Dimension> size = new ToolSize(parts).of(tool.kind(), tool.at());
		PointAngle point = new PointAngle(row, named.stream().allMatch(n -> n.kind() == ToolKind.DRILL));
		OptionalDouble angle = point.said();
		if (angle.isEmpty() && size.filter(d -> PointAngle.is(tool.kind(), d)).isPresent()) {
			angle = OptionalDouble.of(Math.toRadians(size.get().value()));
			size = Optional.empty();
		} else if (angle.isEmpty() && size.isPresent()) {
			angle = point.besides(tool.kind(), size.get());
		}
		return new ToolDescription(tool.kind(), styles, hand(), size, angle, tool.kind().tap() ? new SaidPitch(row).only()
				: Optional.empty(), purpose, at.start(), at.end());
	}

	/** The thread that a hole is made for. */
	private Optional<ThreadSpec> purpose() {
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Thread t && !CalloutJudge.codeInProse(parts, i)) {
				return Optional.of(t.draft().spec());
			}
		}
		return Optional.empty();
	}

	private Optional<Hand> hand() {
		boolean left = parts.stream().anyMatch(p -> p instanceof Part.Thread t && t.draft().spec().hand() == Hand.LEFT);
		return left ? Optional.of(Hand.LEFT) : new HandWords(parts).hand();
	}
}
