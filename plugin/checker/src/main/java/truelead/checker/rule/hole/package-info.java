/** Rules on the holes that threads are made in: whether they are there, where, how wide and how deep. */
package truelead.checker.rule.hole;
