package truelead.checker.edit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.profile.MachineProfile;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/**
 * Gives blocks other numbers, gives numbers to blocks without, and takes numbers away, so that every jump still goes where it went. Where
 * that cannot be known, nothing is changed and the reason is said.
 */
public final class Numbering {

	/** Largest block number that is given: eight digits, the most that controls read (common practice, no source). */
	private static final int LARGEST = 99_999_999;

	private enum Way {
		RENUMBER, ADD, REMOVE
	}

	/** A jump to a block number. */
	private record Reference(int line, Span value, long number, int target) {
	}

	private final ProgramText text;
	private final Names names;
	private final Map<Integer, Long> numbers = new HashMap<>();
	private final Map<Integer, Name> words = new HashMap<>();
	private final List<Reference> references = new ArrayList<>();
	private final List<Integer> programs = new ArrayList<>();
	private Optional<String> refusal = Optional.empty();

	private Numbering(ProgramText text, MachineProfile profile) {
		this.text = text;
		this.names = new Names(profile);
	}

	/** Numbers the blocks of a range of lines that have a number anew; each program of the file begins with the first number. */
	public static Change renumber(ProgramText text, MachineProfile profile, int first, int last, int start, int step) {
		return new Numbering(text, profile).change(Way.RENUMBER, first, last, start, step);
	}

	/** Numbers all blocks with code of a range of lines, those that have a number too. */
	public static Change add(ProgramText text, MachineProfile profile, int first, int last, int start, int step) {
		return new Numbering(text, profile).change(Way.ADD, first, last, start, step);
	}

	/** Takes the numbers of a range of lines away, but for those that something jumps to. */
	public static Change remove(ProgramText text, MachineProfile profile, int first, int last) {
		return new Numbering(text, profile).change(Way.REMOVE, first, last, 0, 0);
	}

	private Change change(Way way, int first, int last, int start, int step) {
		read();
		Map<Integer, Long> after = new HashMap<>(numbers);
		Set<Integer> starts = new HashSet<>(programs);
		long next = start;
		long largest = 0;
		for (int line = first; line <= last; line++) {
			boolean numbered = numbers.containsKey(line);
			next = starts.contains(line) ? start : next;
			if (way == Way.REMOVE) {
				after.remove(line);
			} else if (numbered || way == Way.ADD && canHaveNumber(text.block(line))) {
				after.put(line, next);
				largest = Math.max(largest, next);
				next += step;
			}
		}
		if (way == Way.REMOVE) {
			references.forEach(reference -> after.put(reference.target, numbers.get(reference.target)));
			after.values().removeIf(number -> number == null);
		}
		return after.equals(numbers) ? Change.of(List.of()) : checked(after, largest);
	}

	private Change checked(Map<Integer, Long> after, long largest) {
		if (refusal.isPresent()) {
			return Change.refused(refusal.get());
		}
		if (largest > LARGEST) {
			return Change.refused("the numbers would go beyond " + LARGEST + "; choose a smaller step");
		}
		Map<Long, List<Integer>> lines = new HashMap<>();
		after.keySet().stream().sorted().forEach(line -> lines.computeIfAbsent(after.get(line), fresh -> new ArrayList<>()).add(line));
		for (Reference reference : references) {
			long number = after.get(reference.target);
			int found = target(lines.get(number), reference.line);
			if (found != reference.target) {
				return Change.refused("the jump in line " + (reference.line + 1) + " would go to line " + (found + 1) + ": N" + number
						+ " would stand there too; number the whole program");
			}
		}
		return Change.of(replacements(after));
	}

	private void read() {
		Map<Long, List<Integer>> lines = new HashMap<>();
		List<Reference> open = new ArrayList<>();
		for (int line = 0; line < text.lineCount(); line++) {
			Block block = text.block(line);
			for (Name name : names.in(block)) {
				if (name.kind() == Name.Kind.PROGRAM && name.defines()) {
					programs.add(line);
				} else if (name.kind() == Name.Kind.BLOCK && name.defines()) {
					numbers.putIfAbsent(line, Long.parseLong(name.key()));
					words.putIfAbsent(line, name);
					lines.computeIfAbsent(Long.parseLong(name.key()), fresh -> new ArrayList<>()).add(line);
				} else if (name.kind() == Name.Kind.BLOCK) {
					open.add(new Reference(line, name.value(), Long.parseLong(name.key()), -1));
				}
			}
			computed(line, block);
		}
		for (Reference reference : open) {
			List<Integer> found = lines.getOrDefault(reference.number, List.of());
			if (found.isEmpty()) {
				refuse("line " + (reference.line + 1) + " jumps to N" + reference.number
						+ ", which is not there: a new number could become its target by chance");
			} else {
				references.add(new Reference(reference.line, reference.value, reference.number, target(found, reference.line)));
			}
		}
	}

