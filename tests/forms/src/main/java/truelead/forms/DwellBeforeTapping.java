package truelead.forms;

import java.util.Optional;
import truelead.grammar.Block;

/** The spindle may be given a second to come up to speed. */
final class DwellBeforeTapping extends BlockByBlock {

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling());
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		return Words.says(block, 'G', 84, 74) && before.cycle() == 0 && !Words.skipped(block) ? "G4 P1000\n" + block.text() : block.text();
	}
}
