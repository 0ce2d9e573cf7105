package truelead.checker.rule.tapping;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.job.ToolFacts;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.program.Plane;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.ToolName;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The speed is over the profile's limit for tapping, or the tap's surface goes far faster than the stock takes: v = pi D S / 1000, m/min;
 * or a surface speed is in force on the centre line of a lathe, where it asks for any number of turns.
 */
public final class SpeedOverLimit extends TappingRule {

	/** How near to a lathe's centre line a hole is on it, mm. */
	private static final double CENTRE = 0.05;

	/** Cutting speed that no tap runs at in any stock, m/min (common practice, no source). */
	private static final double FASTEST = 150;
	/** The same of solid dies, and of heads whose dies or rolls open (common practice, no source). */
	private static final double FASTEST_DIE = 40;
	private static final double FASTEST_HEAD = 100;

	/**
	 * Below this cutting speed, m/min, a tap may turn faster than a careful drill, and above it not so many times as fast (common practice,
	 * no source).
	 */
	private static final double LEISURELY = 40;
	private static final double TIMES_ITS_DRILL = 1.6;
	/** Steel and iron from here on are tapped more slowly, HRC (common practice, no source). */
	private static final double HARD = 25;
	/** Cutting speed that no tap runs below, m/min (common practice, no source). */
	private static final double SLOWEST = 2;
	/** Below this cutting speed, m/min, a tap may be meant to turn as the tool before it (common practice, no source). */
	private static final double SLOW = 20;

