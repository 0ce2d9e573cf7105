package truelead.audit;

import picocli.CommandLine;
import truelead.audit.compare.CompareCommand;
import truelead.audit.plan.PlanCommand;
import truelead.audit.run.CheckCommand;
import truelead.audit.thread.ThreadCommand;

/** The list of subcommands; a new one is one line here. */
final class Subcommands {

	private Subcommands() {
	}

	static void addTo(CommandLine line, Terminal terminal) {
		line.addSubcommand(new CheckCommand(terminal));
		line.addSubcommand(new CompareCommand(terminal));
		line.addSubcommand(new ThreadCommand(terminal));
		line.addSubcommand(new PlanCommand(terminal));
	}
}
