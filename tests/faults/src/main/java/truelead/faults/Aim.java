package truelead.faults;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Predicate;

/** Where a fault can go: picks a fitting operation, and names the marks at which it may be reported. */
final class Aim {
	private Aim() {
	}

	/** Puts a fault into one of the tapping operations that fit. */
	static Fault.Setter tap(Predicate<Tapping> fits, Put<Tapping> put) {
		return at(Tapping.class, fits, put);
	}

	static Fault.Setter mill(Predicate<ThreadMilling> fits, Put<ThreadMilling> put) {
		return at(ThreadMilling.class, fits, put);
	}

	/** Puts a fault into one operation of the kind. */
	interface Put<T extends Op> {
		List<String> put(Job job, T op, Dice dice);
	}

	static <T extends Op> Fault.Setter at(Class<T> kind, Predicate<T> fits, Put<T> put) {
		return (job, dice) -> {
			List<T> ops = job.ops.stream().filter(kind::isInstance).map(kind::cast).filter(fits).toList();
			return ops.isEmpty() ? List.of() : put.put(job, dice.pick(ops), dice);
		};
	}

	static boolean cycle(Tapping tap) {
		return tap.form == Tapping.Form.CYCLE || tap.form == Tapping.Form.RIGID;
	}

	static boolean macro(Tapping tap) {
		return tap.feature.way == Feature.Way.MACRO;
	}

	static boolean known(Tapping tap) {
		return tap.feature.known();
	}

	/** The blocks that carry the numbers of a threading operation. */
	static List<String> numbers(Op op) {
		List<String> marks = marks(op, "cycle", "hole-0", "holes", "start", "rigid", "stroke-0", "in", "entry", "helix", "call", "place");
		if (!op.features.isEmpty() && op.features.get(0).way == Feature.Way.SUB) {
			marks.addAll(List.of("sub:hole-0", "sub:hole-1"));
		}
		return marks;
	}

	static List<String> marks(Op op, String... roles) {
		List<String> marks = new ArrayList<>();
		for (String role : roles) {
			marks.add(op.mark(role));
		}
		return marks;
	}

	/** The blocks at which one hole of an operation is threaded or drilled. */
	static List<String> hole(Op op, Feature feature, int index) {
		List<String> marks = marks(op, "hole-" + index, "stroke-" + index);
		if (op instanceof ThreadMilling) {
			marks.addAll(marks(op, "helix", "entry", "in", "depth", "cycle"));
		} else if (feature.way != Feature.Way.LIST || op instanceof Tapping t && !cycle(t)) {
			marks.addAll(marks(op, "cycle", "holes", "call"));
			marks.add("sub:hole-" + index);
		}
		return marks;
	}

	static List<String> join(List<String> one, List<String> two) {
		List<String> all = new ArrayList<>(one);
		all.addAll(two);
		return all;
	}

	/** Changes every block of the finished program that carries the mark. */
	static void edit(Job job, Op op, String role, BiConsumer<Tape, Block> change) {
		job.edits.add(tape -> tape.marked(op.mark(role)).forEach(block -> change.accept(tape, block)));
	}
}
