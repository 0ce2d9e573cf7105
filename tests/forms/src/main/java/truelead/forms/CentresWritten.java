package truelead.forms;

/** A centre word left out is 0, and a height left out is the one in force. */
final class CentresWritten extends ArcByArc {

	@Override
	String rewrite(Program program, Arc arc, Course.State before) {
		StringBuilder more = new StringBuilder();
		for (char letter : new char[] {'I', 'J'}) {
			more.append(Words.has(arc.block(), String.valueOf(letter)) ? "" : " " + letter + "0.");
		}
		more.append(Words.has(arc.block(), "Z") ? "" : " Z" + Figures.of(arc.to()[2], program.decimals()));
		return more.isEmpty() ? arc.block().text() : Words.last(arc.block().text(), more.toString().strip());
	}
}
