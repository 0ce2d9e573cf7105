/**
 * Threads, tools and holders as comments name them, in words of the trade and of several languages.
 *
 * <p>{@link truelead.checker.callout.CalloutReader} and {@link truelead.checker.callout.ToolListLine} read a comment by a grammar of its own; the words stand
 * in a table among the resources. Any text may come, and what is not understood says nothing.
 */
package truelead.checker.callout;
