package truelead.forms;

/** The end of a full circle is its start, said or not. */
final class CirclesWithTheirEnd extends ArcByArc {

	@Override
	String rewrite(Program program, Arc arc, Course.State before) {
		return arc.full() && !Words.has(arc.block(), "XY")
				? Words.first(arc.block().text(), RowByRow.words(program, arc.to()[0], arc.to()[1])) : arc.block().text();
	}
}
