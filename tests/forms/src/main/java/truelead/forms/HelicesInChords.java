package truelead.forms;

import java.util.Optional;

/** A helix is many straight chords so short that they leave it by less than the smallest step. */
final class HelicesInChords extends ArcByArc {

	private static final int CHORDS = 120;

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(super.declines(program), program.says('G', 41, 42));
	}

	@Override
	String rewrite(Program program, Arc arc, Course.State before) {
		if (!arc.full() || Math.abs(arc.to()[2] - arc.from()[2]) < 1e-6) {
			return arc.block().text();
		}
		StringBuilder text = new StringBuilder(Words.comments(arc.block()));
		for (int k = 1; k <= CHORDS; k++) {
			double[] at = arc.at((double) k / CHORDS);
			text.append(text.isEmpty() ? "" : "\n").append("G1 ").append(RowByRow.words(program, at[0], at[1])).append(" Z")
					.append(Figures.of(at[2], program.decimals()));
			text.append(k == 1 && !arc.rest().isEmpty() ? " " + arc.rest() : "");
		}
		return text + "\nG" + arc.code();
	}
}
