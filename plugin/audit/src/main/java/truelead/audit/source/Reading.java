package truelead.audit.source;

import truelead.checker.program.ProgramFile;

/** What came of reading a file: a program, or the reason why it is none. */
public sealed interface Reading {

	/** A program. */
	record Program(ProgramFile file) implements Reading {
	}

	/** No program; the reason reads after the file's name and a colon. */
	record Refused(String reason) implements Reading {
	}
}
