package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;

/** G81 is a rapid to the place, one to the R plane, a feed to the depth and a rapid back. */
final class LongHand extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint(), program.says('G', 93, 95, 18, 41, 42));
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		Block head = program.blocks().get(row.head());
		double level = Words.number(head, 'R', Double.NaN);
		double depth = Words.number(head, 'Z', Double.NaN);
		double feed = Words.number(head, 'F', Double.NaN);
		if (!Words.says(head, 'G', 81) || before.cycle() > 0 || Double.isNaN(level + depth + feed + before.z())
				|| Words.has(head, "KLPQSTM")) {
			return;
		}
		double back = Words.says(head, 'G', 99) ? level : Math.max(before.z(), level);
		StringBuilder moves = new StringBuilder(Words.comments(head));
		for (double[] place : row.places()) {
			moves.append(moves.isEmpty() ? "" : "\n").append("G0 ").append(words(program, place[0], place[1])).append("\nZ")
					.append(Figures.of(level, program.decimals())).append("\nG1 Z").append(Figures.of(depth, program.decimals()))
					.append(" F").append(Figures.of(feed, 5)).append("\nG0 Z").append(Figures.of(back, program.decimals()));
		}
		if (Words.says(head, 'G', 54)) {
			return;
		}
		lines.set(row.head(), moves.toString());
		for (int k = 1; k < row.places().size(); k++) {
			lines.set(row.head() + k, null);
		}
	}

	/** It looks at R planes. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("plane-heights-wrong");
	}
}
