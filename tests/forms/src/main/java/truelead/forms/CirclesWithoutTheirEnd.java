package truelead.forms;

/** A full circle ends where it starts, said or not. */
final class CirclesWithoutTheirEnd extends ArcByArc {

	@Override
	String rewrite(Program program, Arc arc, Course.State before) {
		return arc.full() ? Words.without(arc.block(), "XY") : arc.block().text();
	}
}
