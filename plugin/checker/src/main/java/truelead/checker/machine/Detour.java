package truelead.checker.machine;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Tells whether it matters for threads which way a jump goes whose condition is not known. */
final class Detour {

	private static final int MOST_LINES = 2000;
	private static final int ALARM = 3000;
	private static final int FIRST_OFFSET = 5000;

	private Detour() {
	}

	/**
	 * Whether the jump from behind a line to another one leaves out nothing that threads depend on, or leads to an end where nothing is
	 * made any more.
	 */
	static boolean harmless(Source source, int from, int to, MachineProfile profile) {
		if (ends(source, to, to + MOST_LINES, profile)) {
			return true;
		}
		if (to < from || to - from > MOST_LINES) {
			return false;
		}
		for (int line = from; line < to; line++) {
			if (matters(source.file().text().block(line), profile)) {
				return false;
			}
		}
		return true;
	}

	/**
	 * Whether both ways of a jump call a tool with its offset and nothing else, and meet again right behind:
	 * {@code T2 M6, GOTO 30, N20 T12 M6, N30}. A sister tool does what the other would.
	 */
	static boolean sister(Source source, int from, int to, MachineProfile profile) {
		int over = from;
		while (over < Math.min(to, from + MOST_LINES) && callsTool(source.file().text().block(over), profile)) {
			over++;
		}
		if (over == from || over >= to) {
			return false;
		}
		OptionalInt meet = target(source, over);
		return meet.isPresent() && meet.getAsInt() > to && only(source, over + 1, to, Detour::silent)
				&& only(source, to, meet.getAsInt(), block -> callsTool(block, profile));
	}

	private static boolean only(Source source, int from, int to, Predicate<Block> asked) {
		return to - from <= MOST_LINES && IntStream.range(from, to).allMatch(line -> asked.test(source.file().text().block(line)));
	}

	/** Where a jump without a condition that is alone in its line leads. */
	private static OptionalInt target(Source source, int line) {
		List<Element> said = source.file().text().block(line).elements().stream().filter(element -> !(element instanceof Element.Comment)
				&& !(element instanceof Element.Word word && word.address() == 'N')).toList();
		return said.size() == 1 && said.get(0) instanceof Element.Jump jump && jump.condition().isEmpty()
				&& jump.target() instanceof Expression.Number number ? source.outline().blockNumber((int) number.value(), line)
				: OptionalInt.empty();
	}

	private static boolean silent(Block block) {
		return block.elements().stream().allMatch(element -> element instanceof Element.Comment);
	}

	/** A tool, its change and its length offset, which may go to a level. */
	private static boolean callsTool(Block block, MachineProfile profile) {
		boolean offset = block.words().stream().anyMatch(word -> word.address() == 'G'
				&& profile.gCode(code(word)).contains(Meaning.LENGTH_OFFSET));
		return block.elements().stream().allMatch(element -> element instanceof Element.Word word ? switch (word.address()) {
			case 'N', 'T', 'H' -> true;
			case 'Z' -> offset;
			case 'G' -> profile.gCode(code(word)).stream().allMatch(meaning -> meaning == Meaning.LENGTH_OFFSET
					|| meaning == Meaning.RAPID);
			case 'M' -> profile.mCode(code(word)).stream().allMatch(meaning -> meaning == Meaning.TOOL_CHANGE || !matters(meaning));
			default -> false;
		} : element instanceof Element.Comment);
	}

	/**
	 * Whether the blocks between the jump and its target end the program or raise an alarm with nothing made before: a part that is made
	 * has jumped.
	 */
	static boolean deadEnd(Source source, int from, int to, MachineProfile profile) {
		return to >= from && ends(source, from, Math.min(to, from + MOST_LINES), profile);
	}

	/** Whether a jump back leads to where nothing is done yet, as to make a further part. */
	static boolean anew(Source source, int from, int to) {
		return to < from && to < MOST_LINES && to <= source.firstDone(MOST_LINES);
	}

	/** The variables that are set in the blocks which the jump leaves out. */
	static List<Expression> variables(Source source, int from, int to) {
		List<Expression> variables = new ArrayList<>();
		for (int line = from; line < Math.min(to, from + MOST_LINES); line++) {
			for (Element element : source.file().text().block(line).elements()) {
				if (element instanceof Element.Assignment assignment) {
					variables.add(assignment.target());
				}
			}
		}
		return variables;
	}

