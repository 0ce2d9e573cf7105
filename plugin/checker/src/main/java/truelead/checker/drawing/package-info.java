/**
 * Drawings as SVG text: a threaded hole in section, a pattern in plan, a helix, a feed that does not fit the pitch. Pure text made from
 * numbers; each drawing carries the same in words. Lines and shapes tell everything, colour only repeats it, so that they print in black.
 */
package truelead.checker.drawing;
