package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.comment.ChangedLines;
import truelead.checker.machine.Budget;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Interpreter;
import truelead.checker.machine.Restart;
import truelead.checker.machine.Restarts;
import truelead.checker.machine.Step;
import truelead.checker.machine.StepSink;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.InOrder;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/** The steps of a program as they were recorded, and at which changes of the tool it may be followed again from there. */
final class Trace implements StepSink, Restarts {

	/**
	 * Numbers of steps that are kept for each line, so that an edit that makes a step more changes no number behind the next change of the
	 * tool.
	 */
	private static final int STEPS_A_LINE = 4;

	/** Steps after which what an edit changes is no part of the program any more: where numbers alone differ, and where codes do. */
	private static final int MOST_BY_NUMBERS = 100_000;
	private static final int MOST_BY_CODES = 20_000;

	/** A change of the tool that begins a stay, and what is in force before it. */
	private record Beginning(int stay, Restart restart, int order, Compensation compensated) {

		boolean same(Beginning other) {
			return stay == other.stay && order == other.order && compensated == other.compensated && restart.same(other.restart);
		}
	}

	/** A block in the middle of a tool's stay where nothing is under way. */
	private record Rest(Restart restart, int order, Recorder.Halt halt) {

		boolean same(Rest other) {
			return order == other.order && restart.same(other.restart) && halt.same(other.halt);
		}
	}

	private final Recorder recorder;
	/** In order. */
	private final List<Beginning> beginnings = new ArrayList<>();
	/** In order. */
	private final List<Rest> rests = new ArrayList<>();
	/** What was recorded of the text before; empty for the steps of a whole program. */
	private final Optional<Trace> before;
	private final int firstStay;
	private final int unchanged;
	private Optional<Beginning> pending = Optional.empty();
	/** Whether it ends in the stay that it begins in. */
	private boolean within;
	/** Whether it ends where the stay goes on as before. */
	private boolean asBefore;
	private int fromOrder;
	private int fromLine;
	private int orderBehind = Integer.MAX_VALUE;
	private int lineBehind = Integer.MAX_VALUE;
	private boolean winds;
	/** Steps that it may have, and whether it has had more. */
	private int steps = Integer.MAX_VALUE;
	private boolean tooLong;
	private int behind = -1;
	/** What the recorder has, once it is finished; afterwards with the stays in it that were followed again. */
	private Recorded recorded;

	private Trace(Recorder recorder, Optional<Trace> before, int firstStay, int unchanged) {
		this.recorder = recorder;
		this.before = before;
		this.firstStay = firstStay;
		this.unchanged = unchanged;
	}

	/** The steps of a whole program, from its first block on. */
	static Trace of(ProgramFile program, ProgramFolder folder, MachineProfile profile, Budget budget) {
		Trace trace = new Trace(new Recorder(profile, true), Optional.empty(), 0, 0);
		Interpreter.run(program, folder, profile, budget, trace, trace);
		trace.recorder.finish();
		trace.recorded = Recorded.of(trace.recorder);
		trace.winds |= profile.isLathe() || budget.cancelled().getAsBoolean();
		trace.behind = trace.recorder.tools.size();
		return trace;
	}

	/**
	 * The steps of the stays that may differ in another text of the program: from the one that the first changed line is in on, up to one
	 * that begins with the same state as before. Empty where all has to be followed again.
	 */
	Optional<Trace> again(ProgramFile program, ProgramFolder folder, MachineProfile profile, ChangedLines changed, boolean numbersAlone,
			Budget budget) {
		int found = at(changed.first());
		if (winds || found < 0) {
			return Optional.empty();
		}
		Beginning from = beginnings.get(found);
		Trace trace = new Trace(new Recorder(profile, from.stay(), from.order(), from.compensated()), Optional.of(this), from.stay(),
				changed.last() + 1);
		trace.fromLine = from.restart().line();
		trace.steps = numbersAlone ? MOST_BY_NUMBERS : MOST_BY_CODES;
		Interpreter.resume(program, folder, from.restart(), budget, trace, trace);
		if (trace.tooLong) {
			return Optional.empty();
		}
		trace.recorder.finish();
		trace.behind = trace.behind < 0 ? recorded.tools().size() : trace.behind;
		trace.recorded = Recorded.of(trace.recorder);
		boolean all = !trace.winds && trace.recorder.tools.size() == trace.behind - trace.firstStay && !budget.cancelled().getAsBoolean();
		return all ? Optional.of(trace) : Optional.empty();
	}

