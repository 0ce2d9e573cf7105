package truelead.checker.thread;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.program.LengthUnit;

/**
 * Limits of internal threads of other forms, by the formulas of their standards (from memory, each named where it stands). What a
 * standard's formula does not give is empty.
 */
final class OtherLimits {

	/**
	 * A row of ISO 2903: over and up to which diameter, pitch (mm), tolerances in micrometres for grades 7, 8, 9, and of the minor
	 * diameter.
	 */
	private record Trapezoid(double over, double upTo, double pitch, List<Integer> grades, int minor, String source) {
	}

	/** Between the pitches of 18 and of 16 threads an inch, mm (DIN 40430 has a tolerance for each). */
	private static final double COARSE_CONDUIT = 1.5;

	private static final List<Trapezoid> TRAPEZOIDS = new ArrayList<>();

	static {
		for (DataRow r : DataFile.rows(OtherLimits.class, "trapezoidal-tolerance.csv")) {
			TRAPEZOIDS.add(new Trapezoid(DataFile.number(r, "over"), DataFile.number(r, "upto"), DataFile.number(r, "P"),
					List.of(Integer.parseInt(r.get("grade7")), Integer.parseInt(r.get("grade8")), Integer.parseInt(r.get("grade9"))),
					Integer.parseInt(r.get("minor4")), r.get("source")));
		}
	}

	private OtherLimits() {
	}

	/** The classes of internal threads that a system has; one empty name where it has none. */
	static List<String> classes(ThreadSystem system) {
		return switch (system) {
			case TR -> List.of("7H", "8H", "9H");
			case ACME -> List.of("2G", "3G", "4G");
			case STUB_ACME -> List.of("2G");
			default -> List.of("");
		};
	}

	/** The limits; empty for a class that the system does not have. */
	static Optional<Limits> of(ThreadSpec spec, String threadClass) {
		if (!classes(spec.system()).contains(threadClass)) {
			return Optional.empty();
		}
		return switch (spec.system()) {
			case TR -> trapezoid(spec, threadClass);
			case ACME, STUB_ACME -> Optional.of(acme(spec, threadClass));
			case MINIATURE -> Optional.of(miniature(spec));
			case SAW -> Optional.of(saw(spec));
			case BUTTRESS -> Optional.of(buttress(spec));
			case RD -> Optional.of(basic(spec, 0.9, 0.5, 0.1, "basic size by DIN 405-1, d - 0.9 P; tolerances not in the table"));
			case BA -> Optional.of(associated(spec));
			case PG -> Optional.of(conduit(spec));
			case W -> Optional.of(basic(spec, 2 * 0.640327, 0.640327, 0,
					"basic size by the Whitworth form, D - 1.281 P; tolerances not in the table"));
			default -> Optional.empty();
		};
	}

	/** ISO 2904: D1 = d − P, D2 = d − P/2, D4 = d + 2 ac; tolerances ISO 2903. Tr20x4: 16.000, 18.000, 20.500. */
	private static Optional<Limits> trapezoid(ThreadSpec spec, String threadClass) {
		double d = spec.diameter();
		double p = spec.pitch();
		BigDecimal minor = Decimals.round(d - p, 3);
		BigDecimal pitch = Decimals.round(d - p / 2, 3);
		Optional<BigDecimal> major = Optional.of(Decimals.round(d + 2 * crestClearance(p), 3));
		Optional<Trapezoid> row = TRAPEZOIDS.stream().filter(t -> Math.abs(t.pitch() - p) < 1e-6 && d > t.over()
				&& d <= t.upTo()).findFirst();
		// wide tolerances go with several starts: ISO 2903 multiplies by 1.12 for two, 1.25 for three, 1.4 for four, 1.6 beyond
		double wider = switch (spec.starts()) {
			case 1 -> 1;
			case 2 -> 1.12;
			case 3 -> 1.25;
			case 4 -> 1.4;
			default -> 1.6;
		};
		return Optional.of(row.map(t -> new Limits(threadClass, LengthUnit.MM, Optional.of(minor),
				Optional.of(minor.add(micrometres(t.minor()))), Optional.of(pitch),
				Optional.of(pitch.add(micrometres(wider * t.grades().get(threadClass.charAt(0) - '7')))), major, Origin.FROM_MEMORY,
				"basic size ISO 2904, D1 = d - P; tolerances " + t.source()))
				.orElseGet(() -> new Limits(threadClass, LengthUnit.MM, Optional.of(minor), minorTolerance(p).map(minor::add),
						Optional.of(pitch), Optional.empty(), major, Origin.FROM_MEMORY,
						"basic size ISO 2904, D1 = d - P, minor diameter by grade 4 of ISO 2903, which goes by the pitch alone (from "
						+ "memory); diameter and pitch not in ISO 2903, " + "pitch diameter tolerance not in the table")));
	}

