package truelead.checker.job;

import truelead.checker.program.Location;

/**
 * A comment of a program.
 *
 * @param at   where its text stands, marks left out
 * @param text its text without the marks
 */
public record ProgramComment(Location at, String text) {
}
