package truelead.checker.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import truelead.checker.machine.LengthUnit;

/** Makes an inch thread of a size, threads per inch, and the letters of a series. */
final class InchReading {
	private static final double MOST_TPI = 100;
	private static final double LARGEST = 24;

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
		String series = inch.SERIES() != null ? TradeWords.fold(inch.SERIES().getText())
				: inch.SERIES_LETTER() != null ? TradeWords.fold(inch.SERIES_LETTER().getText()) : "";
		if (inch.inchSize().MM() != null || series.isEmpty() && metricNumbers()) {
			return metric();
		}
		OptionalDouble tpi = inch.tpi == null ? OptionalDouble.empty() : OptionalDouble.of(ParsedNumbers.value(inch.tpi));
		if (tpi.isPresent() && !(tpi.getAsDouble() >= 2 && tpi.getAsDouble() <= MOST_TPI)) {
			return Optional.empty();
		}
		Optional<ThreadSpec> spec = switch (series) {
			case "NPT", "PIPE", "NPTF", "G", "BSPP", "PF", "BSP", "BSPT", "RC", "RP", "R" -> pipe(series, tpi);
			case "BSW", "W", "WW", "WHITWORTH", "BSF" -> whitworth(series, tpi);
			case "NPSM" -> Optional.empty();
			default -> unified(series, tpi);
		};
		ThreadMarks marks = ThreadMarks.of(inch.tail(), false);
		boolean pipe = series.equals("PIPE");
		boolean named = inch.SERIES() != null && !pipe || marks.said() || hasMark();
		return spec.map(this::withPipeClass).map(s -> new ThreadDraft(marks.onto(s), List.copyOf(assumed), ThreadMarks.extent(inch.extent()), tpi.isEmpty(), named,
				ThreadTable.standard().isStandard(s) && (!s.series().equals("UNS") || inch.SERIES() != null),
				pipe || series.isEmpty() && s.system() == ThreadSystem.NPT, counted && inch.inchSize().dimension().DASH() == null ? OptionalInt.of((int) whole()) : OptionalInt.empty()));
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

	/** 8X1.25: numbers of a metric thread whose M was left out. */
	private boolean metricNumbers() {
		return inch.tpi != null && !fraction() && !hasMark() && inch.SERIES_LETTER() == null
				&& ThreadTable.standard().isStandard(metricSpec(ParsedNumbers.value(inch.tpi)));
	}

	private ThreadSpec metricSpec(double pitch) {
		return pitch > 0 && value() > 0 ? ThreadSpec.metric(value(), pitch) : ThreadSpec.metric(1, 1);
	}

	private Optional<ThreadDraft> metric() {
		if (!metricNumbers()) {
			return Optional.empty();
		}
		ThreadSpec spec = ThreadMarks.of(inch.tail(), false).onto(metricSpec(ParsedNumbers.value(inch.tpi)));
		return Optional.of(new ThreadDraft(spec, List.of("taken as metric, though no M stands before it"), ThreadMarks.extent(inch.extent()), false,
				false, true, true, OptionalInt.empty()));
	}

	private boolean fraction() {
		return inch.inchSize().dimension().decimal == null;
	}

	private Optional<ThreadSpec> pipe(String series, OptionalDouble tpi) {
		ThreadSystem system = switch (series) {
			case "NPT", "PIPE" -> ThreadSystem.NPT;
			case "NPTF" -> ThreadSystem.NPTF;
			case "RC", "BSPT" -> ThreadSystem.RC;
			case "RP" -> ThreadSystem.RP;
			case "R" -> ThreadSystem.R;
			default -> ThreadSystem.G;
		};
		if (series.equals("PIPE")) {
			assumed.add("pipe thread taken as NPT");
		}
		if (series.equals("BSP")) {
			assumed.add("BSP taken as parallel, G of ISO 228-1");
		}
		if (fraction() && !ParsedNumbers.inchFraction(inch.inchSize().dimension()) || hasMark()) {
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
		Optional<ThreadSpec> spec = tpi.isPresent() ? UnifiedSize.withTpi(value(), tpi.getAsDouble(), fraction(), hasMark())
				: UnifiedSize.ofSeries(value(), wanted, fraction(), hasMark());
		if (spec.isEmpty() || !plausible(UnifiedTable.inches(spec.get()), spec.get().tpi())) {
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
				? ThreadSpec.inch(system, ThreadTable.unj(found.series()), UnifiedTable.inches(found), found.tpi()) : found);
	}

	/** 4 1/4-20: no thread of 4-1/4 in, but four holes of 1/4-20. */
	private Optional<ThreadSpec> withoutWhole(double tpi) {
		double part = value() - whole();
		counted = whole() > 0 && ThreadTable.standard().unifiedSeries(part, tpi).filter(s -> !s.equals("UNS")).isPresent();
		return counted ? Optional.of(ThreadSpec.unified(part, tpi)) : Optional.empty();
	}

	/** 1/8-27 is in no series of Unified threads, but in NPT; 1/2-14 and 3/8-18 are special there and common here (common practice, no source). */
	private Optional<ThreadSpec> pipeNumbers(double tpi) {
		Optional<ThreadSpec> npt = ThreadTable.standard().pipeThread(ThreadSystem.NPT, InchSize.fraction(value())).filter(s -> s.tpi() == tpi);
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
