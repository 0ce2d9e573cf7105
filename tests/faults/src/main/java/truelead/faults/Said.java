package truelead.faults;

import java.util.List;

/**
 * What the checker said of a program: the rule, its level (error, warning, note), the line from 1, the message, and the changes that it
 * offers.
 */
record Said(String rule, String level, int line, String message, List<Repair> repairs) {

	Said {
		repairs = List.copyOf(repairs);
	}

	/** True for errors and warnings. */
	boolean loud() {
		return !level.equals("note") && !level.equals("none");
	}
}
