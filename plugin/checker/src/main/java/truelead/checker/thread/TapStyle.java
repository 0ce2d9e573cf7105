package truelead.checker.thread;

/** What a comment says of the tap's flutes and lead. */
public enum TapStyle {
	/** Drills its hole and taps it in one go: how long its drill is, nobody says. */
	WITH_DRILL,
	/** Chips go ahead of the tap: through holes. */
	SPIRAL_POINT,
	/** Chips come back along the flutes: blind holes. */
	SPIRAL_FLUTE, STRAIGHT_FLUTE,
	/** The names of leads in ASME B94.9. */
	TAPER_LEAD, PLUG_LEAD, MODIFIED_BOTTOMING_LEAD, BOTTOMING_LEAD
}
