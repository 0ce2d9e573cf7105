package truelead.checker.rule;

/**
 * What went wrong in a program, where it makes other numbers look wrong too. A finding tells of the slip it is sure of ({@link Rule#tells},
 * {@link Draft#tells}), and a rule keeps silent where a slip already explains what it would say ({@link Rule#silentWhere}): one cause, one
 * finding.
 */
public enum Slip {

	/** The tap is in a drilling cycle: there no feed, no spindle and no start is right. */
	DRILLING_CYCLE(Reach.OPERATION),
	/** The tool in the tapping cycle is none that makes a thread. */
	NO_TAP(Reach.OPERATION),
	/** A part of the block could not be read: what seems to be missing in the block stands there. */
	UNREAD_BLOCK(Reach.BLOCK),
	/** Another tool is called than the one whose offset it takes: what it is and does says nothing. */
	OTHER_TOOL(Reach.OPERATION),
	/** The cycle was left on, and the tool was never meant to go to this block's place. */
	LEFT_ON(Reach.BLOCK),
	/** A part of the program was not followed, and a hole may be threaded there. */
	PART_UNKNOWN(Reach.PROGRAM),

	/** The cycle works along another axis: there no depth and no place is right. */
	OTHER_AXIS(Reach.OPERATION),
	/** Arcs are read in another plane than they were written for: they make no helix. */
	OTHER_PLANE(Reach.PROGRAM),
	/** The unit word of the program is wrong, and no length is right. */
	UNIT_WORD(Reach.PROGRAM),
	/** One number is in the other unit: the factor explains feed or depth. */
	OTHER_UNIT(Reach.OPERATION),
	/** The levels of the cycle are not what the programmer took them for: the depth itself is misread, and holes repeat with it. */
	HEIGHTS_MISREAD(Reach.OPERATION),
	/** The wrong distance mode is in force, which spoils the places with the heights. */
	DISTANCE_MODE(Reach.OPERATION),

	/** F is missing, or another tool's, which cannot be judged as this tool's. */
	OTHER_TOOLS_FEED(Reach.OPERATION),
	/** The feed mode of another tool was left on: the mode was forgotten, not the value. */
	MODE_LEFT_ON(Reach.OPERATION),
	/** The feed is right in the other feed mode. */
	OTHER_FEED_MODE(Reach.OPERATION),
	/** The block that brings a tool to its first place with S and M3 was left out: it begins where the tool before it ended. */
	BLOCK_LEFT_OUT(Reach.OPERATION),
	/** The rigid-tap code with its speed was left out: the spindle stands, or turns as for the tool before. */
	RIGID_CODE_LEFT_OUT(Reach.OPERATION),
	/** The spindle does not turn: without a speed there is no pitch to judge. */
	NO_SPEED(Reach.OPERATION),
	/** Two speeds contradict each other before the feed does. */
	TWO_SPEEDS(Reach.OPERATION),
	/** Feed and speed do not make the pitch: where S is typed wrong, the feed says what was meant. */
	FEED_OFF(Reach.OPERATION),
	/** The tap is led in by a wrong feed and out by the right one. */
	FEED_IN_OFF(Reach.OPERATION),

	/** Feed and drill agree on another thread than the callout; the tool itself may be another than meant. */
	FEED_AND_DRILL(Reach.OPERATION),
	/** Helix and drill agree on another thread than the callout. */
	HELIX_AND_DRILL(Reach.OPERATION),
	/** The diameter of the path agrees with the drill on another thread than the callout. */
	PATH_AND_DRILL(Reach.OPERATION),
	/** The hole is another thread's: no drill for this one makes it. */
	OTHER_THREADS_HOLE(Reach.OPERATION),
	/** The sources differ, and say which threads they name. */
	SOURCES_DIFFER(Reach.OPERATION),
	/** The hole is drilled, only too late. */
	DRILLED_LATE(Reach.OPERATION),
	/** The hole is too shallow, and its depth is to be changed anyway. */
	HOLE_SHALLOW(Reach.OPERATION),
	/** The tap hits what is below the hole, which counts more than a deep thread. */
	HITS_BELOW(Reach.OPERATION),