	/**
	 * Tolerance of grade 4 of a minor diameter by its pitch, mm, which is the same for every diameter (ISO 2903 Table 2); empty for pitches
	 * that it does not have.
	 */
	private static Optional<BigDecimal> minorTolerance(double pitch) {
		return TRAPEZOIDS.stream().filter(t -> Math.abs(t.pitch() - pitch) < 1e-6).findFirst().map(t -> micrometres(t.minor()));
	}

	/** DIN 513: D1 = d - 1.5 P with grade 4 of the trapezoids, D2 = d - 0.75 P. S36x6: 27.000 to 27.500, 31.500. */
	private static Limits saw(ThreadSpec spec) {
		Limits basic = basic(spec, 1.5, 0.75, 0,
				"DIN 513-1, D - 1.5 P, minor diameter by grade 4 of ISO 2903 as DIN 513-3 has it; pitch diameter tolerance not "
				+ "in the table");
		return withLargest(basic, minorTolerance(spec.pitch()), Optional.empty());
	}

	/**
	 * ASME B1.9: minor diameter D - 1.2 P, pitch diameter D - 0.6 P, each with the tolerance of class 2, 0.002 ∛D + 0.00278 √(10 P) +
	 * 0.00854 √P for an engagement of ten pitches. 2-6 BUTT: 1.8000 to 1.8096, 1.9000 to 1.9096.
	 */
	private static Limits buttress(ThreadSpec spec) {
		double p = 1 / spec.tpi();
		Optional<BigDecimal> tolerance = inch(0.002 * Math.cbrt(spec.inches()) + 0.00278 * Math.sqrt(10 * p) + 0.00854 * Math.sqrt(p));
		return withLargest(basic(spec, 1.2, 0.6, 0, "formulas of ASME B1.9 for class 2"), tolerance, tolerance);
	}

	/**
	 * DIN 40430: minor diameter by the form, D - 0.95 P, and 0.15 mm for 20 and 18 threads an inch, 0.25 mm for 16. Pg 11: 17.259 to
	 * 17.409.
	 */
	private static Limits conduit(ThreadSpec spec) {
		boolean coarse = spec.pitch() > COARSE_CONDUIT;
		return withLargest(basic(spec, 0.95, 0.475, 0,
				"minor diameter by the form of DIN 40430, D - 0.95 P, and its tolerance; pitch diameter tolerance not in the table"),
				Optional.of(new BigDecimal(coarse ? "0.25" : "0.15")), Optional.empty());
	}

	private static Limits withLargest(Limits basic, Optional<BigDecimal> minor, Optional<BigDecimal> pitch) {
		return new Limits(basic.threadClass(), basic.unit(), basic.minorMin(), minor.map(basic.minorMin().orElseThrow()::add),
				basic.pitchMin(), pitch.map(basic.pitchMin().orElseThrow()::add), basic.majorMin(), basic.origin(), basic.source());
	}

	/** ISO 2901: 0.15 mm for a pitch of 1.5, 0.25 to 5, 0.5 to 12, 1 above. */
	private static double crestClearance(double pitch) {
		return pitch < 2 ? 0.15 : pitch <= 5 ? 0.25 : pitch <= 12 ? 0.5 : 1;
	}

