package truelead.checker.work;

import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Reason;
import truelead.checker.program.WordRef;

/**
 * A part of a threading operation that could not be evaluated.
 *
 * @param block the block
 * @param word  the word without a value, where there is one
 * @param why   one sentence: what is not known and why
 * @param ofCaller whether it stands in a subprogram by itself, to whose caller it is known
 */
public record NotEvaluated(BlockRef block, Optional<WordRef> word, Reason why, boolean ofCaller) {
}
