package truelead.checker.callout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Decimals;
import truelead.checker.thread.InchSize;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;

/** Makes an inch thread of a size, threads per inch, and the letters of a series. */
final class InchReading {
	private static final double MOST_TPI = 100;
	private static final double LARGEST = 24;
	/** Names that are also said of pipes, gas and pages, so that only a word of threads beside them makes a thread. */
	private static final Set<String> WORDS_OF_OTHER_THINGS = Set.of("PIPE", "GAS", "GAZ", "NPS", "PG");
	/** Names that are also said of points: PT 1 may be the first of them. */
	private static final Set<String> POINTS = Set.of("PT", "PS");
	/** 14 NPT on a cutter are its threads an inch: nobody mills pipe of 14 in (common practice, no source; 8 NPT may be either). */
	private static final Set<Double> THREADS_AN_INCH = Set.of(27.0, 18.0, 14.0, 11.5);

	private final CalloutParser.InchContext inch;
	private final List<String> assumed = new ArrayList<>();
	private boolean counted;

	private InchReading(CalloutParser.InchContext inch) {
		this.inch = inch;
	}

	/** The thread; empty where the numbers make none (12/24-20, a date). */
	static Optional<ThreadDraft> of(CalloutParser.InchContext inch) {
		return new InchReading(inch).draft();
	}

	private Optional<ThreadDraft> draft() {
		String series = inch.series() != null ? TradeWords.fold(inch.series().SERIES().getText()).replace(".", "")
				: inch.SERIES_LETTER() != null ? TradeWords.fold(inch.SERIES_LETTER().getText()) : ofTrapezoid() ? "ACME" : "";
		if (inch.inchSize().MM() != null || series.isEmpty() && metricNumbers()) {
			return metric();
		}
		boolean blank = inch.blankTurns != null;
		OptionalDouble tpi = blank ? OptionalDouble.of(ParsedNumbers.value(inch.blankTurns)) : inch.turns() == null ? OptionalDouble.empty()
				: OptionalDouble.of(turns());
		if (tpi.isPresent() && !(tpi.getAsDouble() >= 2 && tpi.getAsDouble() <= MOST_TPI)) {
			return Optional.empty();
		}
		Optional<ThreadSpec> spec = switch (series) {
			case "NPT", "PIPE", "NPTF", "ANPT", "PTF", "NPSM", "NPSC", "NPSF", "NPS", "G", "BSPP", "PF", "GAS", "GAZ", "BSP", "BSPT", "PT",
					"RC", "RP", "PS", "R" -> pipe(series, tpi);
			case "BSW", "W", "WW", "WHITWORTH", "WHIT", "WHITW", "BSF" -> whitworth(series, tpi);
			case "ACME", "STUBACME", "ACMESTUB", "BUTT", "BUTTRESS", "BA", "PG", "UNM" -> other(series, tpi);
			default -> unified(series, tpi);
		};
		if (blank && spec.filter(s -> standsFor(s, tpi.getAsDouble())).isEmpty()) {
			return Optional.empty();
		}
		ThreadMarks marks = ThreadMarks.of(inch.tail(), false);
		boolean pipe = WORDS_OF_OTHER_THINGS.contains(series) || POINTS.contains(series) && wholeNumber();
		boolean named = inch.series() != null && !pipe || inch.british() != null || marks.said() || hasMark()
				|| series.equals("G") && (tpi.isPresent() || inInches());
		return spec.map(this::withPipeClass)
				.map(s -> new ThreadDraft(marks.onto(s), List.copyOf(assumed), ThreadMarks.extent(inch.extent(), inch.after()),
						tpi.isEmpty(), named, ThreadTable.standard().isStandard(s) && (!s.series().equals("UNS") || inch.series() != null),
						pipe || gluedToWhole() || series.isEmpty() && s.system() == ThreadSystem.NPT,
						counted && inch.inchSize().dimension().DASH() == null ? OptionalInt.of((int) whole()) : OptionalInt.empty()));
	}

	/** 3/4-6 2G: a class that trapezoids alone have (ASME B1.5, from memory). */
	private boolean ofTrapezoid() {
		return inch.turns() != null && inch.tail().stream().anyMatch(tail -> tail.ACME_CLASS() != null);
	}

