package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import truelead.checker.hole.Hole;
import truelead.checker.job.Fact;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.BlockText;
import truelead.checker.rule.Finding;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** What the rules on thread milling ask of an operation again and again. */
final class MillFacts {

	/** Width of a sharp V for a depth of one on both flanks: 2 cos 30; a change of 1 on the flat is worth this on the pitch diameter. */
	static final double FLANK = Math.sqrt(3);

	/** What a circle rises at most, mm. */
	private static final double FLAT = 1e-3;

	private MillFacts() {
	}

	/** The thread a person named as it is cut: for a wire insert larger than the insert's own. */
	static Optional<Fact<ThreadSpec>> cutThread(ThreadMilling operation) {
		Optional<Fact<ThreadSpec>> named = operation.wanted().statedThread();
		return operation.wanted().wireInsert() ? named.map(fact -> fact.map(ThreadSpec::forWireInsert)) : named;
	}

	/** The thread as it is cut, where it is cylindrical. */
	static Optional<ThreadSpec> parallelThread(ThreadMilling operation) {
		return cutThread(operation).map(Fact::value).filter(t -> t.taperOnDiameter() == 0);
	}

	/** Whether a pass is a ring, which makes no thread. */
	static boolean ring(MillPass pass) {
		return Math.abs(pass.advance()) < FLAT;
	}

	/** Whether a pass is a ring beside a helix at its hole: it breaks the edge or smooths the floor. */
	static boolean ringBeside(ThreadMilling operation, MillPass pass) {
		return ring(pass) && operation.finishing(pass.hole()).stream().noneMatch(other -> other.order() == pass.order());
	}

	/** The thread's name in a sentence on its size. */
	static String name(ThreadMilling operation) {
		return operation.wanted().statedThread().map(fact -> fact.value().designation()).orElse("")
				+ (operation.wanted().wireInsert() ? " for a wire insert" : "");
	}

	/** Whether a person calls the tool a thread mill, so that its helix is a thread though nobody says which. */
	static boolean calledThreadMill(ThreadMilling operation) {
		return operation.tool().facts().kind().filter(kind -> kind.stated() && kind.value() == ToolKind.THREAD_MILL).isPresent();
	}

	/** The cutter's diameter, mm. */
	static OptionalDouble cutter(ThreadMilling operation) {
		Optional<Fact<Double>> diameter = operation.tool().facts().diameter();
		return diameter.isPresent() ? OptionalDouble.of(diameter.get().value()) : OptionalDouble.empty();
	}

	/** Whether the cutter is known to have several rows of teeth. */
	static boolean comb(ThreadMilling operation) {
		return operation.tool().facts().comb().map(Fact::value).orElse(false);
	}

	/**
	 * Tolerance of the pitch diameter by class, mm; where no table gives it, that of the grade 6 formula: 90 P^0.4 d^0.1 micrometres,
	 * widened by 1.32 for internal threads (ISO 965-1).
	 */
	static double pitchTolerance(ThreadSpec thread) {
		Optional<Limits> limits = ThreadTable.standard().limits(thread);
		if (limits.isPresent() && limits.get().pitchMinMm().isPresent() && limits.get().pitchMaxMm().isPresent()) {
			return limits.get().pitchMaxMm().getAsDouble() - limits.get().pitchMinMm().getAsDouble();
		}
		return 1.32 * 0.090 * Math.pow(thread.pitch(), 0.4) * Math.pow(thread.diameter(), 0.1);
	}

	/** The smallest minor diameter, mm; the basic one, D − 1.0825 P, where no table gives it. */
	static double minor(ThreadSpec thread) {
		return ThreadTable.standard().limits(thread).map(Limits::minorMinMm).filter(OptionalDouble::isPresent)
				.map(OptionalDouble::getAsDouble).orElse(thread.diameter() - 1.0825318 * thread.pitch());
	}

	/** What is wrong with passes: looks at the typical ones, and at all those whose typical one has something wrong. */
	static void look(MillPasses passes, BiConsumer<MillPass, Consumer<Finding>> rule, Consumer<Finding> found) {
		passes.where(pass -> {
			List<Finding> wrong = new ArrayList<>(1);
			rule.accept(pass, wrong::add);
			return !wrong.isEmpty();
		}).forEach(pass -> rule.accept(pass, found));
	}

	/**
	 * Whether a pass is the last thing that could be followed, as in a loop without an end that goes round and round: what leads out, and
	 * how far it goes, is not known.
	 */
	static boolean cutOff(Work work, MillPass pass) {
		return pass.exit().stream().allMatch(Step.Arc.class::isInstance)
				&& work.troubleOfProgram().notFollowed().stream().anyMatch(trouble -> trouble.stops() && trouble.order() >= pass.order());
	}

	/**
	 * Whether the level that is taken for the surface is stated, or what made the hole where the pass is, or one near it along Z, went
	 * below it; across a turned part level 0 is its axis.
	 */
	static boolean reachesSurface(Work work, ThreadMilling operation, MillPass pass) {
		Fact<Double> surface = operation.wanted().surface();
		double near = operation.wanted().statedThread().map(thread -> thread.value().diameter() / 2).orElse(0.0);
		return surface.stated() || goesBelow(pass.hole(), pass, surface.value())
				|| pass.axis() == 2 && work.holesNear(pass.place(), near).stream().anyMatch(hole -> goesBelow(hole, pass, surface.value()));
	}

	private static boolean goesBelow(Hole hole, MillPass pass, double surface) {
		return hole.deepestBefore(pass.order()).filter(cut -> cut.direction() * (cut.tip() - surface) > 0).isPresent();
	}

	/** As {@link BlockText#word}; for an axis its word of increments too. */
	static Location word(BlockRef block, String addresses) {
		return BlockText.word(block, addresses.length() == 1 && "XYZ".contains(addresses) ? addresses
				+ "UVW".charAt("XYZ".indexOf(addresses)) : addresses);
	}

	/** The word that says a circle's radius: R, or of I, J and K the one that is not 0; the block where it has none. */
	static Location radiusWord(BlockRef block) {
		for (Element.Word word : block.file().text().block(block.line()).words()) {
			boolean nothing = word.value() instanceof Expression.Number number && number.value() == 0;
			if ("RIJK".indexOf(word.address()) >= 0 && !nothing) {
				return Location.in(block, word.span());
			}
		}
		return word(block, "RIJK");
	}

	/** The G word of a block that says a code; the block's first G word where none does. */
	static Location word(BlockRef block, String address, int code) {
		for (Element.Word word : block.file().text().block(block.line()).words()) {
			if (word.address() == address.charAt(0) && word.value() instanceof Expression.Number number && number.value() == code) {
				return Location.in(block, word.span());
			}
		}
		return word(block, address);
	}

	/** The letter of an axis: 0 X, 1 Y, 2 Z. */
	static String axisLetter(int axis) {
		return "XYZ".substring(axis, axis + 1);
	}
}
