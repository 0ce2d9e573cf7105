/**
 * A program as text, and its blocks as trees.
 *
 * <p>{@link truelead.grammar.ProgramText} holds any bytes as lines in {@link truelead.grammar.Chunk}s that an edit elsewhere leaves alone; {@link
 * truelead.grammar.Block} is a line as read, by hand where it is plain and by the ANTLR grammar otherwise. Reading never fails: what cannot be read is a
 * {@link truelead.grammar.Problem} with its exact range. This is the one place that reads program text.
 */
package truelead.grammar;
