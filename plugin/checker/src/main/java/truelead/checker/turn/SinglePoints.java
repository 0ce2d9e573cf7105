package truelead.checker.turn;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.comment.ProgramScan;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Point;
import truelead.checker.machine.StartAngle;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.run.AxisRun;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolBook;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Callouts;
import truelead.checker.wanted.TitleThreads;

/**
 * Gathers the synchronised passes beside a lathe's axis, one for each lead and stretch of a tool, and finds the thread that each is to
 * make.
 */
final class SinglePoints {

	private static final int MOST = 1_000;
	/** Comments above a thread that are read for it. */
	private static final int MOST_ABOVE = 500;

	private final List<Chase> chases = new ArrayList<>();
	/** The stays of their tools. */
	private final BitSet chasing = new BitSet();
	/**
	 * How far from the axis the last motion along X alone began, mm; NaN behind one that goes aslant, and behind the first one of a tool.
	 */
	private double approach = Double.NaN;
	/** The same, the first motion of a tool included: the way in of a cycle is one of its passes. */
	private double across = Double.NaN;
	private boolean fresh = true;
	/** What brought the tool to the level it stands at. */
	private Optional<BlockRef> level = Optional.empty();
	/** What brought the tool to its distance from the axis. */
	private Optional<BlockRef> infeed = Optional.empty();
	/** Where the last synchronised motion ended. */
	private Point end = Point.UNKNOWN;
	/** The thread whose pass has ended, as long as the tool has not gone away along Z. */
	private Optional<Chase> left = Optional.empty();
	/** Whether a motion across alone has taken the tool away from where that pass ended. */
	private boolean withdrawn;

	/** Whether the tool of a stay cuts a thread. */
	boolean cutBy(int tool) {
		return chasing.get(tool);
	}

	/** Another tool comes: from where it goes to its first place says nothing. */
	void changed() {
		fresh = true;
		left = Optional.empty();
	}

	/** A motion of a lathe that may bring a tool to where a pass begins. */
	void motion(Step.Move move) {
		if (move.from().x() != move.to().x()) {
			across = move.from().z() == move.to().z() ? Math.abs(move.from().x()) : Double.NaN;
			approach = fresh ? Double.NaN : across;
			fresh = false;
		}
		level = move.from().z() == move.to().z() ? level : Optional.of(move.block());
		infeed = move.from().x() == move.to().x() ? infeed : Optional.of(move.block());
		end = Point.UNKNOWN;
		if (move.from().z() != move.to().z()) {
			left.filter(chase -> goesBack(chase.first(), move)).ifPresent(chase -> chase.back(move));
			left = Optional.empty();
		}
		withdrawn = move.from().z() == move.to().z();
	}

	/**
	 * Whether a motion leads along Z against the way of a pass, straight, or aslant behind one across that should have taken the tool off
	 * the thread.
	 */
	private boolean goesBack(Step.Synchronised pass, Step.Move move) {
		return (move.from().x() == move.to().x() || withdrawn) && (move.to().z() - move.from().z()) * way(pass) < 0;
	}

	private static double way(Step.Synchronised pass) {
		return pass.to().z() - pass.from().z();
	}

	/** A synchronised motion of a lathe. */
	void motion(Step.Synchronised step, ToolLog tool, int order) {
		boolean beside = Math.abs(step.from().x()) > AxisRun.CENTRE_LINE && step.from().z() != step.to().z();
		if (!beside || step.drivesTap()) {
			return;
		}
		boolean joins = step.from().equals(end) && left.filter(chase -> chase.leads(step, tool)).isPresent();
		Optional<Chase> known = joins ? left : chases.stream().filter(chase -> chase.takes(step, tool)).findFirst();
		if (known.isEmpty() && chases.size() < MOST) {
			known = Optional.of(new Chase(order, tool, step.from().equals(end)));
			chases.add(known.get());
			chasing.set(tool.index());
		}
		if (left.isPresent() && left.equals(known) && step.from().equals(end) && step.from().x() == step.to().x()
				&& (step.to().z() - step.from().z()) * way(left.get().first()) < 0) {
			// the threading code is still in force on the way back
			left.get().back(new Step.Move(step.block(), step.modal(), false, step.from(), step.to(), step.resolution()));
		}
		SinglePoint.Pass pass = new SinglePoint.Pass(step, level, infeed, StartAngle.of(step), Optional.empty());
		boolean cycle = step.code() == 0 && infeed.filter(step.block()::equals).isPresent();
		known.ifPresent(chase -> chase.take(pass, cycle ? across : approach, joins));
		end = step.to();
		left = known;
		withdrawn = false;
	}

