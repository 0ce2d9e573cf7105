package truelead.audit.source;

import truelead.checker.machine.ProgramFile;

/** What came of reading a file: a program, or the reason why it is none. */
public sealed interface Reading {

	/**
	 * A program.
	 *
	 * @param sha256 hash of its bytes, lower-case hexadecimal
	 */
	record Program(ProgramFile file, String sha256) implements Reading {
	}

	/** No program; the reason reads after the file's name and a colon. */
	record Refused(String reason) implements Reading {
	}
}
