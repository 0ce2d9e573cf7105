package truelead.checker.rule;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.machine.Modal;
import truelead.checker.pass.MillPass;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The drills and reamers that make the holes of threads, and what spots and countersinks them and is called so: each once for every state
 * of the machine that it goes in with, at a typical hole.
 */
public final class HoleMakers {

	private static final Set<ToolKind> OF_EDGES = EnumSet.of(ToolKind.SPOT_DRILL, ToolKind.CENTRE_DRILL, ToolKind.COUNTERSINK);

	/**
	 * A tool that goes in.
	 *
	 * @param cut       what it does at the first such hole
	 * @param operation the first operation that threads it
	 */
	public record Maker(Cut cut, ThreadingOperation operation) {
	}

	private final List<Maker> all = new ArrayList<>();
	/** By the stay of a tool, the state that it was last seen in. */
	private final Modal[] seen;

	private HoleMakers(Work work) {
		seen = new Modal[work.tools().size()];
		for (ThreadingOperation operation : work.operations()) {
			if (operation instanceof Tapping tapping) {
				tapping.strokes().typical().forEach(stroke -> add(stroke.hole(), stroke.order(), operation));
			} else if (operation instanceof ThreadMilling milling) {
				for (MillPass pass : milling.firstPasses().typical()) {
					if (!pass.external()) {
						add(pass.hole(), pass.order(), operation);
					}
				}
			}
		}
	}

	private void add(Hole hole, int order, ThreadingOperation operation) {
		for (Cut cut : hole.cuts()) {
			int stay = cut.tool().index();
			Modal modal = cut.step().modal();
			boolean makes = cut.kind().drills() || cut.kind() == Cut.Kind.REAM || cut.kind().atEdge() && cut.tool().facts().kind()
					.filter(kind -> kind.stated() && OF_EDGES.contains(kind.value())).isPresent();
			if (makes && cut.order() < order && stay != operation.tool().index() && seen[stay] != modal) {
				seen[stay] = modal;
				all.add(new Maker(cut, operation));
			}
		}
	}

	/** Those of a work, in the order of the operations; gathered once for all rules. */
	public static List<Maker> of(Work work) {
		return work.derived(HoleMakers.class, HoleMakers::new).all;
	}
}