	/**
	 * Each with its thread and the hole that it is cut in: the thread is the last certain callout above it in its tool's comments, the
	 * tool's own, that of its line in the tool list, that called out where the tool came before, or the one of the title that is as deep,
	 * or that the work is turned for; of one that nobody names the one that all is cut for.
	 */
	List<SinglePoint> named(List<ToolUse> uses, Commentary commentary, Stays stays, ToolBook book, LatheMotions.Found found) {
		List<SinglePoint> all = new ArrayList<>();
		Map<Integer, TitleThreads> titles = new HashMap<>();
		Map<String, Map<ThreadSpec, Fact<ThreadSpec>>> before = new HashMap<>();
		for (Chase chase : chases) {
			ToolUse use = uses.get(chase.tool.index());
			if (use.facts().isTap() && chase.straight()) {
				continue;
			}
			int line = commentary.mainLine(chase.first().block());
			Optional<Fact<ThreadSpec>> thread = last(called(commentary, chase.first().block()), FactSource.CALLOUT, chase)
					.or(() -> line < 0 ? Optional.empty()
							: last(commentary.free(commentary.main().file(), stays.freeFrom(chase.tool), line), FactSource.CALLOUT, chase));
			Optional<Fact<ThreadSpec>> named = thread.or(() -> use.facts().thread())
					.or(() -> last(book.listed(chase.tool), FactSource.TOOL_LIST, chase))
					.or(() -> again(before.getOrDefault(use.name(), Map.of()), chase))
					.or(() -> titled(chase, titles.computeIfAbsent(chase.tool.part(), part -> new TitleThreads(commentary, stays, part)),
							found, uses));
			Optional<Fact<ThreadSpec>> known = named.or(() -> ImpliedThread.of(chase, found, uses));
			thread.ifPresent(called -> before.computeIfAbsent(use.name(), tool -> new LinkedHashMap<>()).put(called.value(), called));
			all.add(new SinglePoint(chase.passes, use, chase.inside(known.map(Fact::value)), known,
					known.filter(Fact::stated).flatMap(fact -> length(chase, fact, commentary, stays, titles)),
					known.map(Fact::value).flatMap(spec -> chase.bore(spec, found, uses)),
					known.map(Fact::value).flatMap(spec -> chase.shaft(spec, found))));
		}
		return all;
	}

	/** The comments of a subprogram down to a block of it; none in the program itself. */
	private static List<LineComment> called(Commentary commentary, BlockRef block) {
		ProgramScan scan = commentary.of(block.file());
		int start = scan.startOf(block.line());
		boolean own = block.file().name().equals(commentary.main().file().name()) && start == scan.startOf(block.outermost().line());
		return own ? List.of() : commentary.free(block.file(), start, block.line());
	}

	/**
	 * The one thread of the title that is as deep, or else near, or that the outside is turned or the hole bored for, however deep the
	 * passes go, or that all is 25.4 times off.
	 */
	private static Optional<Fact<ThreadSpec>> titled(Chase chase, TitleThreads title, LatheMotions.Found found, List<ToolUse> uses) {
		return title.suiting(chase::suits).or(() -> title.suiting(chase::near))
				.or(() -> title.suiting(chase::suitsCone)).or(() -> title.suiting(thread -> chase.prepared(thread, found, uses)))
				.or(() -> title.cored(chase::suits)).or(() -> title.cored(chase::near))
				.or(() -> title.cored(thread -> chase.prepared(thread, found, uses))).or(() -> title.suiting(chase::inOtherUnit));
	}

	/** How long the comments of the tool, or else the title, say that a thread is, mm. */
	private static Optional<Fact<Double>> length(Chase chase, Fact<ThreadSpec> thread, Commentary commentary, Stays stays,
			Map<Integer, TitleThreads> titles) {
		int line = commentary.mainLine(chase.first().block());
		List<LineComment> own = line < 0 ? List.of() : commentary.free(commentary.main().file(), stays.freeFrom(chase.tool), line);
		LengthUnit unit = chase.first().modal().unit();
		boolean outside = !chase.inside(Optional.of(thread.value()));
		Optional<Fact<Double>> length = Optional.empty();
		for (LineComment comment : own.subList(Math.max(0, own.size() - MOST_ABOVE), own.size())) {
			for (Callout callout : Callouts.chased(comment)) {
				boolean said = callout.spec().withoutClass().equals(thread.value().withoutClass()) && callout.depth().isPresent()
						&& (!outside || callout.longIn(comment.said()));
				length = said ? callout.depthMm(unit).map(mm -> Callouts.fact(comment, callout, FactSource.CALLOUT, mm)) : length;
			}
		}
		return length.or(() -> titles.computeIfAbsent(chase.tool.part(), part -> new TitleThreads(commentary, stays, part))
				.depth(thread.value(), unit, outside));
	}

	/** The thread that was called out where the tool came before, of several the last new one, and that suits: it comes back to it. */
	private static Optional<Fact<ThreadSpec>> again(Map<ThreadSpec, Fact<ThreadSpec>> before, Chase chase) {
		return before.values().stream().filter(called -> chase.suits(called.value())).reduce((one, other) -> other);
	}

	/** The last callout that is certain by its words or by what is cut; of several the last that suits, or else is near. */
	private static Optional<Fact<ThreadSpec>> last(List<LineComment> comments, FactSource source, Chase chase) {
		Optional<Fact<ThreadSpec>> last = Optional.empty();
		Optional<Fact<ThreadSpec>> near = Optional.empty();
		Optional<Fact<ThreadSpec>> suiting = Optional.empty();
		for (LineComment comment : comments.subList(Math.max(0, comments.size() - MOST_ABOVE), comments.size())) {
			boolean named = !CalloutReader.read(comment.said()).isEmpty();
			for (Callout callout : Callouts.chased(comment)) {
				boolean suits = chase.suits(callout.spec());
				if (callout.certain() && named || suits) {
					last = Optional.of(Callouts.fact(comment, callout, source, callout.spec()));
					suiting = suits ? last : suiting;
					near = chase.near(callout.spec()) ? last : near;
				}
			}
		}
		return suiting.isPresent() ? suiting : near.isPresent() ? near : last;
	}
}
