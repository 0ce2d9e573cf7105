/**
 * Rules on thread milling: lead, size, hand and depth of the helix, the cutter against thread and hole, the ways in and out, and cutter
 * radius compensation. Numbers of one pass are worked out in {@link truelead.checker.rule.milling.HelixForm}.
 */
package truelead.checker.rule.milling;
