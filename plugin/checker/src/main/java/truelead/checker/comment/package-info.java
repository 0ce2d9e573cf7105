/**
 * What stands in a program besides motion: comments that may speak of threads and tools, our notes among them, parts that could not be
 * read, program starts.
 *
 * <p>{@link truelead.checker.comment.Commentary} reads the comments of a program and of the files it calls;
 * {@link truelead.checker.comment.ChangedLines} tells whether two texts of a program differ in nothing but motions. To whom a comment
 * belongs is told in {@code work}.
 */
package truelead.checker.comment;
