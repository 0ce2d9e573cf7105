package truelead.checker.program;

import truelead.grammar.ProgramText;

/**
 * A program and the name of its file, without folders; the name stands in messages and in the ranges of findings. It stays the same file
 * while its text is edited: files are equal by their names.
 */
public record ProgramFile(String name, ProgramText text) {

	@Override
	public boolean equals(Object other) {
		return other instanceof ProgramFile file && name.equals(file.name);
	}

	@Override
	public int hashCode() {
		return name.hashCode();
	}

	@Override
	public String toString() {
		return name;
	}
}
