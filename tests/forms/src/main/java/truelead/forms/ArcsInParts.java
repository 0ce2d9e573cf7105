package truelead.forms;

/** An arc is so many shorter ones about the same centre, one behind the other. */
final class ArcsInParts extends ArcByArc {

	private final int parts;

	/** Only full circles, each in so many arcs. */
	ArcsInParts(int parts) {
		this.parts = parts;
	}

	@Override
	public String name() {
		return "circles in " + parts;
	}

	@Override
	String rewrite(Program program, Arc arc, Course.State before) {
		return arc.full() ? arc.inParts(parts, program.decimals()) : arc.block().text();
	}
}
