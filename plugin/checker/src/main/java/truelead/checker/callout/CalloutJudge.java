package truelead.checker.callout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import truelead.checker.thread.ThreadSystem;

/** Tells which of the threads in a comment are asked for: not dates, codes in prose, screws, nor what a drill prepares for. */
final class CalloutJudge {
	/** Sizes that are also the numbers of everyday M codes. */
	private static final double LARGEST_EVERYDAY_CODE = 9;
	private static final double PROGRAM_END = 30;
	private static final int SENTENCE_WORD = 3;
	private static final Set<String> AND = Set.of("AND", "OR", "UND", "ODER", "ET", "OU", "ED");
	private static final double LARGEST_ODD_SIZE = 6 * 25.4;
	private final List<Part> parts;
	private final PartRow row;
	private final boolean threadWords;
	private final boolean preparing;
	private final Set<Meaning> said;

	CalloutJudge(List<Part> parts, List<ToolDescription> tools) {
		this.parts = parts;
		this.row = new PartRow(parts);
		this.said = row.said();
		this.threadWords = said.stream().anyMatch(meaning -> meaning.threading() || meaning == Meaning.TPI);
		this.preparing = !tools.isEmpty() && tools.stream().noneMatch(t -> t.kind().threading()) && !depthOfEach()
				&& !CalledHole.drilled(row, tools.get(0));
	}

	/**
	 * TALADRAR D5 PROF 20 Y ROSCAR M6 PROF 15: a depth of its own behind that of the hole, and a word of threads or FOR before it, ask for
	 * the thread too.
	 */
	private boolean depthOfEach() {
		int thread = OwnParts.first(parts);
		boolean word = thread > 0 && (row.is(thread - 1, Meaning.THREAD) || row.is(thread - 1, Meaning.FOR));
		boolean before = parts.subList(0, thread).stream().anyMatch(CalledDepth::is);
		return word && before && parts.subList(thread, parts.size()).stream().anyMatch(CalledDepth::is);
	}

