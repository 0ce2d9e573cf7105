/**
 * A thread or a threading operation in a line or a few, for the end of a block or a hover.
 */
package truelead.checker.summary;
