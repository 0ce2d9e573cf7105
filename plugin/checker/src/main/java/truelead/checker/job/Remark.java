package truelead.checker.job;

import truelead.checker.program.Location;

/** Something in a note or in the tool list file that could not be understood: where, and what was expected, in words for the programmer. */
public record Remark(Location at, String message) {
}
