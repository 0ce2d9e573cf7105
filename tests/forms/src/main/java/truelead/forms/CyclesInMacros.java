package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;
import truelead.grammar.Element;

/** A macro that runs the cycle with the numbers it is given runs the cycle. */
final class CyclesInMacros implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint(), program.cyclesWithI());
	}

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		Subprograms macros = new Subprograms(program, 9101, "M99");
		for (Row row : Row.of(program, Course.of(program))) {
			Block head = program.blocks().get(row.head());
			boolean plain = Words.only(head, "GXYZRFQ") && head.words().stream().filter(word -> word.address() == 'G').allMatch(word ->
					Words.value(word) >= 73);
			if (plain && row.known() && Words.number(head, 'Z').isPresent()) {
				StringBuilder given = new StringBuilder(RowByRow.words(program, row.places().get(0)[0], row.places().get(0)[1]));
				StringBuilder cycle = new StringBuilder();
				head.words().stream().filter(word -> word.address() == 'G').forEach(word -> cycle.append(Words.written(head, word))
						.append(' '));
				cycle.append("X#24 Y#25");
				for (Element.Word word : head.words()) {
					int variable = switch (word.address()) {
						case 'Z' -> 26;
						case 'R' -> 18;
						case 'F' -> 9;
						case 'Q' -> 17;
						default -> 0;
					};
					if (variable > 0) {
						given.append(' ').append(Words.written(head, word));
						cycle.append(' ').append(word.address()).append('#').append(variable);
					}
				}
				lines.set(row.head(), "G65 P" + macros.of(cycle.toString()) + " " + given + " " + Words.comments(head));
			}
		}
		return macros.behind(lines);
	}

	/** What is said of the block of a cycle is said once for all operations that run the macro it stands in. */
	@Override
	public Set<String> mayFallSilent() {
		return Set.of("hole-missing", "spindle-not-turning", "callout-missing");
	}
}
