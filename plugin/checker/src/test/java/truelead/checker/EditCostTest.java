package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.BiPredicate;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import truelead.checker.job.Job;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/**
 * What a digit typed into an open program costs does not grow with the program: a question that makes a set of all places, or asks all
 * operations, is found here. Counted in bytes allocated, which is the same on every machine, where a time is not.
 */
class EditCostTest {

	private static final int FEW = 1500;
	private static final int MANY = 12000;
	private static final int EDITS = 40;
	private static final int DIGITS = 80;

	/** Trees are a level or two deeper, and chunks fuller: not the eight times of a walk over all. */
	private static final double GROWN = 2.5;

	private enum Kind {
		DRILLED(EditCostTest::drilled), ROWS(EditCostTest::rows), CYCLES(EditCostTest::cycles), MILLED(EditCostTest::milled),
		THREADS(EditCostTest::threads), TAP_NEVER_TAPS(EditCostTest::tapNeverTaps, "no-thread-made"),
				DRILL_TOO_BIG(EditCostTest::drillTooBig, "drill-too-big"), DRILL_TOO_SHALLOW(EditCostTest::drillTooShallow,
						"drill-too-shallow"),
		FEED_LEFT_OVER(EditCostTest::feedLeftOver, "feed-missing"), SPINDLE_STANDS(EditCostTest::spindleStands, "spindle-not-turning"),
				CYCLE_LEFT_ON(EditCostTest::cycleLeftOn, "cycle-left-on"), HOLES_MISSING(EditCostTest::holesMissing, "hole-missing"),
		HOLE_SKIPPED(EditCostTest::holeSkipped, "hole-skipped"), COUNT_DIFFERS(EditCostTest::countDiffers, "count-differs"),
				TAP_FED_OUT(EditCostTest::tapFedOut, "tap-in-drilling-cycle"), UNIT_UNSTATED(EditCostTest::unitUnstated, "unit-unstated");

		private final IntFunction<String> program;
		/** What is found in it and stands through the edits. */
		private final List<String> stands;

		Kind(IntFunction<String> program, String... stands) {
			this.program = program;
			this.stands = List.of(stands);
		}
	}

	@ParameterizedTest
	@EnumSource
	void aDigitCostsInALongProgramWhatItCostsInAShortOne(Kind kind) {
		long few = cost(kind.program.apply(FEW));
		long many = cost(kind.program.apply(MANY));
		assertThat((double) many / few).as("%d bytes an edit with %d holes, %d with %d", few, FEW, many, MANY).isLessThan(GROWN);
	}

	/**
	 * A slip that has all of the program judged anew is a slip that stops the person who types it, and so is a rule that breaks where it
	 * sees a part of the program alone.
	 */
	@ParameterizedTest
	@EnumSource
	void noDigitHasAllJudgedAnew(Kind kind) {
		EditedProgram open = new EditedProgram();
		ProgramText text = ProgramText.of(kind.program.apply(MANY));
		long begun = allocated();
		CheckResult found = check(open, text);
		long all = allocated() - begun;
		assertThat(found.findings()).extracting(Finding::rule).containsAll(kind.stands);
		Random random = new Random(11);
		check(open, typed(text, random, EditCostTest::anyNumber));
		check(open, text);
		for (int edit = 0; edit < DIGITS; edit++) {
			ProgramText typed = typed(text, random, EditCostTest::anyNumber);
			long before = allocated();
			check(open, typed);
			long cost = allocated() - before;
			check(open, text);
			String[] lines = IntStream.range(0, text.lineCount()).filter(line -> !text.line(line).equals(typed.line(line)))
					.mapToObj(typed::line).toArray(String[]::new);
			assertThat((double) cost / all).as("%d bytes of %d for %s", cost, all, Arrays.toString(lines)).isLessThan(0.5);
		}
	}

	/** Bytes allocated by an edit and its check, as nine in ten cost at most. */
	private static long cost(String program) {
		EditedProgram open = new EditedProgram();
		ProgramText text = ProgramText.of(program);
		check(open, text);
		Random random = new Random(5);
		long[] costs = new long[EDITS];
		for (int edit = -4; edit < EDITS; edit++) {
			ProgramText typed = typed(text, random, EditCostTest::lastOfPlace);
			long before = allocated();
			check(open, typed);
			long cost = allocated() - before;
			check(open, text);
			costs[Math.max(0, edit)] = cost;
		}
		Arrays.sort(costs);
		return costs[EDITS * 9 / 10];
	}

	private static CheckResult check(EditedProgram open, ProgramText text) {
		MachineProfile machine = MachineProfile.generic();
		return open.check(new ProgramFile("A.NC", text), ProgramFolder.EMPTY, Job.EMPTY, machine, RuleSettings.DEFAULT, Budget.of(machine));
	}

