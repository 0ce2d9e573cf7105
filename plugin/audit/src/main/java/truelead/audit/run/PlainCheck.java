package truelead.audit.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.audit.terminal.Terminal;

/**
 * The plainest calls of the command, {@code check PATH...} with {@code --report} and {@code --fail-on} at most. Setting up the reader of
 * all options takes a third of the time that a small program takes from a cold start, so these calls go round it; anything else is left to
 * it.
 */
public final class PlainCheck {

	private PlainCheck() {
	}

	/** The command, ready to be called; empty where the arguments hold anything that is not plain. */
	public static Optional<CheckCommand> of(List<String> arguments, Terminal terminal) {
		if (arguments.size() < 2 || !arguments.get(0).equals("check")) {
			return Optional.empty();
		}
		List<String> paths = new ArrayList<>();
		List<String> reports = new ArrayList<>();
		Optional<String> failOn = Optional.empty();
		for (int i = 1; i < arguments.size(); i++) {
			String argument = arguments.get(i);
			if (!argument.startsWith("-") || argument.length() == 1) {
				paths.add(argument);
				continue;
			}
			boolean report = argument.equals("--report");
			boolean value = i + 1 < arguments.size() && !arguments.get(i + 1).startsWith("-");
			if (!value || !report && (!argument.equals("--fail-on") || failOn.isPresent())) {
				return Optional.empty();
			}
			i++;
			if (report) {
				reports.add(arguments.get(i));
			} else {
				failOn = Optional.of(arguments.get(i));
			}
		}
		return paths.isEmpty() || paths.contains("") ? Optional.empty()
				: Optional.of(new CheckCommand(terminal, paths, reports, failOn.orElse(CheckCommand.USUAL_LIMIT)));
	}
}
