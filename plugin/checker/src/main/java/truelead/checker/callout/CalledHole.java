package truelead.checker.callout;

import java.util.List;
import truelead.checker.thread.ThreadSpec;

/** What a drawing's callout says of the hole behind the thread: how deep the thread is, and how the hole is drilled. */
final class CalledHole {

	private CalledHole() {
	}

	/** M8 20 DEEP, G1 16 DEEP, G1 1/4 X 22 DP: a depth right behind the thread; nobody says of a motion how deep it is. */
	static boolean deep(PartRow row, int i, ThreadDraft draft) {
		List<Part> parts = row.parts();
		return i + 1 < parts.size() && parts.get(i + 1) instanceof Part.Amount depth && depth.role() == Part.Role.DEPTH
				|| draft.extent().isPresent() && row.is(i + 1, Meaning.DEPTH);
	}

	/**
	 * 8X M8-6H, DRILL 24 DEEP: a drawing's callout, with how its hole is made behind a comma; M8 X 20 DP / 28 DRILL, where the hole has its
	 * depth behind that of the thread; M5X0.8 12 DEEP DRILLED 4.2 X 17, where the hole has a number of its own.
	 */
	static boolean drilled(PartRow row, ToolDescription drill) {
		List<Part> parts = row.parts();
		if (ownDepths(row, drill)) {
			return true;
		}
		for (int i = 0; i < parts.size() && parts.get(i).end() <= drill.start(); i++) {
			if (parts.get(i) instanceof Part.Thread t) {
				boolean called = t.count().isPresent() || !t.draft().spec().threadClass().isEmpty();
				boolean deeper = deep(row, i, t.draft())
						&& drill.diameter().filter(size -> size.mm(t.draft().spec().unit()) <= t.draft().spec().diameter()).isEmpty();
				if (called || deeper) {
					return parts.subList(i, parts.size()).stream().anyMatch(p -> p.end() <= drill.start() && p instanceof Part.Other o
							&& (o.text().equals(",") || deeper && o.text().equals("/")));
				}
			}
		}
		return false;
	}

	/** M5X0.8 8 HOLES 12 DEEP DRILLED 4.2 X 17: the thread first, its depth, the drill, and a size or a depth of that. */
	private static boolean ownDepths(PartRow row, ToolDescription drill) {
		List<Part> parts = row.parts();
		int thread = OwnParts.first(parts);
		return thread < parts.size() && parts.get(thread).end() <= drill.start() && drilled(row, thread);
	}

	/** Whether the first thread of a comment is said so at a place. */
	static boolean drilled(PartRow row, int at) {
		List<Part> parts = row.parts();
		if (!(parts.get(at) instanceof Part.Thread thread) || at != OwnParts.first(parts)) {
			return false;
		}
		ThreadSpec spec = thread.draft().spec();
		boolean deep = deep(row, at, thread.draft());
		boolean behind = false;
		for (int i = at + 1; i < parts.size(); i++) {
			Part part = parts.get(i);
			if (part instanceof Part.Thread || part instanceof Part.Word word && word.meaning() == Meaning.FOR) {
				return false;
			}
			if (behind && part instanceof Part.Amount amount && deep) {
				return CalledDepth.is(part) || amount.dimension().mm(spec.unit()) < spec.diameter();
			}
			behind |= part instanceof Part.Word word && word.meaning().drills();
			deep |= !behind && CalledDepth.is(part);
		}
		return false;
	}
}
