package truelead.checker.rule.hole;

import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.program.BlockRef;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.AnotherPart;
import truelead.checker.work.Work;

/**
 * A thread that a lathe cuts by a single point from before the face, taken for Z0, and that ends before it is as long as its comment says:
 * {@code M14X1.5 X 20 LONG}, {@code M33X2 X 18 DEEP}.
 */
final class TurnedLength {

	/**
	 * Part of the pitch that the end may lie before the length said, for the point's own width; and that the outside is turned beyond it:
	 * what ends there is as long as the bolt, and not as its thread (common practice, no source).
	 */
	private static final double SHORT = 0.5;
	/**
	 * Part of the length in a title that is no slip any more: X 60 LONG is said of bolts too, which are threaded over a part of it (common
	 * practice, no source).
	 */
	private static final double PART = 0.6;

	private TurnedLength() {
	}

	/** The finding of a thread that is too short; empty where it is not, or where that cannot be told. */
	static Optional<Draft> of(Rule rule, SinglePoint turned, Work work) {
		Optional<Fact<Double>> said = turned.length();
		Optional<ThreadSpec> thread = turned.thread().map(Fact::value).filter(spec -> !spec.system().taper());
		if (said.isEmpty() || thread.isEmpty()) {
			return Optional.empty();
		}
		double wanted = said.get().value();
		double into = turned.grows() ? 1 : -1;
		double from = into * turned.pass().from().z();
		double deep = turned.passes().stream().mapToDouble(pass -> Math.max(into * pass.step().from().z(), into * pass.step().to().z()))
				.max().orElse(Double.NaN);
		boolean fromFace = Math.min(from, into * turned.pass().to().z()) <= 0 && deep > 0;
		boolean room = turned.shaft().map(shaft -> into * shaft.floor() > wanted + SHORT * thread.get().pitch()).orElse(turned.inside());
		boolean title = said.get().source() == FactSource.TITLE && !turned.inside();
		boolean tooShort = deep < wanted - SHORT * thread.get().pitch() && (!title || deep >= PART * wanted);
		return fromFace && room && tooShort && !goesOn(turned, work) ? Optional.of(draft(rule, turned, said.get(), deep, into))
				: Optional.empty();
	}

	/** Whether the thread is cut by another tool, or at another lead, too. */
	private static boolean goesOn(SinglePoint turned, Work work) {
		return work.course().singlePoints().stream().anyMatch(other -> other != turned && other.inside() == turned.inside()
				&& other.overlaps(turned) && !AnotherPart.between(work, turned, other));
	}

	private static Draft draft(Rule rule, SinglePoint turned, Fact<Double> said, double deep, double into) {
		Figures figures = new Figures(turned.pass().modal().unit());
		BlockRef block = turned.pass().block();
		boolean title = said.source() == FactSource.TITLE;
		return Draft.of(rule, title ? Severity.WARNING : Severity.ERROR, BlockText.word(block, "ZW"), "the thread ends "
				+ figures.length(deep) + " behind the face, called out are " + figures.length(said.value()) + ": "
				+ figures.length(said.value() - deep) + " short; Z" + figures.coordinate(into * said.value()) + " or beyond")
				.programmed("end of the thread", "Z" + figures.coordinate(into * deep), block)
				.known("length called out", figures.length(said.value()), said);
	}
}
