package truelead.checker.callout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** Tells which of the threads in a comment are asked for: not dates, codes in prose, screws, nor what a drill prepares for. */
final class CalloutJudge {
	/** Sizes that are also the numbers of everyday M codes. */
	private static final double LARGEST_EVERYDAY_CODE = 9;
	private static final double PROGRAM_END = 30;
	private static final int MOST_STARTS = 8;
	private static final int SENTENCE_WORD = 3;
	private static final Set<String> AND = Set.of("AND", "OR", "UND", "ODER", "ET", "OU", "ED");
	private static final double LARGEST_ODD_SIZE = 6 * 25.4;
	/** Nobody calls out a whole number of inches for a thread deeper than this, in diameters: X 6 counts holes (common practice, no source). */
	private static final double DEEP_IN_INCHES = 4;

	private final List<Part> parts;
	private final boolean threadWords;
	private final boolean preparing;
	private final Set<Meaning> said;

	CalloutJudge(List<Part> parts, List<ToolDescription> tools) {
		this.parts = parts;
		this.said = said(parts);
		this.threadWords = said.stream().anyMatch(Meaning::threading);
		this.preparing = !tools.isEmpty() && tools.stream().noneMatch(t -> t.kind().threading()) && !depthOfEach() && !drilledAsCalledOut(tools.get(0));
	}

	/** TALADRAR D5 PROF 20 Y ROSCAR M6 PROF 15: a depth of its own behind that of the hole, and a word of threads or FOR before it, ask for the thread too. */
	private boolean depthOfEach() {
		int thread = OwnParts.first(parts);
		boolean word = thread > 0 && (is(thread - 1, Meaning.THREAD) || is(thread - 1, Meaning.FOR));
		boolean before = parts.subList(0, thread).stream().anyMatch(CalloutJudge::deep);
		return word && before && parts.subList(thread, parts.size()).stream().anyMatch(CalloutJudge::deep);
	}

	private static boolean deep(Part part) {
		return part instanceof Part.Amount a && a.role() == Part.Role.DEPTH;
	}

	/** 8X M8-6H, DRILL 24 DEEP: a drawing's callout, with how its hole is made behind a comma. */
	private boolean drilledAsCalledOut(ToolDescription drill) {
		for (int i = 0; i < parts.size() && parts.get(i).end() <= drill.start(); i++) {
			boolean called = parts.get(i) instanceof Part.Thread t && (t.count().isPresent() || !t.draft().spec().threadClass().isEmpty());
			if (called) {
				return parts.subList(i, parts.size()).stream().anyMatch(p -> p.end() <= drill.start() && p instanceof Part.Other o && o.text().equals(","));
			}
		}
		return false;
	}

