/**
 * Motions that belong together, gathered from the steps while a program runs: {@link truelead.checker.run.AxisRun}s, in and out along one
 * axis at one place, and {@link truelead.checker.run.ArcRun}s, arcs about one centre, of which {@link truelead.checker.run.ArcCopies} are
 * many alike. Whether they are holes or threads is decided in {@code work}.
 */
package truelead.checker.run;
