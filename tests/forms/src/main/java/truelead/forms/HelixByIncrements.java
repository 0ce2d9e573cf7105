package truelead.forms;

/** An end is the start and a step: G91 names the step. */
final class HelixByIncrements extends ArcByArc {

	@Override
	String rewrite(Program program, Arc arc, Course.State before) {
		StringBuilder text = new StringBuilder("G91 G" + arc.code());
		for (int axis = 0; axis < 3; axis++) {
			text.append(' ').append("XYZ".charAt(axis)).append(Figures.exact(arc.to()[axis] - arc.from()[axis], program.decimals()));
		}
		text.append(" I").append(Figures.of(arc.i(), program.decimals())).append(" J").append(Figures.of(arc.j(), program.decimals()));
		return Words.last(text.toString(), arc.rest() + " " + Words.comments(arc.block())).strip() + "\nG90";
	}
}
