package truelead.checker.machine;

import truelead.grammar.ProgramText;

/** A program and the name of its file, without folders; the name stands in messages and in the ranges of findings. */
public record ProgramFile(String name, ProgramText text) {

	@Override
	public String toString() {
		return name;
	}
}
