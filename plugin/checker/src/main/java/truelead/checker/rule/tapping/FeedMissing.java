package truelead.checker.rule.tapping;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.program.Reason;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.HoleMakers;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.WordText;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * No F is in force in the tapping block, F0 is, or the F of another tool is: written before this tool's change, for the drill or the mill.
 */
public final class FeedMissing extends TappingRule {

	public FeedMissing() {
		super("feed-missing");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.OTHER_TOOLS_FEED);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.NO_TAP, Slip.UNREAD_BLOCK, Slip.LEFT_ON, Slip.UNIT_WORD);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		if (!work.course().subprogramAlone()) {
			drills(work).forEach(found);
			work.threadMillings().forEach(milling -> leftOver(milling).map(draft -> draft.on(milling).finding()).ifPresent(found));
			work.course().singlePoints().forEach(turned -> turned(turned).map(Draft::finding).ifPresent(found));
		}
	}

	/**
	 * The drills of threaded holes that no F has fed yet, while their threads are cut under one; a cycle that is called by its name may
	 * have a feed of its own, and who calls a tool in another way than the program's others may say its feed with it.
	 */
	private Stream<Finding> drills(Work work) {
		Set<Integer> told = new HashSet<>();
		return HoleMakers.of(work).stream().filter(maker -> maker.cut().tool().change().isPresent()
				&& !maker.cut().step().modal().feed().isSet() && !byName(maker.cut().step()) && isFed(maker.operation())
				&& told.add(maker.cut().tool().index()))
				.map(maker -> Draft.of(this, Severity.ERROR, Location.of(maker.cut().block()), "no F is in force where "
						+ maker.cut().tool().name() + (maker.cut().kind().atEdge() ? " goes in" : " drills")
						+ ": the control stops there; F in this block").on(maker.operation()).finding());
	}

	private static boolean byName(Step step) {
		return step instanceof Step.Stroke stroke && stroke.cycle().gWord().address() != 'G';
	}

	private static boolean isFed(ThreadingOperation operation) {
		return operation instanceof Tapping tapping ? tapping.strokes().typical().stream().anyMatch(stroke -> stroke.feed().isSet())
				: operation instanceof ThreadMilling milling && milling.passes().typical().stream().anyMatch(pass -> pass.modal()
						.feed().isSet());
	}

	/** A thread mill that no F feeds, or one of the tool before: written above the block that changes to it, and none behind. */
	private Optional<Draft> leftOver(ThreadMilling milling) {
		BlockRef pass = milling.block();
		Modal modal = milling.passes().get(0).modal();
		if (!modal.feed().isSet() && modal.feedMode() == FeedMode.PER_MINUTE) {
			return Optional.of(Draft.of(this, Severity.ERROR, Location.of(pass), "no F is in force where " + milling.tool().name()
					+ " mills the thread: the control stops there; F in this block"));
		}
		Optional<WordRef> feed = milling.passes().get(0).modal().feed().word();
		Optional<BlockRef> change = milling.passes().get(0).modal().toolChange();
		boolean old = feed.isPresent() && change.isPresent() && feed.get().block().above(change.get()) && change.get().above(pass);
		return !old ? Optional.empty()
				: Optional.of(Draft.of(this, Severity.ERROR, Location.of(pass), Figures.written(feed.get())
						+ " was last written before the change to " + milling.tool().name()
						+ " and is left over from the tool before; F in this block")
						.related(feed.get().block(), "the block that wrote the feed"));
	}

	/** A cycle or pass of a lathe's thread under which no word says a lead. */
	private Optional<Draft> turned(SinglePoint turned) {
		Setting lead = turned.pass().lead();
		Optional<Fact<ThreadSpec>> thread = turned.thread().filter(Fact::stated);
		boolean cycle = turned.pass().code() == 0;
		Optional<WordRef> old = SinglePointFeed.leftOver(turned);
		if (old.isEmpty() && (!cycle || lead.known() || lead.word().isPresent())) {
			return Optional.empty();
		}
		LengthUnit unit = turned.pass().modal().unit();
		Draft draft = Draft.of(this, Severity.ERROR, Location.of(turned.pass().block()),
				old.map(word -> Figures.written(word) + " was last written before the change to " + turned.tool().name()
						+ " and is left over from the tool before: the thread gets a lead of "
						+ Figures.number(lead.value(), 5)).orElse("no F is in force in the threading block: the thread has no lead")
				+ thread.map(t -> "; F" + Figures.number(t.value().lead() / unit.mm(), 5)).orElse(""));
		old.ifPresent(word -> draft.related(word.block(), "the block that wrote the feed"));
		return Optional.of(draft);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (tapping.method().taps()) {
			first(tapping, stroke -> missing(tapping, work, stroke), found);
		}
	}

	private Optional<Draft> missing(Tapping tapping, Work work, TapStroke stroke) {
		boolean synchronised = tapping.method().synchronised();
		Setting feed = synchronised ? stroke.lead() : stroke.feed();
		Optional<Double> lead = tapping.wanted().statedThread().map(Fact::value).map(ThreadSpec::lead);
		if (!feed.isSet()) {
			return work.course().subprogramAlone() ? Optional.empty()
					: Optional.of(draft(tapping, stroke, feed, Severity.ERROR, "no " + (synchronised ? "lead" : "F")
							+ " is in force in the tapping block"));
		}
		if (feed.known() && feed.value() == 0) {
			return Optional.of(draft(tapping, stroke, feed, Severity.ERROR, Figures.written(feed.word().orElseThrow())
					+ " does not move the tap"));
		}
		if (synchronised || !stroke.staleFeed()) {
			return Optional.empty();
		}
		boolean fits = lead.isPresent() && TapFeed.of(tapping, stroke).map(f -> f.fits(lead.get())).orElse(false);
		String old = feed.word().map(Figures::written).orElse("F" + Figures.number(feed.value(), 4));
		return Optional.of(draft(tapping, stroke, feed, fits ? Severity.INFORMATION : Severity.ERROR,
				old + " was last written before the change to " + tapping.tool().name() + " and is left over from the tool before"
						+ (fits ? "; it happens to fit" : "")));
	}

	private Draft draft(Tapping tapping, TapStroke stroke, Setting feed, Severity severity, String fact) {
		Optional<Fact<ThreadSpec>> thread = tapping.wanted().statedThread();
		Optional<String> right = thread.flatMap(t -> right(stroke, tapping, t.value().lead()));
		Figures figures = new Figures(stroke.modal().unit());
		boolean zero = feed.known() && feed.value() == 0;
		String message = fact + thread.map(t -> ": " + t.value().withoutClass().designation() + " needs "
				+ figures.advance(t.value().lead()) + " " + figures.symbol() + " a turn").orElse("") + right.map(r -> "; " + r).orElse("");
		Draft draft = zero ? Draft.of(this, severity, feed, stroke.block(), message)
				: Draft.of(this, severity, Location.of(block(tapping, stroke)), message);
		if (feed.isSet()) {
			draft.programmed("feed", feed.word().map(Figures::written).orElse(Figures.number(feed.value(), 4)), feed);
			feed.word().ifPresent(word -> draft.related(word.block(), "the block that wrote the feed"));
		}
		if (stroke.speed().known()) {
			draft.programmed("speed", "S" + Figures.number(stroke.speed().value(), 1), stroke.speed());
		}
		thread.ifPresent(t -> draft.known("pitch", figures.advance(t.value().lead()) + " " + figures.symbol(), t));
		right.map(r -> zero ? zeroFix(stroke, feed, tapping, thread.get().value().lead()) : Optional.of(FeedFix.add(stroke, r)))
				.flatMap(f -> f).ifPresent(draft::fix);
		return draft;
	}

	private static Optional<Fix> zeroFix(TapStroke stroke, Setting feed, Tapping tapping, double lead) {
		return like(stroke, tapping).flatMap(f -> feed.word().flatMap(word -> Draft.change(word, f.right(lead), f.decimals(lead),
				word.block().sameBlock(stroke.block()), "a feed of zero is never meant; see that the word feeds nothing else")));
	}

	private static Optional<String> right(TapStroke stroke, Tapping tapping, double lead) {
		return like(stroke, tapping).map(f -> (tapping.method().synchronised() ? 'K' : letter(stroke.feed()))
				+ WordText.fresh(f.right(lead), f.decimals(lead), false));
	}

	/** F, or the word that stands in its place in a tapping cycle. */
	private static char letter(Setting feed) {
		return feed.word().map(WordRef::address).filter(address -> "IKQ".indexOf(address) >= 0).orElse('F');
	}

	/** A feed of 1 in force at the stroke, to work out the right one from mode, unit and speed. */
	private static Optional<TapFeed> like(TapStroke stroke, Tapping tapping) {
		boolean perTurn = tapping.method().synchronised() || stroke.modal().feedMode() == FeedMode.PER_REVOLUTION;
		boolean turns = stroke.speed().known() && stroke.speed().value() > 0 && !stroke.modal().constantSurface();
		return perTurn || turns && stroke.modal().feedMode() == FeedMode.PER_MINUTE
				? Optional.of(new TapFeed(stroke, new Setting(1, Optional.empty(), Reason.NONE), perTurn, stroke.speed().value(), 1))
				: Optional.empty();
	}
}
