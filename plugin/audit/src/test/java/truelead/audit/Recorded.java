package truelead.audit;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import truelead.audit.terminal.Terminal;

/** The command run inside the test: its status and what it wrote. */
public record Recorded(int status, String out, String err) {

	/** Runs the command as a person would type it, nobody watching. */
	public static Recorded run(Object... arguments) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		ByteArrayOutputStream err = new ByteArrayOutputStream();
		Terminal terminal = terminal(out, err);
		int status = Main.run(List.of(arguments).stream().map(Object::toString).toList(), terminal);
		terminal.out().flush();
		return new Recorded(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
	}

	/** A terminal that keeps what is written. */
	public static Terminal terminal(ByteArrayOutputStream out, ByteArrayOutputStream err) {
		return new Terminal(new PrintStream(out, true, StandardCharsets.UTF_8), new PrintStream(err, true, StandardCharsets.UTF_8), false);
	}
}
