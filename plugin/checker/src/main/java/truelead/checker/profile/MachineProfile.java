package truelead.checker.profile;

import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.StringTokenizer;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Plane;
import truelead.checker.program.WordRef;

/**
 * What the checker must know of the machine and its control: meanings of codes that differ, defaults, limits. Read from a properties file.
 * A key that is absent has the value of the generic milling profile.
 */
public final class MachineProfile {

	private static final List<String> SHIPPED = List.of("milling-metric", "milling-inch", "turning", "rs274");
	/** Each is read when it is first asked for: a check needs one or two of them. */
	private static final Map<String, MachineProfile> READ = new ConcurrentHashMap<>();

	private static final MachineProfile GENERIC = new MachineProfile(ProfileReader.shipped("milling-metric"));

	private final Map<String, String> values;
	private final CodeTable gCodes;
	private final CodeTable mCodes;
	/** G codes have no more than three digits. */
	private static final int MOST_CODES = 1000;

	private final Set<String> threading;
	private final Set<Integer> blockDelete = new HashSet<>();
	/** Codes times ten of cycles that work along X. */
	private final Set<Integer> sideCycles = new HashSet<>();

	MachineProfile(Map<String, String> values) {
		this.values = Map.copyOf(values);
		this.gCodes = new CodeTable('G', values);
		this.mCodes = new CodeTable('M', values);
		this.threading = Set.copyOf(List.of(values.getOrDefault(ProfileKey.THREADING_STATEMENTS.key(), "none").toUpperCase(Locale.ROOT)
				.split("[ ,]+")));
		for (StringTokenizer levels = new StringTokenizer(values.getOrDefault("block-delete", "none"), " ,"); levels.hasMoreTokens();) {
			double level = ProfileKey.parse(levels.nextToken());
			if (level >= 0) {
				blockDelete.add((int) level);
			}
		}
		for (StringTokenizer codes = new StringTokenizer(values.getOrDefault("side-cycles", "none"), " ,"); codes.hasMoreTokens();) {
			String code = codes.nextToken();
			if (code.length() > 1 && Character.isDigit(code.charAt(1))) {
				sideCycles.add(CodeTable.tenfold(ProfileKey.parse(code.substring(1))));
			}
		}
	}

	@Override
	public boolean equals(Object other) {
		return this == other || other instanceof MachineProfile profile && values.equals(profile.values) && assumed() == profile.assumed();
	}

	@Override
	public int hashCode() {
		return values.hashCode();
	}

	/** Names of the shipped profiles. */
	public static List<String> shipped() {
		return SHIPPED;
	}

	/** The profile shipped under that name; {@code milling-metric}, {@code milling-inch}, {@code turning}, {@code rs274}. */
	public static MachineProfile named(String name) {
		if (!SHIPPED.contains(name)) {
			throw new IllegalArgumentException("no machine profile is shipped under the name " + name);
		}
		return READ.computeIfAbsent(name, first -> new MachineProfile(ProfileReader.shipped(first)));
	}

	/** Generic milling, metric by default: for a program whose machine nobody has named, see {@link #assumed()}. */
	public static MachineProfile generic() {
		return GENERIC;
	}

	/** Whether nobody has named a machine, so that the program itself may tell turning from milling. */
	public boolean assumed() {
		return this == GENERIC;
	}

	/** A profile from the text of a file, and what in it could not be used, line by line. */
	public static ProfileReading read(String text, String fileName) {
		return ProfileReader.read(text, fileName);
	}

	/** This profile with one key or code said differently; a value that the key does not take changes nothing. */
	public MachineProfile with(String key, String value) {
		String base = new TreeMap<>(values).entrySet().stream().map(entry -> entry.getKey() + " = " + entry.getValue())
				.collect(Collectors.joining("\n"));
		return read(base + "\n" + key + " = " + value, name()).profile();
	}

	/** What messages call it. */
	public String name() {
		return values.getOrDefault("name", "milling-metric");
	}

	/** A text value by key; empty where the profile does not say. */
	public Optional<String> text(String key) {
		return Optional.ofNullable(values.get(key));
	}

