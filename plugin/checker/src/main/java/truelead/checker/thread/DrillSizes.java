package truelead.checker.thread;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import truelead.checker.program.LengthUnit;

/** The drills that one can buy: metric steps, and inch numbers, letters and fractions of 64ths. */
public final class DrillSizes {
	/** Fractions of an inch up to 3-1/2, in 64ths (common practice, no source). */
	private static final int LARGEST_INCH_64THS = 7 * 32;

	/** Metric drills, made when first asked for. */
	private static final class Metric {

		static final List<Drill> DRILLS;

		static {
			Map<Double, Drill> made = new TreeMap<>();
			steps(made, 30, 300, 5);
			steps(made, 310, 2000, 10);
			steps(made, 1425, 3200, 25);
			steps(made, 3250, 7600, 50);
			steps(made, 7700, 10000, 100);
			DRILLS = List.copyOf(made.values());
		}
	}

	/** Inch drills, read when first asked for. */
	private static final class Inch {

		/** Diameters of numbers and letters, inches (their sources stand in the file). */
		static final Map<String, Double> GAUGES = new LinkedHashMap<>();
		static final List<Drill> DRILLS;

		static {
			List<Drill> drills = new ArrayList<>();
			for (DataRow row : DataFile.rows(DrillSizes.class, "drill-gauges.csv")) {
				GAUGES.put(row.get("name"), DataFile.number(row, "inch"));
			}
			GAUGES.forEach((name, inch) -> drills.add(new Drill(name, inch * LengthUnit.INCH.mm(), LengthUnit.INCH)));
			for (int parts = 1; parts <= LARGEST_INCH_64THS; parts++) {
				drills.add(new Drill(InchSize.fraction(parts / 64.0), parts / 64.0 * LengthUnit.INCH.mm(), LengthUnit.INCH));
			}
			drills.sort((one, other) -> Double.compare(one.diameter(), other.diameter()));
			DRILLS = List.copyOf(drills);
		}
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
		return unit == LengthUnit.MM ? Metric.DRILLS : Inch.DRILLS;
	}

	/** The diameter of a number or letter drill in inches, {@code #7} or {@code F}; empty for names that are none. */
	public static OptionalDouble gauge(String name) {
		Double inch = Inch.GAUGES.get(name.toUpperCase(Locale.ROOT));
		return inch == null ? OptionalDouble.empty() : OptionalDouble.of(inch);
	}

	/** The drill of a unit nearest to a diameter in mm. */
	public static Drill nearest(double diameter, LengthUnit unit) {
		return nearest(diameter, 0, Double.MAX_VALUE, unit).orElseThrow();
	}

	/** The drill of a unit nearest to a wanted diameter, between two limits (all in mm); empty where none is made. */
	public static Optional<Drill> nearest(double diameter, double smallest, double largest, LengthUnit unit) {
		Drill nearest = null;
		for (Drill drill : drills(unit)) {
			boolean allowed = drill.diameter() >= smallest - 1e-9 && drill.diameter() <= largest + 1e-9;
			if (allowed && (nearest == null || Math.abs(drill.diameter() - diameter) < Math.abs(nearest.diameter() - diameter))) {
				nearest = drill;
			}
		}
		return Optional.ofNullable(nearest);
	}

	/** Sizes in hundredths of a millimetre. */
	private static void steps(Map<Double, Drill> made, int from, int to, int step) {
		for (int size = from; size <= to; size += step) {
			double diameter = size / 100.0;
			if (!made.containsKey(diameter)) {
				made.put(diameter, new Drill(name(size), diameter, LengthUnit.MM));
			}
		}
	}

	private static String name(int hundredths) {
		int behind = hundredths % 100;
		return hundredths / 100 + (behind == 0 ? "" : behind % 10 == 0 ? "." + behind / 10 : behind < 10 ? ".0" + behind : "." + behind);
	}
}
