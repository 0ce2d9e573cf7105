/**
 * A tool of the build: makes the command start fast.
 */
package truelead.quickstart;
