package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Step;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Setting;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.WordText;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.NoLead;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * A feed or a depth that fits after times or divided by 25.4: written in the other unit; or, of a thread that nothing names, one that fits
 * no thread else; or the whole program under the wrong unit word.
 */
public final class InchMetricMixup extends TappingRule {

	/**
	 * A tenth of a depth that is up to so many times the hole's is that of a point typed wrong: taps seldom go down to two fifths of their
	 * holes (a choice of ours).
	 */
	private static final double POINT = 1.3;
	private static final double INCH = LengthUnit.INCH.mm();

	public InchMetricMixup() {
		super("inch-metric-mixup");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.OTHER_UNIT);
	}

	@Override
	public boolean isOfWords() {
		return true;
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_AXIS, Slip.DRILLING_CYCLE, Slip.NO_TAP, Slip.UNREAD_BLOCK, Slip.OTHER_TOOLS_FEED, Slip.MODE_LEFT_ON,
				Slip.NO_SPEED);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Optional<Draft> word = UnitWord.wrong(this, work);
		if (word.isPresent()) {
			found.accept(word.get().tells(Slip.UNIT_WORD).finding());
		} else {
			super.check(work, found);
			work.course().singlePoints().forEach(turned -> SinglePointFeed.otherUnit(this, turned).map(Draft::finding).ifPresent(found));
		}
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (!tapping.method().taps()) {
			return;
		}
		tapping.wanted().statedThread().ifPresent(thread -> {
			List<TapFeed> feeds = TapFeed.alike(tapping, feed -> mixed(feed, thread.value().lead()) || floating(tapping, feed,
					thread.value().lead()));
			if (!feeds.isEmpty()) {
				found.accept(feed(tapping, work, feeds, thread));
			}
		});
		if (tapping.wanted().statedThread().isEmpty() && work.shop().unit().stated()) {
			TapFeed.alike(tapping, InchMetricMixup::mixed).stream().findFirst().ifPresent(feed -> found.accept(unnamed(feed)));
		}
		// a unit is that of all its depths
		if (tapping.strokes().typical().stream().allMatch(stroke -> depth(tapping, stroke).isPresent())) {
			first(tapping, stroke -> depth(tapping, stroke), found);
		}
	}

	private static boolean mixed(TapFeed feed, double lead) {
		return !feed.fits(lead) && (feed.fitsTimes(INCH, lead) || feed.fitsTimes(1 / INCH, lead));
	}

	/** A feed a little under the lead for a floating holder, in the other unit. */
	private static boolean floating(Tapping tapping, TapFeed feed, double lead) {
		double factor = feed.advance() < lead ? INCH : 1 / INCH;
		return tapping.wanted().holder().value().floats() && Math.abs(feed.advance() * factor / lead - 0.97) < 0.05;
	}

	private static boolean mixed(TapFeed feed) {
		return NoLead.unless(feed.advance(), feed.advance() * INCH) || NoLead.unless(feed.advance(), feed.advance() / INCH);
	}

	private Draft unnamed(TapFeed feed) {
		Figures figures = new Figures(feed.stroke().modal().unit());
		double factor = NoLead.unless(feed.advance(), feed.advance() * INCH) ? INCH : 1 / INCH;
		boolean otherUnit = factor > 1 == (feed.stroke().modal().unit() == LengthUnit.MM);
		double tenth = factor > 1 ? 10 : 0.1;
		String other = otherUnit ? "the value is in " + (factor > 1 ? "inches" : "mm") : "converted twice"
				+ (NoLead.unless(feed.advance(), feed.advance() * tenth) ? ", or its point is wrong, and "
						+ feed.feed().word().map(word -> WordText.shown(word, feed.feed().value() * tenth, 4)).orElse("a tenth of it")
						+ " makes " + figures.advance(feed.advance() * tenth) : "");
		return Draft.of(this, Severity.ERROR, feed.feed(), feed.stroke().block(), feed.said() + " advances "
				+ figures.advance(feed.advance()) + " " + figures.symbol() + " a turn, the lead of no thread; "
				+ (factor > 1 ? "25.4 times as much" : "a 25.4th of it") + " is " + figures.advance(feed.advance() * factor) + ": " + other)
				.programmed("feed", feed.said(), feed.feed()).from("one inch", "25.4 mm", "ISO 31-1, exact");
	}

	private Draft feed(Tapping tapping, Work work, List<TapFeed> feeds, Fact<ThreadSpec> thread) {
		TapFeed feed = feeds.get(0);
		double lead = thread.value().lead();
		Figures figures = new Figures(feed.stroke().modal().unit());
		String other = feed.stroke().modal().unit() == LengthUnit.MM ? "inches" : "mm";
		boolean otherUnit = feed.error(lead) < 0 == (feed.stroke().modal().unit() == LengthUnit.MM);
		String message = feed.said() + " advances " + figures.advance(feed.advance()) + " " + figures.symbol() + " a turn, "
				+ thread.value().withoutClass().designation() + " needs " + figures.advance(lead) + ", "
				+ (feed.error(lead) < 0 ? "25.4 times as much" : "a 25.4th of it") + ": " + (otherUnit ? "the value is in " + other
						: "converted twice")
				+ "; " + FeedFix.text(feed, lead);
		Draft draft = Draft.of(this, Severity.ERROR, feed.feed(), feed.stroke().block(), message)
				.programmed("feed", feed.said(), feed.feed());
		if (feed.speed() > 0) {
			draft.programmed("speed", "S" + Figures.number(feed.speed(), 1), feed.stroke().speed());
		}
		draft.known("pitch", figures.advance(lead) + " " + figures.symbol(), thread);
		draft.from("one inch", "25.4 mm", "ISO 31-1, exact");
		FeedFix.of(tapping, work, feeds, lead).ifPresent(draft::fix);
		return draft;
	}

	/** A depth more than ten times what is called out or drilled, or less than a tenth, that is near it in the other unit. */
	private Optional<Draft> depth(Tapping tapping, TapStroke stroke) {
		double depth = Turns.engaged(tapping, stroke);
		Optional<Fact<Double>> called = tapping.wanted().depth();
		Optional<Cut> drilled = stroke.hole().deepestBefore(stroke.order());
		double wanted = called.map(Fact::value)
				.orElse(drilled.map(cut -> drilled(cut, tapping.wanted().surface())).orElse(Double.NaN));
		double factor = depth > 10 * wanted ? 1 / INCH : depth < wanted / 10 ? INCH : Double.NaN;
		double meant = depth * factor;
		boolean near = called.isPresent() ? meant > 0.9 * wanted && meant < 1.6 * wanted : meant > 0.3 * wanted && meant <= 1.02 * wanted;
		boolean point = called.isEmpty() && depth / 10 > 0.3 * wanted && depth / 10 < POINT * wanted;
		if (!near || point || !(stroke.step() instanceof Step.Stroke cycle) || absoluteHeights(stroke)
				|| drilled.filter(cut -> acrossZero(stroke, cut)).isPresent()) {
			return Optional.empty();
		}
		Figures figures = new Figures(stroke.modal().unit());
		Setting z = cycle.cycle().word("XYZ".charAt(stroke.place().plane().axis())).orElse(Setting.NONE);
		String said = z.word().map(Figures::written).orElse("the depth");
		String message = said + " is " + figures.length(depth) + " deep, " + (called.isPresent() ? "called out is " : "the hole is ")
				+ figures.length(wanted) + ": in " + (stroke.modal().unit() == LengthUnit.MM ? "inches" : "mm") + " it is "
				+ figures.length(meant);
		Draft draft = Draft.of(this, Severity.ERROR, z, stroke.block(), message).programmed("depth", figures.length(depth), z);
		called.ifPresent(fact -> draft.known("depth called out", figures.length(wanted), fact));
		drilled.ifPresent(cut -> draft.related(cut.block(), "the drill block"));
		LevelFix.depth(cycle, stroke.bottom() + stroke.direction() * (meant - depth), false, "see which of the two units was meant")
				.ifPresent(draft::fix);
		return Optional.of(draft);
	}

	/**
	 * How deep a hole is, mm: from its surface, or from where its drill starts where the surface is a guess, as that of holes at several
	 * levels.
	 */
	private static double drilled(Cut cut, Fact<Double> surface) {
		return Math.abs(cut.tip() - (surface.source() == FactSource.IMPLIED ? cut.start() : surface.value()));
	}

	/** Whether the tap ends above level 0, which the drill goes through, or starts below it: a sign is the slip. */
	private static boolean acrossZero(TapStroke stroke, Cut cut) {
		int into = cut.direction();
		return into * cut.start() <= 0 && into * cut.tip() > 0 && (into * stroke.bottom() <= 0 || into * stroke.start() > 0);
	}

	/** Whether R under G91 leads away from the hole, as heights do that were meant absolute: the depth from there says nothing. */
	private static boolean absoluteHeights(TapStroke stroke) {
		boolean relative = stroke.step() instanceof Step.Stroke step ? step.relative() : !stroke.modal().absolute();
		return relative && stroke.direction() * (stroke.start() - stroke.initial()) < -1e-3;
	}
}
