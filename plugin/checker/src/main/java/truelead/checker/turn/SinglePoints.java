package truelead.checker.turn;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Places;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.run.AxisRun;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolBook;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Callouts;
import truelead.checker.wanted.TitleThreads;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Gathers the synchronised passes beside a lathe's axis, one for each lead and stretch of a tool, and finds the thread that each is to make. */
final class SinglePoints {

	private static final int MOST = 1_000;
	/** Comments above a thread that are read for it. */
	private static final int MOST_ABOVE = 500;

	/** Whole degrees are written up to this; more are thousandths of a degree, as Q180000 (common practice, no source). */
	private static final double WHOLE_DEGREES = 360;

	/** One thread: its passes, between what distances from the axis and what levels they go, and how often the tool went away from the axis to begin one. */
	private static final class Chase {

		/** Part of the pitch that a taper thread may be off its basic size where it begins (common practice, no source). */
		private static final double MOUTH = 0.8;

		private final int order;
		private final ToolLog tool;
		private final List<SinglePoint.Pass> passes = new ArrayList<>();
		private final DoubleSummaryStatistics radii = new DoubleSummaryStatistics();
		private final DoubleSummaryStatistics ends = new DoubleSummaryStatistics();
		private final DoubleSummaryStatistics levels = new DoubleSummaryStatistics();
		private int outwards;
		private int inwards;

		Chase(int order, ToolLog tool) {
			this.order = order;
			this.tool = tool;
		}

		/** Whether a pass of this tool and lead may belong to it: one beside it along the axis is another thread's. */
		boolean takes(Step.Synchronised pass, ToolLog of) {
			boolean apart = Math.min(pass.from().z(), pass.to().z()) > levels.getMax() || Math.max(pass.from().z(), pass.to().z()) < levels.getMin();
			return tool == of && Double.compare(first().lead().value(), pass.lead().value()) == 0 && !apart;
		}

		/** Takes a pass that the tool began from a distance from the axis, mm, NaN where that is not known. */
		void take(SinglePoint.Pass pass, double before, boolean chained) {
			Step.Synchronised step = pass.step();
			outwards += before < Math.abs(step.from().x()) ? 1 : 0;
			inwards += before > Math.abs(step.from().x()) ? 1 : 0;
			radii.accept(Math.abs(step.to().x()));
			ends.accept(step.to().z());
			levels.accept(step.from().z());
			levels.accept(step.to().z());
			if (passes.isEmpty() || !chained && passes.size() < SinglePoint.MOST) {
				passes.add(pass);
			}
		}

		/** Whether the tool went away from the axis to begin its passes; where not all tell the same, whether it goes as far out as the thread inside, and not as far in as outside. */
		boolean inside(Optional<ThreadSpec> thread) {
			boolean sure = (outwards == 0) != (inwards == 0);
			boolean wide = thread.filter(this::asWide).isPresent();
			boolean bolt = thread.filter(spec -> !asWide(spec) && suits(spec)).isPresent();
			return sure ? outwards > 0 : wide || !bolt && outwards > inwards;
		}

		private boolean asWide(ThreadSpec thread) {
			return Math.abs(2 * radii.getMax() - thread.diameter()) <= 0.4 * thread.pitch();
		}

		/** A taper thread inside is widest where it begins, and that is a little before the gauge plane, where it has its basic size. */
		private boolean asWideAtItsMouth(ThreadSpec thread) {
			double widest = radii.getMax();
			for (SinglePoint.Pass pass : passes) {
				widest = Math.max(widest, Math.abs(pass.step().from().x()));
			}
			return Math.abs(2 * widest - thread.diameter()) <= MOUTH * thread.pitch();
		}

		/** The shaft that it is cut on; a taper thread runs out of the wall by itself. */
		Optional<SinglePoint.Shaft> shaft(ThreadSpec thread, TurnedOutside outside) {
			if (inside(Optional.of(thread)) || thread.system().taper() || !suits(thread)) {
				return Optional.empty();
			}
			return outside.shaft(tool, order, thread.diameter() / 2, thread.pitch(), levels.getMin(), levels.getMax());
		}

		/** The tool goes back along Z behind the last pass. */
		void back(Step.Move move) {
			SinglePoint.Pass last = passes.get(passes.size() - 1);
			if (last.back().isEmpty()) {
				passes.set(passes.size() - 1, new SinglePoint.Pass(last.step(), last.begins(), last.infeed(), last.turned(), Optional.of(move)));
			}
		}

		/** Whether motions of its own go in and out at one distance from the axis, as those of a driven tap. */
		boolean straight() {
			return first().code() != 0 && radii.getMax() - radii.getMin() < AxisRun.CENTRE_LINE;
		}

