/** Rules on tool, stock and method: the tap against hole and stock, what callouts and tool list name, counts, torque, coolant, checking. */
package truelead.checker.rule.method;
