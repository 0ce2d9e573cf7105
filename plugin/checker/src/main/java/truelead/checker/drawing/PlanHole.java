package truelead.checker.drawing;

/**
 * A hole in a plan.
 *
 * @param label    its number or name in the lists beside the plan
 * @param x        position along the plane's first axis, mm
 * @param y        position along the plane's second axis, mm
 * @param diameter mm, NaN where not known
 * @param state    how it stands
 */
public record PlanHole(String label, double x, double y, double diameter, State state) {

	/** How a hole stands at the end of the program. */
	public enum State {
		THREADED("threaded"), FINDING("threaded, with a finding"), NO_HOLE("threaded, no hole made here"), DRILLED("hole, not threaded");

		private final String words;

		State(String words) {
			this.words = words;
		}

		/** In words, for legends and lists. */
		public String words() {
			return words;
		}
	}
}
