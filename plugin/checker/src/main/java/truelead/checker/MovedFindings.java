package truelead.checker;

import java.util.AbstractList;
import java.util.List;
import java.util.RandomAccess;
import truelead.checker.program.ProgramFile;
import truelead.checker.rule.Finding;

/**
 * Findings whose places are in the lines that they were found in, but of another text of the program; each is put there when it is asked
 * for.
 */
final class MovedFindings extends AbstractList<Finding> implements RandomAccess {

	private final ProgramFile program;
	private final List<Finding> found;
	private final Finding[] moved;

	/** @param found never changed */
	MovedFindings(ProgramFile program, List<Finding> found) {
		this.program = program;
		this.found = found;
		this.moved = new Finding[found.size()];
	}

	@Override
	public Finding get(int index) {
		Finding known = moved[index];
		if (known == null) {
			known = found.get(index).in(program);
			moved[index] = known;
		}
		return known;
	}

	@Override
	public int size() {
		return moved.length;
	}
}
