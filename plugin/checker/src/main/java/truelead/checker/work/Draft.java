package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Step;
import truelead.checker.pass.Pass;
import truelead.checker.pass.PassRow;
import truelead.checker.program.BlockRef;
import truelead.checker.stroke.Stroke;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Whereabouts;

/** A threading operation while it is being gathered, before its holes and its callout are known. */
final class Draft {

	final Optional<Tapping.Method> method;
	final ToolLog log;
	final ToolUse tool;
	final BlockRef block;
	final Optional<Cycle> cycle;
	final List<Stroke> strokes = new ArrayList<>();
	final List<Stroke> strays = new ArrayList<>();
	final List<PassRow> passes = new ArrayList<>();
	final List<Tapping.LeftOn> leftOn = new ArrayList<>();

	/** @param method empty for thread milling */
	Draft(Optional<Tapping.Method> method, ToolLog log, ToolUse tool, BlockRef block, Optional<Cycle> cycle) {
		this.method = method;
		this.log = log;
		this.tool = tool;
		this.block = block;
		this.cycle = cycle;
	}

	/** The same with other strokes. */
	Draft with(List<Stroke> others) {
		Optional<Cycle> first = others.isEmpty() || !(others.get(0).step() instanceof Step.Stroke stroke) ? cycle
				: Optional.of(stroke.cycle());
		Draft draft = new Draft(method, log, tool, block, first);
		draft.strokes.addAll(others);
		draft.strays.addAll(strays);
		draft.passes.addAll(passes);
		draft.leftOn.addAll(leftOn);
		return draft;
	}

	/** The same with other passes, of which the first and the last rows are known alone. */
	Draft between(PassRow first, PassRow last) {
		Draft draft = new Draft(method, log, tool, first.pass(0).helix().get(0).block(), cycle);
		draft.strays.addAll(strays);
		draft.leftOn.addAll(leftOn);
		draft.passes.add(first);
		if (last != first) {
			draft.passes.add(last);
		}
		return draft;
	}

	/** The first of the passes. */
	Optional<Pass> firstPass() {
		return passes.isEmpty() ? Optional.empty() : Optional.of(passes.get(0).pass(0));
	}

	/** The last of the passes so far. */
	Optional<Pass> lastPass() {
		return passes.isEmpty() ? Optional.empty() : Optional.of(passes.get(passes.size() - 1)).map(row -> row.pass(row.count() - 1));
	}

	/** Advance in a turn that the first stroke or pass makes, mm; NaN where it is not known. */
	double advance() {
		return firstPass().map(Pass::advance).orElseGet(() -> strokes.isEmpty() ? Double.NaN : strokes.get(0).advance());
	}

	/** Where it stands in the program. */
	Whereabouts whereabouts() {
		return new Whereabouts(log, tool, block, lastBlock(), strokes.stream().mapToInt(Stroke::count).sum());
	}

	int firstOrder() {
		return passes.isEmpty() ? strokes.isEmpty() ? Integer.MAX_VALUE : strokes.get(0).order() : passes.get(0).order(0);
	}

	int lastOrder() {
		return lastPass().map(Pass::last).orElseGet(() -> strokes.isEmpty() ? firstOrder() : strokes.get(strokes.size() - 1).lastOrder());
	}

	/** The block of its last stroke or pass. */
	BlockRef lastBlock() {
		return lastPass().map(pass -> pass.helix().get(pass.helix().size() - 1).block())
				.orElseGet(() -> strokes.isEmpty() ? block : strokes.get(strokes.size() - 1).lastBlock());
	}
}
