package truelead.audit.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Where the command writes. Always UTF-8, whatever the locale.
 *
 * @param out     results
 * @param err     complaints and progress
 * @param watched whether a person sees {@code err} on a screen; progress is shown only then
 */
public record Terminal(PrintStream out, PrintStream err, boolean watched) {

	/** Standard error of the process, and its standard output as an outlet that tells what was lost. */
	public static Terminal ofProcess(Outlet outlet) {
		PrintStream out = new PrintStream(outlet, false, StandardCharsets.UTF_8);
		PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
		return new Terminal(out, err, errorsGoToScreen());
	}

	/** A text of several lines on {@code out}; what programs, files and arguments have put into it moves no cursor. */
	public void say(String text) {
		out.print(Printable.lines(text));
	}

	/** One complaint: a single line on {@code err}. */
	public void complain(String line) {
		err.println("truelead: " + Printable.line(line));
		err.flush();
	}

	private static boolean errorsGoToScreen() {
		Path descriptor = Path.of("/proc/self/fd/2");
		try {
			if (Files.isSymbolicLink(descriptor)) {
				String target = Files.readSymbolicLink(descriptor).toString();
				return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
			}
		} catch (IOException | SecurityException unknown) {
			return false;
		}
		return System.console() != null;
	}
}
