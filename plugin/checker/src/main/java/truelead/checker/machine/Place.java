package truelead.checker.machine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Where the tool is, in the frame of the work offset, and how programmed coordinates lie in it. An offset of unknown size makes a new
 * frame; the same one said again makes the same frame.
 */
final class Place {

	private static final List<Object> NOTHING = List.of();

	/** Frames that are told apart when they come back; what a loop makes beyond them is new each time. */
	private static final int MOST_FRAMES = 10_000;
	/** Frames on top of one another that are kept by their words. */
	private static final int MOST_TILTS = 32;

	private final MachineState state;
	/** A lathe, whose Y axis, if it has one, stays on the spindle's axis until it is moved. */
	private final boolean turning;
	private int nextFrame = 1;
	private final Map<List<Object>, Integer> frames = new HashMap<>();
	private final Map<Integer, List<Object>> offsetData = new HashMap<>();
	private final Map<Integer, Map<Integer, Double>> offsetVariables = new HashMap<>();
	private Point here = Point.UNKNOWN;
	private Point lastOffsetHere = Point.UNKNOWN;
	private int lastOffset = -1;
	private int workOffset = 54;
	private Rotary rotary = Rotary.NONE;
	private Frame local = Frame.SAME;
	private Frame position = Frame.SAME;
	private Frame rotation = Frame.SAME;
	private Frame scale = Frame.SAME;
	private Frame mirror = Frame.SAME;
	private Frame frame = Frame.SAME;
	private List<Object> positionKey = NOTHING;
	private List<Object> tiltKey = NOTHING;
	private int frameNumber;
	private final boolean[] moved = new boolean[3];
	private final boolean[] somewhere = new boolean[3];

	Place(MachineState state) {
		this.state = state;
		this.turning = state.profile.isLathe();
		frames.put(List.of(NOTHING, NOTHING, NOTHING, NOTHING), 0);
		if (turning) {
			here = here.with(1, 0);
		}
	}

	/** The same place in the same frames, by itself. */
	Place(MachineState state, Place other) {
		this.state = state;
		turning = other.turning;
		nextFrame = other.nextFrame;
		frames.putAll(other.frames);
		offsetData.putAll(other.offsetData);
		other.offsetVariables.forEach((offset, set) -> offsetVariables.put(offset, new TreeMap<>(set)));
		here = other.here;
		lastOffsetHere = other.lastOffsetHere;
		lastOffset = other.lastOffset;
		workOffset = other.workOffset;
		rotary = other.rotary;
		local = other.local;
		position = other.position;
		rotation = other.rotation;
		scale = other.scale;
		mirror = other.mirror;
		frame = other.frame;
		positionKey = other.positionKey;
		tiltKey = other.tiltKey;
		frameNumber = other.frameNumber;
		System.arraycopy(other.moved, 0, moved, 0, 3);
		System.arraycopy(other.somewhere, 0, somewhere, 0, 3);
	}

	/** Whether all places so far lie in one frame that needs no data to be told from others. */
	boolean oneFrame() {
		return frames.size() == 1 && offsetData.isEmpty() && frame.same();
	}

	Point here() {
		return here;
	}

	void moveTo(Point point) {
		here = point;
	}

	/** The position in programmed coordinates, mm. */
	Point programmed() {
		return frame.programmed(here);
	}

	Frame frame() {
		return frame;
	}

	int frameNumber() {
		return frameNumber;
	}

	int workOffset() {
		return workOffset;
	}

	Rotary rotary() {
		return rotary;
	}

	void turnTo(Rotary position) {
		if (!position.equals(rotary)) {
			rotary = position;
			state.changed();
		}
	}

	/** Another work offset: the tool stays, so its coordinates are not known until it moves; they are again on the way back. */
	void workOffset(int number) {
		if (number == workOffset) {
			return;
		}
		Point back = here;
		for (int axis = 0; axis < 3; axis++) {
			boolean stayed = axis == 1 && turning || number == lastOffset && Double.isNaN(here.along(axis));
			back = back.with(axis, !stayed ? Double.NaN : Double.isNaN(here.along(axis)) ? lastOffsetHere.along(axis) : here.along(axis));
		}
		lastOffsetHere = here;
		lastOffset = workOffset;
		here = back;
		workOffset = number;
		recount();
	}

	/** Data written to a work offset: what it holds from now on. */
	void offsetData(int number, List<Object> data) {
		List<Object> before = offsetData.put(number, data);
		boolean all = number == 53;
		if ((number == workOffset || all) && !data.equals(before)) {
			here = Point.UNKNOWN;
			recount();
		}
		if (number == lastOffset) {
			lastOffset = -1;
		}
	}

