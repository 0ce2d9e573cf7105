/**
 * A program as text, and its blocks as trees.
 *
 * <p>{@link truelead.grammar.ProgramText} holds any bytes as lines in {@link truelead.grammar.Chunk}s that an edit elsewhere leaves alone;
 * {@link truelead.grammar.Block} is a line as read, by hand where it is plain and by the ANTLR grammar otherwise. Reading never fails: what
 * cannot be read is a {@link truelead.grammar.Problem} with its exact range. This is the one place that reads program text.
 *
 * <p>{@code BlockReader} asks two readers. {@code QuickReader}, by hand, takes plain blocks: words with plain numbers, closed comments, a
 * remark, block delete at the start, percent lines. All else goes through {@code GCode.g4}, one line at a time. A property test holds the
 * quick reader to the grammar on every block it takes; whoever widens it widens {@code QuickReaderTest} too. Whoever goes through a whole
 * program ({@code BlockCursor}) asks a third one first, {@code MotionWords}, for blocks that are nothing but a motion, most of them as a
 * rule; {@code MotionWordsTest} holds that one.
 *
 * <p>The grammar cannot fail: any token can begin a part, closing marks are optional, and {@code Gaps} puts a token MISSING where a value
 * is left out. Never let an expression be empty instead: ANTLR's look-ahead then grows without bound on lines of signs. What is written
 * without spaces and what a parenthesis means is decided in the lexer's members ({@code GluedName}, {@code Parentheses}).
 *
 * <p>{@code PartReader} turns the parse tree into {@code Part}s. {@code BlockBuilder} decides what those are that do not stand as they are:
 * with a name of two letters or more about them a statement of a richer language or prose, and opaque; without one damage, and a problem
 * with its exact place. {@code Damage} tries a text with look-alikes put right (O for 0, l for 1, $ for S), and keeps it if every changed
 * token becomes words with plain numbers. Behind a cap (constants of {@code BlockReader}, README) stands one opaque element and one problem
 * that says so.
 *
 * <p>Statements of richer languages that steer a program are read by {@code StatementReader} as a {@code Part.Leading}: they count only
 * where they have their block to themselves, elsewhere their first word is prose.
 *
 * <p>A new form needs: a line in {@code WordsTest} or {@code ValuesTest}, one in a sample under {@code src/test/resources/samples}, and, if
 * it may be mistyped, one in {@code DamagedBlocksTest}.
 */
package truelead.grammar;
