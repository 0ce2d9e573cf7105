package truelead.checker.machine;

import java.util.Optional;
import java.util.Set;

/** Statements of richer control languages: those that move nothing are passed over, the others are reported once a program. */
final class RicherStatements {

	private static final Set<String> SILENT = Set.of("MSG", "DEF", "PROC", "STOPRE", "SUPA", "CFTCP", "CFIN", "CFC", "SOFT", "BRISK", "FFWON", "FFWOF",
			"WORKPIECE", "G4", "EXTERN", "RET");

	private RicherStatements() {
	}

	static void statement(Flow flow, String name) {
		if (!SILENT.contains(name)) {
			flow.out().remark(flow.block(), name, name + " is a statement that is not followed; if it moves an axis or changes spindle or feed, what follows may differ",
					Optional.empty());
		}
	}
}
