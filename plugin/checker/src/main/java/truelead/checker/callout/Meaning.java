package truelead.checker.callout;

/** What a word of the trade means, whatever the language; the names are those in words.csv, and some are tokens of Callout.g4. */
enum Meaning {
	TAP, TAPPED, THREAD, FORM_TAP, THREAD_MILL, DIE, DIE_HEAD, FORM, CUT, SPIRAL, SPIRAL_POINT, SPIRAL_FLUTE, POINT, FLUTE, STRAIGHT,
			BOTTOMING, PLUG,
	TAPER, MODIFIED, DRILL, TAP_DRILL, FLAT_DRILL, CENTRE, CENTRE_DRILL, SPOT, REAM, BORE, CHAMFER, COUNTERBORE, POCKET, UNDERCUT, MILL,
			FOR, HOLE, PLACES, THROUGH, BLIND,
	WALL, PLATE, DEPTH, LEFT, RIGHT, HAND, DIA, MM, INCH, DEG, TPI, P, NO, LETTER_WORD, SCREW, TORQUE, CLEARANCE, WIRE_INSERT, INSERT, DATE,
			OTHER_THREAD, STARTS, FINE, CUTTER, SERIES, SERIES_LETTER, M,
	MJ, TR, RD, TIMES, TIMES_PH, PH, D, MAKE, FLOATING, SYNCHRO, REVERSING, SELF, TENSION, COMPRESSION, TENSION_COMPRESSION, HOLDER, TOOL,
			MATERIAL, STOCK, APART, SUPPLY, RATE, VERB, ELSEWHERE, OTHER_SIDE, BOTH_ENDS, NOT, SILENT, PROBE;

	/** The word speaks of the thread itself or the tool that makes it. */
	boolean threading() {
		return this == TAP || this == TAPPED || this == THREAD || this == FORM_TAP || this == THREAD_MILL || this == DIE
				|| this == DIE_HEAD;
	}

	/** The word is a drill for the full diameter. */
	boolean drills() {
		return this == DRILL || this == TAP_DRILL || this == FLAT_DRILL;
	}
}
