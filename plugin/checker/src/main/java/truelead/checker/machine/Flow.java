package truelead.checker.machine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import truelead.checker.arithmetic.Evaluator;
import truelead.checker.arithmetic.Value;
import truelead.checker.arithmetic.Variables;
import truelead.checker.chunk.Refrain;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFolder;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Goes through the blocks of a program in the order in which the machine executes them: one after the other, jumps, loops, calls. */
final class Flow {

	private final MachineState state;
	private final Output out;
	private final Meter meter;
	private final Variables variables;
	private final Evaluator evaluator;
	private final Words words;
	private final BlockExecutor executor;
	private final Calls calls;
	private final Contours contours;
	private final Refrains refrains;
	private final Doubts doubts;
	private final Assignments assignments;
	private final BlockParts parts;
	private final Deque<CallFrame> frames = new ArrayDeque<>();
	private final boolean plainMotions;
	private final EndlessLoops endless;
	private final JumpsBack jumpsBack;
	private final RestingPlaces resting;
	private BlockRef block;
	private boolean ended;

	/** @param restarts is told where the program can be followed anew from, and whether it winds */
	Flow(Source source, ProgramFolder folder, MachineState state, Output out, Meter meter, Restarts restarts) {
		this.state = state;
		this.out = out;
		this.meter = meter;
		this.variables = new Variables(new SystemVariables(state)::value, !state.alone && state.profile.is(ProfileKey.UNSET_VARIABLES,
				"zero"), () -> !state.alone && source.outline().oWords());
		this.evaluator = new Evaluator(variables, !state.profile.is(ProfileKey.ARITHMETIC, "rs274"));
		this.words = new Words(evaluator);
		this.executor = new BlockExecutor(state, out, meter, () -> source.callsCycles(state.profile), source::aboutPoles);
		this.contours = new Contours(state, out, meter);
		this.refrains = new Refrains(state, out, meter);
		this.calls = new Calls(this, source, folder, state, out);
		this.doubts = new Doubts(state);
		this.assignments = new Assignments(this, variables, state, doubts);
		this.plainMotions = executor.plainMotions();
		this.parts = new BlockParts(this, state, executor, calls, assignments, words);
		this.endless = new EndlessLoops(frames, evaluator);
		this.resting = new RestingPlaces(restarts, state, out, executor, refrains, calls, frames);
		List<Supplier<Object>> memory = List.of(() -> frames.stream().map(CallFrame::memory).toList(), state::memory, executor::memory,
				calls::memory, variables::memory);
		this.jumpsBack = new JumpsBack(this, state, variables, endless, memory);
	}

	Variables variables() {
		return variables;
	}

	Evaluator evaluator() {
		return evaluator;
	}

	Output out() {
		return out;
	}

	Deque<CallFrame> frames() {
		return frames;
	}

	/** Branches and loops that are passed once, as their conditions are not known. */
	Doubts doubts() {
		return doubts;
	}

	/** The block being executed. */
	BlockRef block() {
		return block;
	}

	/** Runs a program that stands in a range of lines. */
	void run(int from, int to) {
		Source source = calls.main();
		frames.push(new CallFrame(source, Optional.empty(), from, to, false, false, 1));
		block = source.ref(from, Optional.empty(), false);
		resting.from(from);
		while (!ended && !frames.isEmpty()) {
			CallFrame frame = frames.peek();
			if (frame.line >= frame.end) {
				leave();
			} else if (resting.endsAt(frame)) {
				ended = true;
			} else if (contours.beginsAt(frame) && contour(frame) || executor.onCycle() && row(frame)
					|| refrains.beginsAt(frame) && refrain(frame)) {
				continue;
			} else if (!meter.next()) {
				spent();
				return;
			} else {
				step(frame);
			}
		}
		if (!ended) {
			out.event(block, end(), Optional.empty(), Setting.NONE);
		}
	}

	private Step.EventKind end() {
		return state.alone && state.toolChange.isEmpty() ? Step.EventKind.SUB_END : Step.EventKind.PROGRAM_END;
	}

	/** Goes on from a block that was reached with nothing in force but the state and a cycle. */
	void resume(Restart from, int to) {
		executor.resume(from.cycle());
		run(from.line(), to);
	}

	/** The program does not go straight on. */
	void winds() {
		resting.winds();
	}

	/** Goes over a plain contour in one step, where nothing in force gives its words another meaning. */
	private boolean contour(CallFrame frame) {
		return !calls.modal() && !executor.readsOtherwise() && contours.follow(frame, skippable(frame));
	}

	/** Goes over a row of holes in one step, in the same way. */
	private boolean row(CallFrame frame) {
		if (calls.modal() || !executor.row(frame, skippable(frame))) {
			return false;
		}
		block = frame.source.ref(frame.line - 1, frame.caller, skippable(frame));
		return true;
	}

