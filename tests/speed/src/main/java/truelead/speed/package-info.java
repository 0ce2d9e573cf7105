/**
 * Measures how long checks and starts of the command take; run by hand, never by the tests.
 *
 * <p>Of the hover 400 ms are the platform's rest time on GTK and 30 the benchmark's own second move. The document of a file is our
 * {@code ProgramDocument}, because the platform's makes its index of lines anew at the first key, 200 ms at a million blocks.
 *
 * <p>Plain text is fast because {@code BlockCursor} goes through a chunk without objects and {@code Contours} follows plain moves, and flat
 * arcs that {@code FlatArcs} tells by the text, in one step; both are held to the slow way by {@code QuickReaderTest}, {@code ContoursTest}
 * and {@code ContoursInWorkTest}. What posts write beside plain words is part of that: rotary axes, {@code CR=}, {@code TURN=},
 * {@code A3=}, an equals sign, a star at the end of the block. A form that {@code QuickReader} leaves to the grammar, and that is another
 * line each time, costs three readings of four microseconds a block, fifteen times what the lexer alone takes: before one is called rare,
 * count it in real programs. A row of holes is as cheap: {@code PlaceRun} finds it in the text, {@code HoleGrid} and {@code CutChains}
 * keep holes and cuts as plain numbers, and {@code Hole}, {@code Cut} and {@code TapStroke} are made when somebody asks for one. What goes
 * through a list of them ({@code Work.holes}, {@code Strokes}) makes every object anew, and none is the same twice.
 *
 * <p>What makes steps of its own (helices that are written another way each time, blocks with words of a cycle, increments) costs about a
 * microsecond a block, most of it in reading, work and rules; moves and arcs that {@code PlainMotions} makes straight from the text, as all
 * straight ones of a lathe, whose shapes are needed one by one, cost a third of that.
 *
 * <p>No faster were: reading digits eight at a time, the text as bytes, the place in {@code QuickReader} as a variable in place of a field
 * (the loops over digits are predicted well, and what is compiled together changes more than any of these gains); all rules over one
 * operation before the next one; comparing operations, so that a rule that finds nothing in one is not asked of those that are alike (two
 * per cent of mixed: to compare two takes as long as the rules that it saves, since both wait for memory). A program of many tools with few
 * holes each, such as mixed, has no hot place: what pays there is to make fewer objects, some 50 MB a check of 1.8 MB of text. On the way
 * of every operation stands a loop in place of a stream, no list, set or message is made before something is found, and what is the same
 * for all of them is made once. So lines that are written again are one {@code Block} on one way through the program ({@code KnownBlocks}),
 * what every rule asks of a helix or of a hole before a step is worked out for the first that asks ({@code MillPass.derived},
 * {@code HelixMeasures}, {@code Hole.before}), the limits of a handful of threads by turns are known by the very object ({@code Lately}),
 * and what was recorded kind by kind is merged in the order of execution without an object each ({@code Sorting.Kind}).
 *
 * <p>The facts of the chunks are read on all cores: on two that spares a third of a check of surfacing, a tenth of mixed. To ask the rules
 * on all of them too was tried and is not done: on two cores all rules of mixed took 10 ms in place of 12.5, whatever shared the work and
 * without a lock on the way, since two works judged at once by two threads take 1.6 times as long as one. They wait for memory and not for
 * each other, so more cores would not help as much as there are more of them.
 */
package truelead.speed;
