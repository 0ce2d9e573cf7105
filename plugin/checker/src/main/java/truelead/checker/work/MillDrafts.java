package truelead.checker.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.hole.Place;
import truelead.checker.hole.Places;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.CopiedPasses;
import truelead.checker.pass.Pass;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRun;
import truelead.checker.run.ArcRuns;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Callouts;
import truelead.checker.wanted.TitleThreads;

/** Tells thread milling from pockets and bores among the runs of arcs, and gathers the passes into operations. */
final class MillDrafts {

	/** A lead-in or lead-out arc sweeps half a turn or less; a little more for an R a hair off. */
	private static final double LEAD_SWEEP = 0.55 * 2 * Math.PI;

	/** What rounding leaves open of a sweep, radians. */
	private static final double ROUNDED = 0.01;

	/** Steps between without a motion, such as a change of distance mode, part no arcs, mm. */
	private static final double JOINED = 1e-4;

	/** Sweep of a helix that goes round more than once with its lead-in, radians. */
	private static final double ONCE = 1.5 * 2 * Math.PI;

	/** How far the lead of a thread may be off the one cut, a part of it, as by a slip (common practice, no source). */
	private static final double NEAR = 0.3;
	/** How far it may be off where one circle alone goes up, a part of it: the rounding of its words. */
	private static final double AS_CALLED = 0.02;

	private final Commentary commentary;
	private final Stays stays;
	private final List<Draft> drafts = new ArrayList<>();
	private final Set<ArcRun> leads = Collections.newSetFromMap(new IdentityHashMap<>());
	private final Map<ToolLog, Integer> firstCallout = new HashMap<>();
	private final Map<Integer, TitleThreads> titles = new HashMap<>();
	private Draft current;

	MillDrafts(Commentary commentary, Stays stays) {
		this.commentary = commentary;
		this.stays = stays;
	}

	List<Draft> drafts() {
		return drafts;
	}

	/** Finds the lead-in and lead-out arcs among runs that follow each other without a gap, so that they are no passes of their own. */
	void markLeads(List<ArcRun> runs) {
		for (int i = 0; i < runs.size(); i++) {
			ArcRun run = runs.get(i);
			boolean leadIn = i + 1 < runs.size() && isLead(run, runs.get(i + 1), run.end(), runs.get(i + 1).start());
			boolean leadOut = i > 0 && isLead(run, runs.get(i - 1), runs.get(i - 1).end(), run.start());
			if (leadIn || leadOut) {
				leads.add(run);
			}
		}
	}

	/** Whether one of two runs that follow each other leads to the other. */
	static boolean joined(ArcRun one, ArcRun next) {
		return isLead(one, next, one.end(), next.start()) || isLead(next, one, one.end(), next.start());
	}

	/** Whether a run is a lead-in or lead-out arc of another one. */
	boolean isLead(ArcRun run) {
		return !leads.isEmpty() && leads.contains(run);
	}

	/** Takes a run where it mills a thread; false where it is for the holes. */
	boolean run(ArcRun run, ToolUse tool) {
		if (isLead(run) || !threads(run, tool)) {
			return false;
		}
		draft(run, tool).passes.add(pass(run, tool));
		return true;
	}

	/** Takes runs that come again where they mill threads or lead to such; false, and nothing done, where one of them is for the holes. */
	boolean copies(ArcCopies copies, ToolUse tool) {
		List<ArcRun> first = copies.first();
		markLeads(first);
		int[] passes = IntStream.range(0, first.size()).filter(run -> !isLead(first.get(run)) && threads(first.get(run), tool)).toArray();
		boolean milled = IntStream.range(0, first.size()).anyMatch(run -> !isLead(first.get(run)) && !threads(first.get(run), tool));
		if (milled && !tool.facts().isThreadMill()) {
			return false;
		}
		if (passes.length > 0) {
			draft(first.get(passes[0]), tool).passes.add(new CopiedPasses(copies, passes, run -> pass(run, tool)));
		}
		return true;
	}

	/** The operation that a run belongs to. */
	private Draft draft(ArcRun run, ToolUse tool) {
		boolean goesOn = current != null && current.log == run.tool() && !newCallout(current, run);
		if (!goesOn) {
			current = new Draft(Optional.empty(), run.tool(), tool, run.arcs().get(0).block(), Optional.empty());
			drafts.add(current);
		}
		return current;
	}