	/** 1/4 20 UNC is the thread that has so many threads an inch in that series, and no other: 3 8 UNC may be three of #8. */
	private boolean standsFor(ThreadSpec spec, double tpi) {
		boolean pipe = spec.series().isEmpty();
		return Math.abs(spec.tpi() - tpi) < 1e-9 && assumed.isEmpty() && (pipe ? fraction() : spec.series().equals("UNS")
				? inch.series() != null && inch.inchSize().dimension().SLASH() != null : ThreadTable.standard().isStandard(spec));
	}

	/** G 1/2 A: the class of an external thread, ISO 228-1. */
	private ThreadSpec withPipeClass(ThreadSpec spec) {
		String letter = inch.pipeClass == null ? "" : inch.pipeClass.getText().toUpperCase(Locale.ROOT);
		return spec.system() == ThreadSystem.G && (letter.equals("A") || letter.equals("B")) ? spec.withClass(letter) : spec;
	}

	private boolean hasMark() {
		return inch.inchSize().mark() != null;
	}

	private double value() {
		CalloutParser.DimensionContext size = inch.inchSize().dimension();
		// in NO.10-32 the point belongs to NO
		boolean glued = hasMark() && size.decimal != null && size.decimal.getText().startsWith(".");
		return glued ? Double.parseDouble(ParsedNumbers.withoutPointOf(size.decimal.getText())) : ParsedNumbers.value(size);
	}

	private double whole() {
		return inch.inchSize().dimension().whole == null ? 0 : ParsedNumbers.value(inch.inchSize().dimension().whole);
	}

	/** G1 1/4 may be a code of a block and something else. */
	private boolean gluedToWhole() {
		CalloutParser.DimensionContext size = inch.inchSize().dimension();
		return inch.SERIES_LETTER() != null && size.whole != null && size.DASH() == null
				&& size.whole.getStartIndex() == inch.SERIES_LETTER().getSymbol().getStopIndex() + 1
				&& inch.SERIES_LETTER().getText().length() == 1;
	}

	/** 8X1.25: numbers of a metric thread whose M was left out. */
	private boolean metricNumbers() {
		return inch.turns() != null && !fraction() && !hasMark() && inch.SERIES_LETTER() == null
				&& ThreadTable.standard().isStandard(metricSpec(turns()));
	}

	private double turns() {
		return ParsedNumbers.value(inch.turns().NUMBER(0).getSymbol()) + (inch.turns().SLASH() == null ? 0 : 0.5);
	}

	private ThreadSpec metricSpec(double pitch) {
		return pitch > 0 && value() > 0 ? ThreadSpec.metric(value(), pitch) : ThreadSpec.metric(1, 1);
	}

	private Optional<ThreadDraft> metric() {
		if (!metricNumbers()) {
			return Optional.empty();
		}
		ThreadSpec spec = ThreadMarks.of(inch.tail(), false).onto(metricSpec(turns()));
		return Optional.of(new ThreadDraft(spec, List.of("taken as metric, though no M stands before it"),
				ThreadMarks.extent(inch.extent(), inch.after()), false, false, true, true, OptionalInt.empty()));
	}

	/** G 1 ZOLL, G1": no code has a unit; in G1 IN the code stands in prose. */
	private boolean inInches() {
		return inch.inchSize().INCH_MARK() != null || inch.inchSize().INCH() != null
				&& !inch.inchSize().INCH().getText().equalsIgnoreCase("IN");
	}

	private boolean wholeNumber() {
		return !fraction() && value() == Math.rint(value());
	}

	private boolean fraction() {
		return inch.inchSize().dimension().decimal == null;
	}