	/**
	 * Goes over the turns of a refrain in one step, in the same way; the last of them is followed without a word, for what it leaves in
	 * force.
	 */
	private boolean refrain(CallFrame frame) {
		if (calls.modal() || executor.readsOtherwise() || doubts.statement().isPresent()) {
			return false;
		}
		Optional<Refrain> gone = refrains.follow(frame, skippable(frame));
		out.silent(gone.isPresent());
		for (int i = 0; gone.isPresent() && i < gone.get().period(); i++) {
			step(frame);
		}
		out.silent(false);
		return gone.isPresent();
	}

	private void spent() {
		if (!meter.cancelled()) {
			String where = jumpsBack.last().map(jump -> "; the loop that ends at line " + (jump.line() + 1) + " of " + jump.file().name()
					+ " may have no end").orElse("");
			out.stopped(jumpsBack.last().orElse(block), "more than " + meter.blocks() + " blocks were executed" + where, Optional.empty());
		}
		ended = true;
	}

	private void step(CallFrame frame) {
		if (plainMotions && !calls.modal() && frame.source.moves(frame.line)
				&& executor.plainMotion(frame.source.motion(), () -> here(frame))) {
			frame.pass();
			return;
		}
		int line = frame.pass();
		Block read = frame.source.block(line);
		List<Element> elements = read.elements();
		if (elements.isEmpty()) {
			return;
		}
		boolean plain = true;
		boolean skippable = skippable(frame);
		for (Element element : elements) {
			if (!(element instanceof Element.Word) && !(element instanceof Element.Comment)
					&& !(element instanceof Element.Assignment given && given.ofMotion())) {
				plain = false;
				skippable |= element instanceof Element.BlockDelete;
				if (!(element instanceof Element.BlockDelete) && !(element instanceof Element.Percent)) {
					winds();
				}
			}
		}
		block = frame.source.ref(line, frame.caller, skippable);
		if (plain) {
			words(read, elements);
		} else {
			parts.execute(frame, read, elements);
		}
	}

	private BlockRef here(CallFrame frame) {
		block = frame.source.ref(frame.line, frame.caller, skippable(frame));
		return block;
	}

	private static boolean skippable(CallFrame frame) {
		return frame.caller.isPresent() && frame.caller.get().skippable();
	}

	/** Executes the words of a block. */
	void words(Block read, List<Element> elements) {
		words.load(block, read.text(), elements);
		if (calls.macroCall(words)) {
			winds();
			return;
		}
		if (resting.endsBefore(words)) {
			ended = true;
			return;
		}
		executor.execute(words, calls::toolWordChanges);
		calls.after(words, executor.moves(words));
	}

	/** Whether a condition holds; one that is not known is said so, and does not hold. */
	boolean holds(Expression condition) {
		Value value = endless.condition(condition);
		if (!value.known()) {
			out.notFollowed(block, value.why().behind("which way the program goes here is not known"), Optional.empty());
		}
		return value.known() && value.number() != 0;
	}

	/** Sets a variable. */
	void assign(Expression target, Value value) {
		assignments.assign(target, value);
	}

	/** Loops that never end. */
	EndlessLoops endless() {
		return endless;
	}

	/** Goes on at a line of the same program, which ends where it would do so for ever. */
	void goTo(CallFrame frame, int line) {
		jumpsBack.goTo(frame, line);
	}

	/** The end of a main program that begins again at a line. */
	void beginAgain(CallFrame frame, int line, WordRef word) {
		jumpsBack.beginAgain(frame, line, word);
	}

	/** The end of the main program, by a word that may begin it again. */
	void endProgram(WordRef word) {
		end(Step.EventKind.PROGRAM_END, Optional.of(word));
	}

	/** The end of the program, wherever it is called from. */
	void end(Optional<WordRef> word) {
		end(end(), word);
	}

	private void end(Step.EventKind kind, Optional<WordRef> word) {
		out.event(block, kind, word, Setting.NONE);
		ended = true;
	}

	/** Nothing behind this is executed. */
	void stop() {
		ended = true;
	}

	/** The end of a subprogram: again, or back to its caller. */
	void leave() {
		CallFrame frame = frames.peek();
		if (frame.repeatsLeft > 0) {
			frame.repeatsLeft--;
			frame.line = frame.start;
			frame.loops.clear();
			return;
		}
		frames.pop();
		doubts.leave(frame);
		if (frame.ownLocals) {
			variables.leave();
		}
		if (frame.caller.isPresent()) {
			block = frame.caller.get();
			out.event(block, Step.EventKind.SUB_RETURN, Optional.empty(), Setting.NONE);
		}
	}
}
