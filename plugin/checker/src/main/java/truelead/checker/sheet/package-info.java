/**
 * The numbers of a threading operation and its holes, worked out once for reports, gauge sheets, comparisons and views, so that none of
 * them computes machining. Lengths in mm, depths counted from the top of the hole; NaN where a number is not known.
 */
package truelead.checker.sheet;
