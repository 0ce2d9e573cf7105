package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntUnaryOperator;
import truelead.checker.hole.Resorting;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.Pass;
import truelead.checker.pass.PassRow;
import truelead.checker.pass.PassSplice;
import truelead.checker.pass.PassStretches;
import truelead.checker.program.InOrder;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRun;
import truelead.checker.tool.ToolUse;

/**
 * The passes of a thread milling operation in a part of a tool's stay, as they were before an edit and as they are now.
 *
 * @param operation the number of the operation; below 0 where there are none
 * @param from      number of the first step of the part
 * @param to        number of the step behind it
 */
record EditedPasses(int operation, int from, int to, List<PassRow> before, List<PassRow> now) {

	/** The part of a stay that was followed again. */
	record Part(Recorded before, Recorded now, int from, int to, ToolUse tool) {
	}

	private static final EditedPasses NONE = new EditedPasses(-1, 0, 0, List.of(), List.of());

	/**
	 * The passes of a part; empty where its arcs make anything else, or more depends on them than one operation.
	 *
	 * @param all       all that was recorded before the edit
	 * @param operation the number of the operation that a step threads in; below 0 for none
	 */
	static Optional<EditedPasses> of(Part part, Recorded all, WorkReader.Reading reading, List<ThreadingOperation> operations,
			IntUnaryOperator operation) {
		Recorded before = part.before();
		Recorded now = part.now();
		if (before.arcRuns().isEmpty() && before.arcCopies().isEmpty() && now.arcRuns().isEmpty() && now.arcCopies().isEmpty()) {
			return Optional.of(NONE);
		}
		Optional<List<PassRow>> old = rows(before, part.tool(), reading.mills());
		Optional<List<PassRow>> made = rows(now, part.tool(), reading.mills());
		if (old.isEmpty() || made.isEmpty() || joined(all, part, before.arcRuns()) || joined(all, part, now.arcRuns())) {
			return Optional.empty();
		}
		if (old.get().isEmpty()) {
			return Optional.of(NONE).filter(none -> made.get().isEmpty());
		}
		int milled = operation.applyAsInt(old.get().get(0).order(0));
		boolean one = milled >= 0 && milled == operation.applyAsInt(last(old.get()).order())
				&& operations.get(milled) instanceof ThreadMilling;
		return Optional.of(new EditedPasses(milled, part.from(), part.to(), old.get(), made.get()))
				.filter(passes -> one && !passes.parted(operations, reading));
	}

	/** The passes that arcs make; empty where they make anything else, or passes of several operations. */
	private static Optional<List<PassRow>> rows(Recorded part, ToolUse tool, MillDrafts mills) {
		mills.markLeads(part.arcRuns());
		boolean threads = true;
		int copies = 0;
		for (ArcRun run : part.arcRuns()) {
			for (; copies < part.arcCopies().size() && part.arcCopies().get(copies).order() < run.order(); copies++) {
				threads &= mills.copies(part.arcCopies().get(copies), tool);
			}
			threads &= mills.run(run, tool) || mills.isLead(run) || tool.facts().isThreadMill();
		}
		for (ArcCopies more : part.arcCopies().subList(copies, part.arcCopies().size())) {
			threads &= mills.copies(more, tool);
		}
		List<Draft> drafts = mills.drafts();
		return threads && drafts.size() <= 1 ? Optional.of(drafts.isEmpty() ? List.of() : drafts.get(0).passes) : Optional.empty();
	}

	/** Whether the first or the last of the runs of a part may lead to one outside it. */
	private static boolean joined(Recorded all, Part part, List<ArcRun> here) {
		int from = InOrder.before(all.arcRuns(), ArcRun::order, part.from());
		int to = InOrder.before(all.arcRuns(), ArcRun::order, part.to());
		return !here.isEmpty() && (from > 0 && MillDrafts.joined(all.arcRuns().get(from - 1), here.get(0))
				|| to < all.arcRuns().size() && MillDrafts.joined(here.get(here.size() - 1), all.arcRuns().get(to)));
	}

	/**
	 * Whether a callout stands from the last pass before the part to the first one behind it, so that passes may be of another operation
	 * than before.
	 */
	private boolean parted(List<ThreadingOperation> operations, WorkReader.Reading reading) {
		int first = reading.mainLine(before.get(0).pass(0).helix().get(0).block());
		int last = lastLine(before, reading);
		if (!now.isEmpty()) {
			first = Math.min(first, reading.mainLine(now.get(0).pass(0).helix().get(0).block()));
			last = Math.max(last, lastLine(now, reading));
		}
		ThreadMilling milling = (ThreadMilling) operations.get(operation);
		Optional<MillPass> previous = milling.stretches().beside(before.get(0).order(0)).stream()
				.filter(pass -> pass.order() < from).findFirst();
		Optional<MillPass> next = milling.stretches().beside(last(before).order()).stream().filter(pass -> pass.order() >= to).findFirst();
		boolean alone = operations.stream().noneMatch(other -> other != milling && other.tool() == milling.tool()
				&& other instanceof ThreadMilling);
		int above = previous.map(pass -> reading.mainLine(pass.last().block())).orElse(first);
		int below = next.map(pass -> reading.mainLine(pass.block())).orElse(last);
		return !alone && (previous.isEmpty() || next.isEmpty()) || reading.callout(above + 1, below);
	}

	private static int lastLine(List<PassRow> rows, WorkReader.Reading reading) {
		Pass pass = last(rows);
		return reading.mainLine(pass.helix().get(pass.helix().size() - 1).block());
	}

	private static Pass last(List<PassRow> rows) {
		PassRow row = rows.get(rows.size() - 1);
		return row.pass(row.count() - 1);
	}

	/** Those of an operation, which may be none. */
	EditedPasses of(int number) {
		return operation == number ? this : NONE;
	}

	/**
	 * The passes of an operation with these in their place, and with some at other holes; empty where none is left, or the hole of one is
	 * not known.
	 */
	Optional<PassStretches> into(PassStretches known, NavigableMap<Integer, Integer> moved, Resorting resorting) {
		List<List<Integer>> together = resorting.numbers().stream().map(hole -> resorting.holes().edited(hole).visits()).toList();
		return new PassSplice(known, from, to, now, moved, resorting.holes()).made(together);
	}

	/**
	 * Hands out what is done elsewhere now, or at another time.
	 *
	 * @param within how far a hole may be from a place written to a resolution, mm
	 */
	void differ(DoubleUnaryOperator within, List<Resorting.Doing> removed, List<Resorting.Doing> added) {
		List<Resorting.Doing> was = doings(before, within);
		List<Resorting.Doing> is = doings(now, within);
		int at = 0;
		for (Resorting.Doing gone : was) {
			for (; at < is.size() && is.get(at).order() < gone.order(); at++) {
				added.add(is.get(at));
			}
			if (at < is.size() && is.get(at).equals(gone)) {
				at++;
			} else {
				removed.add(gone);
			}
		}
		added.addAll(is.subList(at, is.size()));
	}

	private static List<Resorting.Doing> doings(List<PassRow> rows, DoubleUnaryOperator within) {
		List<Resorting.Doing> doings = new ArrayList<>();
		for (PassRow row : rows) {
			for (int i = 0; i < row.count(); i++) {
				doings.add(new Resorting.Doing(row.order(i), row.place(i), within.applyAsDouble(row.resolution(i)), Optional.empty()));
			}
		}
		return doings;
	}
}
