package truelead.checker.machine;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** Hands steps on, and says once what could not be followed, however often a loop comes by. */
final class Output {

	private final StepSink sink;
	private final MachineState state;
	private final Set<List<Object>> said;
	private boolean silent;

	/** @param said what has been said in this run already, shared by all programs of a file */
	Output(StepSink sink, MachineState state, Set<List<Object>> said) {
		this.sink = sink;
		this.state = state;
		this.said = said;
	}

	void step(Step step) {
		if (!silent) {
			sink.accept(step);
		}
	}

	/** Whether what the machine does from here on has been said before. */
	void silent(boolean said) {
		silent = said;
	}

	/** Whether motions that come again may be handed on at once. */
	boolean takesCopies() {
		return sink.takesCopies();
	}

	void event(BlockRef block, Step.EventKind kind, WordRef word, Setting value) {
		sink.accept(new Step.Event(block, state.modal(), kind, List.of(word), value));
	}

	void event(BlockRef block, Step.EventKind kind, Optional<WordRef> word, Setting value) {
		sink.accept(new Step.Event(block, state.modal(), kind, word.map(List::of).orElse(List.of()), value));
	}

	/** What follows may be wrong: a thread may depend on it. */
	void notFollowed(BlockRef block, String why, Optional<WordRef> word) {
		notFollowed(block, Reason.of(why), word);
	}

	/** The same, for the reason of a number that is not known. */
	void notFollowed(BlockRef block, Reason why, Optional<WordRef> word) {
		say(block, why, word, false, Step.NotFollowed.Weight.THREAD);
	}

	/** What follows may be wrong; a thread may depend on it where a tool for threads makes none that is known. */
	void notFollowedByMaker(BlockRef block, String why, Optional<WordRef> word) {
		say(block, Reason.of(why), word, false, Step.NotFollowed.Weight.BY_TOOL);
	}

	/** What a program that is not here does is not known. */
	void notFollowedCall(BlockRef block, String why, Optional<WordRef> word) {
		say(block, Reason.of(why), word, false, Step.NotFollowed.Weight.CALL);
	}

	/** The same of a program to which nothing is said, under no cycle. */
	void notFollowedPlainCall(BlockRef block, String why, Optional<WordRef> word) {
		say(block, Reason.of(why), word, false, Step.NotFollowed.Weight.PLAIN_CALL);
	}

	/** Nothing behind it is executed. */
	void stopped(BlockRef block, String why, Optional<WordRef> word) {
		stopped(block, Reason.of(why), word);
	}

	/** The same, for the reason of a number that is not known. */
	void stopped(BlockRef block, Reason why, Optional<WordRef> word) {
		say(block, why, word, true, Step.NotFollowed.Weight.THREAD);
	}

	/** Nothing behind it is executed, by the machine neither. */
	void alarm(BlockRef block) {
		say(block, Reason.of("the program stops here with an alarm of its own"), Optional.empty(), true, Step.NotFollowed.Weight.OWN_ALARM);
	}

	/** Worth a word, once a program, for the reason of a number that is not known; no thread depends on it. */
	void remark(BlockRef block, Reason why) {
		remark(block, why.words(), why, Optional.empty());
	}

	/** Worth a word, once a program; no thread depends on it. */
	void remark(BlockRef block, String subject, String why, Optional<WordRef> word) {
		remark(block, subject, Reason.of(why), word);
	}

	private void remark(BlockRef block, String subject, Reason why, Optional<WordRef> word) {
		if (said.add(List.of("remark", subject))) {
			say(block, why, word, false, Step.NotFollowed.Weight.MINOR);
		}
	}

	/** A statement that may call a program that is not here; worth a word once a tool and name. */
	void mayCall(BlockRef block, String name, String why) {
		if (said.add(List.of("call", name, state.tool.value()))) {
			say(block, Reason.of(why), Optional.empty(), false, Step.NotFollowed.Weight.MAY_CALL);
		}
	}

	/** A code with axis words that nobody knows; worth a word once a program and tool. */
	void unknownCode(BlockRef block, String code, String why, WordRef word) {
		if (said.add(List.of("code", code, state.tool.value()))) {
			say(block, Reason.of(why), Optional.of(word), false, Step.NotFollowed.Weight.UNKNOWN_CODE);
		}
	}

	private void say(BlockRef block, Reason why, Optional<WordRef> word, boolean stops, Step.NotFollowed.Weight weight) {
		if (said.add(List.of(block.file().name(), block.line(), why))) {
			sink.accept(new Step.NotFollowed(block, state.modal(), why, stops, word, weight));
		}
	}

	/** A fresh memory of what has been said, in that order. */
	static Set<List<Object>> memory() {
		return new LinkedHashSet<>();
	}

	/** What has been said so far. */
	Set<List<Object>> said() {
		return said;
	}
}
