package truelead.checker.rule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One cause, one finding: where several rules explain one number, the most telling one speaks. The order is the data below. Only rules that
 * are not off take part, and no finding silences a more severe one.
 */
public final class Precedence {

	/** What two findings must share for one to speak instead of the other. */
	public enum Scope {
		/** The same threading operation. */
		OPERATION,
		/** The same block of the program. */
		BLOCK,
		/** The whole program. */
		PROGRAM,
		/** The whole program, where what speaks is about no one operation. */
		ALL_OF_IT
	}

	/**
	 * A line of the order.
	 *
	 * @param speaks  the rule that speaks
	 * @param scope   what the findings must share
	 * @param instead the rules that keep silent then
	 * @param why     the reason, for the reader of the order
	 * @param given   the name of a number that the finding must have to speak for the others; empty where every one does
	 */
	public record Order(String speaks, Scope scope, List<String> instead, String why, Optional<String> given) {

		Order(String speaks, Scope scope, List<String> instead, String why) {
			this(speaks, scope, instead, why, Optional.empty());
		}

		private boolean concerns(Finding speaker) {
			return given.isEmpty() || speaker.evidence().stream().anyMatch(number -> number.name().equals(given.get()));
		}
	}

	/** Evidence of a feed that makes, with the drill, another thread than the one called out. */
	public static final String FEED_AND_DRILL = "what feed and drill make";

	/** Evidence of a helix that makes, with the drill, another thread than the one called out. */
	public static final String HELIX_AND_DRILL = "what helix and drill make";
	/** Evidence of a tap that is led in by another feed than out. */
	public static final String OTHER_FEED_OUT = "feed out";
	/** Evidence of arcs that keep the lead where they are turned round. */
	public static final String TURNED_ROUND = "lead with the arcs turned round";
	/** Evidence of a wrong radius in I, J or K that takes the circle's centre off the hole with it. */
	public static final String CENTRE_FOLLOWS = "centre beside the hole by as much";
	/** Evidence of a way out that is written in increments. */
	public static final String IN_INCREMENTS = "way out in increments";
	/** Evidence of a helix that goes much farther in a turn than the thread, as to a level with its decimals lost. */
	public static final String LEVEL_FAR_OFF = "times the lead";
	/** Evidence of heights that are read under G91. */
	public static final String DISTANCE_MODE = "distance mode";

	/** Evidence of a hole that no drill for the thread makes: wider than the thread, or narrower by a pitch and more. */
	public static final String ANOTHER_HOLE = "hole of another thread";

	/** Evidence of holes that are skipped, more of them than are threaded twice. */
	public static final String MORE_SKIPPED = "places threaded again";