	/**
	 * The steps of a part of one stay that may differ in another text of the program: from the last block before the first changed line
	 * where nothing was under way on, up to one behind them where all is as before. Empty where the stay as a whole is another one.
	 */
	Optional<Trace> within(ProgramFile program, ProgramFolder folder, MachineProfile profile, ChangedLines changed, boolean numbersAlone,
			Budget budget) {
		int change = at(changed.first());
		int rest = restAt(changed.first());
		if (winds || change < 0 && rest < 0) {
			return Optional.empty();
		}
		boolean mid = rest >= 0 && (change < 0 || rests.get(rest).restart().line() > beginnings.get(change).restart().line());
		Restart from = mid ? rests.get(rest).restart() : beginnings.get(change).restart();
		int order = mid ? rests.get(rest).order() : beginnings.get(change).order();
		ToolLog whole = recorded.tools().get(mid ? rests.get(rest).halt().log().index() : beginnings.get(change).stay());
		Recorder anew = mid ? new Recorder(profile, whole, order, rests.get(rest).halt())
				: new Recorder(profile, whole, order, beginnings.get(change).compensated());
		Trace trace = new Trace(anew, Optional.of(this), whole.index(), changed.last() + 1);
		trace.within = true;
		trace.fromOrder = order;
		trace.fromLine = from.line();
		trace.steps = numbersAlone ? MOST_BY_NUMBERS : MOST_BY_CODES;
		Interpreter.resume(program, folder, from, budget, trace, trace);
		if (trace.tooLong) {
			return Optional.empty();
		}
		trace.recorder.finish();
		trace.recorded = Recorded.of(trace.recorder);
		boolean one = !trace.winds && trace.recorder.tools.size() == 1 && !budget.cancelled().getAsBoolean();
		trace.behind = whole.index() + 1;
		boolean all = trace.asBefore || trace.orderBehind == Integer.MAX_VALUE && trace.behind == recorded.tools().size()
				&& trace.recorder.stay().same(whole);
		return one && all ? Optional.of(trace) : Optional.empty();
	}

	/** Index of the last beginning up to a line; -1 for none. */
	private int at(int line) {
		return InOrder.before(beginnings, beginning -> beginning.restart().line(), line + 1) - 1;
	}

	/** The same of the blocks in the middle of stays. */
	private int restAt(int line) {
		return InOrder.before(rests, rest -> rest.restart().line(), line + 1) - 1;
	}

	Recorder recorder() {
		return recorder;
	}

	/** The line that the program was followed from. */
	int fromLine() {
		return fromLine;
	}

	/** Number of the first stay recorded here. */
	int firstStay() {
		return firstStay;
	}

	/** Number of the stay behind the last one recorded here. */
	int behind() {
		return behind;
	}

	/** What was recorded. */
	Recorded recorded() {
		return recorded;
	}

	/** The first of the stays that are followed together with one: no restart lies between them. */
	int from(int stay) {
		int found = last(stay);
		return found < 0 ? 0 : beginnings.get(found).stay();
	}

	/** The stay behind the last of those that are followed together with one. */
	int to(int stay) {
		int next = last(stay) + 1;
		return next < beginnings.size() ? beginnings.get(next).stay() : recorded.tools().size();
	}

	/** Index of the last beginning up to a stay; -1 for none. */
	private int last(int stay) {
		return InOrder.before(beginnings, Beginning::stay, stay + 1) - 1;
	}

	/** What was recorded here of the part of a stay that was followed again {@link #within} it. */
	Recorded part(Trace again) {
		return recorded.part(again.fromOrder, again.orderBehind, again.fromLine, again.lineBehind, again.recorded.tools());
	}

