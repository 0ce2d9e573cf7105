package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import truelead.checker.thread.ThreadSpec;

/**
 * A thread as far as its own characters tell, before the words around it are judged.
 *
 * @param spec     the thread
 * @param assumed  what was not written
 * @param extent   a length written behind it: M8X1.25X20
 * @param bare     only a size was written, the pitch was assumed
 * @param named    the system or a class was written, so that it can be nothing else
 * @param standard it is in a series of everyday use
 * @param guessed  the system was guessed from the numbers, so that only a word of threads beside it makes it one
 * @param count    the number of holes written before it
 */
record ThreadDraft(ThreadSpec spec, List<String> assumed, Optional<Dimension> extent, boolean bare, boolean named, boolean standard,
		boolean guessed, OptionalInt count) {
}
