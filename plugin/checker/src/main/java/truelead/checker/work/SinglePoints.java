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
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
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
	 * The first pass of a lead, where along the lead it and those behind it start, whether a word may turn them by an angle, and between what
	 * distances from the axis they end.
	 */
	private record Pass(ToolLog tool, Step.Synchronised step, BitSet phases, DoubleSummaryStatistics radii) {

		private static final int ANGLE = PARTS;

		void take(Step.Synchronised pass) {
			radii.accept(Math.abs(pass.to().x()));
			double turns = pass.from().z() / (Math.abs(pass.lead().value()) * pass.modal().unit().mm());
			double phase = turns - Math.floor(turns);
			phases.set(phase >= 0 ? (int) Math.rint(phase * PARTS) % PARTS : ANGLE);
			List<Element.Word> words = pass.block().file().text().block(pass.block().line()).words();
			boolean oneLine = words.stream().anyMatch(word -> word.address() == 'K' || word.address() == 'D');
			boolean minimum = !oneLine && words.stream().anyMatch(word -> word.address() == 'P');
			phases.set(ANGLE, phases.get(ANGLE) || !minimum && words.stream().anyMatch(word -> word.address() == 'Q'));
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

		int starts() {
			return phases.get(ANGLE) ? 0 : phases.cardinality();
		}
	}

	private final List<Pass> passes = new ArrayList<>();

	/** A synchronised motion of a lathe. */
	void motion(Step.Synchronised step, ToolLog tool) {
		boolean beside = Math.abs(step.from().x()) > TapDrafts.CENTRE_LINE && step.from().z() != step.to().z();
		if (!beside) {
			return;
		}
		Optional<Pass> known = passes.stream().filter(p -> p.tool() == tool && p.step().lead().value() == step.lead().value()).findFirst();
		if (known.isEmpty() && passes.size() < MOST) {
			known = Optional.of(new Pass(tool, step, new BitSet(), new DoubleSummaryStatistics()));
			passes.add(known.get());
		}
		known.ifPresent(pass -> pass.take(step));
	}

	/**
	 * Each with its thread: the last certain callout above it in its tool's comments, the tool's own, that of its line in the tool list, or the one
	 * of the title that is as deep.
	 */
	List<SinglePoint> named(Map<ToolLog, ToolUse> uses, Commentary commentary, Stays stays, ToolBook book) {
		List<SinglePoint> all = new ArrayList<>();
		Map<Integer, TitleThreads> titles = new HashMap<>();
		for (Pass pass : passes) {
			ToolUse use = uses.get(pass.tool());
			int line = commentary.mainLine(pass.step().block());
			Optional<Fact<ThreadSpec>> thread = line < 0 ? Optional.empty()
					: last(commentary.free(commentary.main().file(), stays.freeFrom(pass.tool()), line), FactSource.CALLOUT);
			all.add(new SinglePoint(pass.step(), use, pass.starts(), thread.or(() -> use.facts().thread()).or(() -> last(book.listed(pass.tool()), FactSource.TOOL_LIST))
					.or(() -> titles.computeIfAbsent(pass.tool().part(), part -> new TitleThreads(commentary, stays, part)).suiting(pass::suits))));
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
