package truelead.checker.job;

/** How a tap is held. */
public enum HolderKind {
	/** Collet or chuck: no travel, any feed error goes into the thread. */
	RIGID,
	/** Minimal length compensation for synchronised tapping, a few tenths. */
	SYNCHRO,
	/** Tension and compression, millimetres of travel. */
	FLOATING,
	/** A self-reversing tapping head: fed in and out, reverses by itself. */
	SELF_REVERSING
}
