package truelead.checker.rule;

import truelead.checker.program.Location;

/** A replacement of the text at a place; an empty range inserts. {@code text} may hold line ends for inserted blocks. */
public record Edit(Location at, String text) {
}