	/** A thread missed its hole, which is left over then, and a circle about its centre meets the wall at an angle. */
	HOLE_MISSED(Reach.OPERATION),
	/** Steps from place to place add up wrong: off by little at first, and round a circle they come back. */
	STEPS_ADD_UP(Reach.BLOCK),
	/**
	 * A thread is beside its hole: the place was meant for the hole that is left over, and a circle about it is met and left at an angle.
	 */
	BESIDE_HOLE(Reach.OPERATION),
	/** A hole is left over, which makes up the count. */
	HOLE_LEFT_OVER(Reach.OPERATION),
	/** Another tap has cut another thread there: the place is wrong, and the hole is that thread's. */
	OTHER_THREAD_CUT(Reach.OPERATION),
	/** A position is left out of a subprogram or a count, and a later block repeats one. */
	POSITION_LEFT_OUT(Reach.OPERATION),
	/** A place is typed again in the stead of another. */
	PLACE_AGAIN(Reach.OPERATION),

	/** An arc does not close: it has no one centre and no one radius. */
	NO_CENTRE(Reach.OPERATION),
	/** The wrong radius takes the circle's centre off the hole with it. */
	CENTRE_WITH_RADIUS(Reach.OPERATION),
	/** The circle is another one, by more than a pitch: what it advances is no lead to judge. */
	OTHER_CIRCLE(Reach.BLOCK),
	/** The lead-in meets the wall at an angle: another arc was meant, and what this one climbs says nothing. */
	AT_AN_ANGLE(Reach.BLOCK),
	/** The path is turned round: it is left at an angle, has compensation on its other side, and ends at another level. */
	TURNED_ROUND(Reach.OPERATION),
	/** The arcs are turned round and go the short way, which keeps the lead. */
	SHORT_WAY_ROUND(Reach.OPERATION),
	/** A mirror explains the hand. */
	MIRROR(Reach.OPERATION),
	/** A helix has another lead; a lead-in keeps it, and so many turns of it reach another level. */
	HELIX_LEAD(Reach.OPERATION),
	/** A helix is uneven and has no one lead to judge. */
	NO_ONE_LEAD(Reach.OPERATION),
	/**
	 * One level is far off, as with its decimals lost: it takes the cutter where it does not belong, makes the helix long and turns it
	 * round.
	 */
	LEVEL_FAR_OFF(Reach.OPERATION),
	/** The bore for a thread ends in the middle of it: what is narrower below is its pilot hole, and no drill for the thread. */
	BORE_SHALLOW(Reach.OPERATION),
	/** A helix begins too deep, and so ends too deep. */
	BEGINS_DEEP(Reach.OPERATION),
	/** The path lies above the work and cuts nothing, whatever its circles are. */
	ABOVE_WORK(Reach.OPERATION),
	/** In increments a lead-out that is left out takes all that follows with it. */
	LEAD_OUT_MISSING(Reach.OPERATION),
	/** The cutter does not go into the hole: it has no way in or out. */
	CUTTER_TOO_BIG(Reach.OPERATION),
	/** The taper decides the size. */
	TAPER(Reach.OPERATION),
	/** Without compensation the contour is cut too big. */
	NO_COMPENSATION(Reach.OPERATION);

	/** What a finding must share with the one that tells of a slip to be explained by it. */
	public enum Reach {
		/** The threading operation; nothing where the one that tells is about none. */
		OPERATION,
		/** The block of the program. */
		BLOCK,
		/** The program. */
		PROGRAM
	}

	private final Reach reach;

	Slip(Reach reach) {
		this.reach = reach;
	}

	/** How far it explains what else is found. */
	public Reach reach() {
		return reach;
	}
}
