package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.comment.ChangedLines;
import truelead.checker.machine.Budget;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Interpreter;
import truelead.checker.machine.Restart;
import truelead.checker.machine.Step;
import truelead.checker.machine.StepSink;
import truelead.checker.machine.ToolChanges;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;

/** The steps of a program as they were recorded, and at which changes of the tool it may be followed again from there. */
final class Trace implements StepSink, ToolChanges {

	/** Numbers of steps that are kept for each line, so that an edit that makes a step more changes no number behind the next change of the tool. */
	private static final int STEPS_A_LINE = 4;

	/** A change of the tool that begins a stay, and what is in force before it. */
	private record Beginning(int stay, Restart restart, int order, Compensation compensated) {

		boolean same(Beginning other) {
			return stay == other.stay && order == other.order && compensated == other.compensated && restart.same(other.restart);
		}
	}

	private final Recorder recorder;
	/** In order. */
	private final List<Beginning> beginnings = new ArrayList<>();
	/** What was recorded of the text before; empty for the steps of a whole program. */
	private final Optional<Trace> before;
	private final int firstStay;
	private final int unchanged;
	private Optional<Beginning> pending = Optional.empty();
	private boolean winds;
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
		trace.winds |= WorkReader.turning(profile) || budget.cancelled().getAsBoolean();
		trace.behind = trace.recorder.tools.size();
		return trace;
	}

	/**
	 * The steps of the stays that may differ in another text of the program: from the one that the first changed line is in on, up to one that begins with
	 * the same state as before. Empty where all has to be followed again.
	 */
	Optional<Trace> again(ProgramFile program, ProgramFolder folder, MachineProfile profile, ChangedLines changed, Budget budget) {
		int found = at(changed.first());
		if (winds || found < 0) {
			return Optional.empty();
		}
		Beginning from = beginnings.get(found);
		Trace trace = new Trace(new Recorder(profile, from.stay(), from.order(), from.compensated()), Optional.of(this), from.stay(), changed.last() + 1);
		if (!Interpreter.resume(program, folder, from.restart(), budget, trace, trace)) {
			return Optional.empty();
		}
		trace.recorder.finish();
		trace.behind = trace.behind < 0 ? recorded.tools().size() : trace.behind;
		trace.recorded = Recorded.of(trace.recorder);
		boolean all = !trace.winds && trace.recorder.tools.size() == trace.behind - trace.firstStay && !budget.cancelled().getAsBoolean();
		return all ? Optional.of(trace) : Optional.empty();
	}

	/** Index of the last beginning up to a line; -1 for none. */
	private int at(int line) {
		int low = 0;
		int high = beginnings.size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			if (beginnings.get(middle).restart().line() <= line) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return high;
	}

	Recorder recorder() {
		return recorder;
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
		int low = 0;
		int high = beginnings.size() - 1;
		while (low <= high) {
			int middle = (low + high) >>> 1;
			if (beginnings.get(middle).stay() <= stay) {
				low = middle + 1;
			} else {
				high = middle - 1;
			}
		}
		return high;
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
	}

	@Override
	public boolean takesCopies() {
		return recorder.takesCopies();
	}

	@Override
	public void accept(Step step) {
		int number = recorder.steps();
		recorder.accept(step);
		if (pending.isPresent() && step instanceof Step.Event event && event.kind() == Step.EventKind.TOOL_CHANGE && pending.get().order() == number) {
			beginnings.add(pending.get());
		}
		pending = Optional.empty();
	}

	@Override
	public boolean before(Restart here) {
		if (winds) {
			return false;
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

	@Override
	public void winds() {
		winds = true;
	}
}
