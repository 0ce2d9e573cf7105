/**
 * What a program does to the part: tapping and thread milling at holes, and what is wanted there.
 *
 * <p>{@link truelead.checker.work.WorkReader} runs the machine with a {@code Recorder} that keeps cycles, runs along an axis and runs of arcs,
 * and nothing of a plain contour. Afterwards {@code ToolBook} and {@code WantedReader} tell to whom the comments belong, {@code Sorting} tells holes
 * from threads, and {@code Operations} puts everything together. Rules see {@link truelead.checker.work.Work} alone and never the program's text.
 */
package truelead.checker.work;
