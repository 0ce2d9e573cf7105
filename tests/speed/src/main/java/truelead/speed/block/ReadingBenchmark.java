package truelead.speed.block;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.Token;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import truelead.checker.CheckResult;
import truelead.checker.Checker;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.GCodeLexer;
import truelead.grammar.GCodeParser;
import truelead.grammar.ProgramText;

/**
 * Reading and checking a whole text against three baselines: counting newlines, the generated lexer alone, the generated parser block by
 * block.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx3g")
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
public class ReadingBenchmark {

	/** Number of blocks. */
	@Param({"10000", "100000", "1000000"})
	public int blocks;

	/** Kind of program. */
	@Param({"surfacing", "axes", "pockets", "named", "holes", "cycles", "mills", "mixed", "turning"})
	public String kind;

	private String text;
	private byte[] bytes;

	/** Makes the program. */
	@Setup
	public void program() {
		text = Programs.of(kind, blocks, 42);
		bytes = text.getBytes(StandardCharsets.UTF_8);
	}

	/** Baseline: one look at every byte. */
	@Benchmark
	public int baselineNewlines() {
		int count = 0;
		for (byte b : bytes) {
			if (b == '\n') {
				count++;
			}
		}
		return count;
	}

	/** Baseline: the generated lexer alone over the whole text; cold, it takes half as much again. */
	@Benchmark
	@Warmup(iterations = 4, time = 2)
	@Measurement(iterations = 5, time = 2)
	public int baselineLexer() {
		GCodeLexer lexer = new GCodeLexer(CharStreams.fromString(text));
		int count = 0;
		while (lexer.nextToken().getType() != Token.EOF) {
			count++;
		}
		return count;
	}

	/** Baseline: the generated parser, block by block. */
	@Benchmark
	public int baselineParser() {
		int count = 0;
		for (int start = 0, end; start < text.length(); start = end + 1) {
			end = text.indexOf('\n', start);
			GCodeParser parser = new GCodeParser(new CommonTokenStream(new GCodeLexer(CharStreams.fromString(text.substring(start, end)))));
			count += parser.block().getChildCount();
		}
		return count;
	}

	/** Ours: from bytes to the words of all blocks. */
	@Benchmark
	public int readBlocks() {
		ProgramText program = ProgramText.read(bytes);
		int count = 0;
		for (int line = 0; line < program.lineCount(); line++) {
			count += program.block(line).elements().size();
		}
		return count;
	}

	/**
	 * Ours: from bytes to findings; far more of our code than of any other part has to be compiled first, which takes half a minute on two
	 * cores.
	 */
	@Benchmark
	@Warmup(iterations = 12, time = 3)
	@Measurement(iterations = 5, time = 2)
	public CheckResult check() {
		return Checker.check(new ProgramFile("A.NC", ProgramText.read(bytes)), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(),
				RuleSettings.DEFAULT);
	}
}