	private Optional<ThreadSpec> pipe(String series, OptionalDouble tpi) {
		ThreadSystem system = switch (series) {
			case "NPT", "PIPE", "ANPT" -> ThreadSystem.NPT;
			case "NPTF", "PTF" -> ThreadSystem.NPTF;
			case "NPSM" -> ThreadSystem.NPSM;
			case "NPSC", "NPSF", "NPS" -> ThreadSystem.NPSC;
			case "RC", "BSPT", "PT" -> ThreadSystem.RC;
			case "RP", "PS" -> ThreadSystem.RP;
			case "R" -> ThreadSystem.R;
			default -> ThreadSystem.G;
		};
		if (series.equals("PIPE")) {
			assumed.add("pipe thread taken as NPT");
		}
		switch (series) {
			case "BSP", "GAS", "GAZ" -> assumed.add(series + " taken as parallel, G of ISO 228-1");
			case "NPS" -> assumed.add("NPS taken as NPSC, the straight thread of couplings");
			case "PT", "PS" -> assumed.add(series + " of JIS B 0203 is " + (series.equals("PT") ? "Rc" : "Rp")
					+ " of ISO 7-1 (from memory)");
			case "ANPT", "PTF", "NPSF" -> assumed.add(series + " taken with the basic sizes of " + system + " (from memory)");
			default -> { }
		}
		if (fraction() && !ParsedNumbers.inchFraction(inch.inchSize().dimension()) || hasMark()) {
			return Optional.empty();
		}
		if (system == ThreadSystem.NPT && tpi.isEmpty() && !fraction() && THREADS_AN_INCH.contains(value())) {
			return Optional.empty();
		}
		Optional<ThreadSpec> table = ThreadTable.standard().pipeThread(system, InchSize.fraction(value()));
		if (table.isPresent() && tpi.isPresent() && tpi.getAsDouble() != table.get().tpi()) {
			ThreadSpec right = table.get();
			assumed.add(right.designation() + " has " + Decimals.plain(right.tpi(), 1) + " threads an inch, not "
					+ Decimals.plain(tpi.getAsDouble(), 2));
			return Optional.of(ThreadSpec.pipe(system, right.size(), right.diameter(), tpi.getAsDouble()));
		}
		return table;
	}

	/** ACME, BUTT, BA, Pg, UNM: by number or size in their own series; a trapezoid of another pitch by itself. */
	private Optional<ThreadSpec> other(String series, OptionalDouble tpi) {
		ThreadSystem system = switch (series) {
			case "ACME" -> inch.series() == null || inch.series().STUB().isEmpty() ? ThreadSystem.ACME : ThreadSystem.STUB_ACME;
			case "STUBACME", "ACMESTUB" -> ThreadSystem.STUB_ACME;
			case "BA" -> ThreadSystem.BA;
			case "PG" -> ThreadSystem.PG;
			case "UNM" -> ThreadSystem.MINIATURE;
			default -> ThreadSystem.BUTTRESS;
		};
		boolean inches = system.unit() == LengthUnit.INCH;
		if (!inches && (fraction() || tpi.isPresent()) || fraction() && !ParsedNumbers.inchFraction(inch.inchSize().dimension())) {
			return Optional.empty();
		}
		String name = inches ? InchSize.fraction(value()) : Decimals.plain(value(), 4);
		boolean miniature = system == ThreadSystem.MINIATURE;
		Optional<ThreadSpec> table = ThreadTable.standard().threads(system).stream()
				.filter(t -> miniature ? Math.abs(t.diameter() - value()) < 1e-6 : t.size().equals(name))
				.filter(t -> tpi.isEmpty() ? system != ThreadSystem.BUTTRESS : t.tpi() == tpi.getAsDouble()).findFirst();
		boolean odd = table.isEmpty() && inches && tpi.isPresent() && value() >= 0.25 && value() <= LARGEST && tpi.getAsDouble() <= 20
				&& tpi.getAsDouble() * value() >= 3;
		return odd ? Optional.of(ThreadSpec.other(system, name, value() * LengthUnit.INCH.mm(), LengthUnit.INCH.mm() / tpi.getAsDouble(),
				tpi.getAsDouble())) : table;
	}

	private Optional<ThreadSpec> whitworth(String series, OptionalDouble tpi) {
		ThreadSystem system = series.equals("BSF") ? ThreadSystem.BSF : ThreadSystem.BSW;
		Optional<ThreadSpec> table = ThreadTable.standard().threadsOf(system, value() * LengthUnit.INCH.mm()).stream().findFirst();
		if (tpi.isEmpty()) {
			return table;
		}
		return plausible(value(), tpi.getAsDouble())
				? Optional.of(ThreadSpec.inch(system, system.name(), value(), tpi.getAsDouble())) : Optional.empty();
	}

