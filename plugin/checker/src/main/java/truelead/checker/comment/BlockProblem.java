package truelead.checker.comment;

import truelead.checker.program.Location;

/**
 * A part of a block that the grammar could not read.
 *
 * @param at      where
 * @param message what was expected, as the grammar says it
 * @param matters whether the program makes threads or has a code that would; information only where it has none
 */
public record BlockProblem(Location at, String message, boolean matters) {
}
