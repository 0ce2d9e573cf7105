package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.profile.Meaning;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.Hand;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/** A right-hand thread goes in clockwise and comes out the other way; the cycle, the spindle and the hand called out must agree. */
public final class SpindleWrongWay extends TappingRule {

	/** G74, times ten: on lathes it pecks, and M4 makes G84 cut left-hand threads. */
	private static final int LEFT = 740;

	public SpindleWrongWay() {
		super("spindle-wrong-way");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.NO_TAP, Slip.LEFT_ON, Slip.MIRROR);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		work.threadMillings().forEach(milling -> backwards(work, milling).or(() -> groundLeft(work, milling))
				.map(draft -> draft.on(milling).finding()).ifPresent(found));
		DrillSpindle.backwards(this, work).forEach(draft -> found.accept(draft.finding()));
		DrillSpindle.againstPoint(this, work).forEach(draft -> found.accept(draft.finding()));
		work.course().singlePoints().forEach(turned -> TurnedSpindle.hand(this, turned).map(Draft::finding).ifPresent(found));
	}

	/**
	 * A thread mill that turns the other way than the tool that made its hole, or backwards by itself: it is ground to cut turning
	 * clockwise, whatever the hand of its thread (common practice, no source). Under an angle head, along X or Y, the drill tells, though
	 * another head may turn round; on a lathe that may be right.
	 */
	private Optional<Draft> backwards(Work work, ThreadMilling milling) {
		Optional<MillPass> wrong = milling.passes().typical().stream()
				.filter(pass -> pass.modal().spindle() == SpindleTurn.COUNTERCLOCKWISE).findFirst();
		Optional<Fact<ThreadSpec>> thread = milling.wanted().statedThread();
		if (wrong.isEmpty() || thread.isEmpty() || work.shop().profile().isLathe()
				|| milling.tool().facts().leftCutting().isPresent() || made(milling, wrong.get(), SpindleTurn.COUNTERCLOCKWISE)) {
			return Optional.empty();
		}
		boolean known = made(milling, wrong.get(), SpindleTurn.CLOCKWISE);
		boolean upright = wrong.get().axis() == 2;
		if (!known && !(upright && milling.tool().facts().isThreadMill())) {
			return Optional.empty();
		}
		// a right-hand thread from the top down, clockwise, is how a cutter for the other way is led so that it climbs (geometry)
		boolean led = !wrong.get().external() && !wrong.get().counterclockwise();
		boolean sure = known && upright && !led && thread.get().value().hand() == Hand.RIGHT;
		Optional<WordRef> word = wrong.get().modal().spindleWord();
		Draft draft = Draft.of(this, sure ? Severity.ERROR : Severity.WARNING,
				word.map(Location::of).orElse(Location.of(wrong.get().block())), word.map(Figures::written).orElse("the spindle")
				+ " turns " + milling.tool().name() + " counter-clockwise, " + (known ? "the drill turned clockwise"
						: "a thread mill cuts turning clockwise, whatever the hand of its thread")
				+ ": the backs of its teeth rub and it breaks; M3" + (led ? ", or say that it is ground LEFT HAND CUTTING" : ""))
				.from("direction", way(SpindleTurn.COUNTERCLOCKWISE), "programmed");
		word.flatMap(at -> turned(at, Hand.RIGHT)).ifPresent(draft::fix);
		return Optional.of(draft);
	}

	/** A thread mill that is said to be ground for M4, and turns clockwise (geometry); on lathes M3 may be either way. */
	private Optional<Draft> groundLeft(Work work, ThreadMilling milling) {
		Optional<Fact<Boolean>> left = milling.tool().facts().leftCutting();
		Optional<MillPass> wrong = left.isEmpty() || work.shop().profile().isLathe() ? Optional.empty()
				: milling.passes().typical().stream().filter(pass -> pass.axis() == 2
						&& pass.modal().spindle() == SpindleTurn.CLOCKWISE).findFirst();
		return wrong.map(pass -> {
			Optional<WordRef> word = pass.modal().spindleWord();
			Draft draft = Draft.of(this, Severity.ERROR, word.map(Location::of).orElse(Location.of(pass.block())),
					word.map(Figures::written).orElse("the spindle") + " turns " + milling.tool().name()
					+ " clockwise, it is said to cut turning counter-clockwise: the backs of its teeth rub and it breaks; M4")
					.known("ground", "left hand cutting", left.get()).from("direction", way(SpindleTurn.CLOCKWISE), "programmed");
			word.flatMap(at -> turned(at, Hand.LEFT)).ifPresent(draft::fix);
			return draft;
		});
	}

	/** Whether another tool that turned this way made the hole. */
	private static boolean made(ThreadMilling milling, MillPass pass, SpindleTurn turn) {
		return pass.hole().makingBefore(pass.order()).stream().anyMatch(cut -> cut.tool().index() != milling.tool().index()
				&& cut.step().modal().spindle() == turn);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (tapping.method().taps()) {
			first(tapping, stroke -> stroke.modal().mirrored() ? Optional.empty()
					: wrong(tapping, stroke, work).or(() -> comingOut(tapping, stroke)), found);
		}
	}

	private Optional<Draft> wrong(Tapping tapping, TapStroke stroke, Work work) {
		Optional<Fact<ThreadSpec>> thread = tapping.wanted().statedThread();
		Optional<Hand> wanted = thread.map(t -> t.value().hand());
		if (work.shop().profile().isLathe() && stroke.direction() > 0 && drilledSo(stroke)) {
			// the back spindle, on which the machine decides what M3 is
			return Optional.empty();
		}
		boolean bySpindle = wanted.filter(hand -> hand == Hand.LEFT).isPresent()
				&& !work.shop().profile().gCode(LEFT).contains(Meaning.TAP_LEFT);
		if (stroke.step() instanceof Step.Stroke s && s.cycle().kind().taps() && !bySpindle) {
			return inCycle(tapping, s, stroke, thread, wanted);
		}
		return wanted.filter(hand -> opposes(stroke.turning(), hand))
				.map(hand -> spindle(tapping, stroke, hand, thread.get().value().withoutClass().designation() + " is " + words(hand)
						+ " and goes in " + turn(hand)).known("thread", thread.get().value().designation(), thread.get()));
	}

	/** Whether the hole was drilled the same way on and by a spindle that turned as it does for the tap. */
	private static boolean drilledSo(TapStroke stroke) {
		return stroke.hole().makingBefore(stroke.order()).stream().anyMatch(cut -> cut.direction() == stroke.direction()
				&& cut.step().modal().spindle() == stroke.turning());
	}

	/**
	 * A tap that goes in and comes out by moves must be turned the other way between them, unless its holder does it, or it is a die head
	 * that opens.
	 */
	private Optional<Draft> comingOut(Tapping tapping, TapStroke stroke) {
		boolean head = tapping.wanted().holder().value().kind() == HolderKind.SELF_REVERSING
				|| tapping.tool().facts().kind().filter(kind -> kind.value() == ToolKind.DIE_HEAD).isPresent();
		boolean reversed = stroke.turningOut() == SpindleTurn.UNKNOWN || stroke.turningOut() != stroke.turning()
				&& stroke.turningOut() != SpindleTurn.STOPPED;
		if (stroke.back().isEmpty() || head || reversed || !stroke.turning().turns()) {
			return Optional.empty();
		}
		Step out = stroke.back().get();
		Optional<WordRef> word = out.modal().spindleWord();
		boolean said = !word.equals(stroke.modal().spindleWord());
		boolean stopped = stroke.turningOut() == SpindleTurn.STOPPED;
		String code = stroke.turning() == SpindleTurn.CLOCKWISE ? "M4" : "M3";
		String under = word.map(Figures::written).orElse("");
		boolean die = tapping.tool().facts().isDie();
		String state = (die ? "the die comes off " : "the tap comes out ") + (stopped ? "with the spindle stopped"
				+ (said ? " by " + under : "")
				: "under " + under + ", turning as it went in");
		boolean torn = said || tapping.method().synchronised() || tapping.wanted().holder().stated()
				|| tapping.strokes().typical().stream().anyMatch(SpindleWrongWay::turnedBack);
		String message = state + ": " + (torn ? "it is torn " + (die ? "off" : "out of") + " the thread; " + code + " before the block"
				: "right for a self-reversing tapping head alone; else " + code + " before the block");
		return Optional.of(Draft.of(this, torn ? Severity.ERROR : Severity.INFORMATION, said && !stopped ? Location.of(word.get())
				: Location.of(out.block()), message).from("direction in", way(stroke.turning()), "programmed")
				.from("direction out", way(stroke.turningOut()), "programmed").related(stroke.block(), "the way in"));
	}

	/** Whether the program turns the spindle back before the tap comes out: no head does it there. */
	private static boolean turnedBack(TapStroke stroke) {
		return stroke.back().isPresent() && stroke.turningOut().turns() && stroke.turning().turns()
				&& stroke.turningOut() != stroke.turning();
	}

	private static String way(SpindleTurn turning) {
		return turning == SpindleTurn.CLOCKWISE ? "clockwise" : turning == SpindleTurn.COUNTERCLOCKWISE ? "counter-clockwise" : "stopped";
	}

	private Optional<Draft> inCycle(Tapping tapping, Step.Stroke step, TapStroke stroke, Optional<Fact<ThreadSpec>> thread,
			Optional<Hand> wanted) {
		Hand cycle = step.cycle().kind() == Cycle.Kind.TAP ? Hand.RIGHT : Hand.LEFT;
		if (wanted.filter(hand -> hand != cycle).isEmpty() && !opposes(stroke.turning(), cycle)) {
			return Optional.empty();
		}
		String code = Figures.written(step.cycle().gWord());
		if (wanted.isPresent() && wanted.get() != cycle) {
			boolean left = wanted.get() == Hand.LEFT;
			String message = code + " cuts a " + words(cycle) + " thread, " + thread.get().value().withoutClass().designation() + " is "
					+ words(wanted.get()) + (step.cycle().gWord().address() == 'G' ? ": it needs the " + words(wanted.get()) + " cycle, "
							+ (left ? "G74" : "G84") + ", and the spindle " + turn(wanted.get())
							: "; its pitch " + (left ? "with" : "without") + " a minus sign");
			return Optional.of(Draft.of(this, Severity.ERROR, Location.of(step.cycle().gWord()), message)
					.known("hand", words(wanted.get()), thread.get()).from("hand of " + code, words(cycle), "programmed: " + code));
		}
		return Optional.of(spindle(tapping, stroke, cycle, code + " cuts a " + words(cycle) + " thread and goes in " + turn(cycle))
				.from("hand of " + code, words(cycle), "programmed: " + code));
	}

	private Draft spindle(Tapping tapping, TapStroke stroke, Hand hand, String needs) {
		Optional<WordRef> word = stroke.modal().spindleWord();
		String said = word.map(Figures::written).orElse("the spindle");
		boolean byLead = word.filter(lead -> lead.address() != 'M').isPresent();
		String message = said + " turns " + turn(hand == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT) + ", " + needs
				+ ": the " + (tapping.tool().facts().isDie() ? tapping.tool().facts().kind().orElseThrow().value().words()
						+ " is pushed onto the bolt" : "tap is pushed into the hole") + " without cutting; "
				+ (byLead ? "the lead " + (hand == Hand.RIGHT ? "without" : "with")
						+ " a minus sign" : hand == Hand.RIGHT ? "M3" : "M4");
		Location at = word.map(Location::of).orElse(Location.of(stroke.block()));
		Draft draft = Draft.of(this, Severity.ERROR, at, message).from("direction", turn(hand == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT),
				"programmed: " + said);
		Hand other = hand == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT;
		List<Optional<Fix>> in = fixes(tapping, stroke, each -> each.modal().spindleWord().stream(), hand);
		List<Optional<Fix>> out = stroke.step() instanceof Step.Stroke ? List.of()
				: fixes(tapping, stroke, each -> each.back().stream().flatMap(back -> back.modal().spindleWord().stream()), other);
		boolean reverses = stroke.step() instanceof Step.Stroke || stroke.back().isPresent() && stroke.turningOut() != stroke.turning();
		if (reverses && Stream.concat(in.stream(), out.stream()).allMatch(Optional::isPresent)) {
			Fix.together(Stream.concat(in.stream(), out.stream()).flatMap(Optional::stream).toList()).ifPresent(draft::fix);
		}
		return draft;
	}

	/** The words that turn the spindle for strokes that turn as this one does, each changed to suit a hand. */
	private static List<Optional<Fix>> fixes(Tapping tapping, TapStroke stroke, Function<TapStroke, Stream<WordRef>> words, Hand hand) {
		return tapping.strokes().stream().filter(each -> each.turning() == stroke.turning()).flatMap(words).distinct()
				.map(word -> turned(word, hand)).toList();
	}

	/** M3 for M4 or the other way round. */
	static Optional<Fix> turned(WordRef word, Hand hand) {
		String said = Figures.written(word);
		if (!word.literal() || !List.of("M3", "M4", "M03", "M04").contains(said)) {
			return Optional.empty();
		}
		String right = word.written().substring(0, word.written().length() - 1) + (hand == Hand.RIGHT ? "3" : "4");
		return Optional.of(new Fix("Change " + said + " to " + Figures.tight(right), false,
				"see that no cutting before the thread relies on " + said, List.of(new Edit(Location.of(word), right))));
	}

	private static boolean opposes(SpindleTurn turning, Hand hand) {
		return turning == (hand == Hand.RIGHT ? SpindleTurn.COUNTERCLOCKWISE : SpindleTurn.CLOCKWISE);
	}

	private static String words(Hand hand) {
		return hand == Hand.RIGHT ? "right-hand" : "left-hand";
	}

	private static String turn(Hand hand) {
		return hand == Hand.RIGHT ? "clockwise" : "counter-clockwise";
	}
}
