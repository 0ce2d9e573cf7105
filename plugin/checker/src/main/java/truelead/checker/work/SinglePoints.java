package truelead.checker.work;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.DoubleSummaryStatistics;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.comment.Commentary;
import truelead.checker.comment.LineComment;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Holes;
import truelead.checker.hole.Places;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;
import truelead.grammar.Element;

/** Gathers the synchronised passes beside a lathe's axis, one for each lead of a tool, and finds the thread that each is to make. */
final class SinglePoints {

	private static final int MOST = 1_000;

	/** Parts of a lead that starts are told apart by. */
	private static final int PARTS = 100;

	/**
	 * The first pass of a lead, where along the lead it and those behind it start, whether a word may turn them by an angle (Q, SF=), between what
	 * distances from the axis they end, between what levels, and whether the tool went away from the axis to begin the last of them.
	 */
	private static final class Pass {

		private static final int ANGLE = PARTS;

		private final int order;
		private final ToolLog tool;
		private final Step.Synchronised step;
		private final BitSet phases = new BitSet();
		private final DoubleSummaryStatistics radii = new DoubleSummaryStatistics();
		private final DoubleSummaryStatistics ends = new DoubleSummaryStatistics();
		private boolean outwards;

		Pass(int order, ToolLog tool, Step.Synchronised step) {
			this.order = order;
			this.tool = tool;
			this.step = step;
		}

		void take(Step.Synchronised pass, boolean away) {
			outwards = away;
			radii.accept(Math.abs(pass.to().x()));
			ends.accept(pass.to().z());
			double turns = pass.from().z() / (Math.abs(pass.lead().value()) * pass.modal().unit().mm());
			double phase = turns - Math.floor(turns);
			phases.set(phase >= 0 ? (int) Math.rint(phase * PARTS) % PARTS : ANGLE);
			List<Element.Word> words = pass.block().file().text().block(pass.block().line()).words();
			boolean oneLine = words.stream().anyMatch(word -> word.address() == 'K' || word.address() == 'D');
			boolean minimum = !oneLine && words.stream().anyMatch(word -> word.address() == 'P');
			boolean named = pass.block().file().text().block(pass.block().line()).elements().stream()
					.anyMatch(element -> element instanceof Element.Assignment || element instanceof Element.Opaque || element instanceof Element.Statement);
			phases.set(ANGLE, phases.get(ANGLE) || named || !minimum && words.stream().anyMatch(word -> word.address() == 'Q'));
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
		Optional<SinglePoint.Bore> bore(ThreadSpec thread, Holes holes) {
			boolean asWide = Math.abs(2 * radii.getMax() - thread.diameter()) <= 0.4 * thread.pitch();
			if (!outwards || !asWide) {
				return Optional.empty();
			}
			double end = step.to().z() < step.from().z() ? ends.getMin() : ends.getMax();
			double begin = step.from().z();
			Hole hole = holes.hole(Places.of(tool.part(), step.modal(), Places.across(2), new Point(0, 0, end)), 0);
			double mouth = hole.deepestBefore(order).map(Cut::start).orElse(begin);
			double middle = (end + (end < begin ? Math.min(mouth, begin) : Math.max(mouth, begin))) / 2;
			Optional<Cut> sized = hole.sizedBefore(order, middle).filter(cut -> cut.diameter().filter(Fact::stated).isPresent());
			return sized.map(cut -> new SinglePoint.Bore(cut, floor(hole, cut), end));
		}

		/** The deepest level of what is as wide as a cut, half a pitch's depth of thread taken for the same. */
		private double floor(Hole hole, Cut sized) {
			double wide = sized.diameter().orElseThrow().value() - 0.5 * step.lead().value() * step.modal().unit().mm();
			return hole.makingBefore(order).stream().filter(c -> c.diameter().filter(d -> d.value() >= wide).isPresent()).mapToDouble(Cut::shoulder)
					.filter(level -> !Double.isNaN(level)).reduce(sized.tip(), (one, other) -> sized.direction() * (other - one) > 0 ? other : one);
		}

		int starts() {
			return phases.get(ANGLE) ? 0 : phases.cardinality();
		}
	}

	private final List<Pass> passes = new ArrayList<>();
	/** How far from the axis the last motion along X began, mm. */
	private double approach = Double.NaN;

	/** A motion of a lathe that may bring a tool to where a pass begins. */
	void motion(Step.Move move) {
		approach = move.from().x() == move.to().x() ? approach : Math.abs(move.from().x());
	}

	/** A synchronised motion of a lathe. */
	void motion(Step.Synchronised step, ToolLog tool, int order) {
		boolean beside = Math.abs(step.from().x()) > TapDrafts.CENTRE_LINE && step.from().z() != step.to().z();
		if (!beside) {
			return;
		}
		Optional<Pass> known = passes.stream().filter(p -> p.tool == tool && p.step.lead().value() == step.lead().value()).findFirst();
		if (known.isEmpty() && passes.size() < MOST) {
			known = Optional.of(new Pass(order, tool, step));
			passes.add(known.get());
		}
		known.ifPresent(pass -> pass.take(step, approach < Math.abs(step.from().x())));
	}

	/**
	 * Each with its thread and the hole that it is cut in: the thread is the last certain callout above it in its tool's comments, the tool's own, that of its line in the tool list, or the one
	 * of the title that is as deep.
	 */
	List<SinglePoint> named(Map<ToolLog, ToolUse> uses, Commentary commentary, Stays stays, ToolBook book, Holes holes) {
		List<SinglePoint> all = new ArrayList<>();
		Map<Integer, TitleThreads> titles = new HashMap<>();
		for (Pass pass : passes) {
			ToolUse use = uses.get(pass.tool);
			int line = commentary.mainLine(pass.step.block());
			Optional<Fact<ThreadSpec>> thread = line < 0 ? Optional.empty()
					: last(commentary.free(commentary.main().file(), stays.freeFrom(pass.tool), line), FactSource.CALLOUT);
			Optional<Fact<ThreadSpec>> named = thread.or(() -> use.facts().thread()).or(() -> last(book.listed(pass.tool), FactSource.TOOL_LIST))
					.or(() -> titles.computeIfAbsent(pass.tool.part(), part -> new TitleThreads(commentary, stays, part)).suiting(pass::suits));
			all.add(new SinglePoint(pass.step, use, pass.starts(), named, named.map(Fact::value).flatMap(spec -> pass.bore(spec, holes))));
		}
		return all;
	}

	private static Optional<Fact<ThreadSpec>> last(List<LineComment> comments, FactSource source) {
		Optional<Fact<ThreadSpec>> last = Optional.empty();
		for (LineComment comment : comments) {
			Optional<Callout> callout = CalloutReader.read(comment.said()).stream().filter(Callout::certain).findFirst();
			if (callout.isPresent()) {
				last = callout.map(c -> Callouts.fact(comment, c, source, c.spec()));
			}
		}
		return last;
	}
}