	/** Whether an alarm is raised from a line on with nothing made before. */
	static boolean alarms(Source source, int from, MachineProfile profile) {
		OptionalInt end = end(source, from, from + MOST_LINES, profile);
		return end.isPresent() && alarm(source.file().text().block(end.getAsInt()));
	}

	private static boolean ends(Source source, int from, int to, MachineProfile profile) {
		return end(source, from, to, profile).isPresent();
	}

	/** The alarm or the program's end that comes before a jump or anything that cuts, from a line on. */
	private static OptionalInt end(Source source, int from, int to, MachineProfile profile) {
		for (int line = from; line < Math.min(source.lines(), to); line++) {
			Block block = source.file().text().block(line);
			if (alarm(block) || block.words().stream().anyMatch(word -> word.address() == 'M'
					&& profile.mCode(code(word)).contains(Meaning.PROGRAM_END))) {
				return OptionalInt.of(line);
			}
			if (!idle(block, profile)) {
				return OptionalInt.empty();
			}
		}
		return OptionalInt.empty();
	}

	private static boolean alarm(Block block) {
		return block.elements().stream().noneMatch(Element.Conditional.class::isInstance)
				&& block.elements().stream().anyMatch(element -> element instanceof Element.Assignment assignment
						&& assignment.target() instanceof Expression.NumberedVariable variable
						&& variable.index() instanceof Expression.Number number && number.value() == ALARM);
	}

	/** Going home, stopping the spindle, setting variables: what stands before an alarm. */
	private static boolean idle(Block block, MachineProfile profile) {
		boolean home = block.words().stream().anyMatch(word -> word.address() == 'G'
				&& profile.gCode(code(word)).stream().anyMatch(meaning -> meaning == Meaning.HOME
						|| meaning == Meaning.MACHINE_COORDINATES));
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				boolean code = word.address() == 'G' || word.address() == 'M';
				List<Meaning> meanings = word.address() == 'G' ? profile.gCode(code(word)) : profile.mCode(code(word));
				if (code ? !meanings.stream().allMatch(Detour::idle) : !home && "XYZABCUVW".indexOf(word.address()) >= 0) {
					return false;
				}
			} else if (!passive(element)) {
				return false;
			}
		}
		return true;
	}

	private static boolean idle(Meaning meaning) {
		return switch (meaning) {
			case HOME, MACHINE_COORDINATES, RAPID, ABSOLUTE, INCREMENTAL, CYCLE_OFF, LENGTH_OFFSET_OFF, COMPENSATION_OFF, SPINDLE_STOP,
					SPINDLE_ORIENT -> true;
			default -> !matters(meaning);
		};
	}

	private static boolean matters(Block block, MachineProfile profile) {
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				List<Meaning> meanings = word.address() == 'G' ? profile.gCode(code(word)) : word.address() == 'M'
						? profile.mCode(code(word)) : List.of();
				if (meanings.stream().anyMatch(Detour::matters) || "XYZABCUVWTFS".indexOf(word.address()) >= 0) {
					return true;
				}
			} else if (!passive(element)) {
				return true;
			}
		}
		return false;
	}

	/** What neither moves nor leads elsewhere. */
	private static boolean passive(Element element) {
		return element instanceof Element.Comment || element instanceof Element.Percent || element instanceof Element.BlockDelete
				|| element instanceof Element.Label || element instanceof Element.Assignment assignment && !offset(assignment.target());
	}

	/** Whether a variable may hold where the work lies. */
	private static boolean offset(Expression target) {
		return target instanceof Expression.NumberedVariable variable && !(variable.index() instanceof Expression.Number number
				&& number.value() < FIRST_OFFSET);
	}

	private static int code(Element.Word word) {
		return word.value() instanceof Expression.Number number ? MachineProfile.tenfold(number.value()) : -1;
	}

	/** Stops, coolant and dwells matter to no thread. */
	private static boolean matters(Meaning meaning) {
		return switch (meaning) {
			case NONE, DWELL, STOP, OPTIONAL_STOP, COOLANT_ON, COOLANT_OFF -> false;
			default -> true;
		};
	}
}
