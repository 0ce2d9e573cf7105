package truelead.faults;

/** The thread series of the bench's table. */
enum Series {
	METRIC_COARSE, METRIC_FINE, UNC, UNF, NPT, G;

	boolean metric() {
		return this == METRIC_COARSE || this == METRIC_FINE;
	}

	boolean unified() {
		return this == UNC || this == UNF;
	}

	boolean coarse() {
		return this == METRIC_COARSE || this == UNC;
	}

	/** True for the sizes that are drilled with inch drills. */
	boolean inchDrills() {
		return unified() || this == NPT;
	}
}
