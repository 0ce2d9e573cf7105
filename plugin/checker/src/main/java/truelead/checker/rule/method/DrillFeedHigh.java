package truelead.checker.rule.method;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.pass.MillPass;
import truelead.checker.program.FeedMode;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.HoleMakers;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The drill of a threaded hole is fed several times farther a turn than a drill takes: the point of F or S a place off, a digit too many or
 * too few, the other feed mode.
 */
public final class DrillFeedHigh implements Rule {

	/**
	 * Drills take 0.01 to 0.04 of their diameter a turn, some of three edges 0.06 to 0.1: farther than this one breaks, whatever it is and
	 * drills (common practice, no source).
	 */
	private static final double MOST = 0.15;

	/** No drill is fed farther a turn, however large it is, mm (common practice, no source). */
	private static final double MOST_LENGTH = 1.2;

	/**
	 * Farther than this one is suspect, where the program's other drills say that no such drills are at work (common practice, no source).
	 */
	private static final double SUSPECT = 0.08;

	/** So many times as far as any other drill of the program (common practice, no source). */
	private static final double TIMES_OTHERS = 5;

	/** Smaller drills may be fed more for their size, mm (common practice, no source). */
	private static final double SMALL = 3;

	@Override
	public String name() {
		return "drill-feed-high";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.UNIT_WORD, Slip.OTHER_UNIT, Slip.OTHER_FEED_MODE, Slip.NO_TAP);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		List<FedMaker> drills = Drills.of(work);
		if (!drills.isEmpty() && work.operations().size() == work.operationsOfProgram().size()) {
			// taken now, while all makers are at hand, it costs nothing when a digit makes one suspect
			work.survey(drills.get(0).maker().operation(), FARTHEST, all -> true);
		}
		Set<Integer> told = new HashSet<>();
		for (FedMaker drill : drills) {
			Cut cut = drill.maker().cut();
			double share = drill.fed().share();
			boolean far = share > MOST || cut.step().modal().advance() > MOST_LENGTH;
			if ((far || share > SUSPECT) && !told.contains(cut.tool().index())
					&& !work.derived(ThreadModes.class, ThreadModes::of).leftOn(cut)) {
				Optional<Double> others = far ? Optional.empty() : others(drill, work);
				if (far || others.isPresent()) {
					told.add(cut.tool().index());
					found.accept(draft(cut, share, others).on(drill.maker().operation()).finding());
				}
			}
		}
	}

	/** A drill of 3 mm and more that is named with its size, and how far it is fed. */
	private record FedMaker(HoleMakers.Maker maker, Fed fed) {
	}

	/** All such drills of a work, whose shares the rule and its survey both ask for. */
	private record Drills(List<FedMaker> all) {

		static List<FedMaker> of(Work work) {
			return work.derived(Drills.class, Drills::gathered).all;
		}

		private static Drills gathered(Work work) {
			List<FedMaker> drills = new ArrayList<>();
			for (HoleMakers.Maker maker : HoleMakers.of(work)) {
				double share = share(maker.cut());
				if (share > 0) {
					drills.add(new FedMaker(maker, new Fed(maker.cut().tool().index(), share)));
				}
			}
			return new Drills(drills);
		}
	}

	/**
	 * The words for a feed mode that were set for threads: left on behind them, they are what another rule tells.
	 *
	 * @param set those that stand in the stay of a threading tool
	 */
	private record ThreadModes(Set<WordRef> set) {

		static ThreadModes of(Work work) {
			Set<WordRef> set = new HashSet<>();
			for (ThreadingOperation operation : work.operations()) {
				Optional<Modal> modal = operation instanceof Tapping tapping
						? tapping.strokes().typical().stream().findFirst().map(TapStroke::modal)
						: operation instanceof ThreadMilling milling ? milling.passes().typical().stream().findFirst().map(MillPass::modal)
						: Optional.empty();
				modal.flatMap(Modal::feedModeStated).filter(word -> operation.tool().change().filter(change -> !word.block().above(change))
						.isPresent()).ifPresent(set::add);
			}
			return new ThreadModes(set);
		}

		boolean leftOn(Cut cut) {
			return cut.step().modal().feedModeStated().filter(set::contains).isPresent();
		}
	}

	/**
	 * A drill of the program.
	 *
	 * @param stay  number of its stay
	 * @param share the most that it advances a turn, as a part of its diameter
	 */
	private record Fed(int stay, double share) {
	}

	private static final Comparator<Fed> FARTHER = Comparator.comparingDouble(Fed::share);

	/** Of the drills of threaded holes the one that is fed farthest, and the next in another stay. */
	private static final Survey<Fed, List<Fed>> FARTHEST = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Fed> said) {
			Drills.of(work).forEach(drill -> said.accept(drill.fed().stay(), drill.fed()));
		}

		@Override
		public List<Fed> all(List<Fed> said) {
			Optional<Fed> first = said.stream().max(FARTHER);
			return Stream.concat(first.stream(), said.stream().filter(fed -> fed.stay() != first.get().stay()).max(FARTHER).stream())
					.toList();
		}
	};

	/** The most that a drill of another stay advances a turn, as a part of its diameter, where this one is fed many times as far. */
	private static Optional<Double> others(FedMaker drill, Work work) {
		int stay = drill.fed().stay();
		return work.survey(drill.maker().operation(), FARTHEST, all -> all.stream().filter(fed -> fed.stay() != stay).map(Fed::share)
				.findFirst()).filter(next -> drill.fed().share() >= TIMES_OTHERS * next);
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

	private Draft draft(Cut cut, double share, Optional<Double> others) {
		Modal modal = cut.step().modal();
		Figures figures = new Figures(modal.unit());
		Fact<Double> diameter = cut.tool().facts().diameter().orElseThrow();
		boolean perMinute = modal.feedMode() == FeedMode.PER_MINUTE;
		String feed = modal.feed().word().map(Figures::written).orElse("the feed");
		String speed = perMinute ? " at " + modal.speed().word().map(Figures::written).orElse("this speed") : "";
		String usual = others.map(next -> "the program's other drills at most " + part(next)).orElse("drills take up to 0.04");
		Draft draft = Draft.of(this, Severity.WARNING, modal.feed(), cut.block(), feed + speed + " feeds " + cut.tool().name() + " "
				+ figures.advance(modal.advance()) + " " + figures.symbol() + " a turn, " + part(share) + " of its diameter of "
				+ figures.length(diameter.value()) + ", " + usual + ": it breaks; see the digits of F" + (perMinute ? " and S"
						: ", and the feed mode")).programmed("feed", feed, modal.feed())
				.known("diameter of the drill", figures.length(diameter.value()), diameter);
		return perMinute ? draft.programmed("speed", "S" + Figures.number(modal.speed().value(), 1), modal.speed()) : draft;
	}

	private static String part(double share) {
		return Figures.number(share, share < 0.1 ? 3 : 2);
	}
}