	/** The order itself, most telling first. */
	public static final List<Order> ORDER = List.of(
			new Order("tap-in-drilling-cycle", Scope.OPERATION,
					List.of("feed-missing", "feed-in-wrong-mode", "inch-metric-mixup", "feed-off-pitch", "per-rev-left-on", "spindle-wrong-way",
							"spindle-not-turning", "rigid-mode-missing", "start-too-close", "override-open", "dwell-at-bottom"),
					"in the wrong cycle no feed is right"),
			new Order("drill-in-tapping-cycle", Scope.OPERATION,
					List.of("feed-missing", "feed-in-wrong-mode", "inch-metric-mixup", "feed-off-pitch", "callout-missing", "hole-missing",
							"spindle-wrong-way", "rigid-mode-missing", "start-too-close", "deep-thread", "edge-not-broken"),
					"what is no tap makes no thread"),
			new Order("not-understood", Scope.BLOCK,
					List.of("not-followed", "feed-missing", "feed-off-pitch", "spindle-not-turning", "hole-missing", "plane-heights-wrong", "cycle-left-on",
							"drill-too-shallow", "thread-too-short", "not-through", "deep-thread", "threaded-twice", "inch-metric-mixup",
							"tap-through-fixture", "reach-too-short", "helix-off-pitch", "helix-uneven", "helix-off-size", "helix-too-short", "entry-off-pitch"),
					"what is missing in the block stands in the part that could not be read"),
			new Order("cycle-left-on", Scope.BLOCK,
					List.of("hole-missing", "hole-off-position", "feed-missing", "feed-off-pitch", "threaded-twice", "spindle-not-turning",
							"spindle-wrong-way", "drill-in-tapping-cycle", "callout-missing", "length-offset-missing", "drilled-after-threading",
							"plane-heights-wrong", "start-too-close"),
					"the tap was never meant to go there"),
			new Order("plane-wrong", Scope.OPERATION,
					List.of("not-followed", "hole-missing", "hole-off-position", "plane-heights-wrong", "drill-too-shallow", "thread-too-short", "not-through",
							"drill-in-tapping-cycle", "threaded-twice", "count-differs", "cycle-left-on"),
					"along another axis no depth and no place is right"),
			new Order("plane-wrong", Scope.PROGRAM, List.of("helix-too-short", "helix-uneven", "helix-off-pitch", "helix-off-size", "entry-straight", "exit-scars-thread",
					"arc-not-closed"), "arcs of another plane make no helix"),
			new Order("plane-heights-wrong", Scope.OPERATION,
					List.of("drill-too-shallow", "thread-too-short", "not-through", "start-too-close", "deep-thread", "tap-through-fixture", "threaded-twice"),
					"the depth itself is misread, and repeats with it under the wrong distance mode"),
			new Order("plane-heights-wrong", Scope.OPERATION, List.of("hole-missing", "hole-off-position", "hole-skipped", "not-followed", "count-differs", "threaded-twice"),
					"the distance mode that spoils the heights spoils the places too", Optional.of(DISTANCE_MODE)),
			new Order("feed-missing", Scope.OPERATION, List.of("feed-in-wrong-mode", "inch-metric-mixup", "feed-off-pitch", "per-rev-left-on"),
					"an F of another tool cannot be judged"),
			new Order("per-rev-left-on", Scope.OPERATION, List.of("feed-in-wrong-mode", "inch-metric-mixup", "feed-off-pitch"),
					"the mode was forgotten, not the value"),
			new Order("spindle-not-turning", Scope.OPERATION, List.of("feed-off-pitch", "feed-in-wrong-mode", "inch-metric-mixup", "cycle-left-on"),
					"without a speed there is no pitch to judge"),
			new Order("speed-changed", Scope.OPERATION, List.of("feed-off-pitch"), "the two speeds contradict each other before the feed does"),
			new Order("inch-metric-mixup", Scope.OPERATION,
					List.of("feed-in-wrong-mode", "feed-off-pitch", "drill-too-shallow", "thread-too-short", "not-through", "tap-through-fixture",
							"deep-thread", "plane-heights-wrong"),
					"the factor explains feed or depth"),
			new Order("inch-metric-mixup", Scope.ALL_OF_IT,
					List.of("feed-off-pitch", "feed-in-wrong-mode", "feed-missing", "start-too-close", "speed-over-limit", "drill-too-shallow", "drill-too-small", "drill-too-big",
							"thread-too-short", "not-through", "tap-through-fixture", "deep-thread", "plane-heights-wrong", "countersink-too-small", "wall-too-thin",
							"reach-too-short", "hole-off-position", "arc-not-closed", "helix-off-pitch", "helix-uneven", "helix-off-size", "helix-too-short",
							"cutter-too-big", "cutter-hits-bottom", "cutter-pitch-mismatch", "entry-straight", "entry-off-pitch", "exit-scars-thread",
							"passes-too-heavy", "comp-missing", "taper-off", "edge-feed-high"),
					"under the wrong unit word no length is right"),
			new Order("feed-in-wrong-mode", Scope.OPERATION, List.of("feed-off-pitch"), "the mode explains the feed"),
			new Order("drill-too-small", Scope.OPERATION, List.of("drill-too-shallow", "hole-skipped"), "the tap is not meant for this hole", Optional.of(ANOTHER_HOLE)),
			new Order("drill-too-big", Scope.OPERATION, List.of("drill-too-shallow", "hole-skipped"), "the tap is not meant for this hole", Optional.of(ANOTHER_HOLE)),
			new Order("feed-off-pitch", Scope.OPERATION, List.of("drill-too-small", "drill-too-big", "length-offset-missing"), "feed and drill agree on another thread than the callout",
					Optional.of(FEED_AND_DRILL)),
			new Order("feed-off-pitch", Scope.OPERATION, List.of("override-open"), "the way out is right, and the way in is not", Optional.of(OTHER_FEED_OUT)),
			new Order("helix-off-pitch", Scope.OPERATION, List.of("drill-too-small", "drill-too-big", "cutter-pitch-mismatch", "helix-off-size"), "helix and drill agree on another thread than the callout",
					Optional.of(HELIX_AND_DRILL)),
			new Order("helix-wrong-hand", Scope.OPERATION, List.of("helix-off-pitch", "helix-uneven", "helix-too-short"), "turned round, the arcs go round the short way and keep the lead",
					Optional.of(TURNED_ROUND)),
			new Order("threaded-before-drilled", Scope.OPERATION, List.of("hole-missing"), "the hole is there, only too late"),
			new Order("hole-missing", Scope.OPERATION, List.of("hole-skipped", "count-differs"), "the thread that missed its hole leaves one over"),
			new Order("threaded-twice", Scope.OPERATION, List.of("count-differs"), "a place that is typed again stands for another"),
			new Order("hole-skipped", Scope.OPERATION, List.of("count-differs"), "the hole that is left over makes up the count"),
			new Order("hole-missing", Scope.BLOCK, List.of("hole-off-position", "threaded-twice"), "steps that add up are off by little at first, and round a circle they come back"),
			new Order("helix-off-size", Scope.OPERATION, List.of("hole-off-position", "hole-missing", "entry-off-pitch", "exit-scars-thread", "helix-too-short", "count-differs"), "the wrong radius takes the circle's centre with it", Optional.of(CENTRE_FOLLOWS)),
			new Order("hole-off-position", Scope.OPERATION, List.of("hole-skipped"), "the place was meant for the hole that is left over"),
			new Order("feed-off-pitch", Scope.OPERATION, List.of("speed-over-limit"), "S is typed wrong, and the feed says what was meant"),
			new Order("not-followed", Scope.PROGRAM, List.of("hole-skipped", "count-differs"), "a hole may be threaded in what was not followed"),
			new Order("hole-skipped", Scope.OPERATION, List.of("threaded-twice"), "a position that is left out makes a later block repeat one", Optional.of(MORE_SKIPPED)),
			new Order("hole-off-position", Scope.OPERATION, List.of("entry-straight", "exit-scars-thread"), "a circle about another centre is met and left at an angle"),
			new Order("hole-missing", Scope.OPERATION, List.of("entry-straight"), "a circle about another centre meets the wall at an angle"),
			new Order("tap-through-fixture", Scope.OPERATION, List.of("deep-thread"), "what is hit below counts more"),
			new Order("arc-not-closed", Scope.OPERATION,
					List.of("hole-off-position", "hole-missing", "helix-off-size", "helix-uneven", "helix-off-pitch", "helix-too-short", "helix-wrong-hand", "entry-straight", "entry-off-pitch",
							"exit-scars-thread", "count-differs"),
					"an arc that does not close has no one centre and no one radius"),
			new Order("drill-too-shallow", Scope.OPERATION, List.of("wall-too-thin"), "the depth is to be changed anyway"),
			new Order("callout-conflict", Scope.OPERATION, List.of("pitch-not-standard"), "the sources say which threads they name"),
			new Order("cutter-too-big", Scope.OPERATION, List.of("entry-straight", "exit-scars-thread", "edge-feed-high", "helix-off-size"), "a cutter that does not go in has no way in or out"),
			new Order("helix-uneven", Scope.OPERATION, List.of("cutter-hits-bottom", "helix-wrong-hand"), "one level far off takes the cutter where it does not belong", Optional.of(LEVEL_FAR_OFF)),
			new Order("exit-scars-thread", Scope.OPERATION, List.of("hole-off-position"), "in increments a lead-out that is left out takes all that follows with it", Optional.of(IN_INCREMENTS)),
			new Order("helix-off-size", Scope.OPERATION, List.of("drill-too-small", "drill-too-big"), "path and drill agree on another thread than the callout", Optional.of(HELIX_AND_DRILL)),
			new Order("helix-off-pitch", Scope.OPERATION, List.of("helix-wrong-hand", "cutter-hits-bottom"), "a level far off makes the helix long, and turns it round", Optional.of(LEVEL_FAR_OFF)),
			new Order("helix-off-pitch", Scope.OPERATION, List.of("entry-off-pitch", "helix-too-short"), "the lead-in keeps the helix's lead, and so many turns of it reach another level"),
			new Order("cutter-hits-bottom", Scope.OPERATION, List.of("helix-too-short"), "a helix that begins too deep ends too deep"),
			new Order("helix-wrong-hand", Scope.OPERATION, List.of("entry-straight", "entry-off-pitch", "exit-scars-thread", "comp-missing", "cutter-hits-bottom", "helix-too-short", "hole-off-position"),
					"a path turned round is left at an angle, with compensation on its other side; one that goes the other way along the axis ends at another level"),
			new Order("helix-uneven", Scope.OPERATION, List.of("helix-off-pitch"), "an uneven helix has no one lead to judge"),
			new Order("hand-mirrored", Scope.OPERATION, List.of("helix-wrong-hand", "spindle-wrong-way"), "the mirror explains the hand"),
			new Order("taper-off", Scope.OPERATION, List.of("helix-off-size"), "the taper decides the size"),
			new Order("comp-missing", Scope.OPERATION, List.of("helix-off-size"), "without compensation the contour is cut too big"));