	/** A number by key, in the unit that {@link ProfileKey} states; empty where the profile does not say or says none. */
	public OptionalDouble number(String key) {
		double value = ProfileKey.parse(values.getOrDefault(key, "none"));
		return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
	}

	/** A number by key, in the key's own unit; empty where the profile does not say or says none. */
	public OptionalDouble number(ProfileKey key) {
		return number(key.key());
	}

	/** Whether the machine turns in the main: the work goes round, and a tool beside its axis bores or chases. */
	public boolean isLathe() {
		return is(ProfileKey.KIND, "turning");
	}

	/** Whether a key has that value. */
	public boolean is(ProfileKey key, String value) {
		return value.equals(values.get(key.key()));
	}

	/** Whether a key says yes. */
	public boolean yes(ProfileKey key) {
		return is(key, "yes");
	}

	/** A code as it is asked for, times ten: 842 for G84.2; -1 for what can be no code. */
	public static int tenfold(double code) {
		return CodeTable.tenfold(code);
	}

	/** What a G code does, by the code times ten (842 for G84.2); empty for a code that is not known. */
	public List<Meaning> gCode(int tenfold) {
		return gCodes.of(tenfold);
	}

	/** What an M code does, by the code times ten; empty for a code that is not known. */
	public List<Meaning> mCode(int tenfold) {
		return mCodes.of(tenfold);
	}

	/** Unit of a program that states none. */
	public LengthUnit unit() {
		return is(ProfileKey.UNIT, "inch") ? LengthUnit.INCH : LengthUnit.MM;
	}

	/** How F is read before a program says so. */
	public FeedMode feedMode() {
		return is(ProfileKey.FEED_MODE, "per-revolution") ? FeedMode.PER_REVOLUTION : FeedMode.PER_MINUTE;
	}

	/** Plane at the start. */
	public Plane plane() {
		return is(ProfileKey.PLANE, "zx") ? Plane.ZX : is(ProfileKey.PLANE, "yz") ? Plane.YZ : Plane.XY;
	}

	/** Smallest step of an axis in a program of that unit, mm. */
	public double smallestStep(LengthUnit unit) {
		return unit == LengthUnit.INCH ? 25.4 * number(ProfileKey.SMALLEST_STEP_INCH).orElse(0.0001)
				: number(ProfileKey.SMALLEST_STEP).orElse(0.001);
	}

	/** Difference of an arc's radii that the control takes, mm. */
	public double arcTolerance(LengthUnit unit) {
		return unit == LengthUnit.INCH ? 25.4 * number(ProfileKey.ARC_TOLERANCE_INCH).orElse(0.0005)
				: number(ProfileKey.ARC_TOLERANCE).orElse(0.005);
	}

	/** How far two holes at one place may be apart, mm. */
	public double positionTolerance() {
		return number(ProfileKey.POSITION_TOLERANCE).orElse(0.02);
	}

	/** Free travel of the holder where the program names none, mm. */
	public double holderTravel() {
		return number("travel-" + text("holder").orElse("rigid")).orElse(0);
	}

	/** Block delete switches that are on. */
	public Set<Integer> blockDelete() {
		return Collections.unmodifiableSet(blockDelete);
	}

	/** Letters of the words that count a cycle's repeats. */
	public String repeatWords() {
		return text("repeat-words").orElse("").toUpperCase(Locale.ROOT);
	}

	/** Whether a statement of a richer language of that name, in capitals, makes threads. */
	public boolean threads(String statement) {
		return threading.contains(statement);
	}

	/** Whether the cycle of a G word works along X by itself. */
	public boolean sideCycle(WordRef code) {
		return sideCycle(CodeTable.tenfold(ProfileKey.parse(code.written().substring(1))));
	}

	/** The lowest G code that taps along X by itself, or along the axis of the other cycles; empty where the profile has none. */
	public Optional<String> tap(boolean side) {
		for (int code = 0; code < MOST_CODES; code++) {
			if (gCodes.of(10 * code).contains(Meaning.TAP) && sideCycle(10 * code) == side) {
				return Optional.of("G" + code);
			}
		}
		return Optional.empty();
	}

	/** Whether a cycle's code, times ten, works along X. */
	public boolean sideCycle(int tenfold) {
		return tenfold >= 0 && sideCycles.contains(tenfold);
	}
}
