package truelead.checker.callout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import truelead.checker.thread.ThreadSpec;

/**
 * Short words that mean a tool only beside a thread: M8 GF is a forming tap, PA6 GF30 a plastic; and TM or WHIRL, which is a thread mill
 * beside a thread, a diameter or a word for its teeth (common practice of shops, no source).
 */
final class Abbreviations {
	private static final Map<String, Meaning> BESIDE_A_THREAD = Map.of("GF", Meaning.FORM_TAP, "GB", Meaning.TAP, "FORMER",
			Meaning.FORM_TAP, "BGF", Meaning.THREAD_MILL, "TM", Meaning.THREAD_MILL, "TMILL", Meaning.THREAD_MILL, "WHIRL",
			Meaning.THREAD_MILL);
	/** Danish for a drill before its size, BOR 6.8; short for boring before a fit, BOR 25H7, and before the words that phrases.csv has. */
	private static final String BORE_OR_DRILL = "BOR";
	/** Short for a drill beside its size: DR 3.3, #21 DR. */
	private static final String DRILL = "DR";
	/** The same in German, where nothing else is said: BO_8.5. */
	private static final String DRILL_ALONE = "BO";
	/** How much smaller than the thread a diameter is that is a mill's, a part of it: GF is said of forming taps and thread mills. */
	private static final double MILL = 0.95;

	private Abbreviations() {
	}

	/** Whether a word may be one of these that says of itself that there is a tool. */
	static boolean mayBeTool(String word) {
		String folded = TradeWords.fold(word);
		return folded.equals(BORE_OR_DRILL) || folded.equals(DRILL) || folded.equals(DRILL_ALONE)
				|| BESIDE_A_THREAD.get(folded) == Meaning.THREAD_MILL;
	}

	/** Gives such words their meaning. */
	static void name(List<Part> parts) {
		for (int i = 0; i < parts.size(); i++) {
			if (thickness(parts, i)) {
				parts.set(i, new Part.Word(Meaning.WALL, "SP", parts.get(i).start(), parts.get(i).end()));
			}
			String text = text(parts.get(i));
			int size = i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Word w && w.meaning() == Meaning.MAKE ? i + 2 : i + 1;
			if (text.equals(BORE_OR_DRILL) && size(parts, size)) {
				boolean fit = size + 1 < parts.size() && parts.get(size + 1) instanceof Part.Code;
				parts.set(i, new Part.Word(fit ? Meaning.BORE : Meaning.DRILL, text, parts.get(i).start(), parts.get(i).end()));
			}
			if (text.equals(DRILL_ALONE) && size(parts, i + 1) && aloneBut(parts, i) || text.equals(DRILL) && (size(parts, i + 1)
					|| ends(parts, i) && (size(parts, i - 1) || gauge(parts, i - 1)))) {
				parts.set(i, new Part.Word(Meaning.DRILL, text, parts.get(i).start(), parts.get(i).end()));
			}
			Optional<Meaning> meaning = Optional.ofNullable(BESIDE_A_THREAD.get(text));
			boolean toothed = meaning.isPresent() && meaning.get() != Meaning.TAP && (toothed(parts, i - 1) || toothed(parts, i + 1));
			if (meaning.isPresent() && (beside(parts, i) || toothed || meaning.get() == Meaning.THREAD_MILL && (sized(parts, i)
					|| begins(parts, i)))) {
				Meaning meant = meaning.get() == Meaning.FORM_TAP && (toothed || narrow(parts)) ? Meaning.THREAD_MILL : meaning.get();
				parts.set(i, new Part.Word(meant, text, parts.get(i).start(), parts.get(i).end()));
			}
		}
	}

	/** Whether nothing is said beside a word and its size but a number and what the tool is made of: T7 BO 3.3 VHM; stars say nothing. */
	private static boolean aloneBut(List<Part> parts, int i) {
		return IntStream.range(0, parts.size()).filter(at -> at != i && at != i + 1).mapToObj(parts::get)
				.allMatch(part -> part instanceof Part.Word w && w.meaning() == Meaning.MAKE
						|| part instanceof Part.Code code && code.letter().equalsIgnoreCase("T")
						|| part instanceof Part.Other o && o.text().chars().noneMatch(Character::isLetterOrDigit));
	}

	/** SP.15, SP. 15: a plate's, where SP before a word is a spiral. */
	private static boolean thickness(List<Part> parts, int i) {
		boolean cut = parts.get(i) instanceof Part.Word w && w.text().equals("SP") && i + 1 < parts.size();
		boolean glued = cut && parts.get(i + 1) instanceof Part.Amount a && a.role() == Part.Role.PLAIN && a.start() == parts.get(i).end();
		return glued || cut && i + 2 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().equals(".")
				&& parts.get(i + 2) instanceof Part.Amount;
	}