	private static boolean isLead(ArcRun arc, ArcRun main, Point ends, Point begins) {
		if (!(arc.sweep() <= LEAD_SWEEP) || arc.tool() != main.tool()) {
			return false;
		}
		boolean joined = ends.distanceInPlane(begins, main.plane()) < JOINED
				&& Math.abs(ends.along(main.plane().axis()) - begins.along(main.plane().axis())) < JOINED;
		return joined && main.sweep() >= arc.sweep() - ROUNDED
				&& arc.centre().distanceInPlane(main.centre(), main.plane()) > 0.1 * main.radius() && arc.radius() < main.radius();
	}

	private boolean threads(ArcRun run, ToolUse tool) {
		if (tool.facts().isThreadMill()) {
			return run.helical() || run.sweep() > ArcRuns.CIRCLE;
		}
		// a helix in chords by a tool that nobody calls a thread mill goes round once at least
		if (!run.helical() || tool.facts().kind().isPresent() || run.inChords() && run.sweep() < ArcRuns.CIRCLE) {
			return false;
		}
		boolean named = tool.facts().thread().isPresent() || tool.facts().comb().isPresent()
				|| firstCallout.computeIfAbsent(run.tool(), this::firstCallout) <= lineOf(run) || titled(run);
		boolean compensated = run.arcs().get(0).modal().compensation() != Compensation.OFF;
		return named && (compensated || run.advance() > 0 || tool.facts().thread().isPresent());
	}

	/**
	 * Whether a helix goes up, as no ramp into a pocket does, with the lead of a thread of the title: or one not far off, where it goes
	 * more than once round or beside its path.
	 */
	private boolean titled(ArcRun run) {
		double lead = run.advance() / run.sweep() * 2 * Math.PI;
		double near = run.sweep() > ONCE || run.arcs().get(0).modal().compensation() != Compensation.OFF ? NEAR : AS_CALLED;
		return lead > 0 && run.sweep() > ArcRuns.CIRCLE
				&& titles.computeIfAbsent(run.tool().part(), part -> new TitleThreads(commentary, stays, part)).suiting(thread ->
						Math.abs(thread.lead() - lead) <= near * thread.lead()).isPresent();
	}

	/** The line of the first comment of a stay that names a thread for certain; the largest number where none does. */
	private int firstCallout(ToolLog log) {
		for (LineComment comment : commentary.free(commentary.main().file(), stays.freeFrom(log), stays.to(log))) {
			if (Callouts.any(List.of(comment))) {
				return comment.line();
			}
		}
		return Integer.MAX_VALUE;
	}

	private boolean newCallout(Draft before, ArcRun next) {
		return Callouts.any(commentary.between(before.lastBlock(), next.arcs().get(0).block()));
	}

	private int lineOf(ArcRun run) {
		return commentary.mainLine(run.arcs().get(0).block());
	}

	private static Pass pass(ArcRun run, ToolUse tool) {
		Point centre = run.centre();
		Step.Arc first = run.arcs().get(0);
		Place place = Places.of(run.tool().part(), first.modal(), run.plane(), centre);
		return new Pass(run.order(), run.last(), tool, rapidIn(run), entry(run.before()), run.arcs(), exit(run.after()), place,
				Cuts.external(run), run.turns(), run.resolution());
	}

	/** The last move at rapid across the axis before what leads in, with nothing but rapid moves between. */
	private static Optional<Step.Move> rapidIn(ArcRun run) {
		List<Step> before = run.before();
		for (int i = before.size() - entry(before).size() - 1; i >= 0 && before.get(i) instanceof Step.Move move && move.rapid(); i--) {
			if (move.from().distanceInPlane(move.to(), run.plane()) > JOINED) {
				return Optional.of(move);
			}
		}
		return Optional.empty();
	}

	/** What leads in: back to the last rapid move. */
	private static List<Step> entry(List<Step> before) {
		int from = before.size();
		while (from > 0 && !(before.get(from - 1) instanceof Step.Move move && move.rapid())) {
			from--;
		}
		return before.subList(from, before.size());
	}

	/** What leads out: up to the move that takes the cutter away along the axis, or the next helix. */
	private static List<Step> exit(List<Step> after) {
		int to = 0;
		while (to < after.size()) {
			Step step = after.get(to++);
			if (step instanceof Step.Move move) {
				int axis = move.modal().plane().axis();
				if (Double.compare(move.from().along(axis), move.to().along(axis)) != 0) {
					break;
				}
			}
		}
		return after.subList(0, to);
	}
}
