package truelead.checker.hole;

import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/** Where holes are made, so that the nearest one made before a step is found at once. Known when it is first asked for. */
final class MadeHoles {

	private final HoleGrid grid;
	private final IntUnaryOperator firstMade;
	private Map<Integer, PlaceTree> frames;

	/** @param firstMade the step that first makes a hole of a number; the largest number where none does */
	MadeHoles(HoleGrid grid, IntUnaryOperator firstMade) {
		this.grid = grid;
		this.firstMade = firstMade;
	}

	/**
	 * The number of the nearest one within a distance in mm that is made before a step and as asked, of several as near the first one
	 * reached; -1 for none.
	 */
	int nearest(int frame, double u, double v, double distance, int order, IntPredicate asked) {
		PlaceTree tree = frames().get(frame);
		return tree == null ? -1 : tree.nearest(u, v, distance, order, asked);
	}

	private synchronized Map<Integer, PlaceTree> frames() {
		if (frames == null) {
			int[] made = IntStream.range(0, grid.count()).map(firstMade).toArray();
			Map<Integer, IntStream.Builder> holes = new HashMap<>();
			for (int hole = 0; hole < made.length; hole++) {
				if (made[hole] < Integer.MAX_VALUE) {
					holes.computeIfAbsent(grid.frameOf(hole), frame -> IntStream.builder()).add(hole);
				}
			}
			frames = new HashMap<>();
			holes.forEach((frame, numbers) -> frames.put(frame, new PlaceTree(numbers.build().toArray(), grid::u, grid::v,
					hole -> made[hole])));
		}
		return frames;
	}
}
