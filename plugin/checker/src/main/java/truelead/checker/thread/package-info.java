/**
 * What standards and common practice say of threads: sizes, limits, drills for cutting and forming, leads of taps.
 *
 * <p>Tables among the resources are the truth, each with its source; formulas serve sizes that stand in no table, and are checked against
 * the tables.
 *
 * <p>{@code ThreadTable} is the truth about threads and is read from the csv files beside it in the resources: a row each, with its source.
 * Published rows rule ({@code metric-published.csv}, {@code unified-published.csv}); a source that says "from memory" or "computed" is
 * carried to every output ({@code Origin}). Metric limits are the basic size rounded to 1 µm plus the tables of ISO 965-1; where these have
 * no line for a diameter and pitch, {@code MetricFormula} has the standard's formula and says so. Trapezoids and other forms are in
 * {@code OtherTable} (series) and {@code OtherLimits} (formulas, from memory). Limits of screws are {@code BoltTable}'s: metric pitch
 * diameters by the nuts' table, 1.32 times as wide, major diameters from memory with the formula beside, Unified by the formulas, G from
 * memory; no other system has them here. Unified limits are computed by {@code UnifiedFormula} where no published row is at hand; its
 * rounding in stages and the steps of diameter of the 9-pitch series were found from 247 published rows, and it misses three of them
 * ({@code UnifiedFormulaTest}). {@code tests/reference} asks the command itself for every published row; misprints are named there.
 */
package truelead.checker.thread;
