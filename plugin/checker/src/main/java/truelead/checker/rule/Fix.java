package truelead.checker.rule;

import java.util.List;

/**
 * A change of the program that removes the finding.
 *
 * @param title what it does, with the numbers: {@code Change F500 to F520}
 * @param safe  whether it may be taken without reading the program again
 * @param why   why it is safe, or what to look at first
 */
public record Fix(String title, boolean safe, String why, List<Edit> edits) {
}
