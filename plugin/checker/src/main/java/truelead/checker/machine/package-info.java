/**
 * The machine room: what a control does with a program.
 *
 * <p>A {@link truelead.checker.profile.MachineProfile} says what differs from machine to machine, code by code. Nothing here knows of
 * holes, threads or rules.
 *
 * <p>Invariants: a number that is not known is NaN, carries why, and never becomes 0; following a program never throws and ends within its
 * budget; the same program on the same profile gives the same steps; lengths are mm and angles radians but for rotary axes, which are
 * degrees as programmed; no branch in code names a dialect, the profile does.
 *
 * <p>{@code Interpreter} runs a program as the machine would and hands {@code Step}s to whoever listens. {@code Flow} goes from block to
 * block (jumps, loops, calls; {@code BlockParts} has what is more than words), {@code BlockExecutor} does what the words of one block say,
 * {@code CannedCycles} keeps the cycle in force and {@code CycleLevels} its levels, {@code MachineState} and {@code Place} hold all else
 * that is in force; {@code Modal}, the immutable copy of it, is shared by all steps until something changes.
 *
 * <p>Long programs are followed in few steps:
 * <ul>
 * <li>{@code Contours} goes over long runs of plain moves and flat arcs in one step: feeds, retracts and plunges that do not come back out
 *     included. Lines that may be a helix in chords ({@code ChordLines}, a rough look at the text) are left out, with what leads to them.
 * <li>{@code Rows} goes over a canned cycle at many places: blocks in a row that say nothing but X and Y are one {@code Step.Row}, which
 *     makes the stroke at a place when it is asked for.
 * <li>{@code Refrains} goes over blocks that come again and again but for the place ({@code RefrainFinder} tells them from the text), as
 *     those of a helix at hole after hole: two turns and the last one are followed block by block, all between are one {@code Step.Again},
 *     whose {@code Copies} make a turn's steps by running its blocks once more, so that they are the same to the last bit. A sink that does
 *     not ask for it ({@code StepSink.takesCopies}) gets each step.
 * </ul>
 *
 * <p>What is left of plain motions {@code PlainMotions} makes straight from the text. {@code ContoursTest} holds all of these to what the
 * words of each block do by themselves.
 *
 * <p>Branches and loops with statements of their own ({@code IF}, {@code FOR}, ... of richer languages) are paired by {@code Structures},
 * followed by {@code Controls}. One whose condition is not known becomes a doubt ({@code Doubts}): it is passed once, neither the program
 * nor a call ends in it, threads in it are not-followed, and what it has changed (place, feed, speed, tool, variables) is unknown behind
 * it.
 *
 * <p>A program's text is made of chunks of about two thousand lines that an edit elsewhere leaves alone. What follows from a chunk's text
 * by itself ({@code ChunkFacts}: where its contours and its rows of places are, which lines have comments) is kept with the chunk, so a
 * check after an edit reads one chunk and executes only what is no plain contour.
 */
package truelead.checker.machine;