	/** The threads to be cut. */
	List<Callout> callouts() {
		List<Callout> callouts = new ArrayList<>();
		if (preparing) {
			return callouts;
		}
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Thread t && meant(i, t.draft()) && !Elsewhere.of(parts, i)) {
				callouts.add(callout(i, t, t.count().isPresent() || certain(t.draft(), chained(i)) && !doubtful(i, t.draft())));
			}
		}
		return callouts;
	}

	/** The callout of a text that is nothing but one. */
	static Optional<Callout> alone(List<Part> parts, String text) {
		CalloutJudge judge = new CalloutJudge(parts, List.of());
		List<Part> others = parts.stream().filter(p -> !(p instanceof Part.Thread)).toList();
		// in M8x and 1/4 NPT NPT a letter or series is left over
		boolean words = others.stream().allMatch(p -> p instanceof Part.Word w && w.text().length() > 1 && w.meaning() != Meaning.SERIES && w.meaning() != Meaning.OTHER_THREAD || p instanceof Part.Amount a && a.role() == Part.Role.DEPTH);
		if (parts.size() - others.size() != 1 || !words || text.isBlank()) {
			return Optional.empty();
		}
		int at = 0;
		while (!(parts.get(at) instanceof Part.Thread)) {
			at++;
		}
		Part.Thread thread = (Part.Thread) parts.get(at);
		Callout callout = judge.callout(at, thread, true);
		boolean pitchMissed = thread.draft().bare() && thread.draft().extent().isPresent() && callout.depth().isEmpty();
		return pitchMissed ? Optional.empty() : Optional.of(callout);
	}

	private boolean meant(int i, ThreadDraft draft) {
		boolean metric = draft.spec().system().metric();
		if (!threadWords && (spokenOf(i, Meaning.SCREW) || is(i + 3, Meaning.SCREW) || has(Meaning.TORQUE) || has(Meaning.CLEARANCE))) {
			return false;
		}
		if (!threadWords && is(i - 1, Meaning.FOR) && !depthOfEach()) {
			return false;
		}
		if (tappedElsewhere()) {
			return false;
		}
		if (foreign(i - 1) || foreign(i + 1) || !metric && is(i - 1, Meaning.DATE) && chained(i) || atAnotherTime(i) || !metric && glued(i, Meaning.MM)) {
			return false;
		}
		if (!metric && !draft.named() && (chained(i) || !plainInch(i, draft) || !threadWords && (has(Meaning.STOCK) || has(Meaning.MATERIAL)))) {
			return false;
		}
		if (draft.guessed() && !threadWords || draft.bare() && metric && said.contains(Meaning.FINE)) {
			return false;
		}
		if (range(i, draft)) {
			return false;
		}
		return !codeInProse(parts, i) || beside(i, Meaning.TAP) || threadWords && behindPitch(i);
	}

	/** M6 HOLES TAPPED FROM THE OTHER SIDE. */
	private boolean tappedElsewhere() {
		return IntStream.range(0, parts.size() - 1).anyMatch(i -> is(i, Meaning.TAPPED) && Elsewhere.behindTapped(parts.get(i + 1)));
	}

	/** WAS M10, M8 LATER. */
	private boolean atAnotherTime(int i) {
		return is(i - 1, Meaning.APART) && parts.get(i - 1).end() - parts.get(i - 1).start() > 2 || is(i + 1, Meaning.APART) && i + 2 == parts.size();
	}

	/** COLLET 1/2-20MM: a size in another unit than the thread's. */
	private boolean glued(int i, Meaning unit) {
		return is(i + 1, unit) && parts.get(i).end() == parts.get(i + 1).start();
	}

	/** THREAD MILL P4 M36. */
	private boolean behindPitch(int i) {
		return i > 0 && parts.get(i - 1) instanceof Part.Code code && code.letter().equals("P") && !codeAt(i + 1);
	}

	/** HOLES 1-8 TAP M6, PART 10-32 TAP M5: numbers of something else, where the comment names a thread besides. */
	private boolean range(int i, ThreadDraft draft) {
		boolean other = parts.stream().anyMatch(p -> p instanceof Part.Thread t && t.draft() != draft);
		boolean things = is(i - 1, Meaning.HOLE) && !(i > 1 && parts.get(i - 2) instanceof Part.Amount)
				|| i > 0 && parts.get(i - 1) instanceof Part.Other o && o.text().length() > 1 && Character.isLetter(o.text().charAt(0)) && !AND.contains(TradeWords.fold(o.text()))
				|| is(i - 1, Meaning.DATE);
		return other && things && !draft.spec().system().metric() && !draft.named() && wholeNumber(draft)
				&& !(is(i + 1, Meaning.TAP) && !(i + 2 < parts.size() && parts.get(i + 2) instanceof Part.Thread));
	}

	/** 1/4-26 BSB, VG 8: a name of threads that no table here holds, on either side of a dash. */
	private boolean foreign(int i) {
		boolean dash = i > 0 && i + 1 < parts.size() && parts.get(i) instanceof Part.Other o && o.text().equals("-");
		return is(i, Meaning.OTHER_THREAD) || dash && (is(i + 1, Meaning.OTHER_THREAD) || is(i - 1, Meaning.OTHER_THREAD));
	}

	/** Whether a bare M size stands among other words of a block, as in T5 M6 and M3 S200. */
	static boolean codeInProse(List<Part> parts, int i) {
		return parts.get(i) instanceof Part.Thread t && t.draft().spec().system().metric() && t.draft().bare() && !t.draft().named()
				&& (i > 0 && parts.get(i - 1) instanceof Part.Code || i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Code);
	}

	/** An inch thread that says no series: of everyday series, or with a word of threads beside an odd but plausible size. */
	private boolean plainInch(int i, ThreadDraft draft) {
		ThreadSystem system = draft.spec().system();
		if (system == ThreadSystem.R || system == ThreadSystem.BSW) {
			// R5 may be a radius; R1/2-14 has its threads an inch
			return !draft.bare() && draft.spec().size().contains("/") || threadWords && (draft.spec().size().contains("/") || beside(i, Meaning.TAP) || beside(i, Meaning.THREAD) || beside(i, Meaning.THREAD_MILL));
		}
		if (system == ThreadSystem.G) {
			return threadWords || draft.spec().size().contains("/") && !codeAt(i - 1) && !codeAt(i + 1);
		}
		return draft.standard() || threadWords && (!wholeNumber(draft) || beside(i, Meaning.TAP)) && draft.spec().diameter() <= LARGEST_ODD_SIZE;
	}

	private boolean certain(ThreadDraft draft, boolean joined) {
		boolean hole = has(Meaning.BLIND) || parts.stream().anyMatch(p -> p instanceof Part.Amount a && a.role() == Part.Role.DEPTH)
				|| has(Meaning.DEPTH);
		if (!(wholeNumber(draft) && UnifiedSize.mayBeRange(draft)) && (threadWords || hole || draft.named() || has(Meaning.WIRE_INSERT))) {
			return true;
		}
		if (draft.spec().system().metric()) {
			double size = draft.spec().diameter();
			return !draft.bare() || size > LARGEST_EVERYDAY_CODE && size != PROGRAM_END && !joined && !inSentence();
		}
		return !wholeNumber(draft);
	}

	/** LOCATE ON M10 PEG: several words that are none of the trade, and none that is. */
	private boolean inSentence() {
		return parts.stream().filter(p -> p instanceof Part.Other o && o.text().length() >= SENTENCE_WORD && Character.isLetter(o.text().charAt(0))).count() > 1 && !has(Meaning.HOLE);
	}

	/** DATE 1/4-20, REV 10-24, MACHINE M12; TAP HOLES 1-12. */
	private boolean doubtful(int i, ThreadDraft draft) {
		boolean holes = wholeNumber(draft) && is(i - 1, Meaning.HOLE) && !(i > 1 && parts.get(i - 2) instanceof Part.Amount);
		boolean number = !threadWords && (draft.spec().system().metric() ? draft.bare() && is(i - 1, Meaning.DATE) : spokenOf(i, Meaning.DATE));
		return !draft.named() && (number || !draft.spec().system().metric() && holes);
	}

	/** 10-24 and 1-8 could be dates or ranges. */
	private static boolean wholeNumber(ThreadDraft draft) {
		String size = draft.spec().size();
		return size.startsWith("#") || size.chars().allMatch(Character::isDigit);
	}

	/** A part of a longer chain, as dates and part numbers are: 10-24-22, 3-1-AF. */
	private boolean chained(int i) {
		Part thread = parts.get(i);
		boolean before = i > 0 && parts.get(i - 1).end() == thread.start() && joins(parts.get(i - 1));
		boolean after = i + 2 < parts.size() && parts.get(i + 1).start() == thread.end() && joins(parts.get(i + 1))
				&& parts.get(i + 2).start() == parts.get(i + 1).end();
		return before || after;
	}

	private static boolean joins(Part part) {
		return part instanceof Part.Other o && (o.text().equals("-") || o.text().equals("/") || o.text().equals(".") || o.text().equals(":"))
				|| part instanceof Part.Amount || part instanceof Part.Code;
	}

	private boolean codeAt(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Code;
	}

	private boolean beside(int i, Meaning meaning) {
		return is(i - 1, meaning) || is(i + 1, meaning);
	}

	private boolean spokenOf(int i, Meaning meaning) {
		return is(i + 1, meaning) || is(i + 2, meaning) || is(i - 1, meaning);
	}

	private boolean is(int i, Meaning meaning) {
		return is(parts, i, meaning);
	}

	private static boolean is(List<Part> parts, int i, Meaning meaning) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Word w && w.meaning() == meaning;
	}

	private boolean has(Meaning meaning) {
		return said.contains(meaning);
	}

	private Callout callout(int i, Part.Thread t, boolean certain) {
		ThreadDraft draft = t.draft();
		List<Part> own = OwnParts.of(parts, i);
		Set<Meaning> ofIt = said(own);
		ThreadSpec pitched = withPitchBehind(i, draft);
		ThreadSpec handed = pitched.hand() == Hand.LEFT ? pitched : hand(own).map(pitched::withHand).orElse(pitched);
		ThreadSpec started = handed.starts() > 1 ? handed : handed.withStarts(starts(own));
		ThreadSpec spec = started.system().metric() && started.threadClass().isEmpty() ? classBehind(own).map(started::withClass).orElse(started) : started;
		// in 3 5/16-18 TAP the 3 may be the tool's number
		boolean counted = draft.count().isPresent() && (has(Meaning.HOLE) || has(Meaning.PLACES));
		OptionalInt written = counted ? draft.count() : t.count();
		boolean pieces = pieces(i, draft);
		boolean deep = draft.extent().isPresent() && !pieces || own.stream().anyMatch(CalloutJudge::deep);
		Optional<HoleEnd> end = end(ofIt).or(() -> deep ? Optional.empty() : end(said));
		Optional<Dimension> wall = new WallWords(own).wall(spec).or(() -> deep ? Optional.empty() : new WallWords(parts).wall(spec));
		return new Callout(spec, t.start(), t.end(), pitched == draft.spec() ? draft.assumed() : List.of(), depth(i, draft, pieces, own, end(ofIt)), end, wall,
				written.isPresent() ? written : pieces && draft.extent().get().value() > 1 ? OptionalInt.of((int) draft.extent().get().value()) : count(own), ofIt.contains(Meaning.WIRE_INSERT) || insert(own), certain);
	}

	private static Set<Meaning> said(List<Part> parts) {
		Set<Meaning> said = EnumSet.noneOf(Meaning.class);
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Word w && !(w.text().equals("THR") && (is(parts, i + 1, Meaning.MILL) || CalledDepth.follows(parts, i)))) {
				said.add(w.meaning());
			}
		}
		return said;
	}

	private static Optional<HoleEnd> end(Set<Meaning> said) {
		boolean through = said.contains(Meaning.THROUGH);
		return through == said.contains(Meaning.BLIND) ? Optional.empty() : Optional.of(through ? HoleEnd.THROUGH : HoleEnd.BLIND);
	}

	/** M6 TAP 6H: the class apart from the size, where one alone is said. */
	private static Optional<String> classBehind(List<Part> own) {
		List<String> classes = own.stream().filter(p -> p instanceof Part.Other o && o.text().length() == 2 && "456789".indexOf(o.text().charAt(0)) >= 0 && "HG".indexOf(o.text().charAt(1)) >= 0)
				.map(p -> ((Part.Other) p).text()).distinct().toList();
		return classes.size() == 1 ? Optional.of(classes.get(0)) : Optional.empty();
	}

	/** LH TAPS M6, M8: what stands before the first thread is said of all of them. */
	private Optional<Hand> hand(List<Part> own) {
		return new HandWords(own).hand().or(() -> new HandWords(parts.subList(0, OwnParts.first(parts) + 1)).hand());
	}

	/** M8 1.0 TAP, where the X was left out, and M8 TAP PITCH 1.0: the number is a pitch of that size. */
	private ThreadSpec withPitchBehind(int i, ThreadDraft draft) {
		if (!draft.bare() || !draft.spec().system().metric()) {
			return draft.spec();
		}
		for (int j = 0; j < parts.size(); j++) {
			if (parts.get(j) instanceof Part.Amount a && a.dimension().unit().isEmpty() && (j == i + 1 && a.role() == Part.Role.PLAIN || saysPitch(j, a))) {
				ThreadSpec s = draft.spec();
				ThreadSpec pitched = new ThreadSpec(s.system(), s.series(), s.size(), s.diameter(), a.dimension().value(), 0, 1, s.hand(), s.threadClass());
				if (ThreadTable.standard().isStandard(pitched)) {
					return pitched;
				}
			}
		}
		return draft.spec();
	}

	/** PITCH 1.0, P=1.0, 1.0 PITCH. */
	private boolean saysPitch(int j, Part.Amount amount) {
		int before = j - 1;
		while (before > 0 && parts.get(before) instanceof Part.Other o && (o.text().equals("=") || o.text().equals(":") || o.text().equals("."))) {
			before--;
		}
		return amount.role() == Part.Role.PITCH || amount.role() == Part.Role.PLAIN && (is(j + 1, Meaning.P) || is(before, Meaning.P));
	}

	/** 3/8-16 X 6: so many of them, for no depth suits in either unit; 1/4-20 X 12 may be 12 mm deep. */
	private boolean pieces(int i, ThreadDraft draft) {
		ThreadSpec spec = draft.spec();
		return draft.extent().filter(said -> !spec.system().metric() && said.unit().isEmpty() && said.value() == Math.rint(said.value()) && !is(i + 1, Meaning.DEPTH)
				&& said.value() * LengthUnit.INCH.mm() > DEEP_IN_INCHES * spec.diameter() && said.value() <= spec.diameter()).isPresent();
	}

	private Optional<Dimension> depth(int i, ThreadDraft draft, boolean pieces, List<Part> own, Optional<HoleEnd> end) {
		boolean extent = !pieces && draft.extent().isPresent() && (!draft.bare() || draft.named() || threadWords || is(i + 1, Meaning.DEPTH));
		return extent ? draft.extent() : new CalledDepth(parts, own).of(i, end.equals(Optional.of(HoleEnd.THROUGH)));
	}

	/** INSERT TAP M8, TAP M8 FOR WIRE INSERTS: not the inserts of a cutter. */
	private static boolean insert(List<Part> parts) {
		for (int i = 0; i < parts.size(); i++) {
			if (is(parts, i, Meaning.INSERT) && (is(parts, i + 1, Meaning.TAP) || is(parts, i - 1, Meaning.FOR) || is(parts, i - 1, Meaning.INSERT) || is(parts, i - 1, Meaning.TAPPED) || is(parts, i - 1, Meaning.THREAD))) {
				return true;
			}
		}
		return false;
	}

	/** 1-8 ACME 2 START: the lead is that of two pitches. */
	private static int starts(List<Part> parts) {
		for (int i = 1; i < parts.size(); i++) {
			if (is(parts, i, Meaning.STARTS)) {
				Part before = parts.get(i - 1) instanceof Part.Other && i > 1 ? parts.get(i - 2) : parts.get(i - 1);
				if (before instanceof Part.Amount a && a.role() == Part.Role.PLAIN && a.dimension().unit().isEmpty() && a.dimension().value() == Math.rint(a.dimension().value())
						&& a.dimension().value() >= 2 && a.dimension().value() <= MOST_STARTS) {
					return (int) a.dimension().value();
				}
			}
		}
		return 1;
	}

	/** 4 HOLES, 6 PLCS; not EVERY 200 HOLES. */
	private static OptionalInt count(List<Part> parts) {
		for (int i = 0; i + 1 < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.PLAIN && a.dimension().unit().isEmpty()
					&& a.dimension().value() == Math.rint(a.dimension().value()) && a.dimension().value() <= 999 && !is(parts, i - 1, Meaning.RATE)
					&& (is(parts, i + 1, Meaning.HOLE) || is(parts, i + 1, Meaning.PLACES) || is(parts, i + 1, Meaning.TIMES))) {
				return OptionalInt.of((int) a.dimension().value());
			}
		}
		return OptionalInt.empty();
	}
}
