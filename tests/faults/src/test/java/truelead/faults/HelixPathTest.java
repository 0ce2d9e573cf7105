package truelead.faults;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** A thread mill's path by hand: M16x2, cutter 12, one turn up in half arcs, hole at the origin. */
class HelixPathTest {

	@Test
	void halfArcsOfM16() {
		Job job = new Job(1);
		Size m16 = Sizes.ALL.stream().filter(s -> s.name().equals("M16X2")).findFirst().orElseThrow();
		Feature feature = new Feature(m16, Feature.Method.MILL, new Pattern(Pattern.Shape.ONE, List.of(new Place(0, 0)), 0, 0, 0, 0));
		ThreadMilling mill = new ThreadMilling(1, new Tool(1, Tool.Kind.THREAD_MILL, 12, ""), 1600, feature);
		mill.cutter = 12;
		mill.size = 16;
		mill.tip = 10;
		mill.turns = 1;
		mill.feed = 128;
		Scene scene = new Scene(job, new Dice(1));
		new HelixPath(scene, mill, new Place(0, 0)).pass(16, true);

		// radius (16 - 12) / 2 = 2; half a turn climbs P/2 = 1; lead-in and lead-out climb P/4 = 0.5
		assertThat(scene.tape.main).extracting(HelixPathTest::words).containsExactly(
			"G0 Z-10.5", "G3 X2 Z-10 I1 J0 F128", "G3 X-2 Z-9 I-2 J0", "G3 X2 Z-8 I2 J0", "G3 X0 Z-7.5 I-1 J0");
	}

	private static String words(Block block) {
		StringBuilder text = new StringBuilder();
		block.words.forEach(w -> text.append(text.isEmpty() ? "" : " ").append(w.letter()).append(Figures.trim(w.value(), 3)));
		return text.toString();
	}
}
