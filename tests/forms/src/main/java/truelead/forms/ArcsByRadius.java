package truelead.forms;

import java.util.Set;

/** An arc of less than half a turn is told by its ends and its radius as well as by its centre. */
final class ArcsByRadius extends ArcByArc {

	/** Degrees; near half a turn the centre hangs on the last decimal of the ends. */
	private static final double LARGEST = 170;

	@Override
	String rewrite(Program program, Arc arc, Course.State before) {
		double across = Math.hypot(arc.to()[0] - arc.from()[0], arc.to()[1] - arc.from()[1]);
		double ends = Math.abs(Math.hypot(arc.to()[0] - arc.from()[0] - arc.i(), arc.to()[1] - arc.from()[1] - arc.j()) - arc.radius());
		if (arc.sweep() > Math.toRadians(LARGEST) || ends > program.length(0.001) || across < program.length(0.01)) {
			return arc.block().text();
		}
		return Words.last(Words.without(arc.block(), "IJ"), "R" + Figures.of(arc.radius(), program.decimals()));
	}

	/** A centre on the wrong side of its arc is none where a radius is written. */
	@Override
	public Set<String> judgedByIt() {
		return Set.of("arc-not-closed", "hole-off-position");
	}
}
