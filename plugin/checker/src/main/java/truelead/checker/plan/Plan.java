package truelead.checker.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
	private static final double FORM_UP_TO = 16;
	private static final double MILL_FROM = 24;

	/** Weighs all methods and chooses; of those that can be done, one whose tap is in the job's tool list comes first. */
	public static Plan of(Request request, Job job) {
		Plan plan = of(request);
		Map<Method, Integer> onHand = OnHand.taps(request.thread(), job);
		List<Weighing> all = plan.weighings.stream().map(w -> w.method().tap() ? w.with(Optional.ofNullable(onHand.get(w.method()))) : w).toList();
		Optional<Weighing> held = preference(request).stream().filter(onHand::containsKey).map(m -> all.get(m.ordinal())).filter(Weighing::possible).findFirst();
		if (held.isPresent()) {
			return new Plan(request, all, held, held.get().method().title() + ": its tap is on hand, T" + onHand.get(held.get().method()) + " of the tool list");
		}
		return new Plan(request, all, plan.chosen.map(w -> all.get(w.method().ordinal())), plan.why + plan.chosen.map(Plan::missing).orElse(""));
	}

	private static String missing(Weighing first) {
		return first.method().tap() ? "; no such tap is in the tool list" : "; thread mills of the tool list are not looked at";
	}

	/** Weighs all methods and chooses. */
	public static Plan of(Request request) {
		List<Weighing> all = Arrays.stream(Method.values()).map(m -> Weigher.weigh(m, request)).toList();
		List<Method> order = preference(request);
		Optional<Weighing> chosen = order.stream().map(m -> all.get(m.ordinal())).filter(Weighing::possible).findFirst();
		return new Plan(request, all, chosen, chosen.map(c -> why(c, request, order)).orElse("no method makes this thread as asked; see what rules each out, and how deep each could go"));
	}

	/** The program of a method whose hole is known. */
	public static List<String> program(Method method, Request request) {
		return new ProgramBlocks(method, request, HolePlan.of(method, request).orElseThrow()).lines();
	}

	/** The program of the recommendation; empty where there is none. */
	public List<String> blocks() {
		return chosen.map(c -> program(c.method(), request)).orElse(List.of());
	}

	private static List<Method> preference(Request request) {
		Method cutting = request.through() ? Method.SPIRAL_POINT : Method.SPIRAL_FLUTE;
		boolean shortChips = request.group() == StockGroup.CAST_IRON || request.group() == StockGroup.BRASS;
		if (request.hardness() > 45 || request.thread().diameter() > MILL_FROM) {
			return List.of(Method.THREAD_MILL, cutting, Method.STRAIGHT_FLUTE, Method.FORM_TAP);
		}
		if (shortChips) {
			return List.of(Method.STRAIGHT_FLUTE, cutting, Method.THREAD_MILL);
		}
		boolean flows = switch (request.group()) {
			case ALUMINIUM, COPPER, ZINC, STAINLESS -> true;
			case STEEL -> request.hardness() <= 30;
			default -> false;
		};
		return flows && request.thread().diameter() <= FORM_UP_TO
				? List.of(Method.FORM_TAP, cutting, Method.THREAD_MILL, Method.STRAIGHT_FLUTE)
				: List.of(cutting, Method.THREAD_MILL, Method.STRAIGHT_FLUTE, Method.FORM_TAP);
	}

	private static String why(Weighing chosen, Request request, List<Method> order) {
		String first = chosen.pros().isEmpty() ? "" : ": " + chosen.pros().get(0);
		return chosen.method().title() + first + (order.get(0) == chosen.method() ? "" : "; " + order.get(0).title() + " would come first and is ruled out");
	}
}
