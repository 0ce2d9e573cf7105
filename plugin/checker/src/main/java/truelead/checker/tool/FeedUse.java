package truelead.checker.tool;

import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

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
