package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.program.LengthUnit;

/** Unified threads: the series of ASME B1.1 and their limits. Diameters in inches. */
final class UnifiedTable {
	static final List<String> CLASSES = List.of("1B", "2B", "3B");
	/** Just below #0, inches: the smallest of ASME B1.1. */
	private static final double SMALLEST = 0.0595;
	/** The largest of ASME B1.1, inches. */
	private static final double LARGEST = 6.0;

	/** A diameter and number of threads per inch of the series. */
	record Row(String size, double diameter, double tpi, String series) {
	}

	private final List<Row> rows = new ArrayList<>();
	private final Map<String, Row> byThread = new HashMap<>();
	private final Map<String, Limits> published = new HashMap<>();

	UnifiedTable() {
		Map<String, Row> bySize = new HashMap<>();
		for (DataRow r : DataFile.rows(UnifiedTable.class, "unified-series.csv")) {
			Row row = new Row(r.get("size"), DataFile.number(r, "D"), DataFile.number(r, "tpi"), r.get("series"));
			rows.add(row);
			byThread.put(key(row.diameter(), row.tpi()), row);
			bySize.putIfAbsent(row.size() + " " + row.tpi(), row);
		}
		for (DataRow r : DataFile.rows(UnifiedTable.class, "unified-published.csv")) {
			Row row = bySize.get(r.get("size") + " " + DataFile.number(r, "tpi"));
			if (row != null) {
				published.put(key(row.diameter(), row.tpi()) + r.get("class"), published(row, r));
			}
		}
	}

	List<Row> rows() {
		return List.copyOf(rows);
	}

	Optional<Row> row(double inches, double tpi) {
		return Optional.ofNullable(byThread.get(key(inches, tpi)));
	}

	/** Published limits where a table gives them, else by formula; empty outside 0.06 to 6 in, where the standard ends. */
	Optional<Limits> limits(ThreadSpec spec, String threadClass) {
		double inches = spec.inches();
		Limits ruling = published.get(key(inches, spec.tpi()) + threadClass);
		if (ruling != null) {
			return Optional.of(ruling);
		}
		if (!CLASSES.contains(threadClass) || !reckons(spec)) {
			return Optional.empty();
		}
		Optional<Row> row = row(inches, spec.tpi());
		UnifiedFormula formula = new UnifiedFormula(inches, spec.tpi(),
				row.map(UnifiedTable::engagement).orElse(UnifiedFormula.Engagement.NINE_PITCHES));
		String source = row.isPresent() ? "computed by ASME B1.1 clause 8.3, rounded in stages"
				: "computed by ASME B1.1 clause 8.3 with 9 pitches of engagement; not in the series, so UNS";
		return Optional.of(new Limits(threadClass, LengthUnit.INCH, Optional.of(formula.minorMin(threadClass)),
				Optional.of(formula.minorMax(threadClass)), Optional.of(formula.pitchMin()), Optional.of(formula.pitchMax(threadClass)),
				Optional.of(Decimals.round(inches, 4)), Origin.COMPUTED, source));
	}

	/**
	 * Whether the standard's formulas hold for a thread; a pitch of a third of the diameter leaves no core to speak of: no series has it.
	 */
	static boolean reckons(ThreadSpec spec) {
		return spec.inches() >= SMALLEST && spec.inches() <= LARGEST && spec.tpi() * spec.inches() >= 3;
	}

	/** Class 1B is made for UNC and UNF from 1/4 in up only. */
	List<String> classes(ThreadSpec spec) {
		boolean loose = spec.inches() > 0.2495 && (spec.series().equals("UNC") || spec.series().equals("UNF"));
		return loose ? CLASSES : List.of("2B", "3B");
	}

	static UnifiedFormula.Engagement engagement(Row row) {
		boolean diameter = row.series().equals("UNC") || row.series().equals("UNF") || row.series().equals("UN") && row.tpi() <= 8;
		return diameter ? UnifiedFormula.Engagement.DIAMETER : UnifiedFormula.Engagement.NINE_PITCHES_TABULATED;
	}

	private static Limits published(Row row, DataRow r) {
		return new Limits(r.get("class"), LengthUnit.INCH, size(r, "minorMin"), size(r, "minorMax"), size(r, "pitchMin"),
				size(r, "pitchMax"), Optional.of(Decimals.round(row.diameter(), 4)), Origin.of(r.get("source")), r.get("source"));
	}

	private static Optional<BigDecimal> size(DataRow row, String name) {
		return Optional.of(new BigDecimal(row.get(name)));
	}

	private static String key(double inches, double tpi) {
		return Decimals.plain(inches, 4) + "-" + Decimals.plain(tpi, 3) + " ";
	}
}
