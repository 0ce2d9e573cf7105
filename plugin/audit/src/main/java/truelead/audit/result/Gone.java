package truelead.audit.result;

import truelead.checker.rule.Severity;

/** A finding of the baseline that the program no longer has; {@code line} and {@code column} are of then, from 1. */
public record Gone(String rule, Severity severity, String message, int line, int column, String fingerprint) {
}