	/** Whether a part is a thread, or a word of its pitch. */
	static boolean speaksOfThreads(Part part) {
		return part instanceof Part.Thread || part instanceof Part.Amount a && a.role() == Part.Role.PITCH
				|| part instanceof Part.Word w && (w.meaning() == Meaning.TPI || w.meaning() == Meaning.P);
	}

	private static String text(Part part) {
		return part instanceof Part.Other o && o.text().length() <= 5 ? TradeWords.fold(o.text()) : part instanceof Part.Word w
				&& w.meaning() == Meaning.FORM ? w.text() : "";
	}

	/** A thread next to it, or with no more than a size or a sign between. */
	private static boolean beside(List<Part> parts, int i) {
		return thread(parts, i - 1) || thread(parts, i + 1) || thread(parts, i - 2) && !(parts.get(i - 1) instanceof Part.Word)
				|| thread(parts, i + 2) && !(parts.get(i + 1) instanceof Part.Word) && !(parts.get(i + 1) instanceof Part.Amount);
	}

	/** TM D16, TMILL .370 20TPI, T-MILL: a diameter next to it, or behind a dash, or any length where threads are spoken of. */
	private static boolean sized(List<Part> parts, int i) {
		int next = i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Other o && o.text().equals("-") ? i + 2 : i + 1;
		return diameter(parts, next) || diameter(parts, i - 1) || next == i + 1 && amount(parts, next)
				&& parts.stream().anyMatch(Abbreviations::speaksOfThreads);
	}

	/**
	 * SOLID CARBIDE TM, 1.25 PITCH; TM NPT DIA .37; WHIRL 10.5: first of all but for what it is made of, where a diameter or a pitch is
	 * said somewhere, or a size with decimals behind it.
	 */
	private static boolean begins(List<Part> parts, int i) {
		boolean first = parts.subList(0, i).stream().allMatch(part -> part instanceof Part.Word w && w.meaning() == Meaning.MAKE);
		boolean decimals = i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Amount a
				&& a.end() - a.start() > String.valueOf((long) a.dimension().value()).length();
		return first && (decimals || parts.stream().anyMatch(part -> speaksOfThreads(part)
				|| part instanceof Part.Amount a && a.role() == Part.Role.DIAMETER));
	}

	/** SINGLE, COMB: a word for a cutter's teeth. */
	private static boolean toothed(List<Part> parts, int i) {
		return CutterTeeth.one(word(parts, i)) || CutterTeeth.several(word(parts, i));
	}

	/** The COMB of COMB CUTTER M36X1.5: a word for several teeth, where threads are spoken of. */
	static boolean comb(List<Part> parts, int i) {
		return CutterTeeth.several(word(parts, i)) && parts.stream().anyMatch(Abbreviations::speaksOfThreads);
	}

	private static String word(List<Part> parts, int i) {
		return i < 0 || i >= parts.size() ? "" : parts.get(i) instanceof Part.Word w ? w.text() : parts.get(i) instanceof Part.Other o
				? o.text() : "";
	}

	/** Whether nothing stands behind it, or a sign that parts tools: 1.6 DR / M2 TAP. */
	private static boolean ends(List<Part> parts, int i) {
		return i + 1 == parts.size() || parts.get(i + 1) instanceof Part.Other o && (o.text().equals("/") || o.text().equals(",")
				|| o.text().equals(";"));
	}

	private static boolean size(List<Part> parts, int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount a
				&& (a.role() == Part.Role.PLAIN || a.role() == Part.Role.DIAMETER);
	}

	private static boolean gauge(List<Part> parts, int i) {
		return i >= 0 && parts.get(i) instanceof Part.Amount a && (a.role() == Part.Role.GAUGE || a.role() == Part.Role.LETTER_GAUGE);
	}

	/** A diameter smaller than that of the thread. */
	private static boolean narrow(List<Part> parts) {
		Optional<ThreadSpec> thread = parts.stream().filter(Part.Thread.class::isInstance)
				.map(p -> ((Part.Thread) p).draft().spec()).findFirst();
		return thread.isPresent() && parts.stream().anyMatch(p -> p instanceof Part.Amount a && a.role() == Part.Role.DIAMETER
				&& a.dimension().mm(thread.get().unit()) < MILL * thread.get().diameter());
	}

	private static boolean diameter(List<Part> parts, int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount a && a.role() == Part.Role.DIAMETER;
	}

	private static boolean amount(List<Part> parts, int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Amount;
	}

	private static boolean thread(List<Part> parts, int i) {
		return i >= 0 && i < parts.size() && parts.get(i) instanceof Part.Thread;
	}
}
