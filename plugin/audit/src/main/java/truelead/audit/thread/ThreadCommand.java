package truelead.audit.thread;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import truelead.audit.report.Spared;
import truelead.audit.report.TextRequest;
import truelead.audit.terminal.ExitStatus;
import truelead.audit.terminal.Terminal;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.NamedFamily;
import truelead.checker.thread.InsertThread;

/** {@code truelead thread}: the limits of threads, their drills, pins, leads and holes, at the bench. */
@Command(name = "thread", description =
		"Shows the limits of size of threads, the drills for cutting and forming, pins, tap leads and the shortest blind hole, each with "
		+ "its source.", footer = {"", "Examples:", "  thread M8", "  thread M20x1.5-6H '1/4-20 UNC-2B' 'G 1/2'",
				"  thread --report json '#10-32'", "", "Exit status: 0 all callouts read; 2 one was not."})
public final class ThreadCommand implements Callable<Integer> {
	private static final int SUGGESTIONS = 3;
	private static final int LONGEST_QUOTE = 60;

	@Parameters(arity = "1..*", paramLabel = "CALLOUT",
			description = "A thread as drawings write it: M8, M8x1-6H, M20x4P2, #10-32, 1-1/4-7 UNC-2B, 1/4-18 NPT, G 1/2. Without a class "
			+ "all classes are shown.")
	private List<String> callouts;

	@Option(names = "--report", paramLabel = "FORMAT[:FILE]",
			description = "text or json. Without a file it goes to standard output. Default: text.")
	private String report = "text";

	@Option(names = "--depth", paramLabel = "LENGTH",
			description = "Full threads wanted in the blind hole, in the thread's own unit; 1.5 diameters when not given.")
	private Optional<Double> depth = Optional.empty();

	private final Terminal terminal;

	/** The command, writing to a terminal. */
	public ThreadCommand(Terminal terminal) {
		this.terminal = terminal;
	}

	private static String shortened(String text) {
		return text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "...";
	}

	private String text(List<ThreadSheet> sheets) {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		PrintStream out = new PrintStream(bytes, false, StandardCharsets.UTF_8);
		sheets.forEach(sheet -> new ThreadText(out, sheet, depth).print());
		out.flush();
		return bytes.toString(StandardCharsets.UTF_8);
	}

	@Override
	public Integer call() {
		if (depth.isPresent() && !(depth.get() > 0 && depth.get() < 10_000)) {
			terminal.complain("--depth " + depth.get() + " is no depth of a hole");
			return ExitStatus.TROUBLE;
		}
		TextRequest asked = TextRequest.of(report, "text", "json");
		List<Callout> read = new ArrayList<>();
		for (String text : callouts) {
			Optional<Callout> callout = CalloutReader.readExactly(text);
			if (callout.filter(Callout::wireInsert).isPresent()) {
				terminal.complain("\"" + shortened(text) + "\" " + InsertThread.instead(callout.get().spec()));
				continue;
			}
			callout.ifPresentOrElse(read::add, () -> terminal.complain("\"" + shortened(text) + "\" "
					+ NamedFamily.refusal(text, SUGGESTIONS)));
		}
		List<ThreadSheet> sheets = read.stream().map(ThreadSheet::of).toList();
		asked.write(asked.format().equals("json") ? ThreadJson.write(sheets) : text(sheets), terminal, new Spared(List.of()));
		return read.size() == callouts.size() ? ExitStatus.CLEAN : ExitStatus.TROUBLE;
	}
}
