package truelead.checker.callout;

/** Cutters whose name is put together: DRILL-CHAMFER-THREAD MILL, T-NUTENFRAESER. */
final class CombinedCutter {

	private CombinedCutter() {
	}

	/** Whether THREAD MILL stands at a place, or behind signs and other tools that they join there. */
	static boolean leadsTo(PartRow row, int i, int mill) {
		boolean sign = i < row.parts().size() && (row.joins(i) || row.parts().get(i) instanceof Part.Other o && o.text().equals("/"));
		int at = sign ? i + 1 : i;
		boolean tool = sign && at < mill && row.meaning(at).filter(meaning -> meaning.drills() || meaning == Meaning.CHAMFER).isPresent();
		return at == mill || row.meaning(at).filter(meaning -> meaning == Meaning.THREAD || meaning == Meaning.THREAD_MILL).isPresent()
				|| tool && leadsTo(row, at + 1, mill);
	}

	/** Whether a word for a groove says itself that it is a cutter: T-NUTENFRAESER. */
	static boolean grooves(Part part) {
		return part instanceof Part.Word word && (word.text().contains("FRAS") || word.text().contains("FRAES"));
	}
}
