package truelead.checker.pass;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import truelead.checker.hole.Holes;
import truelead.checker.program.InOrder;

/**
 * Puts passes that an edit has made in the place of others, and gathers those stretches anew that they are of, or that are at holes which
 * are others now.
 */
public final class PassSplice {

	private static final int NONE = -1;

	private final List<PassStretch> known;
	private final PassStretches all;
	private final int from;
	private final int to;
	private final List<PassRow> fresh;
	private final NavigableMap<Integer, Integer> moved;
	private final Holes edited;
	private final BitSet again = new BitSet();
	/** The first and the last stretch that the passes made anew are put into. */
	private int first = NONE;
	private int last = NONE;

	/**
	 * Passes made anew from one step up to another, that one left out; none where these are the same.
	 *
	 * @param fresh  those passes
	 * @param moved  the holes that steps are at now, where they or their holes are others, by the numbers of the steps
	 * @param edited all holes as they are now
	 */
	public PassSplice(PassStretches all, int from, int to, List<PassRow> fresh, NavigableMap<Integer, Integer> moved, Holes edited) {
		this.all = all;
		this.known = all.stretches();
		this.from = from;
		this.to = to;
		this.fresh = fresh;
		this.moved = moved;
		this.edited = edited;
	}

	/**
	 * The passes as they are now; empty where there are none, or the hole of one is not known.
	 *
	 * @param together steps that are at one hole now, for each hole that is another one
	 */
	public Optional<PassStretches> made(Collection<List<Integer>> together) {
		place();
		synchronized (edited.pairs()) {
			all.shapes().forget();
		}
		for (int order : moved.keySet()) {
			int at = all.at(order);
			if (at >= 0) {
				again.set(at);
			}
		}
		together.forEach(this::join);
		List<PassStretch> made = new ArrayList<>(known.size() + 2);
		for (int at = 0; at < known.size(); at++) {
			if (!again.get(at)) {
				made.add(known.get(at));
				continue;
			}
			int behind = again.nextClearBit(at);
			Optional<List<PassStretch>> here = gathered(at, behind);
			if (here.isEmpty()) {
				return Optional.empty();
			}
			made.addAll(here.get());
			at = behind - 1;
		}
		return made.isEmpty() ? Optional.empty() : Optional.of(new PassStretches(made, edited, all.shapes()));
	}

	/** Finds the stretches that the passes were of in whose place others come. */
	private void place() {
		if (from >= to) {
			return;
		}
		for (int at = Math.max(0, InOrder.before(known, PassStretch::firstOrder, from) - 1); at < known.size()
				&& known.get(at).firstOrder() < to; at++) {
			if (known.get(at).lastOrder() >= from) {
				first = first < 0 ? at : first;
				last = at;
			}
		}
		if (first < 0) {
			first = Math.max(0, InOrder.before(known, PassStretch::firstOrder, from) - 1);
			last = first;
		}
		again.set(first, last + 1);
	}

	/** All stretches from the first to the last one at a hole are gathered together. */
	private void join(List<Integer> steps) {
		int least = Integer.MAX_VALUE;
		int most = NONE;
		for (int order : steps) {
			boolean anew = order >= from && order < to;
			int at = anew ? first : all.at(order);
			if (at >= 0) {
				least = Math.min(least, at);
				most = Math.max(most, anew ? last : at);
			}
		}
		if (most > least) {
			again.set(least, most + 1);
		}
	}

	/** The passes of some stretches in a row, those made anew among them, in stretches again. */
	private Optional<List<PassStretch>> gathered(int at, int behind) {
		List<PassRow> rows = new ArrayList<>();
		int[] holes = new int[16];
		int count = 0;
		Map<Integer, Integer> before = new HashMap<>();
		for (int stretch = at; stretch < behind; stretch++) {
			PassTable table = known.get(stretch).table();
			int pass = 0;
			for (PassRow row : table.rows()) {
				boolean gone = row.order(0) >= from && row.order(0) < to;
				for (int i = 0; i < row.count(); i++, pass++) {
					before.put(row.order(i), table.hole(pass));
				}
				if (!gone) {
					rows.add(row);
				}
			}
		}
		if (first >= at && first < behind) {
			rows.addAll(InOrder.before(rows, row -> row.order(0), from), fresh);
		}
		for (PassRow row : rows) {
			holes = Arrays.copyOf(holes, count + row.count() <= holes.length ? holes.length : Math.max(holes.length * 2,
					count + row.count()));
			for (int i = 0; i < row.count(); i++) {
				Integer now = moved.get(row.order(i));
				Integer hole = now != null ? now : before.get(row.order(i));
				if (hole == null) {
					return Optional.empty();
				}
				holes[count++] = hole;
			}
		}
		return Optional.of(rows.isEmpty() ? List.of() : PassStretch.of(rows, Arrays.copyOf(holes, count), edited, all.shapes()));
	}
}
