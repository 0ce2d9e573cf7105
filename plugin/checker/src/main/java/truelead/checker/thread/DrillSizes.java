package truelead.checker.thread;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import truelead.checker.machine.LengthUnit;

/** The drills that one can buy: metric steps, and inch numbers, letters and fractions of 64ths. */
public final class DrillSizes {
	private static final Map<String, Double> GAUGES = new LinkedHashMap<>();
	private static final List<Drill> METRIC = new ArrayList<>();
	private static final List<Drill> INCH = new ArrayList<>();
	/** Half of the last figure of a size written with three decimals of an inch. */
	private static final double SAME_INCH = 0.0006;
	private static final int LARGEST_INCH_64THS = 7 * 32;

	static {
		DataFile.rows("drill-gauges.csv").forEach(r -> GAUGES.put(r.get("name"), DataFile.number(r, "inch")));
		Set<Double> made = new HashSet<>();
		steps(made, 0.3, 3.0, 0.05);
		steps(made, 3.1, 20.0, 0.1);
		steps(made, 14.25, 32.0, 0.25);
		steps(made, 32.5, 76.0, 0.5);
		steps(made, 77, 100.0, 1.0);
		METRIC.sort(Comparator.comparingDouble(Drill::diameter));
		GAUGES.forEach((name, inch) -> INCH.add(new Drill(name, inch * LengthUnit.INCH.mm(), LengthUnit.INCH)));
		for (int parts = 1; parts <= LARGEST_INCH_64THS; parts++) {
			INCH.add(new Drill(InchSize.fraction(parts / 64.0), parts / 64.0 * LengthUnit.INCH.mm(), LengthUnit.INCH));
		}
		INCH.sort(Comparator.comparingDouble(Drill::diameter));
	}

	private DrillSizes() {
	}

	/**
	 * A drill.
	 *
	 * @param name     as it is ordered: {@code 6.8}, {@code #7}, {@code F}, {@code 27/64}
	 * @param diameter mm
	 * @param unit     the unit it is made in
	 */
	public record Drill(String name, double diameter, LengthUnit unit) {
	}

	/** The drills of a unit, smallest first. */
	public static List<Drill> drills(LengthUnit unit) {
		return List.copyOf(unit == LengthUnit.MM ? METRIC : INCH);
	}

	/** The diameter of a number or letter drill in inches, {@code #7} or {@code F}; empty for names that are none. */
	public static OptionalDouble gauge(String name) {
		Double inch = GAUGES.get(name.toUpperCase(Locale.ROOT));
		return inch == null ? OptionalDouble.empty() : OptionalDouble.of(inch);
	}

	/** The drill of a unit nearest to a diameter in mm. */
	public static Drill nearest(double diameter, LengthUnit unit) {
		return drills(unit).stream().min(Comparator.comparingDouble(d -> Math.abs(d.diameter() - diameter))).orElseThrow();
	}

	/** The drill of a unit nearest to a wanted diameter, between two limits (all in mm); empty where none is made. */
	public static Optional<Drill> nearest(double diameter, double smallest, double largest, LengthUnit unit) {
		return drills(unit).stream().filter(d -> d.diameter() >= smallest - 1e-9 && d.diameter() <= largest + 1e-9)
				.min(Comparator.comparingDouble(d -> Math.abs(d.diameter() - diameter)));
	}

	/** The name of a diameter in mm, where a drill of it is made: {@code #7} for 5.105. */
	public static Optional<String> name(double diameter, LengthUnit unit) {
		double tolerance = unit == LengthUnit.MM ? 1e-6 : SAME_INCH * LengthUnit.INCH.mm();
		Drill nearest = nearest(diameter, unit);
		return Math.abs(nearest.diameter() - diameter) <= tolerance ? Optional.of(nearest.name()) : Optional.empty();
	}

	private static void steps(Set<Double> made, double from, double to, double step) {
		for (int i = 0; from + i * step <= to + 1e-9; i++) {
			double diameter = Decimals.round(from + i * step, 2).doubleValue();
			if (made.add(diameter)) {
				METRIC.add(new Drill(Decimals.plain(diameter, 2), diameter, LengthUnit.MM));
			}
		}
	}
}
