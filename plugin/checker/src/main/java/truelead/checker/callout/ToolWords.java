package truelead.checker.callout;

import java.util.ArrayList;
import java.util.EnumSet;
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
	private static final Set<Double> BARE_ANGLES = Set.of(60.0, 82.0, 90.0, 100.0, 118.0, 120.0, 135.0, 140.0, 142.0, 145.0);
	/** No chamfer of a drawing is longer, mm or in. */
	private static final double LONGEST_LEG = 5;
	private static final double SHARPEST = Math.toRadians(30);
	private static final double FLATTEST = Math.toRadians(180);

	/** The phrases that name a tool which drills and taps. */
	private static final Set<String> WITH_DRILL = Set.of("COMBI DRILL TAP", "COMBO DRILL TAP", "COMBINED DRILL TAP", "BOHR GEWINDEBOHRER", "KOMBI GEWINDEBOHRER");

	private record Named(ToolKind kind, int at) {
	}

	private final List<Part> parts;
	private final List<Named> named = new ArrayList<>();

	ToolWords(List<Part> parts) {
		this.parts = parts;
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

	/** Programs that a machine wrote number their operations, (Drill2), and mean no size by it; tapping is called so too (common practice, no source). */
	private boolean operationTitle() {
		return parts.size() == 2 && meaning(0).filter(m -> m == Meaning.DRILL).isPresent() && parts.get(1) instanceof Part.Amount number
				&& number.start() == parts.get(0).end() && String.valueOf((long) number.dimension().value()).length() == number.end() - number.start();
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
		Optional<Meaning> meaning = meaning(i);
		if (meaning.isEmpty() || Elsewhere.of(parts, i) || depthSpokenOf(i) || apart(i - 1) || small(i - 1) && apart(i - 2) || meaning(i + 1).filter(m -> m == Meaning.SUPPLY || m == Meaning.VERB).isPresent()
				|| i > 0 && meaning(0).filter(m -> m == Meaning.VERB).isPresent()
				|| i == 1 && meaning(0).filter(m -> m == Meaning.NO).isPresent() && parts.get(0).end() + 1 == parts.get(1).start()) {
			// BEFORE TAPPING, REAMER IN OP20, TAPPING FLUID, TAP IS DEAR, WATCH THE DRILL, NO TAP HERE: no tool that works here
			return;
		}
		switch (meaning.get()) {
			case TAP -> nameTap(i);
			case TAPPED -> {
				if (named.isEmpty() && !(i + 1 < parts.size() && Elsewhere.behindTapped(parts.get(i + 1)))) {
					add(ToolKind.TAP, i);
				}
			}
			case FORM_TAP -> add(ToolKind.FORM_TAP, i);
			case THREAD_MILL -> add(ToolKind.THREAD_MILL, i);
			case MILL -> nameMill(i);
			case CUTTER -> {
				if (meaning(previousWord(i)).filter(m -> m == Meaning.THREAD).isPresent()) {
					add(ToolKind.THREAD_MILL, i);
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

	/** CHAMFER 1X45, CHAMFER .02-.03: an edge of the drawing and no tool; 1 X 45 CHAMFER and 10 X 45 DEG CHAMFER ON OD too, unless a word for one stands beside it. */
	private boolean edge(int i) {
		boolean tool = has(Meaning.MILL) || has(Meaning.CUTTER) || has(Meaning.TOOL) || has(Meaning.DRILL);
		boolean range = i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().length() > 2 && !Character.isLetter(o.text().charAt(0)) && o.text().indexOf('-') > 0;
		return range || leg(i + 1, LONGEST_LEG) || !tool && (IntStream.range(0, i).anyMatch(at -> leg(at, Double.MAX_VALUE)) || IntStream.range(i, parts.size()).anyMatch(at -> leg(at, LONGEST_LEG)));
	}

	/** .5 X 45, no longer than a length. */
	private boolean leg(int i, double longest) {
		return i + 1 < parts.size() && parts.get(i) instanceof Part.Amount leg && leg.dimension().value() <= longest && parts.get(i + 1) instanceof Part.Angle angle
				&& Math.abs(angle.radians() - Math.PI / 4) < 1e-9;
	}

	/** DRILL DEPTH CHECKED. */
	private boolean depthSpokenOf(int i) {
		return meaning(i + 1).filter(m -> m == Meaning.DEPTH).isPresent() && meaning(i + 2).filter(m -> m == Meaning.VERB).isPresent();
	}

	private boolean apart(int i) {
		return meaning(i).filter(m -> m == Meaning.APART).isPresent();
	}

	/** PRIMA DI MASCHIARE. */
	private boolean small(int i) {
		return i > 0 && parts.get(i) instanceof Part.Other o && o.text().length() <= 3;
	}

	private void nameTap(int i) {
		Optional<Meaning> next = meaning(nextWord(i));
		if (next.filter(Meaning::drills).isPresent()) {
			return;
		}
		ToolKind kind = forming() || has(Meaning.FORM_TAP) ? ToolKind.FORM_TAP
				: styles().stream().anyMatch(s -> s.compareTo(TapStyle.STRAIGHT_FLUTE) <= 0) || has(Meaning.CUT) ? ToolKind.CUTTING_TAP : ToolKind.TAP;
		if (named.stream().noneMatch(n -> n.kind() == ToolKind.FORM_TAP)) {
			add(kind, i);
		}
	}

	private void nameMill(int i) {
		boolean thread = near(i, 4, Meaning.THREAD) || near(i, 4, Meaning.TAP) && named.isEmpty() || shortThread(i);
		if (thread) {
			add(ToolKind.THREAD_MILL, i);
		} else if (!followsTool(i)) {
			add(ToolKind.END_MILL, i);
		}
	}

	/** THR MILL, and beside a thread or a pitch T-MILL and T/MILL, which else cut slots. */
	private boolean shortThread(int i) {
		if (i > 0 && parts.get(i - 1) instanceof Part.Word w && w.text().equals("THR")) {
			return true;
		}
		boolean letter = i > 1 && parts.get(i - 1) instanceof Part.Other sign && (sign.text().equals("-") || sign.text().equals("/"))
				&& (parts.get(i - 2) instanceof Part.Other t && t.text().equalsIgnoreCase("T") || parts.get(i - 2) instanceof Part.Code c && c.letter().equalsIgnoreCase("T"));
		return letter && parts.stream().anyMatch(Abbreviations::speaksOfThreads);
	}

	private void nameDrill(int i) {
		if (abbreviated(i)) {
			nameTap(i);
		} else if (near(i, 2, Meaning.CENTRE) && !ToolSize.beforeCentre(parts, i + 1)) {
			add(ToolKind.CENTRE_DRILL, i);
		} else if (!followsTool(i) || meaning(previousWord(i)).filter(m -> m == Meaning.TAP).isPresent()) {
			add(ToolKind.DRILL, i);
		}
	}

	/** GEW.-BOHRER, GEWINDE-BOHRER: the word for a tap in two, joined by point or dash. */
	private boolean abbreviated(int i) {
		int before = i - 1;
		while (before >= 0 && punctuation(before)) {
			before--;
		}
		return before >= 0 && before < i - 1 && meaning(before).filter(m -> m == Meaning.THREAD).isPresent()
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
		int before = previousWord(i);
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
			boolean purpose = meaning(i).filter(m -> m == Meaning.FOR || m == Meaning.TAPPED).isPresent()
					|| meaning(i).filter(m -> m == Meaning.TAP).isPresent() && meaning(nextWord(i)).filter(m -> m == Meaning.HOLE).isPresent();
			if (purpose) {
				named.removeIf(n -> n.at() >= at && n.kind().threading());
			}
		}
	}

	/** THREAD MILL WITH CHAMFER, DRILL-THREAD MILL: what a thread mill does besides is no tool of its own. */
	private void dropParts() {
		Optional<Named> mill = named.stream().filter(n -> n.kind() == ToolKind.THREAD_MILL).findFirst();
		mill.ifPresent(thread -> named.removeIf(n -> n.kind() == ToolKind.COUNTERSINK && n.at() > thread.at() || n.kind() == ToolKind.DRILL && n.at() < thread.at() && beginsThread(n.at() + 1)));
	}

	/** Whether THREAD MILL stands at a place, or behind a sign there. */
	private boolean beginsThread(int i) {
		int at = i < parts.size() && (punctuation(i) || parts.get(i) instanceof Part.Other o && o.text().equals("/")) ? i + 1 : i;
		return meaning(at).filter(m -> m == Meaning.THREAD || m == Meaning.THREAD_MILL).isPresent();
	}

	private ToolDescription describe(Named tool, boolean threading) {
		Optional<ThreadSpec> purpose = threading || tool.kind().threading() || has(Meaning.CLEARANCE) ? Optional.empty() : purpose();
		Set<TapStyle> styles = tool.kind().tap() ? styles() : Set.of();
		Part at = parts.get(tool.at());
		Optional<Dimension> size = new ToolSize(parts).of(tool.kind(), tool.at());
		OptionalDouble angle = angle();
		if (angle.isEmpty() && size.filter(d -> bareAngle(tool.kind(), d)).isPresent()) {
			angle = OptionalDouble.of(Math.toRadians(size.get().value()));
			size = Optional.empty();
		} else if (angle.isEmpty() && size.isPresent() && edges(tool.kind())) {
			angle = secondNumber(size.get());
		}
		return new ToolDescription(tool.kind(), styles, hand(), size, angle, purpose, at.start(), at.end());
	}

	/** COUNTERSINK 90, NC SPOT DRILL 120: the number of a tool for edges that is one of their angles, without a unit (common practice, no source). */
	private static boolean bareAngle(ToolKind kind, Dimension size) {
		return edges(kind) && size.unit().isEmpty() && BARE_ANGLES.contains(size.value());
	}

	private static boolean edges(ToolKind kind) {
		return kind == ToolKind.COUNTERSINK || kind == ToolKind.SPOT_DRILL || kind == ToolKind.CENTRE_DRILL;
	}

	/** SPOT DRILL 90 D10: of two numbers the one that is no diameter but an angle, radians. */
	private OptionalDouble secondNumber(Dimension size) {
		return parts.stream().filter(p -> p instanceof Part.Amount a && a.role() == Part.Role.PLAIN && !a.dimension().equals(size) && a.dimension().unit().isEmpty()
				&& BARE_ANGLES.contains(a.dimension().value())).mapToDouble(p -> Math.toRadians(((Part.Amount) p).dimension().value())).findFirst();
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

	private Set<TapStyle> styles() {
		Set<TapStyle> styles = EnumSet.noneOf(TapStyle.class);
		for (int i = 0; i < parts.size(); i++) {
			Optional<Meaning> meaning = meaning(i);
			Optional<Meaning> next = meaning(nextWord(i));
			if (meaning.isPresent()) {
				style(meaning.get(), next).ifPresent(styles::add);
			}
			if (meaning.filter(m -> m == Meaning.TAP).isPresent() && WITH_DRILL.contains(((Part.Word) parts.get(i)).text())) {
				styles.add(TapStyle.WITH_DRILL);
			}
		}
		return Set.copyOf(styles);
	}

	private static Optional<TapStyle> style(Meaning meaning, Optional<Meaning> next) {
		boolean tapNext = next.filter(m -> m == Meaning.TAP).isPresent();
		return Optional.ofNullable(switch (meaning) {
			case SPIRAL_POINT -> TapStyle.SPIRAL_POINT;
			case SPIRAL_FLUTE -> TapStyle.SPIRAL_FLUTE;
			case SPIRAL -> next.filter(m -> m == Meaning.POINT).isPresent() ? TapStyle.SPIRAL_POINT
					: next.filter(m -> m == Meaning.FLUTE).isPresent() ? TapStyle.SPIRAL_FLUTE : null;
			case STRAIGHT -> next.filter(m -> m == Meaning.FLUTE).isPresent() ? TapStyle.STRAIGHT_FLUTE : null;
			case MODIFIED -> next.filter(m -> m == Meaning.BOTTOMING).isPresent() ? TapStyle.MODIFIED_BOTTOMING_LEAD : null;
			case BOTTOMING -> tapNext ? TapStyle.BOTTOMING_LEAD : null;
			case PLUG -> tapNext ? TapStyle.PLUG_LEAD : null;
			case TAPER -> tapNext ? TapStyle.TAPER_LEAD : null;
			default -> null;
		});
	}

	/** The angle of the point; a drill with inserts leaves a floor that is all but flat (common practice, no source). */
	private OptionalDouble angle() {
		for (Part part : parts) {
			if (part instanceof Part.Angle angle && angle.radians() >= SHARPEST - 1e-9 && angle.radians() <= FLATTEST + 1e-9) {
				return OptionalDouble.of(angle.radians());
			}
		}
		return has(Meaning.FLAT_DRILL) || withInserts() ? OptionalDouble.of(FLATTEST) : OptionalDouble.empty();
	}

	/** DRILL D40.5 WITH INSERTS: not the inserts that a tapped hole is for. */
	private boolean withInserts() {
		boolean drills = !named.isEmpty() && named.stream().allMatch(n -> n.kind() == ToolKind.DRILL);
		return drills && has(Meaning.INSERT) && !has(Meaning.FOR) && parts.stream().noneMatch(p -> p instanceof Part.Thread || p instanceof Part.Word w && w.meaning().threading());
	}

	/** FORM or ROLL as the way a tap works; FORM C is the form of its lead (DIN 2197). */
	private boolean forming() {
		for (int i = 0; i < parts.size(); i++) {
			if (meaning(i).filter(m -> m == Meaning.FORM).isPresent() && !leadForm(i + 1) && !denied(i)) {
				return true;
			}
		}
		return false;
	}

	/** FORM? NO - CUT TAP, NOT FORM, NO FORM TAP. */
	private boolean denied(int i) {
		int behind = i + 1;
		while (behind < parts.size() && parts.get(behind) instanceof Part.Other sign && (sign.text().equals("?") || sign.text().equals(":"))) {
			behind++;
		}
		return behind > i + 1 && no(behind) || no(i - 1);
	}

	private boolean no(int i) {
		return meaning(i).filter(m -> m == Meaning.NOT || m == Meaning.NO && ((Part.Word) parts.get(i)).text().equals("NO")).isPresent();
	}

	private boolean leadForm(int i) {
		// in FORM C 2.5 THREADS the letter has its number
		String text = i >= parts.size() ? "" : parts.get(i) instanceof Part.Code c ? c.letter() : parts.get(i) instanceof Part.Other o ? o.text() : parts.get(i) instanceof Part.Word w ? w.text() : "";
		return text.length() == 1 && "ABCDE".contains(text.toUpperCase(Locale.ROOT));
	}

	private boolean has(Meaning meaning) {
		return parts.stream().anyMatch(p -> p instanceof Part.Word w && w.meaning() == meaning);
	}

	private boolean near(int i, int reach, Meaning meaning) {
		for (int j = Math.max(0, i - reach); j <= Math.min(parts.size() - 1, i + reach); j++) {
			if (j != i && meaning(j).filter(m -> m == meaning).isPresent()) {
				return true;
			}
		}
		return false;
	}

	private Optional<Meaning> meaning(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Word w ? Optional.of(w.meaning()) : Optional.empty();
	}

	private int nextWord(int i) {
		return i + 1 < parts.size() && punctuation(i + 1) ? i + 2 : i + 1;
	}

	private int previousWord(int i) {
		return i > 0 && punctuation(i - 1) ? i - 2 : i - 1;
	}

	/** Signs that join words; a comma or & parts them. */
	private boolean punctuation(int i) {
		return parts.get(i) instanceof Part.Other o && (o.text().equals("-") || o.text().equals(".") || o.text().equals("'"));
	}
}
