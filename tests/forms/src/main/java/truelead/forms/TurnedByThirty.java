package truelead.forms;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import truelead.grammar.Block;

/** The part lies turned by 30 degrees: every place and every centre is turned about the zero, to a tenth of the smallest step. */
final class TurnedByThirty extends BlockByBlock {

	private static final double COS = Math.cos(Math.PI / 6);
	private static final double SIN = Math.sin(Math.PI / 6);

	@Override
	public Optional<String> declines(Program program) {
		return Form.first(program.notPlain(), program.notForMilling(), program.cyclesWithI(), program.increments(), program.framed(),
				program.calls(), program.skips(), program.withoutPoint(), program.says('G', 76, 87), spirals(program),
				program.says('G', 41, 42));
	}

	@Override
	String rewrite(Program program, Block block, Course.State before) {
		if (Words.call(block) || !Words.has(block, "XYIJ")) {
			return block.text();
		}
		double x = Words.number(block, 'X', Double.isNaN(before.x()) ? 0 : before.x());
		double y = Words.number(block, 'Y', Double.isNaN(before.y()) ? 0 : before.y());
		double i = Words.number(block, 'I', 0);
		double j = Words.number(block, 'J', 0);
		StringBuilder turned = new StringBuilder();
		if (Words.has(block, "XY")) {
			turned.append("X").append(along(x, y, program)).append(" Y").append(across(x, y, program));
		}
		if (Words.has(block, "IJ")) {
			turned.append(" I").append(along(i, j, program)).append(" J").append(across(i, j, program));
		}
		String rest = Words.without(block, "XYIJ");
		return Words.last(rest, turned.toString().strip());
	}

	private static String along(double x, double y, Program program) {
		return Figures.of(x * COS - y * SIN, program.decimals());
	}

	private static String across(double x, double y, Program program) {
		return Figures.of(x * SIN + y * COS, program.decimals());
	}

	/** A turn that ends where it began but for its radius: a last decimal more or less makes it no turn at all. */
	private static Optional<String> spirals(Program program) {
		List<Course.State> states = Course.of(program);
		for (int i = 0; i < states.size(); i++) {
			Optional<Arc> arc = Arc.of(program.blocks().get(i), states.get(i));
			if (arc.isPresent() && Math.abs(Math.hypot(arc.get().to()[0] - arc.get().from()[0] - arc.get().i(),
					arc.get().to()[1] - arc.get().from()[1] - arc.get().j()) - arc.get().radius()) > program.length(0.002)) {
				return Optional.of("has spirals");
			}
		}
		return Optional.empty();
	}

	/** A place typed wrongly in one of its two words is known by the other one. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("hole-off-position", "hole-missing");
	}
}
