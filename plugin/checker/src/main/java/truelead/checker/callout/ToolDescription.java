package truelead.checker.callout;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import truelead.checker.thread.Hand;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/**
 * A tool as a comment describes it.
 *
 * @param kind       what it is
 * @param styles     what is said of a tap's flutes and lead
 * @param hand       the hand, where it is said
 * @param diameter   the diameter, where it is said; for a tap mostly empty, the callout says it
 * @param pointAngle the included angle of the point, radians, where it is said
 * @param pitch      the pitch of a tap, where it is said by itself: {@code D=12. PITCH=1.75}
 * @param forThread  the thread that the tool prepares for: {@code DRILL FOR M8 TAP}
 * @param start      first character of the word that names it
 * @param end        the character after that word
 */
public record ToolDescription(ToolKind kind, Set<TapStyle> styles, Optional<Hand> hand, Optional<Dimension> diameter,
		OptionalDouble pointAngle, Optional<Dimension> pitch, Optional<ThreadSpec> forThread, int start, int end) {
}
