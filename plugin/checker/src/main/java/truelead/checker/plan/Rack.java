package truelead.checker.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.job.Job;
import truelead.checker.job.ToolFacts;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/**
 * The tools on hand.
 *
 * @param slots what stands in each pocket that the tool list names, by its number
 */
public record Rack(List<Slot> slots) {
	/** No tool list. */
	public static final Rack EMPTY = new Rack(List.of());
	/** Pockets are looked for up to this number (a choice of ours: no magazine has more). */
	private static final int POCKETS = 10_000;
	/** A drill of the list this close to the one wanted is that one, mm: half the last of two decimals and some (a choice of ours). */
	private static final double SAME = 0.006;

	/** A tool in its pocket. */
	public record Slot(int pocket, ToolFacts tool) {
	}

	public Rack {
		slots = List.copyOf(slots);
	}

	/** The tools of a job's list. */
	public static Rack of(Job job) {
		List<Slot> slots = new ArrayList<>();
		for (int pocket = 0; pocket < POCKETS; pocket++) {
			ToolFacts tool = job.tool(pocket);
			if (!tool.equals(ToolFacts.NONE)) {
				slots.add(new Slot(pocket, tool));
			}
		}
		return new Rack(slots);
	}

	/** The first pocket with a tap for a thread, by the method that it is for; a tap of no stated style has straight flutes. */
	Map<Method, Integer> taps(ThreadSpec thread) {
		Map<Method, Integer> found = new EnumMap<>(Method.class);
		for (Slot slot : slots) {
			if (slot.tool.isTap() && slot.tool.thread().map(Fact::value).filter(t -> t.sameThread(thread)).isPresent()) {
				found.putIfAbsent(method(slot.tool), slot.pocket);
			}
		}
		return found;
	}

	/** The pocket of a drill of a diameter, mm, as near as the figures of a list are written. */
	Optional<Integer> drill(double diameter) {
		return drills(d -> Math.abs(d - diameter) <= SAME).findFirst().map(Slot::pocket);
	}

	/** The drill on hand nearest to a diameter between two limits, mm. */
	Optional<Slot> drill(double diameter, double least, double most) {
		return drills(d -> d >= least - 1e-9 && d <= most + 1e-9).min(Comparator.comparingDouble(s -> Math.abs(diameter(s) - diameter)));
	}

	/** The largest thread mill on hand up to a diameter, mm, that suits a thread: a comb of its pitch, or one with a single row. */
	Optional<Slot> mill(ThreadSpec thread, boolean comb, double most) {
		return slots.stream().filter(s -> s.tool.isThreadMill() && diameter(s) > 0.3 * most && diameter(s) <= most + 1e-9)
				.filter(s -> s.tool.comb().map(Fact::value).orElse(false) == comb)
				.filter(s -> s.tool.pitch().map(p -> Math.abs(p.value() - thread.pitch()) < 0.002).orElse(!comb))
				.max(Comparator.comparingDouble(Rack::diameter));
	}

	/** A number that no tool on hand has, counted from one upwards: 1, 2, 3 for the tools of a program where there is no list. */
	int free(int from) {
		int number = from;
		while (taken(number)) {
			number++;
		}
		return number;
	}

	private boolean taken(int number) {
		return slots.stream().anyMatch(s -> s.pocket == number);
	}

	static double diameter(Slot slot) {
		return slot.tool.diameter().map(Fact::value).orElse(0.0);
	}

	private Stream<Slot> drills(Predicate<Double> size) {
		return slots.stream().filter(s -> s.tool.kind().filter(k -> k.value() == ToolKind.DRILL).isPresent() && size.test(diameter(s)));
	}

	private static Method method(ToolFacts tap) {
		boolean forms = tap.kind().filter(k -> k.value() == ToolKind.FORM_TAP).isPresent();
		return forms ? Method.FORM_TAP : tap.has(TapStyle.SPIRAL_POINT) ? Method.SPIRAL_POINT : tap.has(TapStyle.SPIRAL_FLUTE)
				? Method.SPIRAL_FLUTE : Method.STRAIGHT_FLUTE;
	}
}
