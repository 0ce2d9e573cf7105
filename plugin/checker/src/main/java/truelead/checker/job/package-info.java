/**
 * What is known of a job besides motion: our notes in comments (Note.g4), tool names, the tool list file, stock and holder of the project.
 * Every fact carries who says so and where, see {@link truelead.checker.job.Fact}.
 */
package truelead.checker.job;
