package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Location;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.machine.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/** A right-hand thread goes in clockwise; the cycle, the spindle and the hand called out must agree. */
public final class SpindleWrongWay extends TappingRule {

	public SpindleWrongWay() {
		super("spindle-wrong-way");
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (tapping.method().taps()) {
			first(tapping, stroke -> stroke.modal().mirrored() ? Optional.empty() : wrong(tapping, stroke), found);
		}
	}

	private Optional<Draft> wrong(Tapping tapping, TapStroke stroke) {
		Optional<Fact<ThreadSpec>> thread = tapping.wanted().statedThread();
		Optional<Hand> wanted = thread.map(t -> t.value().hand());
		if (stroke.step() instanceof Step.Stroke s && s.cycle().kind().taps()) {
			return inCycle(tapping, s, stroke, thread, wanted);
		}
		return wanted.filter(hand -> opposes(stroke.turning(), hand)).map(hand -> spindle(tapping, stroke, hand, thread.get().value().withoutClass().designation() + " is "
				+ words(hand) + " and goes in " + turn(hand)).known("thread", thread.get().value().designation(), thread.get()));
	}

	private Optional<Draft> inCycle(Tapping tapping, Step.Stroke step, TapStroke stroke, Optional<Fact<ThreadSpec>> thread, Optional<Hand> wanted) {
		Hand cycle = step.cycle().kind() == Cycle.Kind.TAP ? Hand.RIGHT : Hand.LEFT;
		String code = Figures.written(step.cycle().gWord());
		if (wanted.isPresent() && wanted.get() != cycle) {
			String message = code + " cuts a " + words(cycle) + " thread, " + thread.get().value().withoutClass().designation() + " is " + words(wanted.get())
					+ ": it needs the " + words(wanted.get()) + " cycle, " + (wanted.get() == Hand.LEFT ? "G74" : "G84") + ", and the spindle "
					+ turn(wanted.get());
			return Optional.of(Draft.of(this, Severity.ERROR, Location.of(step.cycle().gWord()), message)
					.known("hand", words(wanted.get()), thread.get()).from("hand of " + code, words(cycle), "programmed: " + code));
		}
		return opposes(stroke.turning(), cycle) ? Optional.of(spindle(tapping, stroke, cycle, code + " cuts a " + words(cycle) + " thread and goes in " + turn(cycle))
				.from("hand of " + code, words(cycle), "programmed: " + code)) : Optional.empty();
	}

	private Draft spindle(Tapping tapping, TapStroke stroke, Hand hand, String needs) {
		Optional<WordRef> word = stroke.modal().spindleWord();
		String said = word.map(Figures::written).orElse("the spindle");
		String message = said + " turns " + turn(hand == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT) + ", " + needs
				+ ": the tap is pushed into the hole without cutting; " + (hand == Hand.RIGHT ? "M3" : "M4");
		Location at = word.map(Location::of).orElse(Location.of(stroke.block()));
		Draft draft = Draft.of(this, Severity.ERROR, at, message).from("direction", turn(hand == Hand.RIGHT ? Hand.LEFT : Hand.RIGHT), "programmed: " + said);
		if (stroke.step() instanceof Step.Stroke) {
			Fix.together(tapping.strokes().stream().filter(other -> other.turning() == stroke.turning()).flatMap(other -> other.modal().spindleWord().stream()).distinct()
					.flatMap(other -> turned(other, hand).stream()).toList()).ifPresent(draft::fix);
		}
		return draft;
	}

	/** M3 for M4 or the other way round, in cycles; a spindle that is reversed by the program itself needs more than one word changed. */
	private static Optional<Fix> turned(WordRef word, Hand hand) {
		String said = Figures.written(word);
		if (!word.literal() || !List.of("M3", "M4", "M03", "M04").contains(said)) {
			return Optional.empty();
		}
		String right = word.written().substring(0, word.written().length() - 1) + (hand == Hand.RIGHT ? "3" : "4");
		return Optional.of(new Fix("Change " + said + " to " + Figures.tight(right), false, "see that no cutting before the thread relies on " + said,
				List.of(new Edit(Location.of(word), right))));
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
