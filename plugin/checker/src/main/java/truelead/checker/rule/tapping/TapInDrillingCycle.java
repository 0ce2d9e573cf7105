package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Step;
import truelead.checker.profile.Meaning;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.rule.WordText;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.Hand;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** The tool is called a tap and is fed in and pulled out in rapid, in a drilling cycle or by moves: the thread is torn out. */
public final class TapInDrillingCycle extends TappingRule {

	/** A self-reversing head is fed at the pitch or a little less, as parts of it (common practice, no source). */
	private static final double LEAST = 0.9;
	private static final double MOST = 1.01;
	/** G74, times ten. */
	private static final int LEFT = 740;

	/** Whether another tap of the program runs in a tapping cycle. */
	private static final Survey<Boolean, Boolean> TAPPING_CYCLES = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Boolean> said) {
			work.tappings().stream().filter(one -> one.method() == Tapping.Method.CYCLE
					&& one.cycle().filter(cycle -> cycle.kind().taps()).isPresent()).forEach(one -> said.accept(one.tool().index(), true));
		}

		@Override
		public Boolean all(List<Boolean> said) {
			return !said.isEmpty();
		}
	};

	public TapInDrillingCycle() {
		super("tap-in-drilling-cycle");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.DRILLING_CYCLE);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.OTHER_TOOL);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (tapping.method() == Tapping.Method.SYNCHRONISED || tapping.method() == Tapping.Method.FEED) {
			first(tapping, stroke -> HalfWay.of(this, tapping, stroke), found);
		}
		if (tapping.method() != Tapping.Method.DRILLING_CYCLE || tapping.strokes().isEmpty()) {
			return;
		}
		TapStroke stroke = tapping.strokes().get(0);
		Optional<Cycle> cycle = stroke.step() instanceof Step.Stroke s ? Optional.of(s.cycle()) : Optional.empty();
		String known = tapping.tool().facts().kind().isPresent() ? " is called a " + ToolName.of(tapping.tool().facts())
				: " advances the pitch of " + tapping.wanted().thread().map(t -> t.value().designation()).orElse("a thread")
				+ " a turn, as a tap does,";
		// a program with another tap in a tapping cycle, or with a rigid-tap code, is written for no self-reversing head
		boolean head = cycle.filter(c -> c.kind() == Cycle.Kind.BORE_FEED_OUT).isPresent() && nearPitch(tapping, stroke)
				&& stroke.modal().rigid().isEmpty() && !work.survey(tapping, TAPPING_CYCLES, others -> others);
		String said = cycle.map(c -> Figures.written(c.gWord())).orElse("this block");
		Optional<Step> rapid = stroke.step() instanceof Step.Synchronised ? stroke.back() : Optional.empty();
		Figures figures = new Figures(stroke.modal().unit());
		Optional<Tapping> swapped = SwappedTools.other(tapping, work);
		boolean forDrill = swapped.isEmpty() && cycle.isPresent() && drills(stroke, work);
		String right = swapped.isPresent() ? tapping.tool().name() + " and " + swapped.get().tool().name() + ", a "
				+ ToolName.of(swapped.get().tool().facts()) + " that taps there, are swapped" : rapid.isPresent()
				? "the synchronised move back, with the spindle reversed" : cycle.filter(c -> c.gWord().address() != 'G').isPresent()
				? "CYCLE84" : forDrill ? "the drill's own tool number" : code(tapping, work);
		String message = tapping.tool().name() + known + " and "
				+ (head ? said + " feeds it in and out near the pitch: right for a self-reversing tapping head alone"
						: (rapid.isPresent() ? "comes back in rapid, which pulls" : "runs in " + said + ", which pulls") + " it out of "
						+ figures.length(Turns.engaged(tapping, stroke))
						+ " of thread without reversing: the thread is torn out; " + right);
		Draft draft = Draft.of(this, head ? Severity.INFORMATION : Severity.ERROR,
				cycle.map(c -> Location.of(c.gWord())).orElse(Location.of(rapid.map(Step::block).orElse(stroke.block()))), message);
		tapping.tool().facts().kind().ifPresent(kind -> draft.known("tool", ToolName.of(tapping.tool().facts()), kind));
		draft.programmed("depth", figures.length(stroke.travel()), stroke.block());
		swapped.ifPresent(drill -> draft.related(drill.block(), "where the " + ToolName.of(drill.tool().facts()) + " taps"));
		if (!head && swapped.isEmpty() && !forDrill) {
			cycle.flatMap(c -> fix(tapping, stroke, c, work)).ifPresent(draft::fix);
		}
		found.accept(draft);
	}

	/** Whether nothing made the hole, and a tap taps it behind: the drill was meant to come here. */
	private static boolean drills(TapStroke stroke, Work work) {
		return !stroke.hole().madeBefore(stroke.order()) && work.tappings().stream().anyMatch(other -> other.firstOrder() > stroke.order()
				&& other.method() != Tapping.Method.DRILLING_CYCLE && other.method().taps()
				&& other.strokes().typical().stream().anyMatch(later -> later.place().equals(stroke.place())));
	}

	private static boolean nearPitch(Tapping tapping, TapStroke stroke) {
		double lead = tapping.wanted().thread().map(Fact::value).map(t -> t.lead()).orElse(Double.NaN);
		return TapFeed.of(tapping, stroke).map(feed -> feed.advance() >= LEAST * lead && feed.advance() <= MOST * lead).orElse(false);
	}

	/** The cycle for the tap's hand; on a lathe G74 pecks, and M4 makes G84 cut the other hand. */
	private static String code(Tapping tapping, Work work) {
		boolean side = !tapping.strokes().isEmpty() && tapping.strokes().get(0).step() instanceof Step.Stroke step
				&& work.shop().profile().sideCycle(step.cycle().gWord());
		if (side) {
			return work.shop().profile().tap(true).orElse("G84");
		}
		boolean left = work.shop().profile().gCode(LEFT).contains(Meaning.TAP_LEFT)
				&& tapping.wanted().thread().map(t -> t.value().hand() == Hand.LEFT).orElse(false);
		return left ? "G74" : "G84";
	}

	/**
	 * The tapping cycle in place of the drilling one, with the feed that is right; only where the cycle has no words that mean something
	 * else in tapping.
	 */
	private static Optional<Fix> fix(Tapping tapping, TapStroke stroke, Cycle cycle, Work work) {
		Optional<TapFeed> feed = TapFeed.of(tapping, stroke);
		double lead = tapping.wanted().statedThread().map(t -> t.value().lead()).orElse(Double.NaN);
		if (feed.isEmpty() || cycle.gWord().address() != 'G' || !cycle.gWord().literal() || Double.isNaN(lead)
				|| cycle.word('Q').isPresent() || stroke.staleFeed()) {
			return Optional.empty();
		}
		List<Edit> edits = new ArrayList<>();
		String written = cycle.gWord().written();
		String code = code(tapping, work);
		edits.add(new Edit(Location.of(cycle.gWord()), written.charAt(0) + code.substring(1)));
		Optional<WordRef> word = feed.get().feed().word().filter(WordRef::literal);
		if (!feed.get().exact(lead)) {
			if (word.isEmpty()) {
				return Optional.empty();
			}
			edits.add(new Edit(Location.of(word.get()), WordText.rewrite(word.get(), feed.get().right(lead), feed.get().decimals(lead))));
		}
		return Optional.of(new Fix("Change " + Figures.written(cycle.gWord()) + " to " + code + " and feed " + FeedFix.text(feed.get(),
				lead), false, "see that speed, direction and R plane suit tapping", edits));
	}
}
