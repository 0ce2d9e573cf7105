package truelead.checker.job;

import truelead.checker.thread.HolderKind;

/**
 * A tap holder.
 *
 * @param travel free travel either way, mm, 0 for a rigid one
 */
public record Holder(HolderKind kind, double travel) {

	/** Rigid: what is assumed where nobody says. */
	public static final Holder RIGID = new Holder(HolderKind.RIGID, 0);

	/**
	 * Travel of a holder of that kind where no number is given: synchro 0.5 mm, floating and self-reversing 5 mm (common practice, no
	 * source).
	 */
	public static Holder usual(HolderKind kind) {
		return new Holder(kind, switch (kind) {
			case RIGID -> 0;
			case SYNCHRO -> 0.5;
			case FLOATING, SELF_REVERSING -> 5;
		});
	}

	/** Whether it takes a feed that is off the pitch on purpose. */
	public boolean floats() {
		return kind == HolderKind.FLOATING || kind == HolderKind.SELF_REVERSING;
	}
}
