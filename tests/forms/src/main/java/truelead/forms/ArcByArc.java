package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** A form that writes arcs about a centre anew, each by itself. */
abstract class ArcByArc extends BlockByBlock {

	/** The blocks of an arc in this form; its own text where it stays. */
	abstract String rewrite(Program program, Arc arc, Course.State before);

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.increments(), program.says('G', 90.1), program.framed(),
				program.calls(), program.skips(), program.withoutPoint());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Arc.of(block, before).map(arc -> rewrite(program, arc, before)).orElse(block.text());
	}
}
