package truelead.checker.drawing;

/**
 * A drawing and what it shows in words.
 *
 * @param svg  one {@code svg} element with title and description inside
 * @param text the same in sentences, for those who cannot see it
 */
public record Drawing(String svg, String text) {
}
