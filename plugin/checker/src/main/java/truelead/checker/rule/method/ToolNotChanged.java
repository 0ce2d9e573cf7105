package truelead.checker.rule.method;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.TimedEvent;
import truelead.checker.work.Work;

/**
 * The first tool of a program is called and never changed to, or changed to and never called, while the others are: what is in the spindle
 * cuts in its stead. Or T0 is changed to, and a thread cut by it.
 */
public final class ToolNotChanged implements Rule {

	@Override
	public String name() {
		return "tool-not-changed";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		List<ToolUse> tools = work.tools();
		Optional<ToolUse> changed = tools.stream().limit(2).filter(tool -> tool.change().isPresent()).findFirst();
		if (changed.isEmpty() || work.shop().profile().isLathe() || work.course().subprogramAlone()
				|| work.operationsOfProgram().isEmpty()) {
			return;
		}
		ToolUse first = tools.get(0);
		Optional<Draft> draft = first.change().isEmpty() && cuts(first) ? calledAlone(first, changed.get(), work) : Optional.empty();
		draft.or(() -> unnamed(changed.get(), work)).or(() -> emptied(work)).ifPresent(said -> {
			work.dependsOnAll();
			found.accept(said.finding());
		});
	}

	/** T0 changed to, which leaves the spindle empty, and a thread cut behind it, where other tools have numbers of their own. */
	private Optional<Draft> emptied(Work work) {
		Optional<ToolUse> other = work.tools().stream().filter(tool -> tool.number() > 0 && cuts(tool)).findFirst();
		return other.flatMap(numbered -> work.operationsOfProgram().stream().filter(operation -> operation.tool().number() == 0
				&& operation.tool().change().isPresent()).findFirst().map(operation -> Draft.of(this, Severity.WARNING,
						operation.tool().tool(), operation.tool().change().get(), "T0 leaves the spindle empty, and a thread is cut behind "
						+ "it: nothing is threaded; the tool's own number" + operation.tool().summary().lengthOffsets().stream()
								.filter(offset -> offset.value() > 0).findFirst().map(offset -> ", T"
										+ Figures.number(offset.value(), 0) + " by its offset").orElse("")).on(operation)
						.related(numbered.change().orElse(operation.block()), "a tool with a number")));
	}

	private static boolean cuts(ToolUse tool) {
		return tool.summary().cutDry() || tool.summary().cutWithCoolant();
	}

	/** A T word that another one follows before any tool change, while the spindle turns or its offset is taken. */
	private Optional<Draft> calledAlone(ToolUse before, ToolUse changed, Work work) {
		Setting called = Setting.NONE;
		Optional<WordRef> lost = Optional.empty();
		boolean works = false;
		for (TimedEvent timed : work.course().events()) {
			Step.Event event = timed.event();
			if (timed.order() > changed.firstOrder()) {
				break;
			}
			if (event.kind() == Step.EventKind.SPINDLE) {
				works |= event.modal().spindle() != SpindleTurn.STOPPED;
			} else if (event.kind() == Step.EventKind.TOOL_SELECTED || event.kind() == Step.EventKind.TOOL_CHANGE) {
				boolean passed = (works || ownOffset(before, called)) && !same(called, event.value());
				lost = lost.isEmpty() && passed ? called.word() : lost;
				called = event.value();
				works = false;
			}
			if (event.kind() == Step.EventKind.TOOL_CHANGE) {
				return lost.map(word -> calledAlone(word, changed, event.words().get(0)));
			}
		}
		return Optional.empty();
	}

	private static boolean ownOffset(ToolUse tool, Setting called) {
		return tool.summary().lengthOffsets().stream().anyMatch(offset -> offset.value() == called.value());
	}

	private static boolean same(Setting called, Setting other) {
		return called.known() && other.known() ? called.value() == other.value()
				: called.word().map(WordRef::written).equals(other.word().map(WordRef::written));
	}

	private Draft calledAlone(WordRef word, ToolUse changed, WordRef change) {
		String code = Figures.written(change);
		return Draft.of(this, Severity.WARNING, Location.of(word), Figures.written(word)
				+ " calls a tool and nothing changes to it before it cuts, as " + code + " does for " + changed.name()
				+ ": what is in the spindle cuts in its stead; " + code + " behind it, or see that it is in the spindle")
				.related(change.block(), "a tool change")
				.fix(new Fix("Add " + code, false, "see that the tool is not in the spindle already",
						List.of(BlockText.append(word.block(), code))));
	}

	/** A tool change before any T word, where the later ones name their tools and none waits from the end of the program before. */
	private Optional<Draft> unnamed(ToolUse changed, Work work) {
		Optional<WordRef> code = changed.tool().word().filter(word -> word.address() == 'M');
		Optional<ToolUse> other = work.tools().stream().filter(tool -> tool.change().isPresent() && tool.tool().known()).findFirst();
		if (code.isEmpty() || changed.tool().known() || !cuts(changed) || other.isEmpty() || waits(work.course().events())) {
			return Optional.empty();
		}
		String own = changed.summary().lengthOffsets().stream().filter(Setting::known).findFirst()
				.map(offset -> "; T" + Figures.number(offset.value(), 0) + ", as its offset says").orElse("");
		return Optional.of(Draft.of(this, Severity.WARNING, changed.tool(), changed.change().orElseThrow(), "no T says which tool "
				+ Figures.written(code.get()) + " changes to, as for " + other.get().name() + ": what was called last comes, or nothing"
				+ own).related(other.get().change().orElseThrow(), "a tool that is named"));
	}

	/** Whether a tool is called behind the last change: it is there when the program begins again. */
	private static boolean waits(List<TimedEvent> events) {
		for (int at = events.size() - 1; at >= 0; at--) {
			Step.EventKind kind = events.get(at).event().kind();
			if (kind == Step.EventKind.TOOL_SELECTED || kind == Step.EventKind.TOOL_CHANGE) {
				return kind == Step.EventKind.TOOL_SELECTED;
			}
		}
		return false;
	}
}
