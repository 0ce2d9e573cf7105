package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** T words and tool changes. */
final class Tools {

	private final MachineState state;
	private final Output out;

	Tools(MachineState state, Output out) {
		this.state = state;
		this.out = out;
	}

	/** A T word; it changes at once where the profile, or a program without any change code, has it so. */
	void select(Words words, boolean changes, boolean changeFollows) {
		Setting tool = words.setting('T');
		if (state.profile.is(ProfileKey.TOOL_WORD, "turret")) {
			turret(words, tool);
			return;
		}
		words.name('T').ifPresent(name -> state.selectedTool = new Setting(Double.NaN, tool.word(),
				Reason.of("the tool is called by its name, " + name)));
		if (words.name('T').isEmpty()) {
			state.selectedTool = changeFollows || !words.nextTool().isSet() ? tool : words.nextTool();
		}
		if (changes && !changeFollows) {
			change(words.block(), words.ref('T'));
		} else if (!changeFollows) {
			out.event(words.block(), Step.EventKind.TOOL_SELECTED, words.ref('T'), state.selectedTool);
		}
	}

	/** T1 T2 M6: behind the change to the first tool the second one waits. */
	void makeReady(Words words) {
		if (words.nextTool().isSet()) {
			state.selectedTool = words.nextTool();
		}
	}

	/** T0101: tool and offset; the tool alone makes the change. */
	private void turret(Words words, Setting tool) {
		double number = tool.value();
		int digits = words.digits('T');
		double station = digits >= 3 ? Math.floor(number / 100) : number;
		Setting next = new Setting(station, tool.word(), tool.why());
		boolean offsetOnly = station == 0 || state.tool.known() && station == state.tool.value();
		double offset = digits >= 3 ? number % 100 : number;
		state.lengthOffset = offset == 0 ? Setting.NONE : new Setting(offset, tool.word(), tool.why());
		state.changed();
		if (!offsetOnly) {
			state.selectedTool = next;
			change(words.block(), words.ref('T'));
		}
	}

	/** A tool change to what was selected last. */
	void change(BlockRef block, WordRef word) {
		state.tool = state.selectedTool.isSet() ? state.selectedTool
				: new Setting(Double.NaN, Optional.of(word), Reason.of("no T word says which tool the change takes"));
		state.toolChange = Optional.of(block);
		if (state.profile.yes(ProfileKey.TOOL_CHANGE_STOPS_SPINDLE)) {
			state.spindle = SpindleTurn.STOPPED;
			state.spindleWord = Optional.of(word);
		}
		if (state.profile.yes(ProfileKey.TOOL_CHANGE_CANCELS_LENGTH_OFFSET)) {
			state.lengthOffset = Setting.NONE;
		}
		if (!state.profile.is(ProfileKey.TOOL_WORD, "turret")) {
			state.place.lose(state.plane.axis());
		}
		state.changed();
		out.event(block, Step.EventKind.TOOL_CHANGE, word, state.tool);
	}
}
