package truelead.checker.rule.tapping;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.job.ToolFacts;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Edit;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Fix;
import truelead.checker.tool.ToolUse;

/**
 * The tool that a length offset belongs to, where another one is in the spindle. One of the two numbers is the slip, and what else is in
 * the program tells which: an H that was copied is that of a tool that comes too, a tool that was mistyped is missing elsewhere.
 *
 * @param number   of the tool that the offset is for
 * @param likelier what is the slip more likely
 * @param lost     whether the tool ran with its own offset before: its change to the other one is left out
 */
record MeantTool(int number, Culprit likelier, boolean lost) {

	/** A T word so many lines above its change is that change's, and none before (a choice of ours). */
	private static final int NEAR = 2;

	/** Which number is wrong. */
	enum Culprit { TOOL, OFFSET, EITHER }

	/**
	 * Which of the two is the slip.
	 *
	 * @param number of the tool that the offset in force is for
	 * @param called the numbers of all tools of the program
	 * @param own    the numbers of those that run with their own offset somewhere
	 * @param listed whether all other tools are in the program's tool list
	 */
	static MeantTool of(ToolUse tool, int number, Set<Integer> called, Set<Integer> own, boolean listed) {
		boolean lost = tool.summary().lengthOffsets().size() > 1 && tool.summary().lengthOffsets().get(0).known()
				&& Math.round(tool.summary().lengthOffsets().get(0).value()) == tool.number();
		boolean elsewhere = own.contains(tool.number());
		if (called.contains(number)) {
			return new MeantTool(number, elsewhere ? Culprit.EITHER : Culprit.OFFSET, lost);
		}
		boolean next = isNext(number, tool, called, elsewhere);
		boolean ownIsNext = isNext(tool.number(), tool, called, elsewhere);
		Culprit likelier;
		if (number <= 0) {
			likelier = Culprit.OFFSET;
		} else if (lost || elsewhere && next || listed && !listed(tool)) {
			likelier = Culprit.TOOL;
		} else if (elsewhere) {
			likelier = Culprit.EITHER;
		} else if (listed(tool)) {
			likelier = Culprit.OFFSET;
		} else {
			likelier = next == ownIsNext ? Culprit.EITHER : next ? Culprit.TOOL : Culprit.OFFSET;
		}
		return new MeantTool(number, likelier, lost);
	}

	/** Whether tools of the program are numbered up to a number, or on from it. */
	private static boolean isNext(int number, ToolUse tool, Set<Integer> called, boolean elsewhere) {
		return Stream.of(number - 1, number + 1).anyMatch(beside -> (elsewhere || beside != tool.number()) && called.contains(beside));
	}

	/** The tool of the offset that a tap runs with, where that is another one's and is said since its change; empty where it is its own. */
	static Optional<MeantTool> of(ToolUse tool) {
		List<Setting> offsets = tool.summary().lengthOffsets();
		return offsets.stream().filter(h -> h.known() && h.value() > 0 && tool.number() > 0 && h.value() != tool.number())
				.filter(h -> h.word().filter(word -> tool.change().filter(word.block()::above).isPresent()).isEmpty()).findFirst()
				.map(h -> new MeantTool((int) Math.round(h.value()), Culprit.TOOL, offsets.stream()
						.anyMatch(own -> own.value() == tool.number())));
	}

	/** Whether the program's list or a tool list file names a tool. */
	static boolean listed(ToolUse tool) {
		ToolFacts facts = tool.facts();
		return Stream.of(facts.kind(), facts.diameter(), facts.thread()).flatMap(Optional::stream).map(Fact::source)
				.anyMatch(source -> source == FactSource.TOOL_LIST || source == FactSource.TOOL_FILE);
	}

	/** What to type: {@code T5}, or {@code a change to T5 before it}. */
	String said() {
		return lost ? "a change to T" + number + " before it" : "T" + number;
	}

	/**
	 * The tool's number in place of the one that is called; empty where its change is left out, or the number does not stand there, as
	 * where the T word of the change before is still in force.
	 */
	Optional<Fix> fix(ToolUse tool) {
		return tool.tool().word().filter(word -> !lost && word.address() == 'T' && word.literal() && tool.change().filter(change ->
				word.block().above(change) || word.block().sameBlock(change)).filter(change -> change.line() - word.block().line() <= NEAR
						&& change.line() >= word.block().line()).isPresent()).map(word -> fix(word,
				pocket(word, number, -1), "see that T" + number + " is the tool that is meant here"));
	}

	/** A change of a T word to another number, or a tool and its offset. */
	static Fix fix(WordRef word, String text, String why) {
		return new Fix("Change " + Figures.written(word) + " to " + text, false, why, List.of(new Edit(Location.of(word), text)));
	}

	/** A T word with other numbers and as many digits: T5, T05, T0505 with the offset of a turret, of which there is none below 0. */
	static String pocket(WordRef word, int tool, int offset) {
		String written = Figures.tight(word.written()).substring(1);
		int digits = offset >= 0 || written.startsWith("0") ? written.length() : 1;
		String number = offset < 0 ? padded(tool, digits) : padded(tool, Math.max(1, digits - 2)) + padded(offset, 2);
		return word.written().charAt(0) + number;
	}

	private static String padded(int number, int digits) {
		return String.format(Locale.ROOT, "%0" + Math.max(1, digits) + "d", number);
	}
}
