package truelead.checker.rule;

import truelead.checker.machine.Location;

/** Another place that matters to a finding, and what it is: {@code the drill block}, {@code the callout}. */
public record Related(Location at, String what) {
}
