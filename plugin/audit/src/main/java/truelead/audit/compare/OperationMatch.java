package truelead.audit.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.sheet.TurnedSheet;

/**
 * Pairs the operations of two programs, the surest pairs first: same thread, tool and holes; same thread and holes; same holes; same thread
 * and tool; same thread. What the holes are for others, the stretch along Z is for a thread that a lathe cuts by a single point.
 */
final class OperationMatch {

	private static final List<BiPredicate<ThreadSheet, ThreadSheet>> SURE_FIRST = List.of((a, b) -> sameThread(a, b) && sameTool(a, b)
			&& places(a).equals(places(b)), (a, b) -> sameThread(a, b) && places(a).equals(places(b)),
			(a, b) -> !places(a).isEmpty() && places(a).equals(places(b)), (a, b) -> sameThread(a, b) && sameTool(a, b),
			OperationMatch::sameThread);

	private OperationMatch() {
	}

	/** Every operation of either program, once: in the new program's order, then what is gone. */
	static List<OperationChange> of(List<ThreadSheet> before, List<ThreadSheet> after) {
		ThreadSheet[] partner = new ThreadSheet[after.size()];
		List<ThreadSheet> left = new ArrayList<>(before);
		for (BiPredicate<ThreadSheet, ThreadSheet> same : SURE_FIRST) {
			for (int i = 0; i < partner.length; i++) {
				if (partner[i] == null) {
					ThreadSheet now = after.get(i);
					Optional<ThreadSheet> then = left.stream().filter(one -> same.test(one, now)).findFirst();
					if (then.isPresent()) {
						partner[i] = then.get();
						left.remove(then.get());
					}
				}
			}
		}
		List<OperationChange> changes = new ArrayList<>();
		for (int i = 0; i < partner.length; i++) {
			ThreadSheet now = after.get(i);
			Optional<ThreadSheet> then = Optional.ofNullable(partner[i]);
			changes.add(new OperationChange(then, Optional.of(now), then.map(one -> SheetDifference.of(one, now)).orElse(List.of())));
		}
		left.forEach(gone -> changes.add(new OperationChange(Optional.of(gone), Optional.empty(), List.of())));
		return changes;
	}

	/** Its holes, or the stretch along Z where a lathe cuts it; the stretch counts to a micrometre. */
	private static Set<String> places(ThreadSheet sheet) {
		Set<String> places = new LinkedHashSet<>();
		if (sheet instanceof OperationSheet operation) {
			operation.holes().stream().map(HoleSheet::label).sorted().forEach(places::add);
		} else if (sheet instanceof TurnedSheet turned) {
			places.add(turned.method() + " " + Figures.number(turned.from(), 3) + " " + Figures.number(turned.to(), 3));
		}
		return places;
	}

	private static boolean sameThread(ThreadSheet a, ThreadSheet b) {
		return a.name().equals(b.name());
	}

	private static boolean sameTool(ThreadSheet a, ThreadSheet b) {
		return a.tool().number() == b.tool().number();
	}
}
