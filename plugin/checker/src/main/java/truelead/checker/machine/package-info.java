/**
 * The machine room: what a control does with a program.
 *
 * <p>{@link truelead.checker.machine.Interpreter} goes through the blocks in the order in which the machine executes them and hands out
 * {@link truelead.checker.machine.Step}s; a {@link truelead.checker.profile.MachineProfile} says what differs from machine to machine, code by
 * code. Nothing here knows of holes, threads or rules.
 *
 * <p>Invariants: a number that is not known is NaN, carries why, and never becomes 0; following a program never throws and ends within its
 * budget; the same program on the same profile gives the same steps; lengths are mm and angles radians but for rotary axes, which are degrees
 * as programmed; no branch in code names a dialect, the profile does.
 */
package truelead.checker.machine;