	public SpeedOverLimit() {
		super("speed-over-limit");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD, Slip.FEED_OFF);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		super.check(work, found);
		work.course().singlePoints().forEach(turned -> TurnedSpeed.of(this, turned).map(Draft::finding).ifPresent(found));
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		if (tapping.method().taps()) {
			first(tapping, stroke -> stroke.speed().known() ? tooFast(tapping, work, stroke) : Optional.empty(), found);
		}
	}

	private Optional<Draft> tooFast(Tapping tapping, Work work, TapStroke stroke) {
		if (stroke.modal().constantSurface()) {
			boolean centre = stroke.place().plane() == Plane.XY && Math.hypot(stroke.place().u(), stroke.place().v()) <= CENTRE;
			return centre ? Optional.of(onCentre(stroke)) : Optional.empty();
		}
		double speed = stroke.speed().value();
		OptionalDouble limit = work.shop().profile().number(ProfileKey.TAPPING_SPEED_LIMIT);
		if (limit.isPresent() && speed > limit.getAsDouble()) {
			String most = "S" + Figures.number(limit.getAsDouble(), 1);
			return Optional.of(Draft.of(this, Severity.WARNING, stroke.speed(), stroke.block(),
					said(stroke) + " is over the machine's limit for tapping, " + most + ": the spindle does not follow; " + most
					+ " at most, and F with it")
					.programmed("speed", said(stroke), stroke.speed())
					.from("limit for tapping", most, "machine profile " + work.shop().profile().name()));
		}
		double most = Math.min(highest(tapping.wanted().stock().map(Fact::value), ToolName.forms(tapping.tool().facts())),
				ofItsKind(tapping.tool().facts()));
		return Turned.of(tapping, stroke).flatMap(turned -> {
			double surface = surface(turned.diameter(), speed);
			Optional<Draft> fast = surface > most ? Optional.of(surface(tapping, stroke, turned, surface, most)) : Optional.empty();
			return fast.or(() -> surface > LEISURELY ? fasterThanItsDrill(stroke, turned, speed) : Optional.empty())
					.or(() -> surface > SLOW ? leftOver(tapping, stroke, turned) : Optional.empty());
		});
	}

	/**
	 * What turns: the tap of the thread wanted, or, where nothing names that, a tap that is at least as wide as the drill of its hole.
	 *
	 * @param diameter mm
	 * @param from     where the diameter is from
	 */
	private record Turned(String name, double diameter, Fact<?> from) {

		static Optional<Turned> of(Tapping tapping, TapStroke stroke) {
			return tapping.wanted().thread().map(thread -> new Turned(thread.value().withoutClass().designation(),
					thread.value().diameter(), thread)).or(() -> stroke.hole().sizedBefore(stroke.order())
							.filter(cut -> cut.kind().drills()).flatMap(Cut::diameter).map(drilled -> new Turned("a tap in a hole of "
									+ new Figures(stroke.modal().unit()).fine(drilled.value()), drilled.value(), drilled)));
		}
	}

	/** The drill that makes the hole, or else, where it is bored then, the one before. */
	private static Optional<Cut> drill(TapStroke stroke, double diameter) {
		return Stream.concat(stroke.hole().threadedBefore(stroke.order(), diameter).stream(),
				stroke.hole().makingBefore(stroke.order()).stream()).filter(cut -> cut.kind().drills()
						&& cut.diameter().map(Fact::value).orElse(0.0) <= diameter).filter(cut -> !cut.step().modal().constantSurface()
								&& cut.step().modal().speed().known() && cut.step().modal().speed().value() > 0).findFirst();
	}

	/** Whether a tap (mm) turns (rev/min) faster than it may be meant to by the drill of its hole. */
	static boolean pastItsDrill(TapStroke stroke, double diameter, double speed) {
		return surface(diameter, speed) > LEISURELY
				&& drill(stroke, diameter).filter(cut -> speed > TIMES_ITS_DRILL * cut.step().modal().speed().value()).isPresent();
	}

	/** Whether the S that the drill of the hole was turned by is in force still, and faster than taps may be meant to turn. */
	static boolean drills(Tapping tapping, TapStroke stroke) {
		return Turned.of(tapping, stroke).filter(turned -> stroke.speed().known()
				&& surface(turned.diameter(), stroke.speed().value()) > SLOW
				&& drillLeftOn(tapping, stroke, turned.diameter()).isPresent()).isPresent();
	}

	/** The drill whose S is in force still. */
	private static Optional<Cut> drillLeftOn(Tapping tapping, TapStroke stroke, double diameter) {
		return drill(stroke, diameter).filter(cut -> cut.tool().index() != tapping.tool().index()
				&& tapping.tool().change().isPresent() && stroke.speed().word().isPresent()
				&& stroke.speed().word().equals(cut.step().modal().speed().word()));
	}

	/** Whether a tap (mm) turns (rev/min) as the drill of its hole does, and faster than taps may be meant to. */
	static boolean likeADrill(TapStroke stroke, double diameter, double speed) {
		return surface(diameter, speed) > SLOW && drill(stroke, diameter).filter(cut -> speed == cut.step().modal().speed().value())
				.isPresent();
	}

	/** A tenth of a speed (rev/min), where that is one for a tap (mm). */
	private static Optional<String> tenth(double diameter, double speed) {
		return Math.IEEEremainder(speed, 10) == 0 && !tooSlow(diameter, speed / 10) ? Optional.of("S" + Figures.number(speed / 10, 0))
				: Optional.empty();
	}

	/** Whether a tap (mm) turns (rev/min) more slowly than any does. */
	static boolean tooSlow(double diameter, double speed) {
		return surface(diameter, speed) < SLOWEST;
	}

	/** The S that the drill of the hole was turned by is in force still; where F is a feed a minute, that does not fit it and tells. */
	private Optional<Draft> leftOver(Tapping tapping, TapStroke stroke, Turned turned) {
		return drillLeftOn(tapping, stroke, turned.diameter()).filter(cut -> stroke.turning() != SpindleTurn.STOPPED)
				.map(cut -> Draft.of(this, Severity.WARNING, Location.of(block(tapping, stroke)), said(stroke) + " is left over from "
						+ cut.tool().name() + ", the drill, and turns " + turned.name() + " at "
						+ Figures.number(surface(turned.diameter(), stroke.speed().value()), 0)
						+ " m/min: taps turn more slowly than drills; an S of its own").programmed("speed", said(stroke), stroke.speed())
						.related(cut.block(), "the drill block"));
	}

	/** A tap turns more slowly than the drill before it, in the same stock and a little smaller. */
	private Optional<Draft> fasterThanItsDrill(TapStroke stroke, Turned turned, double speed) {
		return drill(stroke, turned.diameter()).filter(cut -> speed > TIMES_ITS_DRILL * cut.step().modal().speed().value())
				.map(cut -> {
			double drilled = cut.step().modal().speed().value();
			return Draft.of(this, Severity.WARNING, stroke.speed(), stroke.block(), said(stroke) + " turns "
					+ turned.name() + " at " + Figures.number(surface(turned.diameter(), speed), 0) + " m/min, "
					+ Figures.number(speed / drilled, 1) + " times as fast as the drill of its hole, S" + Figures.number(drilled, 1)
					+ ": taps turn more slowly than drills; " + tenth(turned.diameter(), speed).map(tenth -> tenth
							+ " if a zero is one too many").orElse("see S") + ", and F with it")
					.programmed("speed", said(stroke), stroke.speed())
					.programmed("speed of the drill", "S" + Figures.number(drilled, 1), cut.step().modal().speed())
					.related(cut.block(), "the drill block");
		});
	}

	private static double ofItsKind(ToolFacts tool) {
		return tool.kind().map(Fact::value).map(kind -> kind == ToolKind.DIE ? FASTEST_DIE : kind == ToolKind.DIE_HEAD ? FASTEST_HEAD
				: FASTEST).orElse(FASTEST);
	}

	/** Cutting speed at a diameter (mm), m/min. */
	private static double surface(double diameter, double speed) {
		return Math.PI * diameter * speed / 1000;
	}

	/** Whether a speed (rev/min) is too fast for a tap of a diameter (mm) whatever the stock. */
	static boolean inAnyStock(double diameter, double speed) {
		return surface(diameter, speed) > FASTEST;
	}

	private Draft onCentre(TapStroke stroke) {
		return Draft.of(this, Severity.WARNING, stroke.speed(), stroke.block(),
				said(stroke) + " is a surface speed under G96, and the tap stands on the centre line: the spindle runs up to its highest "
				+ "speed; G97 and a speed in turns a minute before the tap").programmed("surface speed", said(stroke), stroke.speed())
				.from("diameter at the tap", "0", "programmed: X0");
	}

	private Draft surface(Tapping tapping, TapStroke stroke, Turned turned, double surface, double most) {
		String stock = tapping.wanted().stock().map(s -> s.value().words()).orElse("any stock");
		double right = most * 1000 / Math.PI / turned.diameter();
		String named = tapping.tool().facts().isDie() ? tapping.tool().facts().kind().orElseThrow().value().words() : "tap";
		String message = said(stroke) + " turns " + turned.name() + " at " + Figures.number(surface, 0)
				+ " m/min, " + named + "s run below " + Figures.number(most, 0) + " in " + stock + ": the " + named
				+ " wears out or breaks; S" + Figures.number(Math.floor(right / 10) * 10, 0) + " at most"
				+ tenth(turned.diameter(), stroke.speed().value()).map(tenth -> ", " + tenth + " if a zero is one too many").orElse("")
				+ ", and F with it";
		Draft draft = Draft.of(this, Severity.WARNING, stroke.speed(), stroke.block(), message)
				.programmed("speed", said(stroke), stroke.speed())
				.known("diameter", new Figures(stroke.modal().unit()).fine(turned.diameter()), turned.from())
				.from("highest speed", Figures.number(most, 0) + " m/min", "common practice, no source");
		tapping.wanted().stock().ifPresent(s -> draft.known("stock", s.value().words(), s));
		return draft;
	}

	/**
	 * Highest cutting speed of any tap in a stock, m/min: about twice what is usual with coated taps, so that only a slip is found (common
	 * practice, no source).
	 */
	private static double highest(Optional<Stock> stock, boolean forming) {
		boolean hard = stock.filter(said -> said.hardness().orElse(0) > HARD).isPresent();
		double cut = stock.map(said -> switch (said.group()) {
			case STEEL, CAST_IRON -> hard ? 40.0 : 60.0;
			case BRONZE -> 60.0;
			case STAINLESS -> 40.0;
			case TITANIUM -> 25.0;
			case NICKEL_ALLOY -> 15.0;
			case ALUMINIUM, BRASS, COPPER, MAGNESIUM, ZINC, PLASTIC -> 120.0;
			case OTHER -> FASTEST;
		}).orElse(FASTEST);
		return forming ? Math.min(FASTEST, cut * 1.25) : cut;
	}

	private static String said(TapStroke stroke) {
		return stroke.speed().word().map(Figures::written).orElse("S" + Figures.number(stroke.speed().value(), 1));
	}
}
