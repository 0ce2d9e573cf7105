package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A second part beside the first one is made as the first is. */
final class RowsTwice implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.withoutPoint());
	}

	private static final double ASIDE_MM = 1234;

	/** Counts that are called out are of one part. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("count-differs", "no-check-stop");
	}

	@Override
	public boolean multiplies() {
		return true;
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		List<Row> rows = Row.of(program, Course.of(program));
		boolean all = rows.stream().allMatch(row -> row.known() && row.ended());
		if (!all || program.says('G', 1, 2, 3, 33, 33.1, 76).isPresent()) {
			return lines;
		}
		for (Row row : rows) {
			int last = row.behind() - 1;
			StringBuilder again = new StringBuilder(lines.get(last));
			row.places().forEach(place -> again.append('\n')
					.append(RowByRow.words(program, place[0] + Math.rint(program.length(ASIDE_MM)), place[1])));
			lines.set(last, again.toString());
		}
		return lines;
	}
}
