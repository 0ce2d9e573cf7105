package truelead.checker.rule.milling;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** Whether the level that is taken for the top of a milled thread's hole is known to be its top, though nobody states it. */
final class HoleTop {

	/** Height above the surface that drills start to feed from at most, mm (common practice, no source). */
	private static final double CLOSE = 5.1;
	private static final Set<ToolKind> MAKE_HOLES = EnumSet.complementOf(EnumSet.of(ToolKind.END_MILL, ToolKind.BORING,
			ToolKind.COUNTERBORE));

	private HoleTop() {
	}

	/**
	 * Whether the hole was drilled from close above a level in a program that mills no pocket and no step, whose floor would be the
	 * surface.
	 */
	static boolean known(Work work, ThreadMilling operation, MillPass pass, double surface) {
		return work.once("hole-top", () -> holesAlone(work)) && fromTheTop(operation, pass, surface);
	}

	/**
	 * Whether every tool that is changed to is one of holes and threads: another may have milled a pocket or a step, whose floor is the
	 * surface then.
	 */
	private static boolean holesAlone(Work work) {
		return work.tools().stream().allMatch(tool -> tool.change().isEmpty()
				|| tool.facts().kind().map(Fact::value).filter(MAKE_HOLES::contains).isPresent());
	}

	/** Whether the hole was drilled from close above the level taken for its surface, and nothing wider was cut into it. */
	private static boolean fromTheTop(ThreadMilling operation, MillPass pass, double surface) {
		List<Cut> cuts = pass.hole().makingBefore(pass.order());
		double diameter = MillFacts.cutThread(operation).orElseThrow().value().diameter();
		boolean wider = cuts.stream().anyMatch(cut -> cut.diameter().isEmpty() || cut.diameter().get().value() >= diameter);
		return !wider && cuts.stream().anyMatch(cut -> cut.start() > surface && cut.start() <= surface + CLOSE);
	}
}
