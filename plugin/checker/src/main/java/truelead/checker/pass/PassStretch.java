package truelead.checker.pass;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Holes;

/** Passes one after the other with their holes, at which no others of their operation are. */
final class PassStretch {

	/** Fewer passes than these have no stretch of their own where others follow. */
	private static final int LEAST = 256;

	private final PassTable table;
	private final MilledHoles places;
	private final PassPart all;
	private final int firstOrder;
	private final int lastOrder;
	private PassPart firsts;
	private PassPart finishing;

	private PassStretch(PassTable table) {
		this.table = table;
		this.places = new MilledHoles(table);
		this.all = new PassPart(table, Optional.empty());
		this.firstOrder = table.order(0);
		this.lastOrder = table.order(table.size() - 1);
	}

	/**
	 * The stretches of some passes.
	 *
	 * @param holeOf the number of the hole of each; below 0 for one that is at no known place
	 */
	static List<PassStretch> of(List<PassRow> rows, int[] holeOf, Holes holes, PassShapes shapes) {
		int[] lastRow = lastRows(rows, holeOf);
		List<PassStretch> stretches = new ArrayList<>();
		int fromRow = 0;
		int from = 0;
		int at = 0;
		int last = 0;
		for (int row = 0; row < rows.size(); row++) {
			for (int i = 0; i < rows.get(row).count(); i++) {
				last = Math.max(last, lastRow[at++]);
			}
			if (row == rows.size() - 1 || row == last && at - from >= LEAST) {
				stretches.add(new PassStretch(new PassTable(rows.subList(fromRow, row + 1), Arrays.copyOfRange(holeOf, from, at),
						holes, shapes)));
				fromRow = row + 1;
				from = at;
				last = row + 1;
			}
		}
		return stretches;
	}

	/** The last row that has a pass at the hole of each pass. */
	private static int[] lastRows(List<PassRow> rows, int[] holeOf) {
		HoleOrder numbers = new HoleOrder(holeOf);
		int[] last = new int[holeOf.length];
		int[] numberOf = new int[holeOf.length];
		int at = 0;
		for (int row = 0; row < rows.size(); row++) {
			for (int i = 0; i < rows.get(row).count(); i++, at++) {
				PassRow here = rows.get(row);
				int index = i;
				numberOf[at] = numbers.of(holeOf[at], () -> here.place(index));
				last[numberOf[at]] = row;
			}
		}
		for (int pass = 0; pass < numberOf.length; pass++) {
			numberOf[pass] = last[numberOf[pass]];
		}
		return numberOf;
	}

	/** The passes. */
	PassTable table() {
		return table;
	}

	/** Their holes. */
	MilledHoles places() {
		return places;
	}

	/** Number of the first arc of the first pass. */
	int firstOrder() {
		return firstOrder;
	}

	/** Number of the first arc of the last pass. */
	int lastOrder() {
		return lastOrder;
	}

	/** All passes. */
	PassPart all() {
		return all;
	}

	/** The first pass at each hole. */
	synchronized PassPart firstPasses() {
		if (firsts == null) {
			firsts = places.firstPasses().map(some -> new PassPart(table, Optional.of(some))).orElse(all);
		}
		return firsts;
	}

	/** The finishing passes at all holes. */
	synchronized PassPart allFinishing() {
		if (finishing == null) {
			finishing = places.allFinishing().map(some -> new PassPart(table, Optional.of(some))).orElse(all);
		}
		return finishing;
	}
}
