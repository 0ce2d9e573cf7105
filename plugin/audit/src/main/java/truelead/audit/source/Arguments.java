package truelead.audit.source;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The arguments as they were typed. In a locale without UTF-8 Java gives every other character of a file name as a question mark; where the
 * system keeps the bytes of the command line ({@code /proc}), they are read again as UTF-8.
 */
public final class Arguments {

	private static final Path COMMAND_LINE = Path.of("/proc/self/cmdline");

	private Arguments() {
	}

	/** The same arguments, those that lost characters restored where that is possible. */
	public static List<String> asTyped(List<String> given) {
		boolean whole = true;
		for (String argument : given) {
			whole &= whole(argument);
		}
		if (whole || !Files.isReadable(COMMAND_LINE)) {
			return given;
		}
		try {
			return restore(given, Files.readAllBytes(COMMAND_LINE));
		} catch (IOException unreadable) {
			return given;
		}
	}

	/** {@code commandLine} holds program and arguments, each ended by a zero byte. */
	static List<String> restore(List<String> given, byte[] commandLine) {
		List<String> all = new ArrayList<>();
		int start = 0;
		for (int i = 0; i < commandLine.length; i++) {
			if (commandLine[i] == 0) {
				all.add(new String(commandLine, start, i - start, StandardCharsets.UTF_8));
				start = i + 1;
			}
		}
		if (all.size() < given.size()) {
			return given;
		}
		List<String> last = List.copyOf(all.subList(all.size() - given.size(), all.size()));
		for (int i = 0; i < given.size(); i++) {
			if (whole(given.get(i)) && !given.get(i).equals(last.get(i))) {
				return given;
			}
		}
		return last;
	}

	/** Whether no character of it can have been lost. */
	static boolean whole(String argument) {
		for (int i = 0; i < argument.length(); i++) {
			if (argument.charAt(i) >= 0x80 || argument.charAt(i) == '?') {
				return false;
			}
		}
		return true;
	}
}
