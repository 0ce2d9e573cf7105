package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** A cycle with a count of 0 is kept for the places to come and drills none. */
final class CycleDefinedAlone extends RowByRow {

	private final char word;

	/** The count is a word of this letter, K or L. */
	CycleDefinedAlone(char word) {
		this.word = word;
	}

	@Override
	public String name() {
		return "cycle defined alone by " + word + "0";
	}

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.calls(), program.framed(),
				program.withoutPoint(), program.skips());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		Block head = program.blocks().get(row.head());
		if (!Words.has(head, "KLIJ")) {
			lines.set(row.head(), Words.last(Words.without(head, "XY"), word + "0") + "\n" + words(program, row.places().get(0)[0],
					row.places().get(0)[1]));
		}
	}
}
