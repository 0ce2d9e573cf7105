package truelead.checker.machine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/** Where in a program the things stand that calls and jumps look for: program numbers, block numbers, labels, statements, ends. */
final class Outline {

	/** A statement that opens or closes a part of the program. */
	record Mark(int line, Element element) {
	}

	private final Map<Integer, List<Integer>> programs = new HashMap<>();
	private final List<Integer> programLines = new ArrayList<>();
	private final Map<Integer, List<Integer>> numbers = new HashMap<>();
	private final Map<String, List<Integer>> labels = new HashMap<>();
	private final List<Mark> marks = new ArrayList<>();
	private final List<Integer> ends = new ArrayList<>();
	private final List<Integer> returns = new ArrayList<>();
	private final List<Integer> called = new ArrayList<>();
	private final List<Integer> percents = new ArrayList<>();
	private int lastWordLine = -1;
	private final int lines;

	Outline(ProgramFile file) {
		ProgramText text = file.text();
		lines = text.lineCount();
		for (int line = 0; line < lines; line++) {
			read(line, text.block(line));
		}
	}

	private void read(int line, Block block) {
		int calls = 0;
		int target = -1;
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				double number = word.value() instanceof Expression.Number literal ? literal.value() : Double.NaN;
				if (word.address() == 'P') {
					target = (int) number;
				} else if (word.address() == 'G' && number == 65 || word.address() == 'G' && number == 66 || word.address() == 'M' && number == 98) {
					calls++;
				}
				word(line, word.address(), number);
				lastWordLine = line;
			} else if (element instanceof Element.Percent) {
				percents.add(line);
			} else if (element instanceof Element.Label label) {
				labels.computeIfAbsent(label.name(), fresh -> new ArrayList<>()).add(line);
			} else if (element instanceof Element.OStatement || element instanceof Element.LoopStart || element instanceof Element.LoopEnd) {
				marks.add(new Mark(line, element));
			}
		}
		if (calls > 0 && target >= 0) {
			called.add(target);
		}
	}

	private void word(int line, char address, double number) {
		switch (address) {
			case 'O' -> {
				programs.computeIfAbsent((int) number, fresh -> new ArrayList<>()).add(line);
				programLines.add(line);
			}
			case 'N' -> numbers.computeIfAbsent((int) number, fresh -> new ArrayList<>()).add(line);
			case 'M' -> {
				if (number == 2 || number == 30) {
					ends.add(line);
				} else if (number == 99) {
					returns.add(line);
				}
			}
			default -> {
				// No place to go to.
			}
		}
	}

	/** Line of the program with that number. */
	OptionalInt program(int number) {
		return first(programs.getOrDefault(number, List.of()), 0, lines);
	}

	/** Lines at which programs begin. */
	List<Integer> programLines() {
		return programLines;
	}

	/** Lines at which programs begin that have no number: behind a percent sign that follows an end. */
	List<Integer> unnumberedLines() {
		List<Integer> starts = new ArrayList<>();
		int from = 0;
		for (int line : percents) {
			if (line > 0 && line < lastWordLine && hasEnd(from, line)) {
				starts.add(line);
				from = line;
			}
		}
		return starts;
	}

	/** Names of the o-word subprograms that no call in this file names, with their lines. */
	List<Mark> uncalledSubs() {
		Set<String> names = new HashSet<>();
		for (Mark mark : marks) {
			if (mark.element() instanceof Element.OStatement statement && statement.keyword() == Element.OKeyword.CALL) {
				names.add(statement.name());
			}
		}
		return marks.stream().filter(mark -> mark.element() instanceof Element.OStatement statement && statement.keyword() == Element.OKeyword.SUB
				&& !names.contains(statement.name()) && !names.contains("")).toList();
	}

	/** Numbers of the programs that a literal call names; a packed call counts as its last four digits too. */
	boolean isCalled(int number) {
		return called.stream().anyMatch(target -> target == number || target > 9999 && target % 10_000 == number);
	}

	/** Line of a block number, in the same program if it is there, else anywhere in the file. */
	OptionalInt blockNumber(int number, int from) {
		List<Integer> found = numbers.getOrDefault(number, List.of());
		OptionalInt near = first(found, programStart(from), programEnd(from));
		return near.isPresent() ? near : first(found, 0, lines);
	}

	/** Line of a label; {@code forward} looks behind the line first, else before it. */
	OptionalInt label(String name, int from, boolean forward) {
		List<Integer> found = labels.getOrDefault(name, List.of());
		OptionalInt near = forward ? first(found, from, lines) : first(found, 0, from);
		return near.isPresent() ? near : first(found, 0, lines);
	}

	/** First line of the program that a line belongs to. */
	int programStart(int line) {
		return programLines.stream().filter(start -> start <= line).mapToInt(start -> start).max().orElse(0);
	}

	/** Line behind the last one of the program that a line belongs to. */
	int programEnd(int line) {
		return programLines.stream().filter(start -> start > line).mapToInt(start -> start).min().orElse(lines);
	}

	/** Whether a program end stands in a range of lines. */
	boolean hasEnd(int from, int to) {
		return first(ends, from, to).isPresent();
	}

	/** Whether a return stands in a range of lines. */
	boolean hasReturn(int from, int to) {
		return first(returns, from, to).isPresent();
	}

	/** Statements that open or close a part, in order. */
	List<Mark> marks() {
		return marks;
	}

	private static OptionalInt first(List<Integer> found, int from, int to) {
		return found.stream().filter(line -> line >= from && line < to).mapToInt(line -> line).findFirst();
	}
}
