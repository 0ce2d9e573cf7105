package truelead.checker.work;

import truelead.checker.machine.Location;

/**
 * A part of a block that the grammar could not read.
 *
 * @param at      where
 * @param message what was expected, as the grammar says it
 * @param matters whether the program makes threads at all; information only where it makes none
 */
public record BlockProblem(Location at, String message, boolean matters) {
}