	/** A system variable that holds a value of a work offset is set: 5201 on in twenties, the common shift first. */
	void offsetVariable(int variable, double value) {
		int number = 53 + (variable - 5201) / 20;
		Map<Integer, Double> all = offsetVariables.computeIfAbsent(number, fresh -> new TreeMap<>());
		all.put(variable, value);
		offsetData(number, List.of(Map.copyOf(all)));
	}

	/** An axis of a subprogram by itself, whose place has never been known, is counted from where it stands. */
	void startSomewhere(int axis) {
		if (moved[axis] || !Double.isNaN(here.along(axis)) || !frame.same()) {
			return;
		}
		moved[axis] = true;
		somewhere[axis] = true;
		here = here.with(axis, 0);
		positionKey = List.of("somewhere", somewhere[0], somewhere[1], somewhere[2]);
		recount();
	}

	/** Whether an axis is counted from a place that is not known. */
	boolean counts(int axis) {
		return somewhere[axis];
	}

	/** An axis goes to a place of the work offset's frame. */
	void land(int axis) {
		somewhere[axis] = false;
		boolean any = somewhere[0] || somewhere[1] || somewhere[2];
		positionKey = any ? List.of("somewhere", somewhere[0], somewhere[1], somewhere[2]) : NOTHING;
		recount();
	}

	/** A coordinate is lost, as behind a homing move. */
	void lose(int axis) {
		moved[axis] = true;
		if (somewhere[axis]) {
			land(axis);
		}
		here = here.with(axis, Double.NaN);
		if (lastOffset >= 0) {
			lastOffsetHere = lastOffsetHere.with(axis, Double.NaN);
		}
	}

	Frame local() {
		return local;
	}

	/** Whether a frame is in force whose places are known in itself alone. */
	boolean tilted() {
		return !tiltKey.isEmpty();
	}

	void local(Frame shift) {
		local = shift;
		compose();
	}

	void rotation(Frame turn) {
		rotation = turn;
		compose();
	}

	void scale(Frame by) {
		scale = by;
		compose();
	}

	Frame mirrorFrame() {
		return mirror;
	}

	void mirror(Frame about) {
		mirror = about;
		compose();
	}

	/** A plane tilted by some words, or none: positions are in its own frame. */
	void tilt(List<Object> words) {
		if (!tiltKey.equals(words)) {
			tiltKey = words;
			here = Point.UNKNOWN;
			recount();
		}
	}

	/** A further frame on top of the one there is. */
	void tiltFurther(String words) {
		List<Object> more = new ArrayList<>(tiltKey.size() < MOST_TILTS ? tiltKey : List.of(tiltKey.hashCode()));
		more.add(words);
		tilt(more);
	}

	/** The present place is called so from now on; NaN leaves an axis as it is. */
	void setPosition(double[] programmed) {
		Point now = frame.programmed(here);
		double[] shift = {position.apply(new Point(0, 0, 0)).x(), position.apply(new Point(0, 0, 0)).y(),
				position.apply(new Point(0, 0, 0)).z()};
		List<Object> unknown = new ArrayList<>();
		for (int axis = 0; axis < 3; axis++) {
			if (Double.isNaN(programmed[axis])) {
				continue;
			}
			if (Double.isNaN(now.along(axis))) {
				unknown.add(List.of(axis, programmed[axis]));
				shift[axis] = 0;
				here = here.with(axis, programmed[axis]);
			} else {
				shift[axis] += now.along(axis) - programmed[axis];
			}
		}
		position = Frame.shift(shift);
		if (!unknown.isEmpty()) {
			positionKey = unknown;
			recount();
		}
		compose();
	}

	/** Takes {@link #setPosition} back. */
	void cancelPosition() {
		if (!positionKey.isEmpty()) {
			here = Point.UNKNOWN;
			positionKey = NOTHING;
			recount();
		}
		position = Frame.SAME;
		compose();
	}

	/** All that later places depend on. */
	List<Object> memory() {
		return List.of(here, lastOffsetHere, lastOffset, workOffset, rotary, local, position, rotation, scale, mirror, positionKey, tiltKey,
				frameNumber, Map.copyOf(offsetData), offsetVariables.toString(), List.of(moved[0], moved[1], moved[2], somewhere[0],
						somewhere[1], somewhere[2]));
	}

	private void compose() {
		frame = position.after(local).after(rotation.after(scale.after(mirror)));
		state.changed();
	}

	private void recount() {
		List<Object> key = List.of(offsetData.getOrDefault(workOffset, NOTHING), offsetData.getOrDefault(53, NOTHING),
				positionKey, tiltKey);
		Integer known = frames.get(key);
		frameNumber = known != null ? known : nextFrame++;
		if (known == null && frames.size() < MOST_FRAMES) {
			frames.put(key, frameNumber);
		}
		state.changed();
	}
}