	/** The threads to be cut. */
	List<Callout> callouts() {
		List<Callout> callouts = new ArrayList<>();
		if (preparing) {
			return callouts;
		}
		for (int i = 0; i < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Thread t && meant(i, t.draft()) && !Elsewhere.of(row, i)) {
				callouts.add(new CalledThread(row, said)
						.of(i, t, t.count().isPresent() || certain(t.draft(), chained(i)) && !doubtful(i, t.draft())));
			}
		}
		return callouts;
	}

	/** The callout of a text that is nothing but one. */
	static Optional<Callout> alone(List<Part> parts, String text) {
		CalloutJudge judge = new CalloutJudge(parts, List.of());
		List<Part> others = parts.stream().filter(p -> !(p instanceof Part.Thread)).toList();
		// in M8x and 1/4 NPT NPT a letter or series is left over
		boolean words = others.stream().allMatch(p -> p instanceof Part.Word w && w.text().length() > 1 && w.meaning() != Meaning.SERIES
				&& w.meaning() != Meaning.OTHER_THREAD || p instanceof Part.Amount a && a.role() == Part.Role.DEPTH);
		if (parts.size() - others.size() != 1 || !words || text.isBlank()) {
			return Optional.empty();
		}
		int at = 0;
		while (!(parts.get(at) instanceof Part.Thread)) {
			at++;
		}
		Part.Thread thread = (Part.Thread) parts.get(at);
		Callout callout = new CalledThread(judge.row, judge.said).of(at, thread, true);
		boolean pitchMissed = thread.draft().bare() && thread.draft().extent().isPresent() && callout.depth().isEmpty();
		return pitchMissed ? Optional.empty() : Optional.of(callout);
	}

	private boolean meant(int i, ThreadDraft draft) {
		boolean metric = draft.spec().system().metric();
		// STUD M12X1.75 BOTH ENDS: the part itself
		if (!threadWords && !has(Meaning.BOTH_ENDS) && (spokenOf(i, Meaning.SCREW) || row.is(i + 3, Meaning.SCREW) || has(Meaning.TORQUE)
				|| has(Meaning.CLEARANCE))) {
			return false;
		}
		if (!threadWords && row.is(i - 1, Meaning.FOR) && !depthOfEach()) {
			return false;
		}
		if (tappedElsewhere()) {
			return false;
		}
		if (foreign(i - 1) || foreign(i + 1) || !metric && row.is(i - 1, Meaning.DATE) && chained(i) || atAnotherTime(i)
				|| !metric && glued(i, Meaning.MM)) {
			return false;
		}
		if (!metric && !draft.named() && (chained(i) || !plainInch(i, draft) || !threadWords && !row.is(i + 1, Meaning.THROUGH)
				&& (has(Meaning.STOCK) || has(Meaning.MATERIAL)))) {
			return false;
		}
		if (draft.guessed() && !threadWords && !CalledHole.deep(row, i, draft) || draft.bare() && metric && said.contains(Meaning.FINE)
				&& !CalledThread.finePitch(row, i)) {
			return false;
		}
		if (range(i, draft) || !metric && !draft.named() && row.is(i + 1, Meaning.FLUTE)) {
			// COMB 3.0 X 12 TEETH
			return false;
		}
		return !codeInProse(parts, i) || row.beside(i, Meaning.TAP) || threadWords && behindPitch(i);
	}

	/** M6 HOLES TAPPED FROM THE OTHER SIDE. */
	private boolean tappedElsewhere() {
		return IntStream.range(0, parts.size() - 1).anyMatch(i -> row.is(i, Meaning.TAPPED) && Elsewhere.behindTapped(parts.get(i + 1)));
	}

	/** WAS M10, M8 LATER. */
	private boolean atAnotherTime(int i) {
		return row.is(i - 1, Meaning.APART) && parts.get(i - 1).end() - parts.get(i - 1).start() > 2
				|| row.is(i + 1, Meaning.APART) && i + 2 == parts.size();
	}

	/** COLLET 1/2-20MM: a size in another unit than the thread's. */
	private boolean glued(int i, Meaning unit) {
		return row.is(i + 1, unit) && parts.get(i).end() == parts.get(i + 1).start();
	}

	/** THREAD MILL P4 M36. */
	private boolean behindPitch(int i) {
		return i > 0 && parts.get(i - 1) instanceof Part.Code code && code.letter().equals("P") && !codeAt(i + 1);
	}

	/** HOLES 1-8 TAP M6, PART 10-32 TAP M5: numbers of something else, where the comment names a thread besides. */
	private boolean range(int i, ThreadDraft draft) {
		boolean other = parts.stream().anyMatch(p -> p instanceof Part.Thread t && t.draft() != draft);
		boolean things = row.is(i - 1, Meaning.HOLE) && !(i > 1 && parts.get(i - 2) instanceof Part.Amount)
				|| i > 0 && parts.get(i - 1) instanceof Part.Other o && o.text().length() > 1 && Character.isLetter(o.text().charAt(0))
				&& !AND.contains(TradeWords.fold(o.text())) || row.is(i - 1, Meaning.DATE);
		return other && things && !draft.spec().system().metric() && !draft.named() && wholeNumber(draft)
				&& !(row.is(i + 1, Meaning.TAP) && !(i + 2 < parts.size() && parts.get(i + 2) instanceof Part.Thread));
	}

	/** 1/4-26 BSB, VG 8: a name of threads that no table here holds, on either side of a dash. */
	private boolean foreign(int i) {
		boolean dash = i > 0 && i + 1 < parts.size() && parts.get(i) instanceof Part.Other o && o.text().equals("-");
		return row.is(i, Meaning.OTHER_THREAD) || dash && (row.is(i + 1, Meaning.OTHER_THREAD) || row.is(i - 1, Meaning.OTHER_THREAD));
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
			return !draft.bare() && draft.spec().size().contains("/") || threadWords && (draft.spec().size().contains("/")
					|| row.beside(i, Meaning.TAP) || row.beside(i, Meaning.THREAD) || row.beside(i, Meaning.THREAD_MILL));
		}
		if (system == ThreadSystem.G) {
			return threadWords || CalledHole.deep(row, i, draft) || draft.spec().size().contains("/") && !codeAt(i - 1) && !codeAt(i + 1);
		}
		return draft.standard() || threadWords && (!wholeNumber(draft) || row.beside(i, Meaning.TAP))
				&& draft.spec().diameter() <= LARGEST_ODD_SIZE;
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
		return parts.stream().filter(p -> p instanceof Part.Other o && o.text().length() >= SENTENCE_WORD
				&& Character.isLetter(o.text().charAt(0))).count() > 1 && !has(Meaning.HOLE);
	}

	/** DATE 1/4-20, REV 10-24, MACHINE M12; TAP HOLES 1-12. */
	private boolean doubtful(int i, ThreadDraft draft) {
		boolean holes = wholeNumber(draft) && row.is(i - 1, Meaning.HOLE) && !(i > 1 && parts.get(i - 2) instanceof Part.Amount);
		boolean number = !threadWords && (draft.spec().system().metric() ? draft.bare() && row.is(i - 1, Meaning.DATE)
				: spokenOf(i, Meaning.DATE));
		// ACME 2 START: the number counts the starts
		boolean starts = draft.bare() && wholeNumber(draft) && row.is(i + 1, Meaning.STARTS);
		return starts || !draft.named() && (number || !draft.spec().system().metric() && holes);
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
		return part instanceof Part.Other o && (o.text().equals("-") || o.text().equals("/") || o.text().equals(".")
				|| o.text().equals(":")) || part instanceof Part.Amount || part instanceof Part.Code;
	}

	private boolean codeAt(int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Code;
	}

	private boolean spokenOf(int i, Meaning meaning) {
		return row.is(i + 1, meaning) || row.is(i + 2, meaning) || row.is(i - 1, meaning);
	}

	private boolean has(Meaning meaning) {
		return said.contains(meaning);
	}
}
