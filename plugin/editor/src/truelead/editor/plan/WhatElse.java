package truelead.editor.plan;

import java.util.Optional;
import truelead.editor.check.CheckedText;

/** Compares the ways to make the thread at the caret with the one that the program takes. */
public final class WhatElse extends PlanCommand {

	@Override
	Optional<Question> question(CheckedText checked, int line) {
		return Question.whatElse(checked, line);
	}

	@Override
	String nothing() {
		return "no thread is tapped or milled here, or nothing in the program names it: Plan a Thread asks for it";
	}
}
