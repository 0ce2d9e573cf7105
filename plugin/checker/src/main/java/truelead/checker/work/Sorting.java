package truelead.checker.work;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import truelead.checker.comment.Commentary;
import truelead.checker.hole.Cut;
import truelead.checker.hole.HoleBook;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Place;
import truelead.checker.hole.Places;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Plane;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRun;
import truelead.checker.run.AxisRun;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/** Sorts what was recorded, in the order of execution, into cuts at holes and threading operations. */
final class Sorting {

	/** Something recorded and when; run in order of time. */
	private record Timed(int order, Runnable sort) {
	}

	private final Recorded recorded;
	private final List<TurnedBores.Pass> bores;
	private final Map<ToolLog, ToolUse> uses;
	private final HoleBook book;
	private final TapDrafts taps;
	private final MillDrafts mills;
	private final double tolerance;
	private final Map<Draft.Stroke, int[]> touched = new IdentityHashMap<>();
	private Holes holes;

	Sorting(Recorded recorded, List<TurnedBores.Pass> bores, Map<ToolLog, ToolUse> uses, Commentary commentary, Stays stays, MachineProfile profile) {
		this.recorded = recorded;
		this.bores = bores;
		this.uses = uses;
		this.tolerance = profile.positionTolerance();
		this.book = new HoleBook(tolerance);
		this.taps = new TapDrafts(profile, commentary, stays);
		this.mills = new MillDrafts(commentary, stays);
		sort();
	}

	/** All holes. */
	Holes holes() {
		return holes;
	}

	/** All threading operations found, in the order of execution. */
	List<Draft> drafts() {
		List<Draft> drafts = new ArrayList<>(taps.drafts());
		drafts.addAll(mills.drafts());
		drafts.sort((one, other) -> Integer.compare(one.firstOrder(), other.firstOrder()));
		return drafts;
	}

	/** The strokes of a draft with their holes. */
	Strokes strokes(List<Draft.Stroke> strokes) {
		return new Strokes(strokes, holes, touched);
	}

	/** The passes of a draft with their holes. */
	PassStretches passes(List<PassRow> passes) {
		return PassStretches.of(passes, holes, this::within);
	}

	private void touch(PassRow row) {
		for (int i = 0; i < row.count(); i++) {
			book.touch(row.place(i), within(row.resolution(i)));
		}
	}

	/** Two positions computed from arcs may be apart by the rounding of their words. */
	private double within(double resolution) {
		return within(tolerance, resolution);
	}

	/** How far a hole may be from a place written to a resolution, mm. */
	static double within(double tolerance, double resolution) {
		return tolerance + 2 * resolution;
	}

	private void sort() {
		mills.markLeads(recorded.arcRuns());
		List<Timed> all = new ArrayList<>();
		recorded.strokes().forEach(s -> all.add(new Timed(s.order(), () -> stroke(s))));
		recorded.axisRuns().forEach(r -> all.add(new Timed(r.order(), () -> run(r))));
		recorded.arcRuns().forEach(r -> all.add(new Timed(r.order(), () -> arcs(r))));
		recorded.arcCopies().forEach(c -> all.add(new Timed(c.order(), () -> copies(c))));
		bores.forEach(p -> all.add(new Timed(p.order(), () -> bore(p))));
		recorded.events().forEach(e -> all.add(new Timed(e.order(), () -> taps.event(e.event(), e.order(), e.tool()))));
		all.sort((one, other) -> Integer.compare(one.order(), other.order()));
		all.forEach(timed -> timed.sort().run());
		int made = book.count();
		List<Draft> drafts = drafts();
		for (Draft draft : drafts) {
			draft.strokes.forEach(s -> s.row().ifPresentOrElse(row -> touched.put(s, book.touch(s.place(), row)), () -> book.touch(s.place(), 0)));
			draft.passes.forEach(this::touch);
		}
		if (book.count() > made) {
			// one of the new holes may be nearer
			touched.clear();
		}
		holes = book.finish();
	}

	private void stroke(Recorder.TimedStroke timed) {
		ToolUse use = uses.get(timed.tool());
		if (!taps.cycle(timed, use)) {
			taps.otherCycle();
			Cut cut = Cuts.of(timed.order(), timed.stroke(), use, Places.of(timed.tool().part(), timed.stroke()));
			timed.row().ifPresentOrElse(row -> book.add(cut, row), () -> book.add(cut));
		}
	}

	private void run(AxisRun run) {
		ToolUse use = uses.get(run.tool());
		// along X a lathe faces and grooves; what is called a drill or a tap there is driven, and makes a hole in the side
		boolean turns = run.place().plane() == Plane.YZ && run.in().modal().plane() == Plane.ZX && use.facts().kind().filter(kind -> kind.value() == ToolKind.DRILL || kind.value().tap()).isEmpty();
		if (!turns && !taps.run(run, use) && !run.synchronised() && !use.facts().isThreadMill()) {
			book.add(Cuts.of(run, use));
		}
	}

	private void bore(TurnedBores.Pass pass) {
		ToolUse use = uses.get(pass.tool());
		if (pass.bores(use)) {
			book.add(pass.cut(use));
		}
	}

	/** Runs that come again; those that make no threads are each for themselves. */
	private void copies(ArcCopies copies) {
		if (!mills.copies(copies, uses.get(copies.tool()))) {
			for (int copy = 0; copy < copies.count(); copy++) {
				List<ArcRun> runs = copies.runs(copy);
				mills.markLeads(runs);
				runs.forEach(this::arcs);
			}
		}
	}

	private void arcs(ArcRun run) {
		ToolUse use = uses.get(run.tool());
		if (!mills.run(run, use) && !mills.isLead(run) && !use.facts().isThreadMill()) {
			Place place = Places.of(run.tool().part(), run.arcs().get(0).modal(), run.plane(), run.centre());
			Cuts.of(run, use, place).ifPresent(book::add);
		}
	}
}
