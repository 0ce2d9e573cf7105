package truelead.checker.job;

import truelead.checker.thread.ToolKind;

/** How many holes are made between two gaugings while all goes well (common practice, no source); oftener as the tool wears. */
public final class GaugingInterval {

	private static final int CUT = 25;
	private static final int FORMED = 50;

	private GaugingInterval() {
	}

	/** Holes between gaugings: 50 for a forming tap, 25 for what cuts, tap or thread mill. */
	public static int of(boolean forms) {
		return forms ? FORMED : CUT;
	}

	/** The same for a tool; one that nobody calls a forming tap cuts. */
	public static int of(ToolFacts tool) {
		return of(tool.kind().filter(kind -> kind.value() == ToolKind.FORM_TAP).isPresent());
	}
}
