/**
 * Strokes of taps: in and out at a hole, or at thousands of them in a row.
 *
 * <p>A {@link truelead.checker.stroke.Stroke} is one, or the first of a row, before its hole is known;
 * {@link truelead.checker.stroke.StrokeRow} has the holes of a row. {@link truelead.checker.stroke.Strokes} is the list of an operation's,
 * which tells those that differ in place and time alone, so that rules judge a few; each {@link truelead.checker.stroke.TapStroke} is made
 * when somebody asks for it.
 */
package truelead.checker.stroke;
