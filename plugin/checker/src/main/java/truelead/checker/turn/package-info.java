/**
 * What tools of a lathe do beside the axis: bores, threads by a single point, the outside with its shoulders.
 *
 * <p>{@link truelead.checker.turn.LatheMotions} is shown the motions while a program runs, and tells in the end the
 * {@link truelead.checker.turn.SinglePoint}s with what each is cut in or on, the {@link truelead.checker.turn.BorePass}es and where parts
 * are cut off ({@link truelead.checker.turn.Parting}).
 */
package truelead.checker.turn;
