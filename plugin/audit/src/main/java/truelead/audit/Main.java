package truelead.audit;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import truelead.audit.run.CheckCommand;
import truelead.audit.run.PlainCheck;
import truelead.audit.source.Arguments;
import truelead.audit.terminal.Complaint;
import truelead.audit.terminal.ExitStatus;
import truelead.audit.terminal.Outlet;
import truelead.audit.terminal.Printable;
import truelead.audit.terminal.Terminal;
import truelead.audit.terminal.WrongUse;

/** The command {@code truelead}: checks the threads of CNC programs and writes reports. */
@Command(name = "truelead", version = "Truelead 0.1.0",
		description = "Checks the threads in CNC programs: tapping, thread milling, and the holes they need.",
		footer = {"", "Exit status: 0 nothing at or above the limit; 1 findings; 2 wrong use, or a file could not be read or written; "
				+ "3 something that makes a thread could not be followed, and nothing worse."})
public final class Main {

	@Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this text.", scope = CommandLine.ScopeType.INHERIT)
	private boolean help;

	@Option(names = "--version", versionHelp = true, description = "Show the version.")
	private boolean version;

	private final Terminal terminal;

	private Main(Terminal terminal) {
		this.terminal = terminal;
	}

	/** Runs the command and ends the process with its status. */
	public static void main(String[] arguments) {
		Outlet outlet = new Outlet(new FileOutputStream(FileDescriptor.out));
		Terminal terminal = Terminal.ofProcess(outlet);
		int status = run(Arguments.asTyped(List.of(arguments)), terminal);
		terminal.out().flush();
		terminal.err().flush();
		if (status != ExitStatus.TROUBLE && terminal.out().checkError()) {
			status = ExitStatus.TROUBLE;
			outlet.lost().ifPresent(why -> terminal.complain("standard output cannot be written: " + why));
		}
		System.exit(status);
	}

	/** Runs the command on a terminal of the caller's; gives the exit status and never throws. */
	public static int run(List<String> arguments, Terminal terminal) {
		PrintWriter out = new PrintWriter(terminal.out(), true);
		PrintWriter err = new PrintWriter(terminal.err(), true);
		try {
			Optional<CheckCommand> plain = PlainCheck.of(arguments, terminal);
			if (plain.isPresent()) {
				return plain.get().call();
			}
			CommandLine line = new CommandLine(new Main(terminal));
			Subcommands.addTo(line, terminal, arguments);
			line.setOut(out).setErr(err).setExpandAtFiles(false).setCaseInsensitiveEnumValuesAllowed(true).setUsageHelpWidth(100);
			line.setParameterExceptionHandler((fault, given) -> wrongUse(fault, terminal));
			line.setExecutionExceptionHandler((fault, command, result) -> failed(fault, terminal));
			if (!arguments.isEmpty() && !arguments.get(0).startsWith("-") && !line.getSubcommands().containsKey(arguments.get(0))) {
				terminal.complain("no command \"" + arguments.get(0) + "\"; there are "
						+ String.join(", ", line.getSubcommands().keySet()));
				return ExitStatus.TROUBLE;
			}
			if (arguments.isEmpty()) {
				line.usage(err);
				return ExitStatus.TROUBLE;
			}
			return line.execute(arguments.toArray(String[]::new));
		} catch (Throwable fault) {
			return failed(fault, terminal);
		} finally {
			out.flush();
			err.flush();
		}
	}

	private static int wrongUse(ParameterException fault, Terminal terminal) {
		terminal.complain(WrongUse.sentence(fault));
		terminal.complain("see: " + fault.getCommandLine().getCommandSpec().qualifiedName() + " --help");
		return ExitStatus.TROUBLE;
	}

	private static int failed(Throwable fault, Terminal terminal) {
		if (fault instanceof Complaint) {
			terminal.complain(fault.getMessage());
		} else if (fault instanceof OutOfMemoryError) {
			terminal.complain("out of memory; give Java more of it: java -Xmx4g -jar truelead.jar ...");
		} else {
			terminal.complain("a fault of Truelead's own, please report it: " + Printable.root(fault));
		}
		return ExitStatus.TROUBLE;
	}
}
