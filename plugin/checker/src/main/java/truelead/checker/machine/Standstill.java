package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Tells whether a program has come back to a state it was in before, by Brent's method: one state is kept and compared with each new one,
 * and replaced after one, two, four, eight ... of them, so that a loop of any length is found within some three of its passes.
 */
final class Standstill {

	private List<Object> kept = List.of();
	private int keptPrint;
	private long count = 1;
	private long most = 1;

	/**
	 * Whether the state is the one kept. {@code print} tells most states apart; only where it is equal are the parts compared, all of them.
	 */
	boolean again(int print, List<Supplier<Object>> state) {
		if (print == keptPrint && equal(state)) {
			return true;
		}
		if (--count == 0) {
			most *= 2;
			count = most;
			keptPrint = print;
			kept = new ArrayList<>();
			state.forEach(part -> kept.add(part.get()));
		}
		return false;
	}

	private boolean equal(List<Supplier<Object>> state) {
		boolean equal = kept.size() == state.size();
		for (int i = 0; equal && i < kept.size(); i++) {
			equal = kept.get(i).equals(state.get(i).get());
		}
		return equal;
	}

	/** Whether the state kept is the last one. */
	boolean fresh() {
		return count == most;
	}
}
