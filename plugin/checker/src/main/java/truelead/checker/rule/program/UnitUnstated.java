package truelead.checker.rule.program;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.work.Work;
import truelead.grammar.ProgramText;

/** Neither G20 nor G21 (nor G70, G71) stands before the first motion: which unit was assumed, and why. */
public final class UnitUnstated implements Rule {

	@Override
	public String name() {
		return "unit-unstated";
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Fact<LengthUnit> unit = work.shop().unit();
		if (unit.stated() || work.course().subprogramAlone() || work.tools().isEmpty()) {
			return;
		}
		BlockRef first = first(work);
		boolean mm = unit.value() == LengthUnit.MM;
		String message = "no unit is stated before the first motion: " + (mm ? "mm" : "inch") + " was assumed (" + unit.origin() + "); "
				+ (mm ? "G21" : "G20") + " at the head";
		found.accept(Draft.of(this, Severity.INFORMATION, Location.of(first), message).known("unit", mm ? "mm" : "inch", unit)
				.fix(new Fix("Put " + (mm ? "G21" : "G20") + " before this block", false, "see that the unit assumed is the one meant",
						List.of(BlockText.before(first, mm ? "G21" : "G20"))))
				.finding());
	}

	/** The first line that says more than a program number. */
	private static BlockRef first(Work work) {
		ProgramText text = work.shop().program().text();
		for (int line = 0; line < text.lineCount(); line++) {
			if (text.block(line).words().stream().anyMatch(word -> word.address() != 'O' && word.address() != 'N')) {
				return new BlockRef(work.shop().program(), line, Optional.empty());
			}
		}
		return new BlockRef(work.shop().program(), 0, Optional.empty());
	}
}
