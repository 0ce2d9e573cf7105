package truelead.checker.plan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import truelead.checker.job.Job;
import truelead.checker.job.StockGroup;

/**
 * The choice: every method with its reasons, and the one recommended.
 *
 * @param request   what is to be made
 * @param weighings one a method
 * @param chosen    the recommendation; empty where nothing makes this thread
 * @param why       the recommendation in one sentence
 */
public record Plan(Request request, List<Weighing> weighings, Optional<Weighing> chosen, String why) {
	/** The largest thread that is formed by preference, mm (common practice, no source). */
	private static final double FORM_UP_TO = 16;
	/** Threads above this are milled by preference, mm (common practice, no source). */
	private static final double MILL_FROM = 24;
	/** From this hardness on a thread is milled by preference, HRC (common practice, no source). */
	private static final double HARD = 45;
	/**
	 * So few holes in a tough and costly stock are milled: the time is small beside the part that a broken tap scraps (common practice, no
	 * source).
	 */
	private static final int FEW = 4;
	/** A comb pays where many holes are milled (common practice, no source). */
	private static final int MANY = 20;

	/** Weighs all methods and chooses; of those that can be done, one whose tool is in the job's tool list comes first. */
	public static Plan of(Request asked, Job job) {
		Request request = asked.with(Rack.of(job));
		Plan plan = of(request);
		Map<Method, Integer> onHand = onHand(request, plan);
		List<Weighing> all = plan.weighings.stream().map(w -> listed(w, request, onHand)).toList();
		Optional<Weighing> held = preference(request).stream().filter(onHand::containsKey).map(m -> all.get(m.ordinal()))
				.filter(Weighing::possible).findFirst();
		if (held.isPresent()) {
			String tool = held.get().method().tap() ? "tap" : "cutter";
			return new Plan(request, all, held, held.get().method().title() + ": its " + tool + " is on hand, T"
					+ onHand.get(held.get().method()) + " of the tool list");
		}
		String missing = plan.chosen.map(c -> c.method().tap() ? "; no such tap is in the tool list"
				: "; no such thread mill is in the tool list").orElse("");
		return new Plan(request, all, plan.chosen.map(w -> all.get(w.method().ordinal())), plan.why + missing);
	}

	/** Weighs all methods and chooses. */
	public static Plan of(Request request) {
		List<Weighing> all = Arrays.stream(Method.values()).map(m -> Weigher.weigh(m, request)).toList();
		List<Method> order = preference(request);
		Optional<Weighing> chosen = order.stream().map(m -> all.get(m.ordinal())).filter(Weighing::possible).findFirst();
		return new Plan(request, all, chosen, chosen.map(c -> why(c, order)).orElseGet(() -> none(request, all)));
	}

	/** The program of a method whose hole is known. */
	public static List<String> program(Method method, Request request) {
		HolePlan hole = HolePlan.of(method, request).orElseThrow();
		return request.lathe() ? new LatheBlocks(method, request, hole).lines() : new ProgramBlocks(method, request, hole).lines();
	}

	/** The program of the recommendation; empty where there is none. */
	public List<String> blocks() {
		return chosen.map(c -> program(c.method(), request)).orElse(List.of());
	}

	/** The way that goes deepest where only the room rules all of them out. */
	public Optional<Weighing> deepest() {
		return chosen.isPresent() ? Optional.empty() : deepest(weighings);
	}

	private static Optional<Weighing> deepest(List<Weighing> all) {
		return all.stream().filter(w -> w.deepest() > 0).max(Comparator.comparingDouble(Weighing::deepest));
	}

	private static Map<Method, Integer> onHand(Request request, Plan plan) {
		Map<Method, Integer> found = new EnumMap<>(Method.class);
		found.putAll(request.rack().taps(request.thread()));
		plan.weighings.stream().filter(w -> !w.method().tap())
				.forEach(w -> w.hole().flatMap(hole -> MillCut.pocket(w.method(), request, hole))
						.ifPresent(pocket -> found.put(w.method(), pocket)));
		return found;
	}

