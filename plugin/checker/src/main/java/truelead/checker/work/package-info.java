/**
 * What a program does to the part: threading operations and their holes.
 *
 * <p>{@link truelead.checker.work.WorkReader} runs the machine with a {@code Recorder} that keeps cycles, runs along an axis and runs of arcs,
 * and nothing of a plain contour. Afterwards {@code Sorting} tells holes from threads, and {@code Operations} puts them together with what is wanted
 * at them. {@link truelead.checker.work.EditedWork} does as little of it again as an edit asks for. Rules see {@link truelead.checker.work.Work} alone and
 * never the program's text.
 */
package truelead.checker.work;
