/**
 * What standards and common practice say of threads: sizes, limits, drills for cutting and forming, leads of taps.
 *
 * <p>Tables among the resources are the truth, each with its source; formulas serve sizes that stand in no table, and are checked against the tables.
 */
package truelead.checker.thread;
