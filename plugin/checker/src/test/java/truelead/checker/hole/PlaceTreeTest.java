package truelead.checker.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import truelead.checker.machine.Rotary;
import truelead.checker.program.Plane;

/** The nearest hole is the same however it is looked for. */
class PlaceTreeTest {

	/** Round coordinates as programs have them, so that many are as near as others. */
	private static double[] coordinates(Random random, int count, int size) {
		return random.ints(count, 0, size).mapToDouble(at -> at * 0.5).toArray();
	}

	@Test
	void theNearestIsThatOfGoingThroughAll() {
		Random random = new Random(5);
		for (int i = 0; i < 400; i++) {
			int count = random.nextInt(60);
			double[] us = coordinates(random, count, 1 + random.nextInt(30));
			double[] vs = coordinates(random, count, 1 + random.nextInt(30));
			int[] steps = random.ints(count, 0, 10).toArray();
			PlaceTree tree = new PlaceTree(IntStream.range(0, count).toArray(), at -> us[at], at -> vs[at], at -> steps[at]);
			double u = random.nextInt(30) * 0.5;
			double v = random.nextInt(30) * 0.5;
			double reach = random.nextInt(12);
			int order = random.nextInt(12);
			int odd = random.nextInt(3);
			int best = -1;
			for (int at = 0; at < count; at++) {
				double distance = Math.hypot(us[at] - u, vs[at] - v);
				if (steps[at] < order && at % 3 != odd && distance <= reach
						&& (best < 0 || distance < Math.hypot(us[best] - u, vs[best] - v))) {
					best = at;
				}
			}
			assertThat(tree.nearest(u, v, reach, order, at -> at % 3 != odd)).as("try %d", i).isEqualTo(best);
		}
	}

	@Test
	void thousandsOfHolesInOneSpotAreEachFound() {
		Random random = new Random(7);
		HoleGrid grid = new HoleGrid();
		int frame = grid.frame(place(0, 0));
		List<double[]> known = new ArrayList<>();
		for (int i = 0; i < 3_000; i++) {
			double u = Math.rint(random.nextDouble() * 2_000) / 1_000;
			double v = Math.rint(random.nextDouble() * 2_000) / 1_000;
			int best = -1;
			double least = 0.02;
			for (int at = 0; at < known.size(); at++) {
				double distance = Math.hypot(known.get(at)[0] - u, known.get(at)[1] - v);
				if (distance < least || distance == least && best < 0) {
					best = at;
					least = distance;
				}
			}
			assertThat(grid.nearest(frame, u, v, 0.02)).as("hole %d", i).isEqualTo(best);
			if (best < 0) {
				grid.add(frame, u, v);
				known.add(new double[] {u, v});
			}
		}
	}

	@Test
	void aPlaceIsNotBesideItself() {
		PlaceSet set = new PlaceSet(List.of(place(10, 0), place(13, 0), place(Double.NaN, 0)));
		assertThat(set.beside(place(10, 0), 3)).isFalse();
		assertThat(set.beside(place(10, 0), 3.1)).isTrue();
		assertThat(set.beside(new Place(1, 54, Rotary.NONE, Plane.XY, 11, 0), 3)).isFalse();
	}

	private static Place place(double u, double v) {
		return new Place(0, 54, Rotary.NONE, Plane.XY, u, v);
	}
}