		Step.Synchronised first() {
			return passes.get(0).step();
		}

		/**
		 * Whether the deepest pass is as deep as a thread's: out to the major diameter inside a bore; outside down to the minor diameter, 1.08 to 1.3 P
		 * below the major one by the form of the root (ISO 68-1), with some room for how it is measured.
		 */
		boolean suits(ThreadSpec thread) {
			double pitch = thread.pitch();
			double outer = 2 * radii.getMax() - thread.diameter();
			double inner = thread.diameter() - 2 * radii.getMin();
			return Math.abs(outer) <= 0.4 * pitch || outer <= 0.4 * pitch && inner >= 0.9 * pitch && inner <= 1.4 * pitch;
		}

		/** The hole that is threaded, where the passes go outwards as far as a thread inside does. */
		Optional<SinglePoint.Bore> bore(ThreadSpec thread, LatheMotions.Found found, List<ToolUse> uses) {
			TurnedBores bores = found.bores();
			if (!inside(Optional.of(thread)) || !(thread.system().taper() ? asWideAtItsMouth(thread) : asWide(thread))) {
				return Optional.empty();
			}
			boolean cone = thread.system().taper() && bores.cone(tool.part(), thread.diameter() / 2);
			Hole hole = atThisEnd(found.holes().hole(Places.of(tool.part(), first().modal(), Places.across(2), new Point(0, 0, ends.getMin())), 0), found.turned().applyAsInt(order));
			Optional<Cut> deepest = hole.deepestBefore(order);
			boolean down = deepest.map(cut -> cut.direction() < 0).orElse(first().to().z() < first().from().z());
			// a thread that is cut from the ground outwards begins at its deep end
			double end = down ? levels.getMin() : levels.getMax();
			double begin = down ? levels.getMax() : levels.getMin();
			double mouth = deepest.map(Cut::start).orElse(begin);
			double middle = (end + (down ? Math.min(mouth, begin) : Math.max(mouth, begin))) / 2;
			Optional<Cut> sized = cone ? bores.bored(tool.part(), order, thread.diameter() / 2).map(bored -> bored.cut(uses.get(bored.tool().index())))
					: hole.sizedBefore(order, middle).filter(cut -> cut.diameter().filter(Fact::stated).isPresent());
			return sized.map(cut -> new SinglePoint.Bore(cut, floor(hole, cut), end));
		}

		/** What is drilled may go through the part, what is bored before it is turned is at its other end. */
		private static Hole atThisEnd(Hole hole, int turned) {
			return turned < 0 ? hole : new Hole(hole.place(), hole.cuts().stream().filter(cut -> cut.order() > turned || cut.kind() != Cut.Kind.BORE).toList());
		}

		/** The deepest level of what is as wide as a cut, half a pitch's depth of thread taken for the same. */
		private double floor(Hole hole, Cut sized) {
			double wide = sized.diameter().orElseThrow().value() - 0.5 * first().lead().value() * first().modal().unit().mm();
			return hole.makingBefore(order).stream().filter(c -> c.diameter().filter(d -> d.value() >= wide).isPresent()).mapToDouble(Cut::shoulder)
					.filter(level -> !Double.isNaN(level)).reduce(sized.tip(), (one, other) -> sized.direction() * (other - one) > 0 ? other : one);
		}
	}

