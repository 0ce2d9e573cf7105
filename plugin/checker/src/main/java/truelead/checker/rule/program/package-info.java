/** Rules on the program as text and as motions: what cannot be read or followed, unit, plane, arcs, notes. */
package truelead.checker.rule.program;
