package truelead.checker.machine;

/** Is told where a program can be followed anew from: before each tool change, and within a long stay of a tool. */
public interface Restarts {

	/** Nobody wants to know. */
	Restarts UNWATCHED = new Restarts() {

		@Override
		public boolean watched() {
			return false;
		}

		@Override
		public boolean before(Restart here) {
			return false;
		}

		@Override
		public boolean resting() {
			return false;
		}

		@Override
		public boolean rests(Restart here) {
			return false;
		}

		@Override
		public void winds() {
			// It may.
		}
	};

	/** Whether anybody wants to know. */
	default boolean watched() {
		return true;
	}

	/** A block is about to change the tool; true ends the run before it. */
	boolean before(Restart here);

	/** Whether whoever takes the steps has nothing under way either, so that they may begin anew here. */
	boolean resting();

	/** A tool's stay may be followed again from this block on, one of the first of a chunk; true ends the run before it. */
	boolean rests(Restart here);

	/** The program does not go straight on from its first block to its last: it jumps, calls, or sets variables. */
	void winds();
}
