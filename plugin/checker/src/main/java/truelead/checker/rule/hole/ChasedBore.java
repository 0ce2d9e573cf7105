package truelead.checker.rule.hole;

import java.util.Optional;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Limits;
import truelead.checker.turn.SinglePoint;

/**
 * The bore of a lathe's single-point thread against the minor diameter of the thread: a point that has the whole profile tops the crests
 * and is given a little more to cut, a point without leaves the bore as it is.
 *
 * @param turned the thread
 * @param bore   the hole that it is cut in
 * @param size   what the bore is, and what it should be
 */
record ChasedBore(SinglePoint turned, SinglePoint.Bore bore, DrilledSize size) {

	/**
	 * What a point with the whole profile is left on the crests, as a part of the pitch, and more than any needs (common practice, no
	 * source).
	 */
	private static final double CRESTS = 0.1;
	private static final double FAR = 0.25;
	/** An error is a bore this much above the limit, as a part of the pitch (common practice, no source). */
	private static final double WIDE = 0.05;
	/** How far a thread may end behind its bore, where the point runs out, as a part of the pitch. */
	private static final double RUN_OUT = 0.25;

	/** The bore of a thread inside that a person names; empty where none is known, and for taper threads. */
	static Optional<ChasedBore> of(SinglePoint turned) {
		return agreed(turned).filter(bore -> bore.size().thread().stated());
	}

	/** The same of one that all is cut for, though nobody names it: its end can be judged, its diameter not. */
	static Optional<ChasedBore> agreed(SinglePoint turned) {
		return turned.bore().flatMap(bore -> turned.agreed().filter(t -> !t.value().system().taper())
				.map(thread -> new ChasedBore(turned, bore, new DrilledSize(bore.cut(), bore.cut().diameter().orElseThrow(),
						thread, false))));
	}

	/** The finding of a bore that leaves the point more than crests to cut; empty where it does not. */
	Optional<Draft> small(Rule rule) {
		double least = size.limits().map(Limits::minorMinMm).map(limit -> limit.orElse(0)).orElse(0.0);
		double missing = least - size.d();
		Figures figures = figures();
		return size.usual() || missing <= CRESTS * pitch() ? Optional.empty()
				: Optional.of(draft(rule, missing > FAR * pitch(), made(figures) + "the smallest minor diameter of " + name() + " is "
						+ figures.fine(least) + ": " + figures.fine(missing)
						+ " too small, and the screw does not go in or the point cuts crests that it has no edge for; "
						+ size.right(figures)));
	}

	/** The finding of a bore that leaves too little thread; empty where it does not. */
	Optional<Draft> big(Rule rule) {
		double most = size.limits().map(Limits::minorMaxMm).map(limit -> limit.orElse(Double.MAX_VALUE)).orElse(Double.MAX_VALUE);
		double over = size.d() - most;
		Figures figures = figures();
		return size.usual() || over <= DrilledSize.WRITTEN ? Optional.empty()
				: Optional.of(draft(rule, over > WIDE * pitch(), made(figures) + "the largest minor diameter of " + name() + " is "
						+ figures.fine(most) + ": " + figures.fine(over) + " too big, " + Figures.number(size.percent(), 0)
						+ " % of thread left; " + size.right(figures)));
	}

	/** The finding of a thread that goes on where its bore has ended; empty where it does not. */
	Optional<Draft> shallow(Rule rule) {
		double beyond = turned.behindBore();
		if (beyond <= RUN_OUT * pitch()) {
			return inCone(rule);
		}
		if (size.thread().stated() && big(rule).isPresent()) {
			// what is narrower behind may be as wide as the bore should be
			return Optional.empty();
		}
		Figures figures = figures();
		return Optional.of(draft(rule, true, "the bore of " + figures.fine(size.d()) + " ends at Z" + level(bore.floor(), figures)
				+ ", the thread at Z" + level(bore.end(), figures) + ": " + figures.length(beyond)
				+ " of it are cut into the full, and the point breaks; bore on behind the thread, or end it before"));
	}

	/**
	 * A thread that ends above the drill's tip and below its full diameter: right where the drill comes through, and who knows how thick
	 * the part is.
	 */
	private Optional<Draft> inCone(Rule rule) {
		double beyond = bore.cut().direction() * (bore.end() - bore.cut().shoulder());
		if (bore.floor() != bore.cut().tip() || !(beyond > RUN_OUT * pitch())) {
			return Optional.empty();
		}
		Figures figures = figures();
		return Optional.of(draft(rule, Severity.INFORMATION, "the drill's full diameter ends at Z" + level(bore.cut().shoulder(), figures)
				+ ", the thread at Z" + level(bore.end(), figures) + ": where the part is thicker, " + figures.length(beyond)
				+ " of it are cut into the cone, and the point breaks"));
	}

	private String made(Figures figures) {
		return "the hole is " + size.made() + " " + figures.fine(size.d()) + ", ";
	}

	private Draft draft(Rule rule, boolean error, String message) {
		return draft(rule, error ? Severity.ERROR : Severity.WARNING, message);
	}

	private Draft draft(Rule rule, Severity severity, String message) {
		return size.evidence(Draft.of(rule, severity, Location.of(turned.pass().block()), message), figures());
	}

	private Figures figures() {
		return new Figures(turned.pass().modal().unit());
	}

	private double pitch() {
		return size.thread().value().pitch();
	}

	private String name() {
		return size.thread().value().withoutClass().designation() + size.inClass();
	}

	private static String level(double mm, Figures figures) {
		return Figures.number(mm / figures.unit().mm(), 4);
	}
}