	/**
	 * ASME B1.5 and B1.8: minor diameter D − P (stub D − 0.6 P) plus 0.05 P, at least 0.005 in; pitch diameter plus 0.006 √D + 0.030 √P for
	 * 2G, 0.0028 and 0.014 for 3G, 0.002 and 0.010 for 4G. 1/2-10 ACME-2G: 0.4000 to 0.4050, 0.4500 to 0.4637.
	 */
	private static Limits acme(ThreadSpec spec, String threadClass) {
		double d = spec.inches();
		double p = 1 / spec.tpi();
		double share = spec.system() == ThreadSystem.ACME ? 1 : 0.6;
		double grade = switch (threadClass) {
			case "2G" -> 0.006 * Math.sqrt(d) + 0.030 * Math.sqrt(p);
			case "3G" -> 0.0028 * Math.sqrt(d) + 0.014 * Math.sqrt(p);
			default -> 0.002 * Math.sqrt(d) + 0.010 * Math.sqrt(p);
		};
		double major = d + (spec.tpi() <= 10 ? 0.020 : 0.010);
		return new Limits(threadClass, LengthUnit.INCH, inch(d - share * p), inch(d - share * p + Math.max(0.05 * p, 0.005)),
				inch(d - share * p / 2), inch(d - share * p / 2 + grade), inch(major), Origin.FROM_MEMORY,
				"formulas of " + (spec.system() == ThreadSystem.ACME ? "ASME B1.5" : "ASME B1.8") + " (from memory)");
	}

	/**
	 * ASME B1.10: minor diameter D − 0.96 P plus 0.32 P + 0.012, pitch diameter D − 0.64952 P plus 0.08 P + 0.008, major diameter D + 0.072
	 * P. S0.6: 0.456 to 0.516.
	 */
	private static Limits miniature(ThreadSpec spec) {
		double d = spec.diameter();
		double p = spec.pitch();
		return new Limits("", LengthUnit.MM, mm(d - 0.96 * p), mm(d - 0.64 * p + 0.012), mm(d - 0.6495190 * p),
				mm(d - 0.5695190 * p + 0.008), mm(d + 0.072 * p), Origin.FROM_MEMORY,
				"formulas of ASME B1.10 (from memory); ISO 1501 has the same basic sizes");
	}

	/** BS 93: D1 = D − 1.2 P, D2 = D − 0.6 P; for nuts plus 0.375 P and 0.12 P + 0.03 mm. 0 BA: 4.800 to 5.175, 5.400 to 5.550. */
	private static Limits associated(ThreadSpec spec) {
		double d = spec.diameter();
		double p = spec.pitch();
		return new Limits("", LengthUnit.MM, mm(d - 1.2 * p), mm(d - 0.825 * p), mm(d - 0.6 * p), mm(d - 0.48 * p + 0.03), mm(d),
				Origin.FROM_MEMORY, "formulas of BS 93 for nuts (from memory)");
	}

	private static Limits basic(ThreadSpec spec, double minor, double pitch, double major, String source) {
		LengthUnit unit = spec.unit();
		int places = unit == LengthUnit.MM ? 3 : 4;
		double d = spec.diameter() / unit.mm();
		double p = spec.pitch() / unit.mm();
		return new Limits("", unit, Optional.of(Decimals.round(d - minor * p, places)), Optional.empty(),
				Optional.of(Decimals.round(d - pitch * p, places)), Optional.empty(), Optional.of(Decimals.round(d + major * p, places)),
				Origin.FROM_MEMORY, source + " (from memory)");
	}

	private static BigDecimal micrometres(double value) {
		return Decimals.round(value / 1000, 3);
	}

	private static Optional<BigDecimal> mm(double value) {
		return Optional.of(Decimals.round(value, 3));
	}

	private static Optional<BigDecimal> inch(double value) {
		return Optional.of(Decimals.round(value, 4));
	}
}
