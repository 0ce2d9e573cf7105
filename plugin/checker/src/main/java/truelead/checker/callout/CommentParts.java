package truelead.checker.callout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.DrillSizes;

/** Cuts a comment into its parts: threads, words of the trade, lengths, angles. */
final class CommentParts {
	/** Letters of drills and sizes that are the same, inch. */
	private static final double SAME_SIZE = 0.0006;
	private static final int LONGEST_COUNT = 999;
	/** No tap has a coarser pitch, mm. */
	private static final double COARSEST = 8;
	/** Angles of drills and countersinks; no thread has so many turns an inch. */
	private static final Set<String> ANGLES = Set.of("45", "82", "90", "100", "118", "120", "130", "135", "140");

	private final String text;
	private final boolean onlyPlainChars;
	private final List<Part> parts = new ArrayList<>();
	private final Map<Integer, double[]> fractions = new HashMap<>();

	private CommentParts(String text) {
		this.text = text;
		this.onlyPlainChars = text.chars().noneMatch(c -> Character.isSurrogate((char) c));
	}

	/** The parts of a comment's text, in order; positions count in chars of the text. */
	static List<Part> of(String text) {
		CommentParts reading = new CommentParts(text);
		for (List<Token> phrase : CommentPhrases.of(text)) {
			if (CommentPhrases.isWord(phrase.get(0))) {
				reading.word(phrase.get(0).getText(), phrase.get(0), phrase.get(0));
			} else {
				CommentPhrases.items(phrase, reading.behindDrill(), ToolColumns.behind(reading.parts)).forEach(reading::item);
			}
		}
		reading.parted();
		ToolColumns.part(reading.parts);
		Phrases.join(reading.parts);
		Abbreviations.name(reading.parts);
		new SlovenlyInch(reading.parts, reading.fractions).read();
		return reading.parts;
	}

	/** DRL_6_8: in names a point may be written so, or two numbers stand there, and nobody knows which. */
	private void parted() {
		for (int i = 0; i + 1 < parts.size(); i++) {
			if (parts.get(i) instanceof Part.Amount one && parts.get(i + 1) instanceof Part.Amount two && two.start() == one.end() + 1
					&& text.charAt(one.end()) == '_' && digit(one.end() - 1) && text.substring(one.start(), one.end()).indexOf('.') < 0
					&& two.end() - two.start() <= 2) {
				parts.set(i, new Part.Other(text.substring(one.start(), one.end()), one.start(), one.end()));
				parts.set(i + 1, new Part.Other(text.substring(two.start(), two.end()), two.start(), two.end()));
			}
		}
	}

	private boolean digit(int at) {
		return Character.isDigit(text.charAt(at));
	}

	private boolean behindDrill() {
		return !parts.isEmpty() && parts.get(parts.size() - 1) instanceof Part.Word w && w.meaning() == Meaning.DRILL;
	}

	private boolean behindMill() {
		return !parts.isEmpty() && parts.get(parts.size() - 1) instanceof Part.Word w
				&& (w.meaning() == Meaning.MILL || w.meaning() == Meaning.THREAD_MILL);
	}

	private void item(CalloutParser.ItemContext item) {
		if (item.multiplied() != null) {
			multiplied(item.multiplied());
		} else if (item.thread() != null) {
			thread(item.thread(), OptionalInt.empty());
		} else if (item.deep() != null && deepBefore(item.deep())) {
			word(item.deep().DEPTH().getText(), item.deep().DEPTH().getSymbol(), item.deep().DEPTH().getSymbol());
			add(item.deep().dimension(), ParsedNumbers.length(item.deep().dimension(), item.deep().unit()), Part.Role.PLAIN);
		} else if (item.deep() != null) {
			add(item, ParsedNumbers.length(item.deep().dimension(), item.deep().unit()), Part.Role.DEPTH);
		} else if (item.diameter() != null && offsetNumber(item.diameter())) {
			parts.add(new Part.Code("D", start(item), end(item)));
		} else if (item.diameter() != null) {
			add(item, ParsedNumbers.length(item.diameter().dimension(), item.diameter().unit()), Part.Role.DIAMETER);
		} else if (item.gauge() != null) {
			gauge(item.gauge());
		} else if (item.angle() != null) {
			parts.add(new Part.Angle(Math.toRadians(ParsedNumbers.value(item.angle().NUMBER().getSymbol())), start(item), end(item)));
		} else if (item.code() != null && pitch(item.code())) {
			add(item, new Dimension(ParsedNumbers.value(item.code().NUMBER().getSymbol()), Optional.empty()), Part.Role.PITCH);
		} else if (item.code() != null && item.code().letter().TIMES() != null && !parts.isEmpty()
				&& parts.get(parts.size() - 1) instanceof Part.Word w && w.meaning() == Meaning.BLIND) {
			// BLIND X .55
			add(item, new Dimension(ParsedNumbers.value(item.code().NUMBER().getSymbol()), Optional.empty()), Part.Role.DEPTH);
		} else if (item.code() != null && gauge(item.code()).isPresent()) {
			// LETTER and size of a drill: F .257
			add(item, Dimension.of(gauge(item.code()).getAsDouble(), LengthUnit.INCH), Part.Role.LETTER_GAUGE);
		} else if (item.code() != null) {
			parts.add(new Part.Code(item.code().letter().getText(), start(item), end(item)));
		} else if (item.amount() != null) {
			amount(item.amount());
		} else {
			word(item.getText(), item.getStart(), item.getStop());
		}
	}

