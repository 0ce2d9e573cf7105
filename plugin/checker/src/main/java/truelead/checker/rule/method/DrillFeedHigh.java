package truelead.checker.rule.method;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.program.FeedMode;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.HoleMakers;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.Survey;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The drill of a threaded hole is fed several times farther a turn than a drill takes: the point of F or S a place off, a digit too many or too few, the other feed mode. */
public final class DrillFeedHigh implements Rule {

	/** Drills take 0.01 to 0.04 of their diameter a turn, some of three edges 0.06 to 0.1: farther than this one breaks, whatever it is and drills (common practice, no source). */
	private static final double MOST = 0.15;

	/** No drill is fed farther a turn, however large it is, mm (common practice, no source). */
	private static final double MOST_LENGTH = 1.2;

	/** Farther than this one is suspect, where the program's other drills say that no such drills are at work (common practice, no source). */
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
		Set<Integer> told = new HashSet<>();
		for (HoleMakers.Maker maker : HoleMakers.of(work)) {
			double share = share(maker.cut());
			boolean far = share > MOST || share * size(maker.cut()) > MOST_LENGTH;
			if ((far || share > SUSPECT) && !told.contains(maker.cut().tool().index())) {
				Optional<Double> others = work.survey(maker.operation(), SHARES, all -> Optional.ofNullable(all.lower(share)).filter(next -> share == all.last() && share >= TIMES_OTHERS * next));
				if ((far || others.isPresent()) && !threadsMode(maker.cut(), work)) {
					told.add(maker.cut().tool().index());
					found.accept(draft(maker.cut(), share, others).on(maker.operation()).finding());
				}
			}
		}
	}

	/** Whether the feed mode is one that was set for a thread before and is left on, which another rule tells. */
	private static boolean threadsMode(Cut cut, Work work) {
		Optional<WordRef> mode = cut.step().modal().feedModeStated();
		return mode.isPresent() && work.operations().stream().map(ThreadingOperation::tool)
				.anyMatch(tool -> tool.index() < cut.tool().index() && tool.change().filter(change -> !mode.get().block().above(change)).isPresent());
	}

	/** What the drills of threaded holes advance a turn, as parts of their diameters. */
	private static final Survey<Double, TreeSet<Double>> SHARES = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Double> said) {
			for (HoleMakers.Maker maker : HoleMakers.of(work)) {
				double share = share(maker.cut());
				if (share > 0) {
					said.accept(maker.cut().tool().index(), share);
				}
			}
		}

		@Override
		public TreeSet<Double> all(List<Double> said) {
			return new TreeSet<>(said);
		}
	};

	/** What part of its diameter a drill of known size advances a turn; NaN where size, feed or speed is not known, and of small ones. */
	private static double share(Cut cut) {
		boolean drill = cut.kind().drills() && cut.tool().facts().kind().filter(kind -> kind.stated() && kind.value() == ToolKind.DRILL).isPresent();
		double size = size(cut);
		return drill && size >= SMALL ? advance(cut.step().modal()) / size : Double.NaN;
	}

	/** The diameter that somebody says, mm; NaN where nobody does. */
	private static double size(Cut cut) {
		return cut.tool().facts().diameter().filter(Fact::stated).map(Fact::value).orElse(Double.NaN);
	}

	/** What a tool advances a turn, mm; NaN where feed or speed is not known. */
	private static double advance(Modal modal) {
		double feed = modal.feed().value() * modal.unit().mm();
		return modal.feedMode() == FeedMode.PER_REVOLUTION ? feed
				: modal.feedMode() == FeedMode.PER_MINUTE && !modal.constantSurface() && modal.speed().value() > 0 ? feed / modal.speed().value() : Double.NaN;
	}

	private Draft draft(Cut cut, double share, Optional<Double> others) {
		Modal modal = cut.step().modal();
		Figures figures = new Figures(modal.unit());
		Fact<Double> diameter = cut.tool().facts().diameter().orElseThrow();
		boolean perMinute = modal.feedMode() == FeedMode.PER_MINUTE;
		String feed = modal.feed().word().map(Figures::written).orElse("the feed");
		String speed = perMinute ? " at " + modal.speed().word().map(Figures::written).orElse("this speed") : "";
		String usual = others.map(next -> "the program's other drills at most " + part(next)).orElse("drills take up to 0.04");
		Draft draft = Draft.of(this, Severity.WARNING, modal.feed(), cut.block(), feed + speed + " feeds " + cut.tool().name() + " " + figures.advance(advance(modal)) + " " + figures.symbol()
				+ " a turn, " + part(share) + " of its diameter of " + figures.length(diameter.value()) + ", " + usual + ": it breaks; see the digits of F" + (perMinute ? " and S" : ", and the feed mode"))
				.programmed("feed", feed, modal.feed()).known("diameter of the drill", figures.length(diameter.value()), diameter);
		return perMinute ? draft.programmed("speed", "S" + Figures.number(modal.speed().value(), 1), modal.speed()) : draft;
	}

	private static String part(double share) {
		return Figures.number(share, share < 0.1 ? 3 : 2);
	}
}
