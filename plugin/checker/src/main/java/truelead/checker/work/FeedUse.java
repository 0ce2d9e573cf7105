package truelead.checker.work;

import java.util.Optional;
import truelead.checker.machine.BlockRef;
import truelead.checker.machine.FeedMode;
import truelead.checker.machine.LengthUnit;
import truelead.checker.machine.Setting;
import truelead.checker.machine.WordRef;

/**
 * The feeds one tool used under one feed mode word, threading strokes left out.
 *
 * @param mode     how F was read
 * @param modeWord the word that set the mode; empty for the default
 * @param unit     unit in force
 * @param smallest smallest F met, with its word
 * @param largest  largest F met, with its word
 * @param first    the first block that fed so
 */
public record FeedUse(FeedMode mode, Optional<WordRef> modeWord, LengthUnit unit, Setting smallest, Setting largest, BlockRef first) {
}
