package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import truelead.checker.job.Fact;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.work.ThreadMilling;

/** How far a thread mill is fed a turn of the spindle in the passes of an operation, at its edge. */
final class MillFeeds {

	/** What is usual at the edge, in parts of the cutter's diameter: of two feeds the one farther from it is the slip. */
	private static final double USUAL = 0.013;

	/**
	 * A feed of some passes.
	 *
	 * @param arc    the first arc that is fed so
	 * @param pass   its pass
	 * @param passes how many passes are fed so
	 * @param edge   how far the cutter's edge goes in a turn of the spindle, mm
	 */
	record Fed(Step.Arc arc, MillPass pass, int passes, double edge) {

		Modal modal() {
			return arc.modal();
		}

		private Fed and(int more) {
			return new Fed(arc, pass, passes + more, edge);
		}
	}

	/** Each feed once, in their order. */
	private final List<Fed> all;
	private final double usual;

	private MillFeeds(List<Fed> all, double usual) {
		this.all = all;
		this.usual = usual;
	}

	/** Those of an operation; of rings, which break the edge, none. */
	static MillFeeds of(ThreadMilling operation) {
		Optional<Double> cutter = operation.tool().facts().diameter().map(Fact::value).filter(size -> size > 0);
		List<MillPass> typical = operation.passes().typical();
		Map<Double, Fed> feeds = new TreeMap<>();
		for (int kind = 0; kind < typical.size(); kind++) {
			MillPass pass = typical.get(kind);
			if (!MillFacts.ring(pass)) {
				Modal before = null;
				for (Step.Arc arc : pass.helix()) {
					// the arcs of a pass share their state as a rule
					double edge = arc.modal() == before ? Double.NaN : arc.modal().advance() * atEdge(pass, cutter);
					before = arc.modal();
					if (edge > 0) {
						int passes = operation.passes().count(kind);
						feeds.merge(rounded(edge), new Fed(arc, pass, passes, edge), (one, other) -> one.and(passes));
					}
				}
			}
		}
		return new MillFeeds(new ArrayList<>(feeds.values()), cutter.map(size -> USUAL * size).orElse(Double.NaN));
	}

	/** What is the same but for the rounding of R. */
	private static double rounded(double edge) {
		return Math.round(Math.log(edge) * 20);
	}

	/** How much farther the edge goes than the centre that F is said for; 1 where the path is the wall (geometry). */
	private static double atEdge(MillPass pass, Optional<Double> cutter) {
		double radius = pass.radius();
		return cutter.isEmpty() || pass.compensation() != Compensation.OFF || !(radius > 0) ? 1
				: pass.external() ? Math.max(radius - cutter.get() / 2, 0) / radius : (radius + cutter.get() / 2) / radius;
	}

	/** The feed of most passes; of as many the one nearer to what is usual, or the lower. */
	Optional<Fed> usual() {
		return all.stream().reduce((one, other) -> one.passes() != other.passes() ? one.passes() > other.passes() ? one : other
				: off(one) <= off(other) ? one : other);
	}

	private double off(Fed fed) {
		return Double.isNaN(usual) ? fed.edge() : Math.abs(Math.log(fed.edge() / usual));
	}

	/** The first feed that is so many times the usual one, or that part of it. */
	Optional<Fed> odd(double times) {
		return usual().flatMap(most -> all.stream().filter(fed -> Math.max(fed.edge() / most.edge(), most.edge() / fed.edge()) > times)
				.min((one, other) -> Integer.compare(one.pass().order(), other.pass().order())));
	}

	/** How many passes are fed as usual. */
	int others() {
		return usual().map(Fed::passes).orElse(0);
	}
}
