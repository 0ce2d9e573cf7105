package truelead.checker.work;

import java.util.Optional;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Reason;
import truelead.checker.program.WordRef;

/**
 * Something the machine room could not follow.
 *
 * @param order number of the step in the order of execution
 * @param why   one sentence for the programmer
 * @param stops whether nothing behind it was executed
 * @param bearing what depends on it
 * @param call  whether it calls a program that is not here, or may
 */
public record NotFollowed(int order, BlockRef block, Optional<WordRef> word, Reason why, boolean stops, Bearing bearing, boolean call) {

	/** What may depend on something that is not followed. */
	public enum Bearing {
		/** A thread: a threading operation uses what it left unknown or may stand behind it. */
		THREAD,
		/** What a subprogram does with what its caller gives it, which is followed where that caller is. */
		CALLER,
		/** Threads of a program that is not here, of which nothing here speaks. */
		ELSEWHERE,
		/** No thread. */
		NONE
	}
}
