package truelead.speed.block;

import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
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
import truelead.checker.EditedProgram;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
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
	private final EditedProgram open = new EditedProgram();
	private ProgramText program;
	private Optional<Typed> before = Optional.empty();

	/** What stood where a digit was typed. */
	private record Typed(int offset, String digit) {
	}

	/** Makes the program and checks it once, as an open editor has. */
	@Setup
	public void open() {
		program = ProgramText.of(Programs.of(kind, blocks, 42));
		check(program);
	}

	/**
	 * The last digit of a word typed anew, a coordinate, a feed, a speed or a level of a cycle in a random block; at every second edit the
	 * last one is taken back.
	 */
	@Benchmark
	public ProgramText editText() {
		if (before.isEmpty()) {
			int digit = digit();
			before =
					Optional.of(new Typed(digit,
							program.line(program.lineOf(digit)).substring(digit - program.lineStart(program.lineOf(digit)))
							.substring(0, 1)));
			program = program.edit(digit, 1, Integer.toString(1 + random.nextInt(9)));
		} else {
			program = program.edit(before.get().offset(), 1, before.get().digit());
			before = Optional.empty();
		}
		return program;
	}

	/** The offset of the last digit of a word. */
	private int digit() {
		while (true) {
			int line = random.nextInt(program.lineCount());
			String text = program.line(line);
			int[] digits = IntStream.range(0, text.indexOf('(') < 0 ? text.length() : 0)
					.filter(at -> "XYZIJRFS".indexOf(text.charAt(at)) >= 0).map(at -> lastDigit(text, at + 1))
					.filter(at -> at >= 0).toArray();
			if (digits.length > 0) {
				return program.lineStart(line) + digits[random.nextInt(digits.length)];
			}
		}
	}

	/** The last digit of a number; -1 where none begins there. */
	private static int lastDigit(String text, int from) {
		int last = -1;
		for (int at = from; at < text.length() && "-.0123456789".indexOf(text.charAt(at)) >= 0; at++) {
			last = Character.isDigit(text.charAt(at)) ? at : last;
		}
		return last;
	}

	/** The same, until the findings are there; a small program is open long before its code is compiled. */
	@Benchmark
	@Warmup(iterations = 5, time = 4)
	public CheckResult editAndCheck() {
		return check(editText());
	}

	private CheckResult check(ProgramText text) {
		MachineProfile machine = MachineProfile.generic();
		return open.check(new ProgramFile("A.NC", text), ProgramFolder.EMPTY, Job.EMPTY, machine, RuleSettings.DEFAULT, Budget.of(machine));
	}
}