	/** The same with what is recorded there now. */
	EditedPasses.Part edited(Trace again, ToolUse tool) {
		return new EditedPasses.Part(part(again), again.recorded, again.fromOrder, again.orderBehind, tool);
	}

	/** Takes a part of a stay that was followed again {@link #within} it, with all that was recorded of it, in place of that before. */
	void takePart(Trace again) {
		recorded = recorded.with(again.recorded, again.fromOrder, again.orderBehind, again.fromLine, again.lineBehind);
		takeRests(again);
	}

	/** Takes the blocks where nothing is under way in a part of a stay that was followed again. */
	void takeRests(Trace again) {
		List<Rest> place = rests.subList(InOrder.before(rests, Rest::order, again.fromOrder + 1),
				InOrder.before(rests, Rest::order, again.orderBehind));
		place.clear();
		place.addAll(again.rests);
	}

	/** Takes stays that were followed again, with all that was recorded of them, in place of those before. */
	void take(Trace again) {
		recorded = recorded.with(again.recorded, again.firstStay, again.behind);
		takeBeginnings(again);
	}

	/** Takes the beginnings of stays that were followed again in place of those before. */
	void takeBeginnings(Trace again) {
		int from = at(again.beginnings.get(0).restart().line());
		int to = from;
		while (to < beginnings.size() && beginnings.get(to).stay() < again.behind) {
			to++;
		}
		List<Beginning> place = beginnings.subList(from, to);
		place.clear();
		place.addAll(again.beginnings);
		List<Rest> inside = rests.subList(InOrder.before(rests, rest -> rest.halt().log().index(), again.firstStay),
				InOrder.before(rests, rest -> rest.halt().log().index(), again.behind));
		inside.clear();
		inside.addAll(again.rests);
	}

	@Override
	public boolean takesCopies() {
		return recorder.takesCopies();
	}

	@Override
	public void accept(Step step) {
		int number = recorder.steps();
		steps--;
		recorder.accept(step);
		if (pending.isPresent() && step instanceof Step.Event event && event.kind() == Step.EventKind.TOOL_CHANGE
				&& pending.get().order() == number) {
			beginnings.add(pending.get());
		}
		pending = Optional.empty();
	}

	@Override
	public boolean before(Restart here) {
		if (winds) {
			return false;
		}
		if (steps < 0) {
			tooLong = true;
			return true;
		}
		if (within && !recorder.tools.isEmpty()) {
			recorder.skipTo(STEPS_A_LINE * here.line());
			Beginning next = new Beginning(firstStay + 1, here, recorder.steps(), recorder.compensated());
			int known = before.get().at(here.line());
			boolean same = here.line() >= unchanged && known >= 0 && before.get().beginnings.get(known).same(next);
			return ends(same && recorder.stay().same(recorder.tools.get(0)), next.restart(), next.order());
		}
		recorder.skipTo(STEPS_A_LINE * here.line());
		Beginning next = new Beginning(firstStay + recorder.tools.size(), here, recorder.steps(), recorder.compensated());
		pending = Optional.of(next);
		if (before.isEmpty() || here.line() < unchanged) {
			return false;
		}
		int known = before.get().at(here.line());
		boolean same = known >= 0 && before.get().beginnings.get(known).same(next);
		behind = same ? next.stay() : behind;
		return same;
	}

	/** Ends the part of a stay before a block. */
	private boolean ends(boolean same, Restart here, int order) {
		asBefore = same;
		orderBehind = order;
		lineBehind = here.line();
		return true;
	}

	@Override
	public boolean resting() {
		return !winds && recorder.resting();
	}

	@Override
	public boolean rests(Restart here) {
		if (steps < 0) {
			tooLong = true;
			return true;
		}
		recorder.skipTo(STEPS_A_LINE * here.line());
		Rest next = new Rest(here, recorder.steps(), recorder.halt());
		int known = within && here.line() >= unchanged ? before.get().restAt(here.line()) : -1;
		boolean same = known >= 0 && before.get().rests.get(known).same(next);
		if (same) {
			return ends(true, here, next.order());
		}
		rests.add(next);
		return false;
	}

	@Override
	public void winds() {
		winds = true;
	}
}
