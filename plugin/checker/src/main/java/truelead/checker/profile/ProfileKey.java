package truelead.checker.profile;

import java.util.List;
import java.util.Optional;

/** What a machine profile can say beside the meanings of codes; each with the values it takes, and what it is for. */
public enum ProfileKey {
	NAME("name", List.of(), "what messages call the profile"),
	BASE("base", List.of("milling-metric", "milling-inch", "turning", "rs274"), "the shipped profile that gives all that is not said here"),
	KIND("kind", List.of("milling", "turning"), "what the machine does in the main"),
	UNIT("unit", List.of("mm", "inch"), "unit of a program that states none"),
	FEED_MODE("feed-mode", List.of("per-minute", "per-revolution"), "how F is read before a program says so"),
	PLANE("plane", List.of("xy", "zx", "yz"), "plane at the start"),
	DISTANCE("distance", List.of("absolute", "incremental"), "distance mode at the start"),
	ARC_CENTRE("arc-centre", List.of("incremental", "absolute"), "how I, J and K are read at the start"),
	ARC_TURNS("arc-turns", List.of("p", "none"), "the word that counts the turns of an arc"),
	CYCLE_R("cycle-r", List.of("absolute", "from-initial"), "how a cycle's R is read under absolute distance"),
	CYCLE_AXIS("cycle-axis", List.of("plane", "z"), "axis of canned cycles: the one across the plane, or always Z"),
	SIDE_CYCLES("side-cycles", List.of(), "cycles that work along X, such as G87 G88 G89 in turning"),
	REPEAT_WORDS("repeat-words", List.of(), "words that count the repeats of a cycle, such as K L"),
	DIAMETER("diameter", List.of("yes", "no"), "whether X words are diameters"),
	INCREMENTAL_WORDS("incremental-words", List.of("yes", "no"), "whether U, V and W are increments of X, Y and Z"),
	TOOL_WORD("tool-word", List.of("select", "change", "turret"),
			"T selects for the next change, or changes; turret: the last two digits of three or more are the offset"),
	TOOL_CHANGE_STOPS_SPINDLE("tool-change-stops-spindle", List.of("yes", "no"), "whether the spindle stands behind a tool change"),
	TOOL_CHANGE_CANCELS_LENGTH_OFFSET("tool-change-cancels-length-offset", List.of("yes", "no", "unstated"),
			"whether H must be said again"),
	TAPPING_STARTS_SPINDLE("tapping-starts-spindle", List.of("yes", "no", "unstated"),
			"whether a tapping cycle starts the spindle by itself"),
	TAPPING_FEED("tapping-feed", List.of("as-mode", "pitch"),
			"how F of a tapping cycle is read: by the feed mode in force, or always as the lead a turn"),
	TAPPING_LEAD("tapping-lead", List.of("none", "i-j"),
			"words of a tapping cycle that lead the spindle in place of F: I the lead a turn, J the threads an inch"),
	RIGID_TAP_REQUIRED("rigid-tap-required", List.of("yes", "no"), "whether a tapping cycle needs a rigid-tap code before it"),
	RIGID_TAP_ENDS_WITH_CYCLE("rigid-tap-ends-with-cycle", List.of("yes", "no"), "whether the end of the cycle ends rigid tapping"),
	MIRROR_FLIPS_CYCLE("mirror-flips-cycle", List.of("yes", "no"),
			"whether a mirror turns a right-hand tapping cycle into a left-hand one"),
	SYNCHRONISED_LOCKS_OVERRIDES("synchronised-locks-overrides", List.of("yes", "no"),
			"whether overrides are locked in synchronised motion"),
	DWELL_UNIT("dwell-unit", List.of("ms", "s"), "unit of a dwell's P without a decimal point"),
	NUMBERS_WITHOUT_POINT("numbers-without-point", List.of("as-written", "least-increment"),
			"how lengths without a decimal point are read"),
	SMALLEST_STEP("smallest-step", 1e-9, 1, "smallest step of an axis, mm"),
	SMALLEST_STEP_INCH("smallest-step-inch", 1e-9, 1, "smallest step of an axis in an inch program, inch"),
	ARC_TOLERANCE("arc-tolerance", 0, 10, "difference of an arc's radii that the control takes, mm"),
	ARC_TOLERANCE_INCH("arc-tolerance-inch", 0, 1, "the same in an inch program, inch"),
	POSITION_TOLERANCE("position-tolerance", 0, 10, "how far two holes at one place may be apart, mm"),
	TAPPING_SPEED_LIMIT("tapping-speed-limit", 0, 1e6, "highest speed in tapping, rev/min"),
	SPINDLE_ACCELERATION("spindle-acceleration", 1e-6, 1e9, "rev/s^2 up to tapping speed"),
	SPINDLE_TORQUE("spindle-torque", 0, 1e6, "N m at tapping speed"),
	SPINDLE_POWER("spindle-power", 0, 1e6, "kW"),
	HOLDER("holder", List.of("rigid", "synchro", "tension-compression"), "tap holder where the program names none"),
	TRAVEL_RIGID("travel-rigid", 0, 100, "free travel of a rigid holder, mm"),
	TRAVEL_SYNCHRO("travel-synchro", 0, 100, "free travel of a synchro holder, mm"),
	TRAVEL_TENSION_COMPRESSION("travel-tension-compression", 0, 100, "free travel of a tension-compression holder, mm"),
	DRILL_OVERSIZE("drill-oversize", 0, 5, "how much larger than itself a drill usually cuts, mm"),
	BLOCK_DELETE("block-delete", List.of(), "switches that are on: numbers, or none; blocks marked so are left out"),
	OPTIONAL_STOP("optional-stop", List.of("yes", "no"), "whether M1 stops"),
	THREADING_STATEMENTS("threading-statements", List.of(),
			"statements of richer control languages that make threads and are not followed"),
	UNSET_VARIABLES("unset-variables", List.of("unknown", "zero"), "a variable that nothing has set"),
	ASSIGNMENT("assignment", List.of("at-once", "after-block"), "when the other words of a block see a variable it sets"),
	ARITHMETIC("arithmetic", List.of("macro", "rs274"),
			"AND OR XOR bit by bit, and FIX towards 0 (macro); or by truth, and FIX downwards (rs274)"),
	BUDGET("budget", 1, 1e9, "executed blocks before a program counts as endless"),
	EDITOR_BUDGET("editor-budget", 1, 1e9, "the same while a program is being edited"),
	CALL_DEPTH("call-depth", 1, 1000, "calls within calls");

