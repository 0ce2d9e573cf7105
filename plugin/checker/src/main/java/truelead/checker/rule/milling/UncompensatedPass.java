package truelead.checker.rule.milling;

import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.work.ThreadMilling;

/**
 * One pass without cutter compensation where the others have it: its lead-in says a D and nothing that takes it, or it runs on the path of
 * a compensated one. A rough pass without compensation has a path of its own.
 */
final class UncompensatedPass {

	/** Paths that differ by no more are one, mm. */
	private static final double SAME = 0.01;

	private UncompensatedPass() {
	}

	/** The first of an operation; empty where there is none. */
	static Optional<Draft> of(CompMissing rule, ThreadMilling operation) {
		List<MillPass> with = operation.passes().typical().stream().filter(pass -> pass.compensation() != Compensation.OFF).toList();
		NavigableSet<Double> radii = new TreeSet<>(with.stream().map(MillPass::radius).toList());
		return with.isEmpty() ? Optional.empty() : operation.passes().typical().stream().filter(pass ->
				pass.compensation() == Compensation.OFF && !MillFacts.ringBeside(operation, pass)
						&& (saysOffset(pass).isPresent() || has(radii, pass.radius()))).findFirst()
				.map(pass -> draft(rule, operation, pass, with.get(0)));
	}

	private static boolean has(NavigableSet<Double> radii, double radius) {
		Double near = radii.ceiling(radius - SAME);
		return near != null && near < radius + SAME;
	}

	private static Draft draft(CompMissing rule, ThreadMilling operation, MillPass pass, MillPass other) {
		String code = other.compensation() == Compensation.LEFT ? "G41" : "G42";
		BlockRef at = saysOffset(pass).or(() -> entry(pass).findFirst()).orElse(pass.block());
		return Draft.of(rule, Severity.WARNING, saysOffset(pass).map(block -> MillFacts.word(block, "D")).orElse(Location.of(at)),
				"no compensation is in force in this pass, other passes of this tool have " + code + ": the thread is off size by what "
						+ "its offset says; " + code + " here").on(operation)
				.programmed("radius of the path", new Figures(pass.modal().unit()).fine(pass.radius()), pass.block())
				.related(other.block(), "a pass with " + code);
	}

	/** The block of a lead-in that says D. */
	private static Optional<BlockRef> saysOffset(MillPass pass) {
		return entry(pass).filter(block -> block.file().text().block(block.line()).words().stream().anyMatch(word -> word.address() == 'D'))
				.findFirst();
	}

	/** The blocks that feed to the helix. */
	private static Stream<BlockRef> entry(MillPass pass) {
		return pass.entry().stream().filter(step -> !(step instanceof Step.Move move && move.rapid())).map(Step::block);
	}
}
