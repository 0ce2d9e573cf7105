package truelead.checker.machine;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import truelead.checker.arithmetic.Value;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.ProgramFolder;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.Element;

/** Calls of subprograms and macros; {@link Returns} leads back. */
final class Calls {

	/** Where a called program is; {@code reading} says how its number is read where that may surprise. */
	record Found(Source source, int start, int end, int repeats, String reading) {

		Found(Source source, int start, int end, int repeats) {
			this(source, start, end, repeats, "");
		}
	}

	private final Flow flow;
	private final Source main;
	private final MachineState state;
	private final Output out;
	private final CalledPrograms programs;
	private final RicherCalls richer;
	private final NamedCycles named;
	private final Returns returns;
	private final int deepest;
	private final ModalMacros modalMacros;

	Calls(Flow flow, Source main, ProgramFolder folder, MachineState state, Output out) {
		this.flow = flow;
		this.main = main;
		this.state = state;
		this.out = out;
		this.programs = new CalledPrograms(() -> flow.frames().peek().source, main, folder);
		this.richer = new RicherCalls(flow, this);
		this.named = new NamedCycles(flow, state);
		this.returns = new Returns(flow, out);
		this.modalMacros = new ModalMacros(flow.frames());
		this.deepest = (int) state.profile.number(ProfileKey.CALL_DEPTH).orElse(16);
	}

	Source main() {
		return main;
	}

	/** Whether T changes the tool at once: by the profile, or as the program has no change code at all. */
	boolean toolWordChanges() {
		if (!state.profile.is(ProfileKey.TOOL_WORD, "select")) {
			return state.profile.is(ProfileKey.TOOL_WORD, "change");
		}
		return !state.changeCodeSeen && !main.changesTool();
	}

	/** G65, G66, G67; true where the block was a call and is done. */
	boolean macroCall(Words words) {
		for (int i = 0; i < words.gCount(); i++) {
			for (Meaning meaning : state.profile.gCode(words.gCode(i))) {
				if (meaning == Meaning.MACRO_CALL) {
					macro(MacroArguments.of(words, flow), CalledPrograms.Callee.of(words), (int) number(words, 'L', 1),
							Optional.of(words.gRef(i)));
					return true;
				} else if (meaning == Meaning.MODAL_MACRO_CALL) {
					modalMacros.on(CalledPrograms.Callee.of(words), MacroArguments.of(words, flow));
					return true;
				} else if (meaning == Meaning.MODAL_MACRO_OFF) {
					modalMacros.off();
				}
			}
		}
		return false;
	}

	/** Whether every motion calls a macro or a subprogram. */
	boolean modal() {
		return modalMacros.on() || richer.modal() || named.modal();
	}

	/** All that later blocks depend on. */
	List<Object> memory() {
		return List.of(modalMacros.memory(), richer.memory(), named.memory());
	}

	/** Drilling and tapping cycles called by name. */
	NamedCycles named() {
		return named;
	}

	/** Returns from what is called, and the end of the program. */
	Returns returns() {
		return returns;
	}

	/** Calls of richer languages. */
	RicherCalls richer() {
		return richer;
	}

	private static double number(Words words, char letter, double otherwise) {
		return words.has(letter) && !Double.isNaN(words.value(letter)) ? words.value(letter) : otherwise;
	}

	private void macro(Map<Integer, Value> arguments, CalledPrograms.Callee program, int repeats, Optional<WordRef> word) {
		Optional<Found> found = programs.find(program, repeats);
		if (found.isEmpty()) {
			missing(program, word, false);
		} else if (enter(found.get(), true, false, word)) {
			flow.variables().enter(Value.VACANT);
			arguments.forEach(flow.variables()::set);
		}
	}

	/** Calls, returns and ends among the M codes of a block whose other words are done. */
	void after(Words words, boolean moved) {
		for (int i = 0; i < words.mCount(); i++) {
			for (Meaning meaning : state.profile.mCode(words.mCode(i))) {
				switch (meaning) {
					case CALL -> call(words, words.mRef(i));
					case LOCAL_CALL -> localCall(words, words.mRef(i));
					case RETURN -> returns.returned(words, words.mRef(i));
					case PROGRAM_END -> returns.end(words.mRef(i));
					default -> {
						// Done with the motion.
					}
				}
			}
		}
		if (words.onlyNumber('L') && !moved) {
			richer.numbered(words);
		}
		if (moved) {
			richer.moved();
			named.moved();
		}
		Optional<ModalMacros.Macro> behind = moved ? modalMacros.behindMotion() : Optional.empty();
		if (behind.isPresent()) {
			macro(behind.get().arguments(), behind.get().program(), 1, Optional.empty());
			modalMacros.entered(behind.get(), flow.frames().peek());
		}
	}

