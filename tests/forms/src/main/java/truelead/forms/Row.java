package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import truelead.grammar.Block;

/**
 * A canned cycle and the blocks right behind it that name further places alone.
 *
 * @param head   the line of the cycle
 * @param places X and Y of each hole in the order drilled, NaN where they are not known
 * @param ended  whether G80 or a motion stands in the next block, so that the cycle ends there
 */
record Row(int head, List<double[]> places, boolean ended) {

	/** The rows of a plain program in G90. */
	static List<Row> of(Program program, List<Course.State> states) {
		List<Row> rows = new ArrayList<>();
		List<Block> blocks = program.blocks();
		for (int i = 0; i < blocks.size(); i++) {
			if (Words.cycle(blocks.get(i)) == 0 || Words.skipped(blocks.get(i))) {
				continue;
			}
			List<double[]> places = new ArrayList<>();
			places.add(new double[] {states.get(i).end(blocks.get(i), 'X'), states.get(i).end(blocks.get(i), 'Y')});
			int next = i + 1;
			for (; next < blocks.size() && !states.get(next).relative() && Words.only(blocks.get(next), "XY")
					&& blocks.get(next).elements().size() == blocks.get(next).words().size(); next++) {
				places.add(new double[] {states.get(next).end(blocks.get(next), 'X'), states.get(next).end(blocks.get(next), 'Y')});
			}
			rows.add(new Row(i, places, next < blocks.size() && Words.says(blocks.get(next), 'G', 0, 1, 80)));
			i = next - 1;
		}
		return rows;
	}

	/** The line behind its last place. */
	int behind() {
		return head + places.size();
	}

	/** Whether every place is known. */
	boolean known() {
		return places.stream().noneMatch(place -> Double.isNaN(place[0]) || Double.isNaN(place[1]));
	}
}