	/** M8 X 12 DEEP 6 PLCS: the word ends the thread's own depth, and the number counts. */
	private boolean deepBefore(CalloutParser.DeepContext deep) {
		boolean wordFirst = deep.DEPTH() != null && deep.DEPTH().getSymbol() == deep.getStart() && deep.EQUALS() == null
				&& deep.COLON() == null;
		return wordFirst && !parts.isEmpty() && parts.get(parts.size() - 1) instanceof Part.Thread thread
				&& thread.draft().extent().isPresent();
	}

	/** PITCH 1.0, P1.25: not P1000, which is a word of a block. */
	private static boolean pitch(CalloutParser.CodeContext code) {
		String number = code.NUMBER().getText();
		boolean decimals = number.contains(".") || number.contains(",");
		return code.letter().P() != null && (code.letter().getText().length() > 1 || decimals)
				&& ParsedNumbers.value(code.NUMBER().getSymbol()) <= COARSEST;
	}

	/** In H5 D5, and in the columns H5 | D5, the D is the number of an offset. */
	private boolean offsetNumber(CalloutParser.DiameterContext diameter) {
		boolean bareLetter = diameter.D() != null && diameter.EQUALS() == null && diameter.COLON() == null && diameter.unit() == null;
		int last = parts.size() - 1;
		boolean column = last > 0 && parts.get(last) instanceof Part.Other o && "|;,-".contains(o.text())
				&& parts.get(last - 1) instanceof Part.Code length && length.letter().equalsIgnoreCase("H");
		return bareLetter && last >= 0 && (column || parts.get(last) instanceof Part.Code before && !before.letter().equalsIgnoreCase("P"))
				&& diameter.dimension().decimal != null && diameter.dimension().decimal.getText().chars().allMatch(Character::isDigit);
	}

	/** 1-1/8 is one length, but in TOOL 1 - 1/8 INCH the dash parts two numbers. */
	private void amount(CalloutParser.AmountContext amount) {
		CalloutParser.DimensionContext d = amount.dimension();
		if (d.decimal == null && d.whole == null && (amount.unit() == null || amount.unit().MM() == null)) {
			fractions.put(start(amount), new double[] {ParsedNumbers.value(d.numerator), ParsedNumbers.value(d.denominator)});
		}
		boolean parted = d.DASH() != null && d.whole.getStopIndex() + 2 != d.numerator.getStartIndex();
		if (!parted) {
			add(amount, ParsedNumbers.length(d, amount.unit()), Part.Role.PLAIN);
			return;
		}
		double whole = ParsedNumbers.value(d.whole);
		Dimension part = Dimension.of(ParsedNumbers.value(d) - whole, LengthUnit.INCH);
		parts.add(new Part.Amount(new Dimension(whole, Optional.empty()), Part.Role.PLAIN, offset(d.whole.getStartIndex()),
				offset(d.whole.getStopIndex() + 1)));
		parts.add(new Part.Amount(part, Part.Role.PLAIN, offset(d.numerator.getStartIndex()), end(amount)));
	}