	/** A jump to a number that is computed cannot be kept right. */
	private void computed(int line, Block block) {
		for (Element element : block.elements()) {
			List<Expression> targets = new ArrayList<>();
			if (element instanceof Element.Jump jump) {
				targets.add(jump.target());
			} else if (element instanceof Element.Choice choice) {
				targets.addAll(choice.targets());
				choice.otherwise().ifPresent(targets::add);
			}
			if (targets.stream().anyMatch(target -> !(target instanceof Expression.Number)
					&& !(target instanceof Expression.NamedVariable))) {
				refuse("the jump in line " + (line + 1) + " computes its block number, so no number may change");
			}
		}
	}

	private void refuse(String why) {
		refusal = refusal.or(() -> Optional.of(why));
	}

	/** Where a control finds a number: first in the program of the jump, else in the file. */
	private int target(List<Integer> lines, int from) {
		int start = 0;
		int end = Integer.MAX_VALUE;
		for (int program : programs) {
			if (program <= from) {
				start = program;
			} else {
				end = program;
				break;
			}
		}
		for (int line : lines) {
			if (line >= start && line < end) {
				return line;
			}
		}
		return lines.get(0);
	}

	private static boolean canHaveNumber(Block block) {
		boolean code = false;
		for (Element element : block.elements()) {
			if (element instanceof Element.Percent || element instanceof Element.OStatement || element instanceof Element.Label
					|| element instanceof Element.Word word && word.address() == 'O') {
				return false;
			}
			code |= !(element instanceof Element.Comment || element instanceof Element.BlockDelete);
		}
		return code;
	}

	private List<Replacement> replacements(Map<Integer, Long> after) {
		Map<Integer, List<Reference>> jumps = new HashMap<>();
		references.forEach(reference -> jumps.computeIfAbsent(reference.line, fresh -> new ArrayList<>()).add(reference));
		List<Replacement> all = new ArrayList<>();
		for (int line = 0; line < text.lineCount(); line++) {
			Long before = numbers.get(line);
			Long now = after.get(line);
			List<Reference> here = jumps.getOrDefault(line, List.of());
			if (now == null ? before == null && here.isEmpty() : now.equals(before) && here.isEmpty()) {
				continue;
			}
			List<Replacement> inLine = new ArrayList<>();
			String written = text.line(line);
			int start = text.lineStart(line);
			if (before == null && now != null) {
				inLine.add(new Replacement(start + insertAt(text.block(line)), 0, "N" + now + " "));
			} else if (before != null && now == null) {
				inLine.add(without(written, start, words.get(line).span()));
			} else if (now != null && !now.equals(before)) {
				inLine.add(number(written, start, words.get(line).value(), now));
			}
			for (Reference jump : here) {
				if (after.get(jump.target) != jump.number) {
					inLine.add(number(written, start, jump.value, after.get(jump.target)));
				}
			}
			inLine.sort((a, b) -> Integer.compare(a.offset(), b.offset()));
			all.addAll(inLine);
		}
		return all;
	}

	/** In front of the block, behind a block delete, which has to come first. */
	private static int insertAt(Block block) {
		Element first = block.elements().get(0);
		return first instanceof Element.BlockDelete ? first.span().end() : first.span().start();
	}

	private static Replacement without(String line, int start, Span word) {
		int end = word.end();
		while (end < line.length() && (line.charAt(end) == ' ' || line.charAt(end) == '\t')) {
			end++;
		}
		return new Replacement(start + word.start(), end - word.start(), "");
	}

	/** As many digits as before where the number began with a zero. */
	private static Replacement number(String line, int start, Span value, long number) {
		String digits = Long.toString(number);
		String padded = line.charAt(value.start()) == '0' ? "0".repeat(Math.max(0, value.length() - digits.length())) + digits : digits;
		return new Replacement(start + value.start(), value.length(), padded);
	}
}
