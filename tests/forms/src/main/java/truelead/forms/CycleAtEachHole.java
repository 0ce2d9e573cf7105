package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** A cycle written whole at every place of a row is the one in force. */
final class CycleAtEachHole extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		Block head = program.blocks().get(row.head());
		if (Words.has(head, "KLIJ")) {
			return;
		}
		String again = Words.without(Words.block(Words.eachComment(head, comment -> "")), "XYNT").strip();
		for (int k = 1; k < row.places().size(); k++) {
			lines.set(row.head() + k, Words.last(again, words(program, row.places().get(k)[0], row.places().get(k)[1])));
		}
	}
}
