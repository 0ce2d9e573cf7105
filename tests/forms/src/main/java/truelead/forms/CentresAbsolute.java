package truelead.forms;

import java.util.List;
import java.util.Optional;
import truelead.grammar.Block;

/** In G90.1 I and J are the centre itself and not the way to it. */
final class CentresAbsolute implements Form {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.framed(), program.calls(),
				program.skips(), program.withoutPoint(), program.says('G', 90.1, 91.1, 76, 87));
	}

	@Override
	public List<String> rewrite(Program program) {
		List<Course.State> states = Course.of(program);
		List<String> lines = program.lines();
		for (int i = 0; i < lines.size(); i++) {
			Block block = program.blocks().get(i);
			if (Words.has(block, "IJ")) {
				Optional<Arc> arc = Arc.of(block, states.get(i));
				if (arc.isEmpty()) {
					return program.lines();
				}
				double x = arc.get().from()[0] + arc.get().i();
				double y = arc.get().from()[1] + arc.get().j();
				lines.set(i, "G90.1\n" + Words.last(Words.without(block, "IJ"), "I" + Figures.of(x, program.decimals()) + " J"
						+ Figures.of(y, program.decimals())) + "\nG91.1");
			}
		}
		return lines;
	}
}
