package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** A cycle without a place works where the tool stands. */
final class PlaceBeforeTheCycle extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.calls(), program.framed(),
				program.withoutPoint());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		Block head = program.blocks().get(row.head());
		if (before.cycle() == 0 && Words.has(head, "XY") && !Words.has(head, "KLIJ") && !Double.isNaN(before.z())) {
			lines.set(row.head(), Words.first(words(program, row.places().get(0)[0], row.places().get(0)[1]), "G0") + "\n"
					+ Words.without(head, "XY"));
		}
	}
}
