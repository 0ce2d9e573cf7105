package truelead.checker.rule.milling;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.Work;

/**
 * The diameter that the deepest pass of a lathe's thread goes to: outside that of the root, inside that of the crest of the screw, between
 * what {@link WallLimits} allow.
 */
final class TurnedSize {

	/** What a lead may be off the thread's for the thread to be this one, a part of it. */
	private static final double SAME = 0.03;
	/**
	 * Pitches beyond which another thread of the same tool explains the diameter, and beyond which a thread inside is another one than is
	 * named.
	 */
	private static final double FAR = 1;
	private static final double STRANGE = 2;
	/**
	 * Pitches on the radius that a last pass goes less deep than one before it by a slip, and not as a spring pass (common practice, no
	 * source).
	 */
	private static final double BACK = 0.05;

	private TurnedSize() {
	}

	/**
	 * The finding of a thread that ends on another diameter; empty where it does not, where it is cut further afterwards, or nothing is
	 * known of its form.
	 */
	static Optional<Draft> of(Rule rule, Work work, SinglePoint turned) {
		Optional<Fact<ThreadSpec>> thread = turned.agreed().filter(known -> known.stated() || fallsBack(turned, known.value()))
				.map(fact -> fact.map(turned::asCut));
		// what is off its taper has no diameter to be measured
		if (thread.isEmpty() || TurnedTaper.wrong(rule, turned).isPresent() || goesOn(work, turned, thread.get().value())) {
			return Optional.empty();
		}
		return turned.deepestOfEach(thread.get().value()).stream().flatMap(pass -> of(rule, work, turned, pass, thread.get())
				.stream()).findFirst();
	}

	private static Optional<Draft> of(Rule rule, Work work, SinglePoint turned, SinglePoint.Pass pass, Fact<ThreadSpec> thread) {
		Optional<WallLimits> limits = WallLimits.of(thread.value(), turned.inside(), pass.step());
		double lead = Math.IEEEremainder(pass.lead(), thread.value().lead());
		boolean tooDeep = limits.filter(WallLimits::taper).isPresent() && turned.behindBore() > thread.value().pitch();
		if (limits.isEmpty() || tooDeep || !(Math.abs(lead) <= SAME * thread.value().lead())) {
			return Optional.empty();
		}
		double cut = 2 * pass.radius();
		double error = cut < limits.get().least() ? cut - limits.get().least() : cut > limits.get().most() ? cut - limits.get().most() : 0;
		double off = Math.abs(error) / thread.value().pitch();
		boolean another = off > STRANGE && turned.inside() && !begunAs(turned, pass, limits.get(), thread.value())
				|| off > FAR && othersThread(work, turned, thread.value());
		return error == 0 || Double.isNaN(cut) || another ? Optional.empty()
				: Optional.of(draft(rule, turned, pass, thread, limits.get(), error));
	}

	/**
	 * Whether all passes but the deepest stay inside the wall, and come near it: that one alone is a slip, such as a diameter for a radius.
	 */
	private static boolean begunAs(SinglePoint turned, SinglePoint.Pass deepest, WallLimits limits, ThreadSpec thread) {
		double widest = turned.passes().stream().filter(pass -> pass.radius() != deepest.radius()).mapToDouble(pass -> 2 * pass.radius())
				.max().orElse(Double.NaN);
		return widest <= limits.most() && widest >= limits.least() - thread.pitch();
	}

	/** Whether the last pass is less deep than one before it, which shows that a diameter is wrong where nobody names the thread. */
	private static boolean fallsBack(SinglePoint turned, ThreadSpec thread) {
		SinglePoint.Pass last = turned.passes().get(turned.passes().size() - 1);
		return turned.grooves(thread) < 2 && Math.abs(last.radius() - turned.deepest().radius()) > BACK * thread.pitch();
	}

	/** Whether another tool, or this one at another lead, cuts the same thread there afterwards, or this one deeper. */
	private static boolean goesOn(Work work, SinglePoint turned, ThreadSpec thread) {
		boolean later = false;
		for (SinglePoint other : work.course().singlePoints()) {
			if (other == turned) {
				later = true;
			} else if (other.inside() == turned.inside() && other.overlaps(turned) && !AnotherPart.between(work, turned, other)
					&& other.thread().map(Fact::value).map(TurnedSize::bare).filter(bare(thread)::equals).isPresent()
					&& (later || deeper(turned, other))) {
				return true;
			}
		}
		return false;
	}

	private static boolean deeper(SinglePoint turned, SinglePoint other) {
		double further = other.deepest().radius() - turned.deepest().radius();
		return other.tool().index() == turned.tool().index() && (turned.inside() ? further > 0 : further < 0);
	}

	/** Whether the same tool cuts the thread elsewhere, so that this may be one that nobody names. */
	private static boolean othersThread(Work work, SinglePoint turned, ThreadSpec thread) {
		return work.course().singlePoints().stream().anyMatch(other -> other != turned && other.tool().index() == turned.tool().index()
				&& WallLimits.of(thread, other.inside(), other.deepest().step()).filter(limits ->
						limits.least() <= 2 * other.deepest().radius() && 2 * other.deepest().radius() <= limits.most()).isPresent());
	}

	private static ThreadSpec bare(ThreadSpec thread) {
		return thread.withoutClass().withHand(Hand.RIGHT);
	}

	private static Draft draft(Rule rule, SinglePoint turned, SinglePoint.Pass pass, Fact<ThreadSpec> thread, WallLimits limits,
			double error) {
		Figures figures = new Figures(pass.step().modal().unit());
		boolean shallow = turned.inside() == error < 0;
		SinglePoint.Pass last = turned.passes().get(turned.passes().size() - 1);
		boolean back = shallow && turned.grooves(thread.value()) < 2
				&& Math.abs(last.radius() - pass.radius()) > BACK * thread.value().pitch();
		BlockRef at = (back ? last : pass).deepBy();
		Location word = MillFacts.word(at, "X");
		String message = "the deepest pass of " + (turned.grooves(thread.value()) > 1 ? "this start" : "the thread") + " "
				+ (turned.inside() ? "inside" : "outside") + " goes to diameter " + figures.fine(2 * pass.radius())
				+ (back ? " and the last one to " + figures.fine(2 * last.radius()) : "") + ", "
				+ thread.value().withoutClass().designation() + " needs " + (error < 0 ? "at least " : "at most ")
				+ figures.fine(error < 0 ? limits.least() : limits.most()) + (limits.taper() ? " there" : "") + ": "
				+ figures.fine(Math.abs(error)) + (error < 0 ? " too small" : " too large")
				+ (shallow ? ", the thread is not cut out and no gauge goes " + (turned.inside() ? "in" : "on")
						: ", the thread is too deep and loose") + "; " + figures.fine(limits.usual());
		return Draft.of(rule, Severity.ERROR, word, message).programmed("diameter of the deepest pass", figures.fine(2 * pass.radius()), at)
				.known("the callout", thread.value().designation(), thread).from("diameter", figures.fine(limits.usual()), limits.source());
	}
}