	private final List<Chase> chases = new ArrayList<>();
	/** The stays of their tools. */
	private final BitSet chasing = new BitSet();
	/** How far from the axis the last motion along X alone began, mm; NaN behind one that goes aslant, and behind the first one of a tool. */
	private double approach = Double.NaN;
	private boolean fresh = true;
	/** What brought the tool to the level it stands at. */
	private Optional<BlockRef> level = Optional.empty();
	/** What brought the tool to its distance from the axis. */
	private Optional<BlockRef> infeed = Optional.empty();
	/** Where the last synchronised motion ended. */
	private Point end = Point.UNKNOWN;
	/** The thread whose pass has ended, as long as the tool has not gone away along Z. */
	private Optional<Chase> left = Optional.empty();

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
			approach = fresh || move.from().z() != move.to().z() ? Double.NaN : Math.abs(move.from().x());
			fresh = false;
		}
		level = move.from().z() == move.to().z() ? level : Optional.of(move.block());
		infeed = move.from().x() == move.to().x() ? infeed : Optional.of(move.block());
		end = Point.UNKNOWN;
		if (move.from().z() != move.to().z()) {
			left.filter(chase -> goesBack(chase.first(), move)).ifPresent(chase -> chase.back(move));
			left = Optional.empty();
		}
	}

	/** Whether a motion leads straight along Z against the way of a pass. */
	private static boolean goesBack(Step.Synchronised pass, Step.Move move) {
		return move.from().x() == move.to().x() && (move.to().z() - move.from().z()) * way(pass) < 0;
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
		Optional<Chase> known = chases.stream().filter(chase -> chase.takes(step, tool)).findFirst();
		if (known.isEmpty() && chases.size() < MOST) {
			known = Optional.of(new Chase(order, tool));
			chases.add(known.get());
			chasing.set(tool.index());
		}
		if (left.isPresent() && left.equals(known) && step.from().equals(end) && step.from().x() == step.to().x() && (step.to().z() - step.from().z()) * way(left.get().first()) < 0) {
			// the threading code is still in force on the way back
			left.get().back(new Step.Move(step.block(), step.modal(), false, step.from(), step.to(), step.resolution()));
		}
		SinglePoint.Pass pass = new SinglePoint.Pass(step, level, infeed, turned(step), Optional.empty());
		known.ifPresent(chase -> chase.take(pass, approach, step.from().equals(end)));
		end = step.to();
		left = known;
	}

	/** The part of a turn that Q starts a pass later; of a cycle of two blocks Q is a depth. */
	private static double turned(Step.Synchronised pass) {
		Block block = pass.block().file().text().block(pass.block().line());
		List<Element.Word> words = block.words();
		boolean oneLine = words.stream().anyMatch(word -> word.address() == 'K' || word.address() == 'D');
		boolean minimum = !oneLine && words.stream().anyMatch(word -> word.address() == 'P');
		boolean named = block.elements().stream()
				.anyMatch(element -> element instanceof Element.Assignment || element instanceof Element.Opaque || element instanceof Element.Statement);
		Optional<Element.Word> angle = words.stream().filter(word -> word.address() == 'Q' && !minimum).findFirst();
		if (named || angle.isPresent() && !(angle.get().value() instanceof Expression.Number)) {
			return Double.NaN;
		}
		double said = angle.map(word -> ((Expression.Number) word.value()).value()).orElse(0.0);
		return (said > WHOLE_DEGREES ? said / 1000 : said) / 360;
	}

	/**
	 * Each with its thread and the hole that it is cut in: the thread is the last certain callout above it in its tool's comments, the tool's own, that of its line in the tool list, or the one
	 * of the title that is as deep.
	 */
	List<SinglePoint> named(List<ToolUse> uses, Commentary commentary, Stays stays, ToolBook book, LatheMotions.Found found) {
		List<SinglePoint> all = new ArrayList<>();
		Map<Integer, TitleThreads> titles = new HashMap<>();
		for (Chase chase : chases) {
			ToolUse use = uses.get(chase.tool.index());
			if (use.facts().isTap() && chase.straight()) {
				continue;
			}
			int line = commentary.mainLine(chase.first().block());
			Optional<Fact<ThreadSpec>> thread = line < 0 ? Optional.empty()
					: last(commentary.free(commentary.main().file(), stays.freeFrom(chase.tool), line), FactSource.CALLOUT, chase::suits);
			Optional<Fact<ThreadSpec>> named = thread.or(() -> use.facts().thread()).or(() -> last(book.listed(chase.tool), FactSource.TOOL_LIST, chase::suits))
					.or(() -> titles.computeIfAbsent(chase.tool.part(), part -> new TitleThreads(commentary, stays, part)).suiting(chase::suits));
			all.add(new SinglePoint(chase.passes, use, chase.inside(named.map(Fact::value)), named, named.map(Fact::value).flatMap(spec -> chase.bore(spec, found, uses)),
					named.map(Fact::value).flatMap(spec -> chase.shaft(spec, found.outside()))));
		}
		return all;
	}

	/** The last certain callout; of several the last that suits. */
	private static Optional<Fact<ThreadSpec>> last(List<LineComment> comments, FactSource source, Predicate<ThreadSpec> suits) {
		Optional<Fact<ThreadSpec>> last = Optional.empty();
		Optional<Fact<ThreadSpec>> suiting = Optional.empty();
		for (LineComment comment : comments.subList(Math.max(0, comments.size() - MOST_ABOVE), comments.size())) {
			for (Callout callout : CalloutReader.read(comment.said())) {
				if (callout.certain()) {
					last = Optional.of(Callouts.fact(comment, callout, source, callout.spec()));
					suiting = suits.test(callout.spec()) ? last : suiting;
				}
			}
		}
		return suiting.isPresent() ? suiting : last;
	}
}
