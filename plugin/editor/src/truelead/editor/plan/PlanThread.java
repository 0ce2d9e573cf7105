package truelead.editor.plan;

import java.util.Optional;
import truelead.editor.check.CheckedText;

/** Plans a thread, beginning with what the program says at the caret. */
public final class PlanThread extends PlanCommand {

	@Override
	Optional<Question> question(CheckedText checked, int line) {
		return Optional.of(Question.at(checked, line));
	}

	@Override
	String nothing() {
		return "";
	}
}
