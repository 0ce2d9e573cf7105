package truelead.checker.machine;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import truelead.checker.program.ProgramFile;
import truelead.grammar.ArchiveHeader;
import truelead.grammar.Block;
import truelead.grammar.ChannelHeader;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/** Where in a program the things stand that calls and jumps look for: program numbers, block numbers, labels, statements, ends. */
final class Outline {

	/** A statement that opens or closes a part of the program. */
	record Mark(int line, Element element) {
	}

	private static final TreeSet<Integer> NOWHERE = new TreeSet<>();

	private final Map<Integer, TreeSet<Integer>> programs = new HashMap<>();
	/** The lines of O words with a name, {@code O<HOLES>}, by it in small letters. */
	private final Map<String, Integer> named = new HashMap<>();
	private final TreeSet<Integer> programLines = new TreeSet<>();
	private final Map<Integer, TreeSet<Integer>> numbers = new HashMap<>();
	private final Map<String, TreeSet<Integer>> labels = new HashMap<>();
	private final TreeMap<Integer, Mark> marks = new TreeMap<>();
	private final Map<String, Integer> subs = new HashMap<>();
	private final Map<String, Integer> procedures = new HashMap<>();
	private final TreeSet<Integer> procedureLines = new TreeSet<>();
	/** The lines of headers such as {@code %_N_HOLES_SPF}, by the name of the program. */
	private final Map<String, Integer> archived = new HashMap<>();
	private final TreeMap<Integer, ArchiveHeader> headers = new TreeMap<>();
	/** Names of statements, which may be calls. */
	private final Set<String> statements = new HashSet<>();
	private Structures structures;
	private LoopEnds loopEnds;
	private final TreeSet<Integer> ends = new TreeSet<>();
	private final TreeSet<Integer> returns = new TreeSet<>();
	private final Set<Integer> called = new HashSet<>();
	/** The names, in small letters, that stand beside calls. */
	private final Set<String> calledNames = new HashSet<>();
	private final List<Integer> percents = new ArrayList<>();
	private final List<Integer> channels = new ArrayList<>();
	private int lastWordLine = -1;
	private boolean oWords;
	private final int lines;

	Outline(ProgramFile file) {
		ProgramText text = file.text();
		lines = text.lineCount();
		for (int line = 0; line < lines; line++) {
			read(line, text.block(line));
		}
		if (channels.stream().map(line -> ChannelHeader.of(text.block(line)).orElseThrow()).distinct().count() == channels.size()) {
			// each stands once: a program of its own, and what stands before the first one belongs to it
			programLines.addAll(channels.subList(Math.min(1, channels.size()), channels.size()));
		}
	}

