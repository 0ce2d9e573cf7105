/**
 * What a program does to the part: holes and what made them, tapping and thread milling, and what is wanted there.
 *
 * <p>{@link truelead.checker.work.WorkReader} runs the machine with a {@code Recorder} that keeps cycles, runs along an axis and runs of arcs,
 * and nothing of a plain contour. Afterwards {@code Commentary} reads the comments, {@code ToolBook} and {@code WantedReader} tell to whom they
 * belong, {@code Sorting} tells holes from threads, and {@code Operations} puts everything together. Rules see {@link truelead.checker.work.Work}
 * alone and never the program's text.
 */
package truelead.checker.work;
