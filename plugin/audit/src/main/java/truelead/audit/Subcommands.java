package truelead.audit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import truelead.audit.compare.CompareCommand;
import truelead.audit.lesson.LessonCommand;
import truelead.audit.plan.PlanCommand;
import truelead.audit.run.CheckCommand;
import truelead.audit.terminal.Terminal;
import truelead.audit.thread.ThreadCommand;

/**
 * The subcommands by name; a new one is one line here. Only the one that was typed is made, since reading a command's options takes a
 * while.
 */
final class Subcommands {

	private static final Map<String, Function<Terminal, Object>> ALL = new LinkedHashMap<>();

	static {
		ALL.put("check", CheckCommand::new);
		ALL.put("compare", CompareCommand::new);
		ALL.put("thread", ThreadCommand::new);
		ALL.put("plan", PlanCommand::new);
		ALL.put("lesson", LessonCommand::new);
	}

	private Subcommands() {
	}

	/** Adds the subcommand that the first argument names, or all where it names none. */
	static void addTo(CommandLine line, Terminal terminal, List<String> arguments) {
		if (!arguments.isEmpty() && ALL.containsKey(arguments.get(0))) {
			line.addSubcommand(ALL.get(arguments.get(0)).apply(terminal));
		} else {
			ALL.values().forEach(command -> line.addSubcommand(command.apply(terminal)));
		}
	}
}