	private void multiplied(CalloutParser.MultipliedContext m) {
		double count = ParsedNumbers.value(m.NUMBER().getSymbol());
		boolean apart = m.DASH() != null && m.NUMBER().getSymbol().getStopIndex() + 1 < m.DASH().getSymbol().getStartIndex();
		boolean step = apart && parts.isEmpty();
		// THREAD MILL 14.0 - M22X1.5: the cutter's diameter
		boolean measured = apart && (m.NUMBER().getText().indexOf('.') >= 0 || behindMill());
		if (measured) {
			parts.add(new Part.Amount(new Dimension(count, Optional.empty()), Part.Role.PLAIN,
					offset(m.NUMBER().getSymbol().getStartIndex()), offset(m.NUMBER().getSymbol().getStopIndex() + 1)));
		}
		boolean whole = count == Math.rint(count) && count >= 1 && count <= LONGEST_COUNT && !step && !measured
				&& !partOfWord(m);
		OptionalInt number = whole ? OptionalInt.of((int) count) : OptionalInt.empty();
		if (m.thread() != null) {
			thread(m.thread(), number);
		} else if (m.metric() != null) {
			add(m.metric(), MetricReading.of(m.metric()), number);
		} else {
			add(m.inch(), InchReading.of(m.inch()), number);
		}
	}

	/** ALSI9 - M8: the number ends a word, and counts nothing. */
	private boolean partOfWord(CalloutParser.MultipliedContext m) {
		int at = offset(m.NUMBER().getSymbol().getStartIndex());
		return at > 1 && Character.isLetter(text.charAt(at - 1)) && Character.isLetter(text.charAt(at - 2));
	}

	private void thread(CalloutParser.ThreadContext t, OptionalInt count) {
		if (t.inch() != null && t.inch().turns() != null && t.inch().TIMES() != null && t.inch().series() == null
				&& t.inch().SERIES_LETTER() == null && ANGLES.contains(t.inch().turns().getText())) {
			// SPOT DRILL 1/2 X 90
			add(t.inch().inchSize(), ParsedNumbers.length(t.inch().inchSize().dimension(), null), Part.Role.PLAIN);
			parts.add(new Part.Angle(Math.toRadians(ParsedNumbers.value(t.inch().turns().NUMBER(0).getSymbol())),
					start(t.inch().turns()), end(t)));
			return;
		}
		if (t.inch() != null && t.inch().blankTurns != null && InchReading.of(t.inch()).isEmpty()) {
			// THREAD MILL .180 20 UNC: a size and something else
			CalloutParser.InchSizeContext size = t.inch().inchSize();
			add(size, ParsedNumbers.length(size.dimension(), null), Part.Role.PLAIN);
			parts.add(new Part.Other(text.substring(end(size), end(t)).strip(), end(size), end(t)));
			return;
		}
		if (t.inch() != null && cutterOf(t.inch())) {
			// .600 NPT THREAD MILL: the cutter's size, and what it mills
			add(t.inch().inchSize(), ParsedNumbers.length(t.inch().inchSize().dimension(), null), Part.Role.PLAIN);
			word(t.inch().series().getText(), t.inch().series().getStart(), t.inch().series().getStop());
			return;
		}
		if (t.inch() != null && numberedSize(t.inch())) {
			// 5 - .201 DRILL
			add(t.inch().inchSize(), ParsedNumbers.length(t.inch().inchSize().dimension(), null), Part.Role.PLAIN);
			add(t.inch().turns(), new Dimension(ParsedNumbers.value(t.inch().turns().NUMBER(0).getSymbol()), Optional.empty()),
					Part.Role.PLAIN);
			return;
		}
		if (t.inch() != null && behindDrill() && sizeAndLength(t.inch())) {
			// DRILL 8.5X70
			add(t.inch().inchSize(), ParsedNumbers.length(t.inch().inchSize().dimension(), null), Part.Role.PLAIN);
			parts.add(new Part.Other(text.substring(end(t.inch().inchSize()), end(t)).strip(), end(t.inch().inchSize()), end(t)));
			return;
		}
		add(t, t.metric() != null ? MetricReading.of(t.metric()) : t.perInch() != null ? MovementReading.of(t.perInch())
				: InchReading.of(t.inch()), count);
	}

	/** A decimal and the name of a series that has no such size. */
	private static boolean cutterOf(CalloutParser.InchContext inch) {
		CalloutParser.DimensionContext size = inch.inchSize().dimension();
		return inch.series() != null && inch.series().getStop() == inch.getStop() && inch.getStart() == inch.inchSize().getStart()
				&& inch.inchSize().mark() == null && size.decimal != null && size.decimal.getText().indexOf('.') >= 0
				&& inch.turns() == null && inch.blankTurns == null && InchReading.of(inch).isEmpty();
	}

