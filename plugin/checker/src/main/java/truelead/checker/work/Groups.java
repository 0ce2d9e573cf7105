package truelead.checker.work;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.RandomAccess;

/** Which operations one callout covers, by their numbers: of thousands that each is asked of none is copied. */
final class Groups {

	private final Map<Integer, List<Integer>> numbers = new HashMap<>();

	/** Those of all operations of a program. */
	Groups(List<ThreadingOperation> operations) {
		for (ThreadingOperation operation : operations) {
			numbers.computeIfAbsent(operation.group(), group -> new ArrayList<>(1)).add(operation.index());
		}
	}

	/** The operations of the group of one, itself among them, in order. */
	List<ThreadingOperation> of(ThreadingOperation operation, List<ThreadingOperation> all) {
		return new Members(numbers.getOrDefault(operation.group(), List.of()), all);
	}

	/** Whether an operation is the first of its group. */
	boolean first(ThreadingOperation operation) {
		return numbers.get(operation.group()).get(0) == operation.index();
	}

	/** Some operations, looked up when they are asked for. */
	private static final class Members extends AbstractList<ThreadingOperation> implements RandomAccess {

		private final List<Integer> numbers;
		private final List<ThreadingOperation> all;

		Members(List<Integer> numbers, List<ThreadingOperation> all) {
			this.numbers = numbers;
			this.all = all;
		}

		@Override
		public ThreadingOperation get(int index) {
			return all.get(numbers.get(index));
		}

		@Override
		public int size() {
			return numbers.size();
		}
	}
}
