package truelead.audit.compare;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiPredicate;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;

/**
 * Pairs the operations of two programs, the surest pairs first: same thread, tool and holes; same thread and holes; same holes; same thread and
 * tool; same thread.
 */
final class OperationMatch {

	private static final List<BiPredicate<OperationSheet, OperationSheet>> SURE_FIRST = List.of(
			(a, b) -> sameThread(a, b) && sameTool(a, b) && holes(a).equals(holes(b)), (a, b) -> sameThread(a, b) && holes(a).equals(holes(b)),
			(a, b) -> !holes(a).isEmpty() && holes(a).equals(holes(b)), (a, b) -> sameThread(a, b) && sameTool(a, b), OperationMatch::sameThread);

	private OperationMatch() {
	}

	/** Every operation of either program, once: in the new program's order, then what is gone. */
	static List<OperationChange> of(List<OperationSheet> before, List<OperationSheet> after) {
		OperationSheet[] partner = new OperationSheet[after.size()];
		List<OperationSheet> left = new ArrayList<>(before);
		for (BiPredicate<OperationSheet, OperationSheet> same : SURE_FIRST) {
			for (int i = 0; i < partner.length; i++) {
				if (partner[i] == null) {
					OperationSheet now = after.get(i);
					Optional<OperationSheet> then = left.stream().filter(one -> same.test(one, now)).findFirst();
					if (then.isPresent()) {
						partner[i] = then.get();
						left.remove(then.get());
					}
				}
			}
		}
		List<OperationChange> changes = new ArrayList<>();
		for (int i = 0; i < partner.length; i++) {
			OperationSheet now = after.get(i);
			Optional<OperationSheet> then = Optional.ofNullable(partner[i]);
			changes.add(new OperationChange(then, Optional.of(now), then.map(one -> SheetDifference.of(one, now)).orElse(List.of())));
		}
		left.forEach(gone -> changes.add(new OperationChange(Optional.of(gone), Optional.empty(), List.of())));
		return changes;
	}

	static Set<String> holes(OperationSheet sheet) {
		Set<String> places = new LinkedHashSet<>();
		sheet.holes().stream().map(HoleSheet::label).sorted().forEach(places::add);
		return places;
	}

	private static boolean sameThread(OperationSheet a, OperationSheet b) {
		return a.name().equals(b.name());
	}

	private static boolean sameTool(OperationSheet a, OperationSheet b) {
		return a.tool().number() == b.tool().number();
	}
}
