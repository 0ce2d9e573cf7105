package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import truelead.checker.arithmetic.Value;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/**
 * Frames that richer control languages set by name: a shift along the axes is followed as G52 is, all others are frames of their own, which
 * no place of another one is compared with.
 */
final class NamedFrames {

	private static final String SHIFT = "TRANS";
	private static final String FURTHER_SHIFT = "ATRANS";
	private static final Set<String> FRAMES = Set.of(SHIFT, "ROT", "SCALE", "MIRROR", "ROTS", "CYCLE800");
	private static final Set<String> ADDED_FRAMES = Set.of(FURTHER_SHIFT, "AROT", "ASCALE", "AMIRROR", "AROTS");

	private final Flow flow;
	private final MachineState state;

	NamedFrames(Flow flow, MachineState state) {
		this.flow = flow;
		this.state = state;
	}

	/** Sets a frame; false for a name of something else. */
	boolean follow(String name, String written) {
		boolean first = FRAMES.contains(name);
		if (!first && !ADDED_FRAMES.contains(name)) {
			return false;
		}
		List<Object> frame = name.equals("CYCLE800") ? written.chars().noneMatch(c -> c >= '1' && c <= '9') ? List.of() : List.of(written)
				: parts(name, written);
		boolean shift = shifts(frame);
		if (first) {
			state.place.local(name.equals(SHIFT) && shift ? Frame.shift(mm(frame)) : Frame.SAME);
			boolean off = !name.equals("MIRROR") && frame.stream().allMatch(part -> part.equals(0.0) || part instanceof Character);
			state.place.tilt(off || frame.isEmpty() || name.equals(SHIFT) && shift ? List.of() : List.of(name, frame));
		} else if (name.equals(FURTHER_SHIFT) && shift && !state.place.tilted()) {
			state.place.local(Frame.shift(mm(frame)).after(state.place.local()));
		} else {
			further(name + frame);
		}
		return true;
	}

	/** A frame on top of another: what was shifted before is turned with it, so that the shift belongs to the frame's name. */
	private void further(String frame) {
		Frame shifted = state.place.local();
		if (!shifted.equals(Frame.SAME)) {
			Point zero = shifted.apply(new Point(0, 0, 0));
			state.place.tiltFurther(SHIFT + zero);
			state.place.local(Frame.SAME);
		}
		state.place.tiltFurther(frame);
	}

	/** Whether a frame shifts along X, Y and Z alone, by known lengths. */
	private static boolean shifts(List<Object> frame) {
		for (int i = 0; i < frame.size(); i += 2) {
			if (!(frame.get(i) instanceof Character letter) || "XYZ".indexOf(letter) < 0
					|| !(i + 1 < frame.size() && frame.get(i + 1) instanceof Double)) {
				return false;
			}
		}
		return true;
	}

	private double[] mm(List<Object> frame) {
		double[] mm = new double[3];
		for (int i = 0; i < frame.size(); i += 2) {
			mm["XYZ".indexOf((Character) frame.get(i))] = (Double) frame.get(i + 1) * state.unit.mm();
		}
		return mm;
	}

	/**
	 * What is written behind the name of a frame: addresses and their values, for they tell one frame from another where the words do not,
	 * TRANS X=R1*50, ROT RPL=R1*60.
	 */
	private List<Object> parts(String name, String written) {
		List<Object> parts = new ArrayList<>();
		for (Element element : ProgramText.of(written.substring(Math.min(name.length(), written.length()))).block(0).elements()) {
			Value value = element instanceof Element.Word word ? flow.evaluator().value(word.value())
					: element instanceof Element.Assignment named ? flow.evaluator().value(named.value()) : Value.unknown("");
			if (element instanceof Element.Word word && value.known()) {
				parts.add(word.address());
				parts.add(value.number());
			} else if (value.known()) {
				parts.add(value.number());
			} else {
				parts.add(written);
			}
		}
		return parts;
	}
}
