package truelead.checker.rule.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.pass.MillPass;
import truelead.checker.program.WordRef;
import truelead.checker.rule.HoleMakers;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** How the drills of threaded holes are fed that are named with their size: worked out once for all rules that ask. */
final class DrillFeeds {

	/** Smaller drills may be fed more or less for their size, mm (common practice, no source). */
	private static final double SMALL = 3;

	/**
	 * A drill of the program.
	 *
	 * @param stay  number of its stay
	 * @param share what it advances a turn, as a part of its diameter
	 */
	record Fed(int stay, double share) {
	}

	/** A drill of {@value #SMALL} mm and more that is named with its size, and how far it is fed. */
	record Drill(HoleMakers.Maker maker, Fed fed) {

		Cut cut() {
			return maker.cut();
		}

		double share() {
			return fed.share();
		}

		Fact<Double> diameter() {
			return cut().tool().facts().diameter().orElseThrow();
		}
	}

	/** The drills of a program that are fed farthest and least for their size, and the next of each in another stay. */
	record Extremes(List<Fed> most, List<Fed> least) {

		/** The most of the drills but for those of a stay. */
		Optional<Double> mostBut(int stay) {
			return but(most, stay);
		}

		/** The least of the drills but for those of a stay. */
		Optional<Double> leastBut(int stay) {
			return but(least, stay);
		}

		private static Optional<Double> but(List<Fed> some, int stay) {
			return some.stream().filter(fed -> fed.stay() != stay).map(Fed::share).findFirst();
		}
	}

	private static final Comparator<Fed> FARTHER = Comparator.comparingDouble(Fed::share);

	private static final Survey<Fed, Extremes> EXTREMES = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Fed> said) {
			DrillFeeds.of(work).forEach(drill -> said.accept(drill.fed().stay(), drill.fed()));
		}

		@Override
		public Extremes all(List<Fed> said) {
			return new Extremes(first(said, FARTHER.reversed()), first(said, FARTHER));
		}

		private List<Fed> first(List<Fed> said, Comparator<Fed> order) {
			Optional<Fed> first = said.stream().min(order);
			return Stream.concat(first.stream(), said.stream().filter(fed -> fed.stay() != first.get().stay()).min(order).stream())
					.toList();
		}
	};

	private final List<Drill> all = new ArrayList<>();
	/** The words for a feed mode that stand in the stay of a threading tool. */
	private final Set<WordRef> threadModes = new HashSet<>();

	private DrillFeeds(Work work) {
		for (HoleMakers.Maker maker : HoleMakers.of(work)) {
			double share = share(maker.cut());
			if (share > 0) {
				all.add(new Drill(maker, new Fed(maker.cut().tool().index(), share)));
			}
		}
		for (ThreadingOperation operation : all.isEmpty() ? List.<ThreadingOperation>of() : work.operations()) {
			Optional<Modal> modal = operation instanceof Tapping tapping
					? tapping.strokes().typical().stream().findFirst().map(TapStroke::modal)
					: operation instanceof ThreadMilling milling ? milling.passes().typical().stream().findFirst().map(MillPass::modal)
					: Optional.empty();
			modal.flatMap(Modal::feedModeStated).filter(word -> operation.tool().change().filter(change -> !word.block().above(change))
					.isPresent()).ifPresent(threadModes::add);
		}
	}

	/** Those of a work, in the order of the operations. */
	static List<Drill> of(Work work) {
		return known(work).all;
	}

	private static DrillFeeds known(Work work) {
		return work.derived(DrillFeeds.class, DrillFeeds::new);
	}

	/** Takes the survey now, while all drills are at hand: it costs nothing then when a digit makes one suspect. */
	static void take(Work work) {
		List<Drill> drills = of(work);
		if (!drills.isEmpty() && work.operations().size() == work.operationsOfProgram().size()) {
			work.survey(drills.get(0).maker().operation(), EXTREMES, all -> true);
		}
	}

	/** What the other drills of the program say to a question about one of them. */
	static <Q> Q others(Drill drill, Work work, Function<Extremes, Q> question) {
		return work.survey(drill.maker().operation(), EXTREMES, question);
	}

	/** Whether the feed mode of a drill was set for a thread and left on behind it, which another rule tells. */
	static boolean modeLeftOn(Drill drill, Work work) {
		return drill.cut().step().modal().feedModeStated().filter(known(work).threadModes::contains).isPresent();
	}

	/**
	 * What part of its diameter a drill that is named with it advances a turn; 0 of other tools and small drills, and where feed or speed
	 * is not known.
	 */
	private static double share(Cut cut) {
		boolean drill = cut.kind().drills() && cut.tool().facts().kind().filter(kind -> kind.stated()
				&& kind.value() == ToolKind.DRILL).isPresent();
		double advance = cut.step().modal().advance();
		return Double.isNaN(advance) || !drill ? 0 : cut.tool().facts().diameter().filter(size -> size.stated()
				&& size.value() >= SMALL).map(size -> advance / size.value()).orElse(0.0);
	}
}
