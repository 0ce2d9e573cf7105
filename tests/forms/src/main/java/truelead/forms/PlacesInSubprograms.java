package truelead.forms;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** The places behind a cycle, or all of them behind one that is defined without drilling, may stand in a subprogram. */
final class PlacesInSubprograms implements Form {

	private final boolean all;

	/** With all places the cycle is defined by K0 before the call. */
	PlacesInSubprograms(boolean all) {
		this.all = all;
	}

	@Override
	public String name() {
		return all ? "all places in subprograms" : "places in subprograms";
	}

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		List<Course.State> states = Course.of(program);
		Subprograms places = new Subprograms(program, all ? 6001 : 8001, "M99");
		for (Row row : Row.of(program, states)) {
			Block head = program.blocks().get(row.head());
			if (!row.known() || !row.ended() || Words.has(head, "KL") || row.places().size() < 2) {
				continue;
			}
			List<String> blocks = new ArrayList<>();
			for (int k = all ? 0 : 1; k < row.places().size(); k++) {
				blocks.add(RowByRow.words(program, row.places().get(k)[0], row.places().get(k)[1]));
				if (k > 0) {
					lines.set(row.head() + k, null);
				}
			}
			String call = "M98 P" + places.of(String.join("\n", blocks));
			if (all) {
				lines.set(row.head(), Words.last(Words.without(head, "XY"), "K0") + "\n" + call);
			} else {
				lines.set(row.head() + 1, call);
			}
		}
		lines.removeIf(line -> line == null);
		return places.behind(lines);
	}
}