	private static Weighing listed(Weighing weighing, Request request, Map<Method, Integer> onHand) {
		Weighing tool = weighing.with(weighing.method().tap() ? "tap" : "cutter", Optional.ofNullable(onHand.get(weighing.method())));
		return weighing.hole().map(hole -> tool.with("drill " + hole.drill().name(), request.rack().drill(hole.drill().diameter())))
				.orElse(tool);
	}

	private static List<Method> preference(Request request) {
		Method cutting = request.through() ? Method.SPIRAL_POINT : Method.SPIRAL_FLUTE;
		boolean shortChips = request.group() == StockGroup.CAST_IRON || request.group() == StockGroup.BRASS;
		boolean comb = request.count() >= MANY && request.hardness() < HARD;
		Method mill = comb ? Method.COMB_MILL : Method.THREAD_MILL;
		Method other = comb ? Method.THREAD_MILL : Method.COMB_MILL;
		if (request.thread().system().taper()) {
			return List.of(Method.STRAIGHT_FLUTE, Method.SPIRAL_FLUTE);
		}
		boolean tough = request.group() == StockGroup.TITANIUM || request.group() == StockGroup.NICKEL_ALLOY;
		if (request.hardness() >= HARD || request.thread().diameter() > MILL_FROM || tough && request.count() <= FEW) {
			return List.of(mill, other, cutting, Method.SPIRAL_FLUTE, Method.STRAIGHT_FLUTE, Method.FORM_TAP);
		}
		if (shortChips) {
			return List.of(Method.STRAIGHT_FLUTE, cutting, Method.SPIRAL_FLUTE, mill, other);
		}
		boolean flows = switch (request.group()) {
			case ALUMINIUM, COPPER, ZINC, STAINLESS -> true;
			case STEEL -> request.hardness() <= 30;
			default -> false;
		};
		return flows && request.thread().diameter() <= FORM_UP_TO
				? List.of(Method.FORM_TAP, cutting, Method.SPIRAL_FLUTE, mill, other, Method.STRAIGHT_FLUTE)
				: List.of(cutting, Method.SPIRAL_FLUTE, mill, other, Method.STRAIGHT_FLUTE, Method.FORM_TAP);
	}

	private static String why(Weighing chosen, List<Method> order) {
		String first = chosen.pros().isEmpty() ? "" : ": " + chosen.pros().get(0);
		return chosen.method().title() + first + (order.get(0) == chosen.method() ? "" : "; " + order.get(0).title()
				+ " would come first and is ruled out");
	}

	/** What can be made where nothing makes what was asked for. */
	private static String none(Request request, List<Weighing> all) {
		Figure figure = new Figure(request.unit());
		String asked = "no method makes " + figure.said(request.depth()) + " of full thread as asked";
		return deepest(all).map(best -> asked + "; the deepest that the room gives is " + figure.said(best.deepest()) + ", by "
				+ best.method().title() + ": ask for that depth, or for more room").orElseGet(() -> asked + shallower(request, figure)
						+ needed(request, figure) + "; see what rules each out");
	}

	/** A depth in whole diameters that can be made where the one asked for is too deep for any tool. */
	private static String shallower(Request request, Figure figure) {
		double diameter = request.thread().diameter();
		return DoubleStream.of(4, 3.75, 3, 2.5, 2, 1.5, 1).map(d -> figure.down(d * diameter)).filter(d -> d < request.depth()).boxed()
				.flatMap(d -> possible(request.to(d)).findFirst().map(w -> "; " + figure.said(d) + " can be made, by " + w.method().title())
						.stream()).findFirst().orElse("");
	}

	/** How deep tools must reach for the depth asked for, where there is a limit. */
	private static String needed(Request request, Figure figure) {
		if (request.bottom().isEmpty()) {
			return "";
		}
		double edge = Edge.of(request).deepest();
		return possible(request.free()).flatMap(w -> w.hole().stream()).mapToDouble(hole -> Math.max(edge, hole.drillTip())).min().stream()
				.mapToObj(least -> "; tools would have to reach " + figure.said(least)).findFirst().orElse("");
	}

	private static Stream<Weighing> possible(Request request) {
		return preference(request).stream().distinct().map(m -> Weigher.weigh(m, request)).filter(Weighing::possible);
	}
}
