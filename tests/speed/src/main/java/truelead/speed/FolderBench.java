package truelead.speed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.Token;
import truelead.audit.Main;
import truelead.audit.terminal.Terminal;
import truelead.grammar.GCodeLexer;
import truelead.grammar.ProgramText;

/** Checks a generated folder, and reads and lexes the same folder, in turns in one process; prints the medians and their ratio. */
public final class FolderBench {

	private static final int ROUNDS = 5;

	private FolderBench() {
	}

	/** Folder to make, number of programs, megabytes. */
	public static void main(String[] arguments) throws IOException {
		Path folder = Path.of(arguments[0]);
		ProgramMaker.make(folder, Integer.parseInt(arguments[1]), Long.parseLong(arguments[2]) * 1_000_000);
		List<Path> files;
		try (Stream<Path> all = Files.list(folder)) {
			files = all.sorted().toList();
		}
		double[] lexed = new double[ROUNDS];
		double[] checked = new double[ROUNDS];
		for (int round = 0; round < ROUNDS; round++) {
			lexed[round] = seconds(() -> lex(files));
			checked[round] = seconds(() -> check(folder));
		}
		java.util.Arrays.sort(lexed);
		java.util.Arrays.sort(checked);
		System.out.printf(Locale.ROOT, "folder: %d programs, read and lexed %.2f s, checked %.2f s, ratio %.2f (median of %d, %d cores)%n",
				files.size(), lexed[ROUNDS / 2], checked[ROUNDS / 2], checked[ROUNDS / 2] / lexed[ROUNDS / 2], ROUNDS,
				ForkJoinPool.getCommonPoolParallelism() + 1);
	}

	private static double seconds(Runnable work) {
		long start = System.nanoTime();
		work.run();
		return (System.nanoTime() - start) / 1e9;
	}

	private static void check(Path folder) {
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		Terminal terminal = new Terminal(new PrintStream(out, false, StandardCharsets.UTF_8),
				new PrintStream(out, false, StandardCharsets.UTF_8), false);
		int status = Main.run(List.of("check", folder.toString()), terminal);
		if (status == 2) {
			throw new IllegalStateException(out.toString(StandardCharsets.UTF_8));
		}
	}

	private static void lex(List<Path> files) {
		long tokens = files.parallelStream().mapToLong(FolderBench::lex).sum();
		if (tokens == 0) {
			throw new IllegalStateException("no tokens");
		}
	}

	private static long lex(Path file) {
		try {
			ProgramText text = ProgramText.read(Files.readAllBytes(file));
			long tokens = 0;
			GCodeLexer lexer = new GCodeLexer(CharStreams.fromString(""));
			lexer.removeErrorListeners();
			for (int line = 0; line < text.lineCount(); line++) {
				lexer.setInputStream(CharStreams.fromString(text.line(line)));
				while (lexer.nextToken().getType() != Token.EOF) {
					tokens++;
				}
			}
			return tokens;
		} catch (IOException unreadable) {
			throw new IllegalStateException(unreadable);
		}
	}
}