	private static final Map<String, List<Order>> BY_SPEAKER = ORDER.stream().collect(Collectors.groupingBy(Order::speaks));

	private static final Set<String> SPEAK_FOR_ALL = ORDER.stream().filter(order -> order.scope() == Scope.PROGRAM || order.scope() == Scope.ALL_OF_IT).map(Order::speaks)
			.collect(Collectors.toSet());

	/** A rule that keeps silent at a place. */
	private record Silenced(String rule, String place) {
	}

	private Precedence() {
	}

	/** Whether a rule's findings may speak for others anywhere in the program. */
	public static boolean speaksForAll(String rule) {
		return SPEAK_FOR_ALL.contains(rule);
	}

	/** The findings without those that another one, no less severe, speaks for; in the order given. */
	public static List<Finding> apply(List<Finding> findings) {
		Map<Silenced, Severity> silenced = new HashMap<>();
		for (Finding speaker : findings) {
			for (Order order : BY_SPEAKER.getOrDefault(speaker.rule(), List.of())) {
				boolean part = order.scope() == Scope.ALL_OF_IT && speaker.operation() >= 0;
				shared(order.scope(), speaker).filter(place -> !part && order.concerns(speaker)).ifPresent(place -> order.instead()
						.forEach(rule -> silenced.merge(new Silenced(rule, place), speaker.severity(), (one, other) -> one.compareTo(other) <= 0 ? one : other)));
			}
		}
		return findings.stream().filter(finding -> !isSilenced(silenced, finding)).toList();
	}

	private static boolean isSilenced(Map<Silenced, Severity> silenced, Finding finding) {
		for (Scope scope : Scope.values()) {
			Severity speaks = shared(scope, finding).map(place -> silenced.get(new Silenced(finding.rule(), place))).orElse(null);
			if (speaks != null && speaks.compareTo(finding.severity()) <= 0) {
				return true;
			}
		}
		return false;
	}

	private static Optional<String> shared(Scope scope, Finding finding) {
		return switch (scope) {
			case OPERATION -> finding.operation() < 0 ? Optional.empty() : Optional.of("operation " + finding.operation());
			case BLOCK -> Optional.of("block " + finding.at().line() + " of " + finding.at().file().name());
			case PROGRAM, ALL_OF_IT -> Optional.of("program");
		};
	}
}
