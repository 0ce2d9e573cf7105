package truelead.checker.rule.method;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Location;
import truelead.checker.rule.AnotherThread;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.wanted.Wanted;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Two sources name different threads: information where the feed fits the nearest, a warning where it does not, an error where feed and
 * drill both fit the other alone; or a title names one thread for just so many holes, and another one is cut.
 */
public final class CalloutConflict extends OperationRule {

	/** A feed within this part of the pitch fits it; real programs round F by up to 0.64 %. */
	private static final double FITS = 0.0075;

	public CalloutConflict() {
		super("callout-conflict");
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.SOURCES_DIFFER);
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		titled(operation, work).ifPresent(found);
		List<Fact<ThreadSpec>> named = operation.wanted().named();
		if (named.size() < 2) {
			return;
		}
		Optional<Fact<ThreadSpec>> other = named.stream().skip(1).filter(fact -> differs(fact.value(), named.get(0).value())).findFirst();
		if (other.isEmpty() || !firstOfGroup(operation, work)) {
			return;
		}
		ThreadSpec first = named.get(0).value();
		double advance = operation instanceof Tapping tapping ? tapping.advance() : Double.NaN;
		boolean fits = Double.isNaN(advance) || fits(advance, first);
		String feed = Double.isNaN(advance) ? "" : fits ? "; the feed fits the first" : fits(advance, other.get().value())
				? "; the feed fits the second" : "; the feed advances " + figures(work).advance(advance) + " " + figures(work).symbol()
				+ " a turn and fits neither";
		Optional<AnotherThread> made = drill(operation).filter(drill -> fits(advance, other.get().value())
				&& AnotherThread.suits(drill, other.get().value()) && !AnotherThread.suits(drill, first))
				.map(drill -> new AnotherThread(other.get().value(), drill));
		String mend = made.map(second -> "; feed and the drill of " + figures(work).fine(second.drill())
				+ " fit the second; mend the first, or the drill" + (fits ? "" : " and F"))
				.orElse(feed + "; the nearest counts, mend the other");
		Draft draft = Draft.of(this, made.isPresent() ? Severity.ERROR : fits ? Severity.INFORMATION : Severity.WARNING,
				Location.of(operation.block()), "two sources name different threads: " + named(first) + " (" + named.get(0).source().words()
				+ ") and " + named(other.get().value()) + " (" + other.get().source().words() + ")" + mend)
				.known("first callout", named(first), named.get(0)).known("second callout", named(other.get().value()), other.get());
		made.ifPresent(second -> second.tell(draft.tells(Slip.FEED_AND_DRILL), "feed", named.get(0), operation.block().file()));
		found.accept(draft);
	}

	/** The threads that a program cuts, without their classes. */
	private static final Survey<ThreadSpec, Set<ThreadSpec>> CUT = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, ThreadSpec> said) {
			work.operations().forEach(operation -> operation.wanted().thread()
					.ifPresent(thread -> said.accept(operation.tool().index(), thread.value().withoutClass())));
		}

		@Override
		public Set<ThreadSpec> all(List<ThreadSpec> said) {
			return Set.copyOf(said);
		}
	};

	/** The title names one thread, for as many holes as are threaded here, and nothing cuts it. */
	private Optional<Draft> titled(ThreadingOperation operation, Work work) {
		Fact<ThreadSpec> made = operation.wanted().thread().orElse(null);
		return operation.wanted().titled().filter(title -> title.count() == operation.holes().size()).map(Wanted.Titled::thread)
				.filter(title -> another(title.value(), made) && fits(lead(operation), made.value()) && firstOfGroup(operation, work)
						&& work.course().singlePoints().isEmpty() && work.survey(operation, CUT, cut -> cut.stream()
								.noneMatch(thread -> sameDiameter(thread, title.value()))))
				.map(title -> Draft.of(this, Severity.WARNING, Location.of(operation.block()), "the title names " + named(title.value())
						+ " for as many holes as are threaded here, " + named(made.value()) + " (" + made.source().words()
						+ "), and nothing cuts it: another tool, or another title").known("the title", named(title.value()), title)
						.known("the thread that is cut", named(made.value()), made));
	}

	/** What a tap or a thread mill advances a turn, mm; where that is not the lead of its thread, other rules tell why. */
	private static double lead(ThreadingOperation operation) {
		if (operation instanceof ThreadMilling milling) {
			Optional<MillPass> pass = milling.passes().typical().stream().findFirst();
			return pass.map(first -> Math.abs(first.advance()) / first.turns()).orElse(Double.NaN);
		}
		return operation instanceof Tapping tapping ? tapping.advance() : Double.NaN;
	}

	/**
	 * Whether a title's thread is not the one that is cut: M12 may mean a fine pitch that the title does not say, and one that the numbers
	 * alone imply has a lead of its own.
	 */
	private static boolean another(ThreadSpec title, Fact<ThreadSpec> made) {
		return !sameDiameter(title, made.value()) && (made.stated() || !fits(title.lead(), made.value()));
	}

	/** The stated diameter of the hole that is tapped first, mm. */
	private static Optional<Double> drill(ThreadingOperation operation) {
		return operation instanceof Tapping tapping ? tapping.strokes().stream().findFirst().flatMap(stroke -> stroke.hole()
				.threadedBefore(stroke.order(), operation.wanted().thread().map(t -> t.value().diameter()).orElse(Double.NaN)))
				.flatMap(Cut::diameter).filter(Fact::stated).map(Fact::value) : Optional.empty();
	}

	private static boolean differs(ThreadSpec a, ThreadSpec b) {
		return Math.abs(a.pitch() - b.pitch()) > 0.002 || !sameDiameter(a, b) || a.hand() != b.hand();
	}

	private static boolean sameDiameter(ThreadSpec a, ThreadSpec b) {
		return Math.abs(a.diameter() - b.diameter()) <= 0.02;
	}

	private static boolean fits(double advance, ThreadSpec thread) {
		return Math.abs(advance - thread.lead()) <= FITS * thread.lead();
	}
}
