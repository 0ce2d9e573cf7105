package truelead.speed.block;

import java.util.Random;
import java.util.concurrent.TimeUnit;
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
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.ProgramFile;
import truelead.checker.machine.ProgramFolder;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/** One coordinate edited at a random block of an open program: the text alone, and until the findings are there. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx3g")
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
public class EditBenchmark {

	/** Number of blocks. */
	@Param({"10000", "1000000"})
	public int blocks;

	/** Kind of program. */
	@Param({"surfacing"})
	public String kind;

	private final Random random = new Random(7);
	private ProgramText program;

	/** Makes the program and checks it once, as an open editor has. */
	@Setup
	public void open() {
		program = ProgramText.of(Programs.of(kind, blocks, 42));
		check(program);
	}

	/** The last digit of a random block typed anew: of a coordinate, a feed, a speed or a word of a cycle. */
	@Benchmark
	public ProgramText editText() {
		int line = random.nextInt(program.lineCount());
		String text = program.line(line);
		int digit = text.length() - 1;
		while (digit >= 0 && !Character.isDigit(text.charAt(digit))) {
			digit--;
		}
		if (digit >= 0 && "XYZIJRFS".indexOf(text.charAt(0)) >= 0) {
			program = program.edit(program.lineStart(line) + digit, 1, Integer.toString(1 + random.nextInt(9)));
			return program;
		}
		return editText();
	}

	/** The same, until the findings are there. */
	@Benchmark
	public CheckResult editAndCheck() {
		return check(editText());
	}

	private static CheckResult check(ProgramText text) {
		return Checker.check(new ProgramFile("A.NC", text), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(), RuleSettings.DEFAULT);
	}
}
