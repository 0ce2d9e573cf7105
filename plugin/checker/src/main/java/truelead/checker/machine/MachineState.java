package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Plane;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** The modal state while a program runs. Whoever changes a field calls {@link #changed()}; {@link #modal()} is shared until then. */
final class MachineState {

	final MachineProfile profile;
	final Place place;
	/** Whether it is that of a subprogram by itself, whose caller's state is not known. */
	final boolean alone;
	LengthUnit unit;
	boolean unitStated;
	Plane plane;
	boolean absolute;
	FeedMode feedMode;
	Optional<WordRef> feedModeStated = Optional.empty();
	Setting feed = Setting.NONE;
	Setting speed = Setting.NONE;
	boolean constantSurface;
	SpindleTurn spindle = SpindleTurn.STOPPED;
	Optional<WordRef> spindleWord = Optional.empty();
	Setting selectedTool = Setting.NONE;
	Setting tool = Setting.NONE;
	Optional<BlockRef> toolChange = Optional.empty();
	Setting lengthOffset = Setting.NONE;
	Compensation compensation = Compensation.OFF;
	Setting compensationOffset = Setting.NONE;
	/** Whether a change code has been executed. */
	boolean changeCodeSeen;
	boolean coolant;
	Optional<Setting> rigid = Optional.empty();
	Optional<WordRef> rigidWord = Optional.empty();
	boolean returnToInitial = true;
	boolean lockedByCode;
	boolean tappingMode;
	boolean arcCentreAbsolute;
	/** Motion in force: a kind of motion or a canned cycle; NONE where G80 or nothing is. */
	Meaning motion = Meaning.RAPID;
	int motionCode;

	private final boolean leastIncrements;
	private Optional<String> unfollowed = Optional.empty();
	private Modal modal;
	private Modal faceModal;
	private Modal sideModal;
	private Modal lockedModal;
	private Modal pitchModal;

	/** The state at the start of a program; {@code alone} for a subprogram by itself, whose caller's state is not known. */
	MachineState(MachineProfile profile, boolean alone) {
		this.profile = profile;
		this.alone = alone;
		this.place = new Place(this);
		this.leastIncrements = profile.is(ProfileKey.NUMBERS_WITHOUT_POINT, "least-increment");
		unit = profile.unit();
		plane = profile.plane();
		absolute = !profile.is(ProfileKey.DISTANCE, "incremental");
		feedMode = profile.feedMode();
		arcCentreAbsolute = profile.is(ProfileKey.ARC_CENTRE, "absolute");
		if (alone) {
			Setting callers = new Setting(Double.NaN, Optional.empty(), Reason.of("the program that calls this subprogram sets it"));
			feed = callers;
			speed = callers;
			tool = callers;
			lengthOffset = callers;
			spindle = SpindleTurn.UNKNOWN;
		}
	}

	/** Takes the unit that a program before this one in the file says. */
	void unitSaidBefore(LengthUnit said) {
		unit = said;
		unitStated = true;
	}

	/** The same state, which changes by itself from now on. */
	MachineState(MachineState other) {
		profile = other.profile;
		alone = other.alone;
		place = new Place(this, other.place);
		leastIncrements = other.leastIncrements;
		unit = other.unit;
		unitStated = other.unitStated;
		plane = other.plane;
		absolute = other.absolute;
		feedMode = other.feedMode;
		feedModeStated = other.feedModeStated;
		feed = other.feed;
		speed = other.speed;
		constantSurface = other.constantSurface;
		spindle = other.spindle;
		spindleWord = other.spindleWord;
		selectedTool = other.selectedTool;
		tool = other.tool;
		toolChange = other.toolChange;
		lengthOffset = other.lengthOffset;
		compensation = other.compensation;
		compensationOffset = other.compensationOffset;
		changeCodeSeen = other.changeCodeSeen;
		coolant = other.coolant;
		rigid = other.rigid;
		rigidWord = other.rigidWord;
		returnToInitial = other.returnToInitial;
		lockedByCode = other.lockedByCode;
		tappingMode = other.tappingMode;
		arcCentreAbsolute = other.arcCentreAbsolute;
		motion = other.motion;
		motionCode = other.motionCode;
		unfollowed = other.unfollowed;
		modal = other.modal();
	}

	/**
	 * Whether X, Y and Z words are lengths as they stand, by the profile: no diameters, no least increments, and no others that are
	 * increments.
	 */
	boolean asWritten() {
		return !profile.yes(ProfileKey.DIAMETER) && !profile.yes(ProfileKey.INCREMENTAL_WORDS)
				&& profile.is(ProfileKey.NUMBERS_WITHOUT_POINT, "as-written");
	}

	/** The innermost branch or loop that is not followed, but passed once. */
	Optional<String> unfollowed() {
		return unfollowed;
	}

	void unfollowed(Optional<String> statement) {
		unfollowed = statement;
	}

	/** The state has changed: the next step gets a new value. */
	void changed() {
		modal = null;
		faceModal = null;
		sideModal = null;
		lockedModal = null;
		pitchModal = null;
	}

	/** The state in force as a value. */
	Modal modal() {
		if (modal == null) {
			modal = modal(plane, lockedByCode || tappingMode);
		}
		return modal;
	}

	/** The state for a canned cycle, whose axis a profile may fix. */
	Modal cycleModal(int code) {
		if (!profile.is(ProfileKey.CYCLE_AXIS, "z")) {
			return modal();
		}
		if (profile.sideCycle(code) || plane == Plane.YZ) {
			sideModal = sideModal == null ? modal(Plane.YZ, lockedByCode || tappingMode) : sideModal;
			return sideModal;
		}
		faceModal = faceModal == null ? modal(Plane.XY, lockedByCode || tappingMode) : faceModal;
		return faceModal;
	}

	/** The state for a tapping cycle whose F is its lead a turn, whatever the feed mode. */
	Modal pitchModal(int code) {
		if (pitchModal == null) {
			FeedMode mode = feedMode;
			feedMode = FeedMode.PER_REVOLUTION;
			pitchModal = modal(cycleModal(code).plane(), lockedByCode || tappingMode);
			feedMode = mode;
		}
		return pitchModal;
	}

	/** The state for a tapping cycle that leads the spindle by itself; what it does not say is as in force. */
	Modal leadModal(Optional<Setting> lead, Optional<Setting> spindleSpeed, Optional<SpindleTurn> turn) {
		FeedMode modeBefore = feedMode;
		Setting feedBefore = feed;
		Setting speedBefore = speed;
		SpindleTurn turnBefore = spindle;
		Optional<Setting> rigidBefore = rigid;
		feedMode = lead.isPresent() ? FeedMode.PER_REVOLUTION : feedMode;
		feed = lead.orElse(feed);
		speed = spindleSpeed.orElse(speed);
		spindle = turn.orElse(spindle);
		rigid = turn.isPresent() ? Optional.of(speed) : rigid;
		Modal made = modal(plane, true);
		feedMode = modeBefore;
		feed = feedBefore;
		speed = speedBefore;
		spindle = turnBefore;
		rigid = rigidBefore;
		return made;
	}

	/** The state in a motion that locks the overrides by itself. */
	Modal lockedModal() {
		if (lockedModal == null) {
			lockedModal = modal(plane, true);
		}
		return lockedModal;
	}

	/** All that later steps depend on, the place included. */
	List<Object> memory() {
		return List.of(modal(), place.memory(), selectedTool, changeCodeSeen, lockedByCode, tappingMode, arcCentreAbsolute, motion,
				motionCode, unfollowed);
	}

	private Modal modal(Plane asPlane, boolean locked) {
		return new Modal(unit, unitStated, asPlane, absolute, feedMode, feedModeStated, feed, speed, constantSurface, spindle, spindleWord,
				tool, toolChange, lengthOffset, compensation, compensationOffset, place.workOffset(), coolant, rigid, rigidWord,
				returnToInitial, place.frame().mirrored(), place.frame().scaled(), locked, place.frameNumber(), place.rotary());
	}

	/** A programmed length in mm; a number without a point is read as the profile says. */
	double mm(Words words, char address) {
		double value = words.value(address);
		if (words.withoutPoint(address) && leastIncrements) {
			return value * profile.smallestStep(unit);
		}
		return value * unit.mm();
	}

	/** Half a unit of the last decimal of a length word, mm; 0 for a computed value. */
	double resolution(Words words, char address) {
		int decimals = words.decimals(address);
		if (decimals < 0) {
			return 0;
		}
		if (decimals == 0 && words.withoutPoint(address) && leastIncrements) {
			return profile.smallestStep(unit) / 2;
		}
		return resolution(decimals, unit);
	}

	/** Half a unit of the last of some decimals, mm. */
	static double resolution(int decimals, LengthUnit unit) {
		return 0.5 * TENTHS[Math.min(decimals, TENTHS.length - 1)] * unit.mm();
	}

	/** The decimals whose {@link #resolution} is given, mm; -1 for no number of them. */
	static int decimals(double resolution, LengthUnit unit) {
		int decimals = 0;
		while (decimals < TENTHS.length && 0.5 * TENTHS[decimals] * unit.mm() != resolution) {
			decimals++;
		}
		return decimals == TENTHS.length ? -1 : decimals;
	}

	private static final double[] TENTHS = {1, 0.1, 0.01, 1e-3, 1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10};
}