	private static long allocated() {
		return ((com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean()).getCurrentThreadAllocatedBytes();
	}

	/** Another digit at one of the places that are meant. */
	private static ProgramText typed(ProgramText text, Random random, BiPredicate<String, Integer> meant) {
		while (true) {
			int line = random.nextInt(text.lineCount());
			String words = text.line(line);
			int[] digits = IntStream.range(0, words.length()).filter(at -> Character.isDigit(words.charAt(at))
					&& meant.test(words, at)).toArray();
			if (digits.length > 0) {
				int digit = digits[random.nextInt(digits.length)];
				return text.edit(text.lineStart(line) + digit, 1,
						Integer.toString((words.charAt(digit) - '0' + 1 + random.nextInt(9)) % 10));
			}
		}
	}

	/** The last digit of a line of numbers alone. */
	private static boolean lastOfPlace(String words, int digit) {
		boolean last = IntStream.range(digit + 1, words.length()).noneMatch(at -> Character.isDigit(words.charAt(at)));
		return last && words.indexOf('(') < 0 && "XGY".indexOf(words.charAt(0)) >= 0 && words.indexOf('Y') > 0;
	}

	/** The last digit of a coordinate, feed or speed. */
	private static boolean anyNumber(String words, int digit) {
		int letter = digit;
		while (letter >= 0 && !Character.isLetter(words.charAt(letter))) {
			letter--;
		}
		boolean last = digit + 1 == words.length() || "0123456789.".indexOf(words.charAt(digit + 1)) < 0 || words.charAt(digit + 1) == '.'
				&& words.startsWith(" ", digit + 2);
		return last && words.indexOf('(') < 0 && letter >= 0 && "XYZIJRFS".indexOf(words.charAt(letter)) >= 0;
	}

	/** One drill and one tap over all holes of a plate. */
	private static String drilled(int holes) {
		StringBuilder text = head();
		row(text, "T2 M6 (DRILL 5.0)", "G81 Z-18. R2. F400.", 0, holes);
		row(text, "T3 M6 (M6X1 TAP)", "G84 Z-12. R4. F500.", 0, holes);
		return text.append("M30\n").toString();
	}

	/** The same with the cycle written at each hole. */
	private static String cycles(int holes) {
		StringBuilder text = head();
		for (String cycle : List.of("T2 M6 (DRILL 5.0)\nG81 Z-18. R2. F400.", "T3 M6 (M6X1 TAP)\nG84 Z-12. R4. F500.")) {
			text.append(cycle, 0, cycle.indexOf('\n')).append("\nS500 M3\nG43 H").append(cycle.charAt(1)).append(" Z25.\n");
			for (int hole = 0; hole < holes; hole++) {
				text.append(cycle.substring(cycle.indexOf('\n') + 1)).append(" X").append(x(hole)).append(". Y").append(y(hole))
						.append(".\n");
			}
			text.append("G80\n");
		}
		return text.append("M30\n").toString();
	}

	/** Rows of twelve, each drilled and tapped for itself. */
	private static String rows(int holes) {
		StringBuilder text = head();
		for (int first = 0; first < holes; first += 12) {
			row(text, "T2 M6 (DRILL 5.0)", "G81 Z-18. R2. F400.", first, 12);
			row(text, "T3 M6 (M6X1 TAP)", "G84 Z-12. R4. F500.", first, 12);
		}
		return text.append("M30\n").toString();
	}

	/** As many threads milled as fill a program of so many drilled and tapped holes, one drill for all of them. */
	private static String milled(int holes) {
		StringBuilder text = head();
		int threads = holes / 8;
		row(text, "T2 M6 (DRILL 18.5)", "G81 Z-25. R2. F200.", 0, threads);
		mill(text, 0, threads);
		return text.append("M30\n").toString();
	}

	/** As many again, each drilled and milled for itself. */
	private static String threads(int holes) {
		StringBuilder text = head();
		for (int thread = 0; thread < holes / 8; thread++) {
			row(text, "T2 M6 (DRILL 18.5)", "G81 Z-25. R2. F200.", thread, 1);
			mill(text, thread, 1);
		}
		return text.append("M30\n").toString();
	}

	/** Rows, and a tap among them that goes to its hole and does not tap: what is found of its stay stands through all edits. */
	private static String tapNeverTaps(int holes) {
		return rows(holes, "T9 M6 (M8 TAP)\nS500 M3\nG43 H9 Z25.\nG0 X10. Y10.\nZ2.\n");
	}

	/** Rows, and behind them three holes for M8 with the drill of M10. */
	private static String drillTooBig(int holes) {
		return rows(holes, three("T8 M6 (DRILL 8.5)\nS2000 M3", "G81 Z-20. R2. F300.", 0, 15, 30) + three("T9 M6 (M8X1.25 TAP)\nS400 M3",
				"G84 Z-14. R4. F500.", 0, 15, 30));
	}

	private static String drillTooShallow(int holes) {
		return rows(holes, three("T8 M6 (DRILL 6.8)\nS2000 M3", "G81 Z-12. R2. F300.", 0, 15, 30) + three("T9 M6 (M8X1.25 TAP)\nS400 M3",
				"G84 Z-14. R4. F500.", 0, 15, 30));
	}

	/** The tap's F is left out, that of the drill is in force. */
	private static String feedLeftOver(int holes) {
		return rows(holes, three("T8 M6 (DRILL 6.8)\nS2000 M3", "G81 Z-20. R2. F300.", 0, 15, 30) + three("T9 M6 (M8X1.25 TAP)\nS400 M3",
				"G84 Z-14. R4.", 0, 15, 30));
	}

	private static String spindleStands(int holes) {
		return rows(holes, three("T8 M6 (DRILL 6.8)\nS2000 M3", "G81 Z-20. R2. F300.", 0, 15, 30) + three("T9 M6 (M8X1.25 TAP)\nM5 S400",
				"G84 Z-14. R4. F500.", 0, 15, 30));
	}

	private static String cycleLeftOn(int holes) {
		return rows(holes, three("T8 M6 (DRILL 6.8)\nS2000 M3", "G81 Z-20. R2. F300.", 0, 15, 30) + three("T9 M6 (M8X1.25 TAP)\nS400 M3",
				"G84 Z-14. R4. F500.", 0, 15, 30).replace("G80\n", ""));
	}

	/** Three threads where nothing is drilled, of the size that all others have too. */
	private static String holesMissing(int holes) {
		return rows(holes, three("T3 M6 (M6X1 TAP)\nS500 M3", "G84 Z-12. R4. F500.", 0, 15, 30));
	}

	/** Three holes are drilled, and two of them threaded. */
	private static String holeSkipped(int holes) {
		return rows(holes, three("T2 M6 (DRILL 5.0)\nS2000 M3", "G81 Z-18. R2. F400.", 0, 15, 30) + three("T3 M6 (M6X1 TAP)\nS500 M3",
				"G84 Z-12. R4. F500.", 0, 15));
	}

	/** The title counts the threads of another size, which are three. */
	private static String countDiffers(int holes) {
		return rows(holes, three("T8 M6 (DRILL 6.8)\nS2000 M3", "G81 Z-20. R2. F300.", 0, 15, 30) + three("T9 M6 (M8X1.25 TAP)\nS400 M3",
				"G84 Z-14. R4. F500.", 0, 15, 30)).replace("(COVER)", "(COVER 4X M8)");
	}

	/** A tap in a boring cycle that feeds out: for a self-reversing head where no other tap has a tapping cycle. */
	private static String tapFedOut(int holes) {
		return rows(holes, three("T8 M6 (DRILL 6.8)\nS2000 M3", "G81 Z-20. R2. F300.", 0, 15, 30) + three("T9 M6 (M8X1.25 TAP)\nS400 M3",
				"G85 Z-14. R4. F490.", 0, 15, 30));
	}

	private static String unitUnstated(int holes) {
		return rows(holes).replace("G21 ", "");
	}

	/** Rows, and what comes behind them. */
	private static String rows(int holes, String behind) {
		return rows(holes).replace("M30\n", behind + "M30\n");
	}

	/** A cycle at some places aside of the rows. */
	private static String three(String tool, String cycle, int... places) {
		StringBuilder text = new StringBuilder(tool).append("\nG43 H").append(tool.charAt(1)).append(" Z25.\n").append(cycle)
				.append(" L0\n");
		IntStream.of(places).forEach(x -> text.append("X").append(x).append(". Y-90.\n"));
		return text.append("G80\n").toString();
	}

	private static void mill(StringBuilder text, int first, int threads) {
		text.append("T4 M6 (THREAD MILL 12, M20X1.5)\nS2500 M3\nG43 H4 Z25.\n");
		for (int thread = first; thread < first + threads; thread++) {
			int x = x(thread);
			int y = y(thread);
			text.append(String.format(Locale.ROOT, "G0 X%d. Y%d.\nG1 Z-12.75 F800.\nG41 D4 X%d.\nG3 X%d. Y%d. Z-12. I1.5 J0. F150.\n", x, y,
					x + 1, x + 4, y));
			for (int turn = 1; turn < 9; turn++) {
				text.append(String.format(Locale.ROOT, "G3 X%d. Y%d. Z%.3f I-4. J0.\n", x + 4, y, -12 + 1.5 * turn));
			}
			text.append(String.format(Locale.ROOT, "G3 X%d. Z0.75 I-1.5 J0.\nG40 G1 X%d.\nG0 Z25.\n", x + 1, x));
		}
	}

	private static StringBuilder head() {
		return new StringBuilder("O1 (COVER)\nG21 G90 G17 G40 G49 G80 G54\n");
	}

	private static void row(StringBuilder text, String tool, String cycle, int first, int holes) {
		text.append(tool).append("\nS500 M3\nG43 H").append(tool.charAt(1)).append(" Z25.\n").append(cycle).append(" L0\n");
		for (int hole = first; hole < first + holes; hole++) {
			text.append("X").append(x(hole)).append(". Y").append(y(hole)).append(".\n");
		}
		text.append("G80\n");
	}

	private static int x(int hole) {
		return hole % 60 * 30;
	}

	private static int y(int hole) {
		return hole / 60 * 30;
	}
}