	private void call(Words words, WordRef word) {
		if (words.has('P') && !words.ref('P').literal()) {
			flow.endless().decided();
		}
		CalledPrograms.Callee program = CalledPrograms.Callee.of(words);
		if (program.unsaid() && words.has('P')) {
			out.notFollowed(words.block(), words.why('P').behind("which program is called is not known"), Optional.of(words.ref('P')));
			losePlace();
			return;
		}
		if (program.unsaid() && (words.has('H') || words.has('Q'))) {
			localCall(words, word);
			return;
		}
		Optional<Found> found = programs.find(program, (int) number(words, 'L', 1));
		if (found.isEmpty()) {
			missing(program, Optional.of(word), !state.motion.cycle() && !modal());
		} else if (words.has('Q') || words.has('H')) {
			int number = (int) number(words, words.has('Q') ? 'Q' : 'H', -1);
			OptionalInt line = found.get().source.outline().blockNumber(number, found.get().start);
			enter(new Found(found.get().source, line.orElse(found.get().start), found.get().end, found.get().repeats), false, false,
					Optional.of(word));
		} else {
			enter(found.get(), false, false, Optional.of(word));
		}
	}

	private void localCall(Words words, WordRef word) {
		CallFrame frame = flow.frames().peek();
		char letter = words.has('P') ? 'P' : words.has('H') ? 'H' : 'Q';
		OptionalInt line = words.has(letter) ? frame.source.outline().blockNumber((int) words.value(letter), frame.line - 1)
				: OptionalInt.empty();
		if (line.isEmpty()) {
			missing(words.has(letter) ? "block N" + (int) words.value(letter) : "the block called", Optional.of(word), false);
		} else {
			enter(new Found(frame.source, line.getAsInt(), frame.source.outline().programEnd(line.getAsInt()), (int) number(words, 'L', 1)),
					false, false, Optional.of(word));
		}
	}

	/**
	 * A program that is not here, or is not said.
	 *
	 * @param plain whether nothing is said to it, and no cycle is in force
	 */
	private void missing(CalledPrograms.Callee program, Optional<WordRef> word, boolean plain) {
		if (program.unsaid()) {
			out.notFollowed(flow.block(), word.map(WordRef::written).orElse("the call") + " says no program with P", word);
		} else if (program.ofMaker()) {
			out.notFollowedByMaker(flow.block(),
					program + " is not here (O9000 to O9999 belong to makers of machines and probes): what it does is not known", word);
			losePlace();
		} else {
			missing(program.toString(), word, plain);
		}
	}

	private void missing(String what, Optional<WordRef> word, boolean plain) {
		String why = what + " is neither in this file nor beside it: what it does is not known";
		if (plain) {
			out.notFollowedPlainCall(flow.block(), why, word);
		} else {
			out.notFollowedCall(flow.block(), why, word);
		}
		losePlace();
	}

	private void losePlace() {
		for (int axis = 0; axis < 3; axis++) {
			state.place.lose(axis);
		}
	}

	/** A program beside the main one. */
	Optional<Source> neighbour(String name) {
		return programs.neighbour(name);
	}

	/** Goes into a program; false where calls are too deep, or it is to be passed no times. */
	boolean enter(Found found, boolean ownLocals, boolean oWord, Optional<WordRef> word) {
		if (found.repeats < 1) {
			return false;
		}
		boolean forEver = flow.endless().callsItself(found);
		if (forEver || flow.frames().size() > deepest) {
			out.stopped(flow.block(), (forEver ? "the program calls itself without end" : "calls are more than " + deepest + " deep")
					+ found.reading + ": a control stops here with an alarm", word);
			flow.stop();
			return false;
		}
		flow.winds();
		out.event(flow.block(), Step.EventKind.SUB_CALL, word, Setting.NONE);
		flow.frames().push(new CallFrame(found.source, Optional.of(flow.block()), found.start, found.end, ownLocals, oWord, found.repeats));
		return true;
	}

	/** {@code o100 call [1] [2]}: arguments become #1, #2, the rest 0; elsewhere a file of that name has it. */
	void oCall(String name, Element.OStatement statement) {
		Optional<Found> found = programs.oSub(name);
		if (found.isEmpty()) {
			missing("o" + name, Optional.empty(), false);
			return;
		}
		List<Value> values = statement.arguments().stream().map(flow.evaluator()::value).toList();
		if (enter(found.get(), true, true, Optional.empty())) {
			flow.variables().enter(Value.ZERO);
			for (int i = 0; i < values.size() && i < 30; i++) {
				flow.variables().set(i + 1, values.get(i));
			}
		}
	}
}