	private Optional<ThreadSpec> unified(String series, OptionalDouble tpi) {
		if (fraction() && !ParsedNumbers.inchFraction(inch.inchSize().dimension())) {
			return Optional.empty();
		}
		ThreadSystem system = series.startsWith("UNJ") ? ThreadSystem.UNJ : ThreadSystem.UNIFIED;
		String wanted = wanted(series);
		if (series.isEmpty() && tpi.isPresent() && fraction()) {
			Optional<String> known = ThreadTable.standard().unifiedSeries(value(), tpi.getAsDouble());
			Optional<ThreadSpec> other = known.isEmpty() ? withoutWhole(tpi.getAsDouble()) : Optional.empty();
			if (other.isEmpty() && known.filter(s -> !s.equals("UNS")).isEmpty()) {
				other = pipeNumbers(tpi.getAsDouble());
			}
			if (other.isPresent()) {
				return other;
			}
		}
		if (!wanted.isEmpty() && !wanted.equals("UNS") && tpi.isPresent()
				&& ThreadTable.standard().unifiedSeries(value(), tpi.getAsDouble()).filter(s -> !s.equals("UNS")).isEmpty()) {
			Optional<ThreadSpec> counted = withoutWhole(tpi.getAsDouble()).filter(s -> s.series().equals(wanted));
			if (counted.isPresent()) {
				return counted;
			}
		}
		Optional<ThreadSpec> spec = tpi.isPresent() ? UnifiedSize.withTpi(value(), tpi.getAsDouble(), fraction(), hasMark())
				: UnifiedSize.ofSeries(value(), wanted, fraction(), hasMark());
		if (spec.isEmpty() || !plausible(spec.get().inches(), spec.get().tpi())) {
			return Optional.empty();
		}
		ThreadSpec found = spec.get();
		if (tpi.isEmpty()) {
			assumed.add(Decimals.plain(found.tpi(), 2) + " threads an inch assumed, as " + found.series() + " has");
		} else if (!wanted.isEmpty() && !wanted.equals("UN") && !found.series().equals(wanted)) {
			assumed.add(found.withoutClass().designation() + " is what the standard calls " + found.size() + "-"
					+ Decimals.plain(found.tpi(), 2) + ", not " + wanted);
		}
		return Optional.of(system == ThreadSystem.UNJ
				? ThreadSpec.inch(system, ThreadTable.unj(found.series()), found.inches(), found.tpi()) : found);
	}

	/** 4 1/4-20: no thread of 4-1/4 in, but four holes of 1/4-20; nobody counts one hole, 1-7/16-32 is one and seven sixteenths. */
	private Optional<ThreadSpec> withoutWhole(double tpi) {
		double part = value() - whole();
		counted = whole() > 0 && !(whole() == 1 && gluedDash())
				&& ThreadTable.standard().unifiedSeries(part, tpi).filter(s -> !s.equals("UNS")).isPresent();
		return counted ? Optional.of(ThreadSpec.unified(part, tpi)) : Optional.empty();
	}

	private boolean gluedDash() {
		CalloutParser.DimensionContext size = inch.inchSize().dimension();
		return size.DASH() != null && size.whole.getStopIndex() + 2 == size.numerator.getStartIndex();
	}

	/**
	 * 1/8-27 is in no series of Unified threads, but in NPT; 1/2-14 and 3/8-18 are special there and common here (common practice, no
	 * source).
	 */
	private Optional<ThreadSpec> pipeNumbers(double tpi) {
		Optional<ThreadSpec> npt = ThreadTable.standard().pipeThread(ThreadSystem.NPT, InchSize.fraction(value()))
				.filter(s -> s.tpi() == tpi);
		npt.ifPresent(s -> assumed.add("taken as NPT, for no common Unified series has it"));
		return npt;
	}

	/** NC, UNRC and UNJC are the sizes of UNC. */
	private static String wanted(String series) {
		String letters = series.toUpperCase(Locale.ROOT).replace("UNJ", "UN").replace("UNR", "UN");
		return letters.startsWith("N") ? "U" + letters : letters;
	}

	/** A thread has a core: 3 turns on the length of its diameter at least (#0-80 has 4.8, 1/4-20 has 5). */
	private static boolean plausible(double inches, double tpi) {
		return inches >= 0.0595 && inches <= LARGEST && tpi * inches >= 3 && tpi >= 2 && tpi <= MOST_TPI;
	}
}
