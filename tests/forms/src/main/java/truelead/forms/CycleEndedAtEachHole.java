package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;

/** A cycle ended behind each hole and begun again at the next, in front of which the tool is at the height it began from. */
final class CycleEndedAtEachHole extends RowByRow {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.says('M', 29),
				program.calls(), program.skips(), program.withoutPoint());
	}

	@Override
	void rewrite(Program program, Row row, Course.State before, List<String> lines) {
		Block head = program.blocks().get(row.head());
		if (Words.has(head, "KLIJ") || Double.isNaN(before.z()) || before.cycle() > 0 || Words.says(head, 'G', 99)) {
			return;
		}
		String again = Words.without(Words.block(Words.eachComment(head, comment -> "")), "XYNT").strip();
		for (int k = 1; k < row.places().size(); k++) {
			lines.set(row.head() + k, "G80\nG0 Z" + Figures.of(before.z(), program.decimals()) + "\n"
					+ Words.last(again, words(program, row.places().get(k)[0], row.places().get(k)[1])));
		}
	}

	/** Each hole is an operation by itself then. */
	@Override
	public boolean multiplies() {
		return true;
	}

	/**
	 * A drilling block of its own is how a program says that a hole is for something else, and holes that are operations by themselves are
	 * compared with none.
	 */
	@Override
	public Set<String> mayFallSilent() {
		return Set.of("hole-skipped", "drill-too-deep");
	}

	/** A wrong callout is told of at the first operation of a tool; what follows from it at the others is still told there. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("drill-too-big", "drill-too-small");
	}
}
