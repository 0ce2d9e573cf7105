package truelead.checker.hole;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * The cuts at each hole, in the order they are added: a chain of links for each, from the last one back, that name a row of cuts and the
 * number in it.
 */
final class CutChains {

	private static final int NONE = -1;

	private final List<CutRow> rows = new ArrayList<>();
	/** The last link of each hole, counted from 1; 0 for none. */
	private int[] last = new int[16];
	private int[] lengths = new int[16];
	private int links;
	private int[] rowOf = new int[16];
	private int[] indexOf = new int[16];
	private int[] before = new int[16];

	/** Takes a row whose cuts are about to be added; gives its number. */
	int row(CutRow row) {
		rows.add(row);
		return rows.size() - 1;
	}

	/** Adds a cut of a row to a hole; gives the number of the link. */
	int add(int hole, int row, int index) {
		if (hole >= last.length) {
			last = Arrays.copyOf(last, Math.max(hole + 1, last.length * 2));
			lengths = Arrays.copyOf(lengths, last.length);
		}
		if (links == rowOf.length) {
			resize(links * 2);
		}
		rowOf[links] = row;
		indexOf[links] = index;
		before[links] = last[hole] - 1;
		last[hole] = ++links;
		lengths[hole]++;
		return links - 1;
	}

	/** Takes a link out of the chain of a hole. */
	void remove(int hole, int link) {
		int behind = NONE;
		int at = lastLink(hole);
		while (at != link) {
			behind = at;
			at = before[at];
		}
		if (behind == NONE) {
			last[hole] = before[at] + 1;
		} else {
			before[behind] = before[at];
		}
		lengths[hole]--;
	}

	/** Number of cuts at a hole while they are gathered. */
	int length(int hole) {
		return hole < lengths.length ? lengths[hole] : 0;
	}

	/** The last cut at a hole. */
	Optional<Cut> last(int hole) {
		int link = lastLink(hole);
		return link == NONE ? Optional.empty() : Optional.of(cut(rowOf[link], indexOf[link]));
	}

	/** The cut before the last one at a hole. */
	Optional<Cut> beforeLast(int hole) {
		int link = lastLink(hole) == NONE ? NONE : before[lastLink(hole)];
		return link == NONE ? Optional.empty() : Optional.of(cut(rowOf[link], indexOf[link]));
	}

	/** Puts a cut by itself in the place of the last one, which is by itself too. */
	void replaceLast(int hole, CutRow cut) {
		rows.set(rowOf[lastLink(hole)], cut);
	}

	/** Takes the last cut at a hole out of its chain. */
	void removeLast(int hole) {
		last[hole] = before[lastLink(hole)] + 1;
		lengths[hole]--;
	}

	/** A cut of a row. */
	Cut cut(int row, int index) {
		return rows.get(row).cut(index);
	}

	/** The cuts at a hole. */
	List<Cut> cuts(int hole) {
		List<Cut> cuts = new ArrayList<>(2);
		for (int link = lastLink(hole); link != NONE; link = before[link]) {
			cuts.add(cut(rowOf[link], indexOf[link]));
		}
		Collections.reverse(cuts);
		return cuts;
	}

	/** The cuts at a hole, as rows and the numbers in them. */
	List<Spot.Link> links(int hole) {
		List<Spot.Link> links = new ArrayList<>(2);
		for (int link = lastLink(hole); link != NONE; link = before[link]) {
			links.add(new Spot.Link(rows.get(rowOf[link]), indexOf[link]));
		}
		Collections.reverse(links);
		return links;
	}

	/** Hands out the number of the stay whose tool makes it, for each cut at a hole. */
	void stays(int hole, IntConsumer stays) {
		for (int link = lastLink(hole); link != NONE; link = before[link]) {
			stays.accept(rows.get(rowOf[link]).first().tool().index());
		}
	}

	/** The step that first makes a hole; the largest number where none does. */
	int firstMade(int hole) {
		int first = Integer.MAX_VALUE;
		for (int link = lastLink(hole); link != NONE; link = before[link]) {
			CutRow row = rows.get(rowOf[link]);
			first = row.first().kind().makesHole() ? Math.min(first, row.order(indexOf[link])) : first;
		}
		return first;
	}

	/** Whether a cut at a hole makes it. */
	boolean made(int hole) {
		boolean made = false;
		for (int link = lastLink(hole); link != NONE && !made; link = before[link]) {
			made = rows.get(rowOf[link]).first().kind().makesHole();
		}
		return made;
	}

	/** A number for the kinds of cuts at a hole, and which of them come before a step. */
	int history(int hole, int order, PairNumbers pairs) {
		int history = 0;
		for (int link = lastLink(hole); link != NONE; link = before[link]) {
			history = history(history, rows.get(rowOf[link]), indexOf[link], order, pairs);
		}
		return history;
	}

	/** Whether two holes have the same history, each before a step of its own, as their cuts are of the same rows. */
	boolean alike(int hole, int order, int other, int otherOrder) {
		int link = lastLink(hole);
		int beside = lastLink(other);
		while (link != NONE && beside != NONE) {
			CutRow row = rows.get(rowOf[link]);
			if (rowOf[link] != rowOf[beside] || row.decimals(indexOf[link]) != row.decimals(indexOf[beside])
					|| row.order(indexOf[link]) < order != row.order(indexOf[beside]) < otherOrder) {
				return false;
			}
			link = before[link];
			beside = before[beside];
		}
		return link == beside;
	}

	/** The number with one more cut, that before those that a history is of. */
	static int history(int behind, CutRow row, int index, int order, PairNumbers pairs) {
		int when = row.order(index) < order ? 1 : 0;
		return pairs.of(behind, pairs.of(row.kind(), row.decimals(index) * 2 + when));
	}

	/** Lets go of what only gathering needs. */
	void trim(int holes) {
		last = Arrays.copyOf(last, holes);
		lengths = new int[0];
		resize(links);
	}

	private int lastLink(int hole) {
		return hole < last.length ? last[hole] - 1 : NONE;
	}

	private void resize(int room) {
		rowOf = Arrays.copyOf(rowOf, room);
		indexOf = Arrays.copyOf(indexOf, room);
		before = Arrays.copyOf(before, room);
	}
}
