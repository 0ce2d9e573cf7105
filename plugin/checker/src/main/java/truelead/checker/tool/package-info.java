/**
 * One stay of a tool in the spindle after another: {@link truelead.checker.tool.ToolUse} is what is known of one,
 * {@link truelead.checker.tool.ToolLog} gathers it while the program runs; {@link truelead.checker.tool.Stays} tells where in the text each
 * is, {@link truelead.checker.tool.ToolBook} what notes, comments and lists say of its tool; {@link truelead.checker.tool.Compensations}
 * are the changes of cutter radius compensation.
 */
package truelead.checker.tool;