	private final String key;
	private final List<String> choices;
	private final boolean number;
	private final double least;
	private final double greatest;
	private final String purpose;

	ProfileKey(String key, List<String> choices, String purpose) {
		this(key, choices, false, 0, 0, purpose);
	}

	ProfileKey(String key, double least, double greatest, String purpose) {
		this(key, List.of(), true, least, greatest, purpose);
	}

	ProfileKey(String key, List<String> choices, boolean number, double least, double greatest, String purpose) {
		this.key = key;
		this.choices = choices;
		this.number = number;
		this.least = least;
		this.greatest = greatest;
		this.purpose = purpose;
	}

	/** Its name in a profile. */
	public String key() {
		return key;
	}

	/** What it is for, in one line. */
	public String purpose() {
		return purpose;
	}

	/** The values it takes, where they can be counted. */
	public List<String> choices() {
		return choices;
	}

	/** What it takes, in words; empty for any text. */
	public String takes() {
		return number ? "a number from " + plain(least) + " to " + plain(greatest) : String.join(", ", choices);
	}

	private static final ProfileKey[] ALL = values();

	/** The key of that name; empty for none. */
	public static Optional<ProfileKey> named(String name) {
		for (ProfileKey candidate : ALL) {
			if (candidate.key.equals(name)) {
				return Optional.of(candidate);
			}
		}
		return Optional.empty();
	}

	/** What is wrong with a value, as one sentence; empty for a good value. A number may be {@code none}. */
	Optional<String> complaint(String value) {
		if (number) {
			if (value.equals("none")) {
				return Optional.empty();
			}
			double parsed = parse(value);
			return parsed >= least && parsed <= greatest ? Optional.empty()
					: Optional.of(key + " takes " + takes() + ", not '" + value + "'");
		}
		return choices.isEmpty() || choices.contains(value) ? Optional.empty()
				: Optional.of(key + " takes " + takes() + ", not '" + value + "'");
	}

	/** A number of a profile; NaN where it is none. */
	static double parse(String value) {
		if (value.equals("none")) {
			return Double.NaN;
		}
		try {
			return Double.parseDouble(value);
		} catch (NumberFormatException noNumber) {
			return Double.NaN;
		}
	}

	private static String plain(double limit) {
		return java.math.BigDecimal.valueOf(limit).stripTrailingZeros().toPlainString();
	}
}
