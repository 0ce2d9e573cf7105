package truelead.checker.job;

import java.util.List;
import java.util.Optional;
import truelead.checker.thread.ThreadSpec;

/** One of our notes in a comment, read. Lengths in mm. */
public sealed interface Note {

	/** The comment it stands in. */
	ProgramComment comment();

	/**
	 * {@code (THREAD: M6X1-6H, DEPTH 12, BLIND)}: what is wanted at the holes of the operation; depth and wall of {@code THROUGH 20} in mm.
	 */
	record OfThread(ProgramComment comment, Optional<Fact<ThreadSpec>> thread, Optional<Fact<Double>> depth,
			Optional<Fact<Boolean>> through, Optional<Fact<Double>> wall, Optional<Fact<Integer>> count) implements Note {
	}

	/** {@code (HOLE: BOTTOM 18, THROUGH 20)}: full diameter depth and wall by the drawing, both from the surface, and the diameter; mm. */
	record OfHole(ProgramComment comment, Optional<Fact<Double>> bottom, Optional<Fact<Double>> wall, Optional<Fact<Boolean>> through,
			Optional<Fact<Double>> diameter) implements Note {
	}

	/** {@code (TOOL: T5, FORM TAP, M6X1, LEAD 2.5)}: what is in the pocket; without T the tool in the spindle. */
	record OfTool(ProgramComment comment, Optional<Integer> number, ToolFacts facts) implements Note {
	}

	/** {@code (STOCK: STEEL, 28 HRC)}. */
	record OfStock(ProgramComment comment, Fact<Stock> stock) implements Note {
	}

	/** {@code (SURFACE: Z0)}: the level of the top of the hole along its axis, mm. */
	record OfSurface(ProgramComment comment, Fact<Double> level) implements Note {
	}

	/** {@code (MACHINE PROFILE: turning)}: the machine the program is for, by the name of its profile. */
	record OfMachine(ProgramComment comment, Fact<String> name) implements Note {
	}

	/** {@code (ALLOW: rule, reason)}; several rules may share a reason, one note each. */
	record OfAllowance(ProgramComment comment, List<Allowance> allowances) implements Note {
	}
}
