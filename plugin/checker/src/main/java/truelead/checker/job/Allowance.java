package truelead.checker.job;

import truelead.checker.program.Location;

/**
 * A note {@code (ALLOW: rule, reason)}: a finding accepted in the operation it belongs to.
 *
 * @param rule   name of the rule, in lower case
 * @param reason why; empty where none is given, which is a finding itself
 * @param at     the note
 */
public record Allowance(String rule, String reason, Location at) {
}
