package truelead.checker.job;

import java.util.Map;
import java.util.OptionalDouble;
import truelead.checker.thread.ThreadSpec;

/**
 * What a tap takes to turn: M = kc P² D / 8000 in N m with kc in N/mm², P and D in mm, cutting; 2.5 times as much forming (formula and kc
 * from memory; wear, coolant and the hole's size change it by half and more).
 */
public final class TapTorque {

	/** Specific cutting force, N/mm², from memory. */
	private static final Map<StockGroup, Integer> FORCE = Map.ofEntries(Map.entry(StockGroup.STEEL, 2100),
			Map.entry(StockGroup.STAINLESS, 2600),
			Map.entry(StockGroup.CAST_IRON, 1600), Map.entry(StockGroup.ALUMINIUM, 800), Map.entry(StockGroup.BRASS, 900),
			Map.entry(StockGroup.BRONZE, 1000),
			Map.entry(StockGroup.COPPER, 1100), Map.entry(StockGroup.TITANIUM, 2000), Map.entry(StockGroup.NICKEL_ALLOY, 3000),
			Map.entry(StockGroup.MAGNESIUM, 500), Map.entry(StockGroup.ZINC, 700));

	/** Torque of forming against cutting (common practice: two to three times). */
	public static final double FORMING = 2.5;

	private TapTorque() {
	}

	/** Torque in N m; M8x1.25 cut in steel: 2100 x 1.25² x 8 / 8000 = 3.3. Empty for a stock whose cutting force is not known. */
	public static OptionalDouble of(StockGroup stock, ThreadSpec thread, boolean forms) {
		OptionalDouble force = force(stock);
		return force.isEmpty() ? force : OptionalDouble.of(cutting(force.getAsDouble(), thread.pitch(), thread.diameter()) * (forms
				? FORMING : 1));
	}

	/** Specific cutting force kc of a stock, N/mm², from memory; empty where it is not known. */
	public static OptionalDouble force(StockGroup stock) {
		Integer force = FORCE.get(stock);
		return force == null ? OptionalDouble.empty() : OptionalDouble.of(force);
	}

	/** Torque of cutting in N m from kc in N/mm², pitch and diameter in mm. */
	public static double cutting(double force, double pitch, double diameter) {
		return force * pitch * pitch * diameter / 8000;
	}
}
