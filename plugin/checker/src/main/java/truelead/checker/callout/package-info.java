/**
 * Threads, tools and holders as comments name them, in words of the trade and of several languages.
 *
 * <p>{@link truelead.checker.callout.CalloutReader} and {@link truelead.checker.callout.ToolListLine} read a comment by a grammar of its
 * own; the words stand in a table among the resources. Any text may come, and what is not understood says nothing.
 *
 * <p>A comment becomes {@code Part}s in a row ({@code PartRow}): {@code CalloutTokens} gives the words of {@code words.csv} their types,
 * {@code CommentPhrases} hands {@code Callout.g4} the longest run of tokens that is one piece (parsing a whole comment at once took a
 * hundred times as long), {@code MetricReading} and {@code InchReading} make threads of pieces. {@code ToolWords} tells which tools are
 * named, {@code CalloutJudge} which threads are asked for, {@code CalledThread} what is said of each apart from its size, {@code Elsewhere}
 * what is made in another setting or not at all (TAP BY HAND). What is said at a stop is read by words of its own: {@code HandChange} (a
 * tool put in by hand, which begins a stay of its own), {@code PartTurned} (what comes behind is done to another side or part;
 * {@code work.AnotherPart}).
 * <ul>
 * <li>A new word in any language is one entry in {@code words.csv}, and in {@code depth-words.csv} where a depth's number stands behind it,
 *     or a point ends it.
 * <li>A new way of writing a thread is a line in {@code Callout.g4} and a spelling in {@code CalloutPropertyTest}, which reads every thread
 *     of the tables back in every spelling.
 * <li>What shops write goes into {@code callouts.txt} of the tests, a line each, with what it means; whole comments into
 *     {@code comments.txt}.
 * <li>What only looks like a thread goes into {@code CalloutReaderTest} before the judge is changed: a thread seen where there is none
 *     costs more than one missed.
 * </ul>
 */
package truelead.checker.callout;
