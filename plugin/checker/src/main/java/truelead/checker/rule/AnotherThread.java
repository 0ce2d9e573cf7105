package truelead.checker.rule;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadSystem;
import truelead.checker.thread.ThreadTable;
import truelead.checker.turn.SinglePoint;

/**
 * The thread that feed or helix and the drill make together, where it is not the one called out: M8X1 in the comment, F and the drill of
 * M8x1.25. Then the callout is wrong, or both others are.
 *
 * @param made  the thread that they make
 * @param drill the drilled diameter, mm
 */
public record AnotherThread(ThreadSpec made, double drill) {
	/** A feed further off than this, as a part of the lead, is no rounding and no holding back. */
	private static final double FAR = 0.05;
	/** What computed and rounded feeds leave open of a lead, as a part of it. */
	private static final double NEAR = 0.005;
	/** What written decimals of a drill leave open, mm. */
	private static final double WRITTEN = 0.005;
	/** How far the drills of charts for forming are apart, mm (common practice, no source). */
	private static final double NEAR_CHART = 0.05;

	/**
	 * The thread; empty where the drill suits the thread called out, or the two do not agree on another.
	 *
	 * @param advance what the tool advances a turn, mm
	 * @param drill   the stated diameter of the hole, mm
	 * @param called  the thread called out
	 * @param forming whether the tool forms, so that the hole is one for forming
	 */
	public static Optional<AnotherThread> of(double advance, Optional<Double> drill, ThreadSpec called, boolean forming) {
		boolean far = Math.abs(advance - called.lead()) > FAR * called.lead();
		if (drill.isEmpty() || !far || suits(drill.get(), called, forming)) {
			return Optional.empty();
		}
		ThreadTable table = ThreadTable.standard();
		List<ThreadSpec> usual = called.system().taper() ? List.of() : table.threadsFor(advance, NEAR * advance, drill.get());
		List<ThreadSpec> suiting = Stream.concat(usual.stream(), relatives(called.system()).flatMap(system -> table.threads(system)
				.stream()).filter(other -> Math.abs(other.pitch() - advance) <= NEAR * advance))
				.filter(other -> other.system().taper() == called.system().taper() && suits(drill.get(), other, forming)).toList();
		return suiting.stream().filter(other -> other.system() == called.system()).findFirst().or(() -> suiting.stream().findFirst())
				.map(other -> new AnotherThread(other, drill.get()));
	}

	/**
	 * The thread of the same lead that a milled path and the drill make; empty where the drill suits the thread called out, or the two do
	 * not agree on another.
	 *
	 * @param cut   the major diameter that the path cuts, mm
	 * @param drill the stated diameter of the hole, mm
	 */
	public static Optional<AnotherThread> ofDiameter(double cut, Optional<Double> drill, ThreadSpec called) {
		if (drill.isEmpty() || called.system().taper() || suits(drill.get(), called)) {
			return Optional.empty();
		}
		return ThreadTable.standard().threads(called.system()).stream()
				.filter(other -> Math.abs(other.pitch() - called.pitch()) <= NEAR * called.pitch())
				.filter(other -> other.cutBy(cut) && suits(drill.get(), other)).findFirst()
				.map(other -> new AnotherThread(other, drill.get()));
	}

	/**
	 * The thread that a lathe's lead and bore make; empty where the bore suits the thread called out, or the two do not agree on another.
	 */
	public static Optional<AnotherThread> turned(SinglePoint turned) {
		Optional<Double> bore = turned.bore().flatMap(hole -> hole.cut().diameter()).map(Fact::value);
		return turned.thread().filter(Fact::stated).flatMap(thread -> of(turned.passes().get(0).lead(), bore, thread.value(), false));
	}

	/** The systems whose threads are taken for one another: coarse and fine Whitworth threads have names of their own. */
	private static Stream<ThreadSystem> relatives(ThreadSystem system) {
		return system == ThreadSystem.BSW || system == ThreadSystem.BSF
				? Stream.of(system, system == ThreadSystem.BSW ? ThreadSystem.BSF : ThreadSystem.BSW) : Stream.of(system);
	}

	/** Whether a drill, mm, is one for a thread that is cut, or formed. */
	private static boolean suits(double drill, ThreadSpec thread, boolean forming) {
		return forming ? FormHole.drill(thread).filter(usual -> Math.abs(usual.diameter() - drill) <= NEAR_CHART).isPresent()
				: suits(drill, thread);
	}

	/** Whether a drill, mm, is one for a thread. */
	public static boolean suits(double drill, ThreadSpec thread) {
		if (thread.system().taper()) {
			return TapDrill.cutting(thread).filter(usual -> Math.abs(usual.diameter() - drill) <= thread.pitch() / 4).isPresent();
		}
		Optional<Limits> limits = ThreadTable.standard().limits(thread);
		return limits.isPresent() && limits.get().minorMinMm().orElse(Double.MAX_VALUE) - WRITTEN <= drill
				&& drill <= limits.get().minorMaxMm().orElse(0) + WRITTEN;
	}

	/** What a message says of it behind what to type. */
	public String said(String what, Figures figures) {
		return " and another drill, or mend the callout: " + what + " and the drill of " + figures.fine(drill) + " make "
				+ made.designation();
	}

	/**
	 * Adds it to a finding: the fix is in the callout, where it stands in the program.
	 *
	 * @param what what makes the thread with the drill: {@code feed}, {@code helix}
	 */
	public void tell(Draft draft, String what, Fact<ThreadSpec> called, ProgramFile program) {
		tell(draft, what);
		String text = made.withHand(called.value().hand()).designation();
		called.at().filter(at -> at.file().equals(program) && at.span().end() > at.span().start())
				.ifPresent(at -> draft.fix(new Fix("Change the callout to " + text, false,
						"see the drawing: where the callout is right, lead and drill are both wrong", List.of(new Edit(at, text)))));
	}

	/** Adds to a finding what they make, where the callout is not to be changed. */
	public void tell(Draft draft, String what) {
		draft.from("what " + what + " and drill make", made.designation(), "pitch and drill of the tables");
	}
}
