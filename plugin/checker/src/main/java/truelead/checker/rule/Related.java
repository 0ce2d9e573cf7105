package truelead.checker.rule;

/** Another place that matters to a finding, and what it is: {@code the drill block}, {@code the callout}. */
public record Related(Location at, String what) {
}
