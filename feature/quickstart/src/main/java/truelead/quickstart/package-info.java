/**
 * A tool of the build: makes the command start fast.
 *
 * <p>A cold start is classes, and little else:
 * <ul>
 * <li>strings are joined without invokedynamic ({@code -XDstringConcat=inline} in pom.xml);
 * <li>the build's tool {@code feature/quickstart} writes {@code truelead.jar} anew with one class for all lambdas of a class and an
 *     interface, and written-out methods for each record, which Java would otherwise make at every start. It does not reach the lambdas
 *     inside Java's own streams and {@code Comparator.comparing…}, each of which costs up to 2 ms at its first use: on the way that every
 *     check goes, a loop stands where a stream would, and {@code Double.compare} where a comparator would be made;
 * <li>{@code PlainCheck} goes round the reader of options; tables and profiles are read by hand and when first asked for;
 * <li>{@code Ahead} has a second core load words, tables and rules while the first reads the program;
 * <li>a grammar names no large set of Unicode ({@code Callout.g4} asks Java what is a letter), which ANTLR would put together anew each
 *     time;
 * <li>{@code feature/truelead} starts with an archive of all classes, Java's own among them, beside the jar, without the second compiler,
 *     and with a slower first one where only small files are named. Java takes an archive only for the same path of the jar as it was made
 *     with, and {@code java -jar} alone takes none: a jar cannot name one.
 * </ul>
 */
package truelead.quickstart;
