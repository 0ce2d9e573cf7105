package truelead.checker.rule.hole;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.LevelFix;
import truelead.checker.rule.Severity;

/**
 * The one hole of an operation that is another than all others, which are alike: drilled deeper by the same drill for a thread that is as
 * deep, or threaded less deep in the same hole (common practice, no source). Whoever means it says why in the blocks that do it, or writes
 * a depth of its own at this hole alone.
 *
 * @param visit  the thread in it
 * @param drill  what drills it
 * @param odd    its levels
 * @param usual  those of the others
 * @param others how many others there are
 */
record OddDepth(Visit visit, Cut drill, Levels odd, Levels usual, int others) {

	/** So many others show what is usual (common practice, no source). */
	private static final int ENOUGH = 4;

	/** What two walls or two screws of one plate may differ by, mm (common practice, no source). */
	private static final double LITTLE = 2;

	/** So many holes show how their depths are written. */
	private static final int SHOWN = 16;

	/** Levels are the same that differ by less, mm. */
	private static final double SAME = 1e-3;

	/**
	 * A hole, as it is compared with others.
	 *
	 * @param tool   the stay of its drill
	 * @param start  level that the drill is fed from, thousandths of a mm
	 * @param tip    level of the drill's tip
	 * @param bottom level that the thread goes to
	 */
	record Levels(int tool, long start, long tip, long bottom) {

		static Levels of(Visit visit, Cut drill) {
			return new Levels(drill.tool().index(), rounded(drill.start()), rounded(drill.tip()), rounded(visit.bottom()));
		}

		private static long rounded(double mm) {
			return Math.round(mm / SAME);
		}

		/** Level of the drill's tip, mm. */
		double tipLevel() {
			return tip * SAME;
		}

		/** Level that the thread goes to, mm. */
		double bottomLevel() {
			return bottom * SAME;
		}
	}

	/** Holes of one kind. */
	private record Alike(Visit first, Cut drill, int count) {
	}

	/** The odd one among the holes of an operation; none where the drawing's wall or bottom is said, by which each is judged. */
	static Optional<OddDepth> of(Visits visits) {
		if (visits.operation().wanted().wall().isPresent() || visits.operation().wanted().holeBottom().isPresent()) {
			return Optional.empty();
		}
		Map<Levels, Alike> kinds = new HashMap<>();
		for (int kind = 0; kind < visits.typical().size() && kinds.size() < 3; kind++) {
			Visit visit = visits.typical().get(kind);
			Optional<Cut> drill = drill(visit);
			if (drill.isEmpty() || Double.isNaN(drill.get().tip()) || Double.isNaN(visit.bottom())) {
				return Optional.empty();
			}
			kinds.merge(Levels.of(visit, drill.get()), new Alike(visit, drill.get(), visits.count(kind)), (one, more) ->
					new Alike(one.first(), one.drill(), one.count() + more.count()));
		}
		Optional<Map.Entry<Levels, Alike>> odd = kinds.entrySet().stream().filter(kind -> kind.getValue().count() == 1).findFirst();
		Optional<Map.Entry<Levels, Alike>> usual = kinds.entrySet().stream().filter(kind -> kind.getValue().count() >= ENOUGH).findFirst();
		return kinds.size() != 2 || usual.isEmpty() ? Optional.empty()
				: odd.map(one -> new OddDepth(one.getValue().first(), one.getValue().drill(), one.getKey(), usual.get().getKey(),
						usual.get().getValue().count()));
	}

	/** Whether it differs from the others in that its drill goes deeper, by half its diameter and more. */
	boolean drilledDeeper() {
		double deeper = drill.direction() * (odd.tipLevel() - usual.tipLevel());
		return odd.tool == usual.tool && odd.start == usual.start && odd.bottom == usual.bottom
				&& deeper > Math.max(LITTLE, drill.diameter().map(size -> size.value() / 2).orElse(LITTLE)) && isBare(drill.block());
	}

	/** Whether it differs from the others in that its thread is less deep. */
	boolean threadedLess() {
		return odd.tool == usual.tool && odd.start == usual.start && odd.tip == usual.tip
				&& drill.direction() * (usual.bottomLevel() - odd.bottomLevel()) > LITTLE && isBare(visit.block());
	}

	/**
	 * A step that goes to a depth.
	 *
	 * @param step  the step
	 * @param block its block
	 */
	record Going(Step step, BlockRef block) {

		/** The word that says the depth, in its block or one before it; empty for what is no cycle. */
		Optional<WordRef> depth() {
			return Optional.of(step).filter(Step.Stroke.class::isInstance).map(Step.Stroke.class::cast).flatMap(LevelFix::depthWord);
		}

		/** The word of its own block that says the depth; the block where none does. */
		Location location() {
			return depth().filter(word -> word.block().sameBlock(block)).map(Location::of).orElseGet(() -> Location.of(block));
		}
	}

	/** {@link #severity} of the odd drill, among the drills of an operation's holes. */
	Severity drilled(Visits visits) {
		return severity(new Going(drill.step(), drill.block()),
				visits.stream().flatMap(any -> drill(any).stream()).map(cut -> new Going(cut.step(), cut.block())));
	}

	/**
	 * A warning where every hole has its depth written and one key makes the odd one of another; else information: who lets a depth stand
	 * for a row of holes writes one at a single hole on purpose, to let air out or to miss what is below.
	 *
	 * @param odd   what goes to the odd depth
	 * @param holes what goes to the depth of each hole, the odd one among them
	 */
	static Severity severity(Going odd, Stream<Going> holes) {
		List<Going> shown = holes.limit(SHOWN).filter(hole -> hole.step() instanceof Step.Stroke).toList();
		List<WordRef> depths = shown.stream().flatMap(hole -> hole.depth().stream()).toList();
		boolean each = depths.stream().map(Location::of).distinct().count() == shown.size();
		boolean slip = odd.depth().map(WordRef::written)
				.filter(written -> depths.stream().anyMatch(depth -> oneKeyApart(written, depth.written()))).isPresent();
		return shown.isEmpty() || each && slip ? Severity.WARNING : Severity.INFORMATION;
	}

	/** Whether one character makes the one of the other, put in, left out or another. */
	private static boolean oneKeyApart(String one, String other) {
		int shorter = Math.min(one.length(), other.length());
		int longer = Math.max(one.length(), other.length());
		int before = 0;
		while (before < shorter && one.charAt(before) == other.charAt(before)) {
			before++;
		}
		int behind = 0;
		while (behind < shorter - before && one.charAt(one.length() - 1 - behind) == other.charAt(other.length() - 1 - behind)) {
			behind++;
		}
		return longer - before - behind == 1;
	}

	/** What drills the hole of a visit last before it. */
	private static Optional<Cut> drill(Visit visit) {
		return visit.hole().makingBefore(visit.order()).stream().filter(cut -> cut.kind().drills()).reduce((one, last) -> last);
	}

	/** Whether a block says nothing for people. */
	private static boolean isBare(BlockRef block) {
		return block.file().text().block(block.line()).comments().isEmpty();
	}
}
