package truelead.checker.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.job.Stock;
import truelead.checker.job.StockGroup;
import truelead.checker.machine.LengthUnit;
import truelead.checker.machine.MachineProfile;
import truelead.checker.thread.ThreadSpec;

/**
 * What is to be made.
 *
 * @param thread  a parallel thread
 * @param stock   what it is cut from; empty where nobody says
 * @param depth   full thread wanted, mm; in a through hole the wall
 * @param bottom  the deepest point any tool may reach, mm below the surface; empty for no limit
 * @param through whether the hole goes through
 * @param count   holes, 1 to 10,000
 * @param profile the machine
 */
public record Request(ThreadSpec thread, Optional<Stock> stock, double depth, OptionalDouble bottom, boolean through, int count, MachineProfile profile) {

	/** Depth in diameters where nobody says one (common practice, no source). */
	private static final double USUAL_DEPTH = 1.5;

	/** The depth of full thread in mm that is taken where nobody says one: 1.5 diameters. */
	public static double usualDepth(ThreadSpec thread) {
		return USUAL_DEPTH * thread.diameter();
	}

	/** The group of the stock; OTHER where nobody says. */
	public StockGroup group() {
		return stock.map(Stock::group).orElse(StockGroup.OTHER);
	}

	/** Rockwell C; 0 where nobody says. */
	public double hardness() {
		return stock.map(s -> s.hardness().orElse(0)).orElse(0.0);
	}

	/** Depth in diameters. */
	public double diameters() {
		return depth / thread.diameter();
	}

	/** The unit of the program. */
	public LengthUnit unit() {
		return thread.unit();
	}
}
