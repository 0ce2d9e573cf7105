package truelead.checker.machine;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Setting;

/**
 * Cycles that their block only defines, in programs that call them at each place by a code of its own, G79 (from memory): X is a dwell
 * there and Y the height above the surface that the tool starts from, unless R says it; Z is the depth below the surface, which the call
 * names by its Z; a tap's lead may be I, J or K.
 */
final class CalledCycles {

	private static final String WORDS = "RYZQPFSIJK";
	private static final String LEADS = "IJK";

	private final MachineState state;
	private final CannedCycles cycles;
	private final BooleanSupplier called;
	private Optional<Cycle> defined = Optional.empty();
	private Optional<Setting> lead = Optional.empty();
	private double height = Double.NaN;
	private double depth = Double.NaN;
	private double surface;

	/** @param called whether the program calls cycles so */
	CalledCycles(MachineState state, CannedCycles cycles, BooleanSupplier called) {
		this.state = state;
		this.cycles = cycles;
		this.called = called;
	}

	/** Whether a block with a cycle's code only defines it. */
	boolean defines() {
		return state.profile.is(ProfileKey.KIND, "milling") && called.getAsBoolean();
	}

	/** All that later blocks depend on. */
	List<Object> memory() {
		return List.of(defined, lead, height, depth, surface);
	}

	/** Takes a cycle that a block has started for a definition. */
	void define(Words words) {
		Cycle start = cycles.give();
		Map<Character, Setting> settings = new HashMap<>();
		for (char letter : WORDS.toCharArray()) {
			if (words.has(letter)) {
				settings.put(letter, words.setting(letter));
			}
		}
		char above = words.has('R') ? 'R' : 'Y';
		height = words.has(above) ? state.mm(words, above) : Double.NaN;
		depth = words.has('Z') ? state.mm(words, 'Z') : Double.NaN;
		if (words.has(above)) {
			settings.put('R', words.setting(above));
		}
		settings.remove('Y');
		lead = Optional.empty();
		for (char letter : start.kind().taps() && !words.has('F') ? LEADS.toCharArray() : new char[0]) {
			lead = words.has(letter) ? Optional.of(words.setting(letter)) : lead;
		}
		defined = Optional.of(new Cycle(start.kind(), start.code(), start.start(), start.gWord(), settings));
	}

	/** The cycle at the place of a block; false where none is defined. */
	boolean call(Words words) {
		surface = words.has('Z') ? state.mm(words, 'Z') : surface;
		defined.ifPresent(cycle -> cycles.call(cycle, lead, surface + height, surface + depth, words));
		return defined.isPresent();
	}
}