	private void read(int line, Block block) {
		if (ChannelHeader.is(block)) {
			channels.add(line);
			return;
		}
		int calls = 0;
		int target = -1;
		String name = "";
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				double number = word.value() instanceof Expression.Number literal ? literal.value() : Double.NaN;
				if (word.address() == 'P') {
					target = (int) number;
					name = word.value() instanceof Expression.Text text ? text.text() : name;
				} else if (word.address() == 'O' && word.value() instanceof Expression.Text text) {
					named.putIfAbsent(small(text.text()), line);
				} else if (word.address() == 'G' && number == 65 || word.address() == 'G' && number == 66
						|| word.address() == 'M' && number == 98) {
					calls++;
				}
				word(line, word.address(), number);
				lastWordLine = line;
			} else if (element instanceof Element.Comment comment) {
				name = comment.mark().names() && name.isEmpty() ? comment.text() : name;
			} else if (element instanceof Element.Percent) {
				percents.add(line);
				ArchiveHeader.of(block).ifPresent(header -> header(line, header));
			} else if (element instanceof Element.Label label) {
				labels.computeIfAbsent(label.name(), fresh -> new TreeSet<>()).add(line);
			} else if (element instanceof Element.OStatement || element instanceof Element.LoopStart
					|| element instanceof Element.LoopEnd) {
				mark(line, element);
			} else if (Structures.keyword(element).isPresent() && alone(block, element)) {
				mark(line, element);
			} else if (element instanceof Element.Procedure procedure) {
				procedures.putIfAbsent(procedure.name(), line);
				procedureLines.add(line);
			} else if (element instanceof Element.Statement statement) {
				statements.add(statement.name());
			} else if (element instanceof Element.ModalCall call) {
				statements.add(call.name());
			} else if (element instanceof Element.Opaque opaque) {
				statements.add(opaque.name());
				if (element == block.elements().get(0) && opaque.name().startsWith("N")) {
					// NLAP1 G0 X20: some controls name blocks by letters behind the N
					labels.computeIfAbsent(opaque.name(), fresh -> new TreeSet<>()).add(line);
				}
			}
		}
		if (calls > 0 && !name.isEmpty()) {
			calledNames.add(small(name));
		}
		if (calls > 0 && target >= 0) {
			called.add(target);
			called.add(target > 9999 ? target % 10_000 : target);
		}
	}

	/**
	 * Whether the file has statements that begin with an O word, as RS-274 alone has them: there a number that nothing has set is zero
	 * (from memory).
	 */
	boolean oWords() {
		return oWords;
	}

	private void header(int line, ArchiveHeader header) {
		headers.put(line, header);
		archived.putIfAbsent(header.name(), line);
		programLines.add(line);
	}

	/** Whether nothing but comments stands behind an element. */
	private static boolean alone(Block block, Element element) {
		boolean behind = false;
		for (Element other : block.elements()) {
			if (behind && !(other instanceof Element.Comment)) {
				return false;
			}
			behind |= other == element;
		}
		return true;
	}

	private void mark(int line, Element element) {
		marks.put(line, new Mark(line, element));
		oWords |= element instanceof Element.OStatement;
		if (element instanceof Element.OStatement statement && statement.keyword() == Element.OKeyword.SUB) {
			subs.putIfAbsent(statement.name(), line);
		}
	}

	private void word(int line, char address, double number) {
		switch (address) {
			case 'O' -> {
				programs.computeIfAbsent((int) number, fresh -> new TreeSet<>()).add(line);
				programLines.add(line);
			}
			case 'N' -> numbers.computeIfAbsent((int) number, fresh -> new TreeSet<>()).add(line);
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

	private static String small(String name) {
		return name.strip().toLowerCase(Locale.ROOT);
	}

	/** Line of the program with that name. */
	OptionalInt program(String name) {
		Integer line = named.get(small(name));
		return line == null ? OptionalInt.empty() : OptionalInt.of(line);
	}

	/** Line of the program with that number. */
	OptionalInt program(int number) {
		return first(programs.getOrDefault(number, NOWHERE), 0, lines);
	}

	/** Lines at which programs begin. */
	SortedSet<Integer> programLines() {
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
		for (Mark mark : marks.values()) {
			if (mark.element() instanceof Element.OStatement statement && statement.keyword() == Element.OKeyword.CALL) {
				names.add(statement.name());
			}
		}
		return marks.values().stream().filter(mark -> mark.element() instanceof Element.OStatement statement
				&& statement.keyword() == Element.OKeyword.SUB && !names.contains(statement.name()) && !names.contains("")).toList();
	}

	/** Whether a call of this file says that program, by its number or name; a packed call counts as its last four digits too. */
	boolean isCalled(Expression program) {
		return program instanceof Expression.Number number && called.contains((int) number.value())
				|| program instanceof Expression.Text name && calledNames.contains(small(name.text()));
	}

	/** Line of a block number, in the same program if it is there, else anywhere in the file. */
	OptionalInt blockNumber(int number, int from) {
		TreeSet<Integer> found = numbers.getOrDefault(number, NOWHERE);
		OptionalInt near = first(found, programStart(from), programEnd(from));
		return near.isPresent() ? near : first(found, 0, lines);
	}

	/** Line of a label; {@code forward} looks behind the line first, else before it. */
	OptionalInt label(String name, int from, boolean forward) {
		TreeSet<Integer> found = labels.getOrDefault(name, NOWHERE);
		OptionalInt near = forward ? first(found, from, lines) : first(found, 0, from);
		return near.isPresent() ? near : first(found, 0, lines);
	}

	/** First line of the program that a line belongs to. */
	int programStart(int line) {
		Integer start = programLines.floor(line);
		return start == null ? 0 : start;
	}

	/** Line behind the last one of the program that a line belongs to. */
	int programEnd(int line) {
		Integer next = programLines.higher(line);
		return next == null ? lines : next;
	}

	/** Line behind the end of the o-word subprogram that begins at a line; behind the program's where its end is missing. */
	int subEnd(int line) {
		return marks.tailMap(line).values().stream().filter(mark -> mark.element() instanceof Element.OStatement statement
				&& statement.keyword() == Element.OKeyword.ENDSUB).findFirst().map(mark -> mark.line() + 1).orElse(programEnd(line));
	}

	/** Whether a program end stands in a range of lines. */
	boolean hasEnd(int from, int to) {
		return !ends.subSet(from, to).isEmpty();
	}

	/** Whether a return stands in a range of lines. */
	boolean hasReturn(int from, int to) {
		return !returns.subSet(from, to).isEmpty();
	}

	/** Statements that open or close a part, in order, from a line on. */
	Collection<Mark> marks(int from) {
		return marks.tailMap(from).values();
	}

	/** Which END closes which loop by number. */
	LoopEnds loopEnds() {
		if (loopEnds == null) {
			loopEnds = new LoopEnds(marks.values());
		}
		return loopEnds;
	}

	/** Which statements open, divide and close the same branch or loop. */
	Structures structures() {
		if (structures == null) {
			structures = new Structures(marks.values());
		}
		return structures;
	}

	/** Line of the head of the subprogram of that name, in capitals. */
	OptionalInt procedure(String name) {
		Integer line = procedures.get(name);
		return line == null ? OptionalInt.empty() : OptionalInt.of(line);
	}

	/** Line behind the header of the program of that name, in capitals. */
	OptionalInt archived(String name) {
		Integer line = archived.get(name);
		return line == null ? OptionalInt.empty() : OptionalInt.of(line + 1);
	}

	/** Whether a range of lines begins with the header of a subprogram. */
	boolean subprogramHeader(int from) {
		return headers.containsKey(from) && headers.get(from).subprogram();
	}

	/** Whether a program of a header is called by its name in this file. */
	boolean calledByName(int from) {
		return headers.containsKey(from) && statements.contains(headers.get(from).name());
	}

	/** Whether a subprogram in a range of lines has a head of its own. */
	boolean hasProcedure(int from, int to) {
		return !procedureLines.subSet(from, to).isEmpty();
	}

	/** Line of the o-word subprogram of that name. */
	OptionalInt sub(String name) {
		Integer line = subs.get(name);
		return line == null ? OptionalInt.empty() : OptionalInt.of(line);
	}

	private static OptionalInt first(TreeSet<Integer> found, int from, int to) {
		Integer line = found.ceiling(from);
		return line == null || line >= to ? OptionalInt.empty() : OptionalInt.of(line);
	}
}