	/** A whole number, a dash apart, and a size that is no number of threads. */
	private static boolean numberedSize(CalloutParser.InchContext inch) {
		CalloutParser.TurnsContext turns = inch.turns();
		boolean dash = turns != null && inch.DASH().size() == 1 && inch.series() == null && inch.SERIES_LETTER() == null
				&& inch.extent() == null && turns.getStop() == inch.getStop();
		return dash && turns.NUMBER(0).getText().indexOf('.') >= 0 && ParsedNumbers.value(turns.NUMBER(0).getSymbol()) < 2
				&& inch.DASH(0).getSymbol().getStopIndex() + 1 < turns.getStart().getStartIndex()
				&& inch.inchSize().getStop().getStopIndex() + 1 < inch.DASH(0).getSymbol().getStartIndex();
	}

	private static boolean sizeAndLength(CalloutParser.InchContext inch) {
		return inch.turns() != null && inch.TIMES() != null && inch.DASH().isEmpty() && inch.series() == null
				&& inch.SERIES_LETTER() == null && InchReading.of(inch).filter(ThreadDraft::standard).isEmpty();
	}

	private void add(ParserRuleContext at, Optional<ThreadDraft> draft, OptionalInt count) {
		if (draft.isPresent()) {
			parts.add(new Part.Thread(draft.get(), count, start(at), end(at)));
		} else if (at.getStart().getType() == CalloutParser.M || at.getStart().getType() == CalloutParser.SERIES_LETTER
				|| at.getStart().getType() == CalloutParser.S) {
			parts.add(new Part.Code(at.getStart().getText(), start(at), end(at)));
		} else {
			parts.add(new Part.Other(text.substring(start(at), end(at)), start(at), end(at)));
		}
	}

	private void add(ParserRuleContext at, Dimension length, Part.Role role) {
		if (Double.isFinite(length.value()) && length.value() > 0) {
			parts.add(new Part.Amount(length, role, start(at), end(at)));
		} else {
			parts.add(new Part.Other(text.substring(start(at), end(at)), start(at), end(at)));
		}
	}

	private void gauge(CalloutParser.GaugeContext gauge) {
		String name = gauge.letter() != null ? gauge.letter().getText() : ParsedNumbers.withoutPointOf(gauge.NUMBER().getText());
		OptionalDouble drill = DrillSizes.gauge(gauge.letter() != null ? name : "#" + name);
		if (drill.isPresent()) {
			add(gauge, Dimension.of(drill.getAsDouble(), LengthUnit.INCH), gauge.letter() != null ? Part.Role.LETTER_GAUGE
					: Part.Role.GAUGE);
		} else {
			parts.add(new Part.Other(text.substring(start(gauge), end(gauge)), start(gauge), end(gauge)));
		}
	}

	/** The drill of a letter, where the number behind it is its size. */
	private static OptionalDouble gauge(CalloutParser.CodeContext code) {
		OptionalDouble drill = code.letter().getText().length() == 1 && code.NUMBER().getText().startsWith(".")
				? DrillSizes.gauge(code.letter().getText().toUpperCase(Locale.ROOT)) : OptionalDouble.empty();
		return drill.isPresent() && Math.abs(drill.getAsDouble() - ParsedNumbers.value(code.NUMBER().getSymbol())) < SAME_SIZE ? drill
				: OptionalDouble.empty();
	}

	private void word(String word, Token first, Token last) {
		int start = offset(first.getStartIndex());
		int end = offset(last.getStopIndex() + 1);
		Optional<Meaning> meaning = TradeWords.words().meaning(word);
		parts.add(meaning.isPresent() ? new Part.Word(meaning.get(), TradeWords.fold(word), start, end) : new Part.Other(word, start, end));
	}

	private int start(ParserRuleContext at) {
		return offset(at.getStart().getStartIndex());
	}

	private int end(ParserRuleContext at) {
		return offset(at.getStop().getStopIndex() + 1);
	}

	/** The parser counts code points, programs chars; they differ only where a comment holds emoji and the like. */
	private int offset(int codePoints) {
		return onlyPlainChars ? codePoints : text.offsetByCodePoints(0, codePoints);
	}
}
