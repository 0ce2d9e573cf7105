package truelead.checker.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import truelead.checker.machine.Budget;
import truelead.checker.machine.Modal;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.program.Setting;
import truelead.checker.rule.Figures;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/** Tells what a word or an expression means where it stands: what it is, what it comes to, what was in force before and what is behind. */
public final class WordMeaning {

	private static final int MOST_PARTS = 12;
	private static final int DECIMALS = 6;

	private final Block block;
	private final Element element;
	private final MachineProfile machine;
	private final Map<String, Expression> parts = new LinkedHashMap<>();
	private final List<String> lines = new ArrayList<>();

	private WordMeaning(Block block, Element element, MachineProfile machine) {
		this.block = block;
		this.element = element;
		this.machine = machine;
	}

	/** Where the word or statement stands that a column of a block belongs to; empty for white space and comments. */
	public static Optional<Span> span(Block block, int column) {
		return element(block, column).map(Element::span);
	}

	/** The meaning in lines; none for white space, comments and lines that are not there. */
	public static List<String> of(ProgramFile program, ProgramFolder folder, MachineProfile machine, int line, int column, Budget budget) {
		if (line >= program.text().lineCount()) {
			return List.of();
		}
		Block block = program.text().block(line);
		Optional<Element> element = element(block, column);
		if (element.isEmpty()) {
			return List.of();
		}
		WordMeaning meaning = new WordMeaning(block, element.get(), machine);
		meaning.collect();
		return meaning.tell(Probe.at(program, folder, machine, line, List.copyOf(meaning.parts.keySet()), budget));
	}

	/** What a word is by itself, without what is in force; for where nobody can wait for the program to be followed. */
	public static List<String> brief(Block block, int column, MachineProfile machine) {
		Optional<Element> element = element(block, column);
		return element.map(found -> {
			WordMeaning meaning = new WordMeaning(block, found, machine);
			return List.of(meaning.text(found.span()) + meaning.what(""));
		}).orElse(List.of());
	}

	private static Optional<Element> element(Block block, int column) {
		return block.elements().stream().filter(element -> !(element instanceof Element.Comment))
				.filter(element -> element.span().start() <= column && column < element.span().end()).findFirst();
	}

	private void collect() {
		if (element instanceof Element.Word word) {
			collect(word.value());
		} else if (element instanceof Element.Assignment assignment) {
			collect(assignment.value());
		} else if (element instanceof Element.Conditional conditional) {
			collect(conditional.condition());
		} else if (element instanceof Element.Jump jump) {
			jump.condition().ifPresent(this::collect);
		} else if (element instanceof Element.LoopStart loop) {
			loop.condition().ifPresent(this::collect);
		} else if (element instanceof Element.OStatement statement) {
			statement.arguments().forEach(this::collect);
		} else if (element instanceof Element.Corner corner) {
			collect(corner.value());
		} else if (element instanceof Element.Control control) {
			control.values().forEach(this::collect);
		} else if (element instanceof Element.Choice choice) {
			collect(choice.value());
		} else if (element instanceof Element.Definition definition) {
			definition.values().forEach(this::collect);
		} else if (element instanceof Element.Statement statement) {
			statement.arguments().forEach(this::collect);
		}
	}

	/** The whole first, then what it is made of; plain numbers and what cannot be read say nothing. */
	private void collect(Expression expression) {
		if (expression instanceof Expression.Number || expression instanceof Expression.Missing || expression instanceof Expression.Text
				|| parts.size() >= MOST_PARTS) {
			return;
		}
		if (expression instanceof Expression.Group group) {
			collect(group.inner());
			return;
		}
		parts.putIfAbsent(text(expression.span()), expression);
		Names.parts(expression).forEach(this::collect);
	}

	private String text(Span span) {
		return block.text().substring(span.start(), span.end()).strip();
	}

	private List<String> tell(Situation situation) {
		lines.add(text(element.span()) + what(situation.motionAfter().isEmpty() ? situation.motionBefore() : situation.motionAfter()));
		int i = 0;
		for (Map.Entry<String, Expression> part : parts.entrySet()) {
			lines.add(part.getKey() + " = " + value(situation.values().get(i++), part.getValue()));
		}
		if (situation.before().isEmpty()) {
			lines.add("the program was not followed to this block");
			return lines;
		}
		Map<String, String> before = state(situation.before().get(), situation.motionBefore());
		if (situation.after().isEmpty()) {
			lines.add("in force: " + joined(before));
			return lines;
		}
		Map<String, String> after = state(situation.after().get(), situation.motionAfter());
		after.forEach((name, now) -> {
			if (!now.equals(before.get(name))) {
				lines.add(name + ": " + before.get(name) + " before, " + now + " behind this block");
			}
		});
		lines.add("in force behind it: " + joined(after));
		return lines;
	}

	private static Map<String, String> state(Modal modal, String motion) {
		Map<String, String> state = new LinkedHashMap<>();
		state.put("motion", motion.isEmpty() ? "none" : motion);
		state.putAll(StateText.of(modal));
		return state;
	}

	private static String joined(Map<String, String> state) {
		return state.entrySet().stream().filter(entry -> !entry.getValue().equals("none") && !entry.getValue().equals("off"))
				.map(entry -> entry.getKey() + " " + entry.getValue()).collect(Collectors.joining(" · "));
	}

	private String what(String motion) {
		if (!(element instanceof Element.Word word)) {
			return "";
		}
		String says;
		if ((word.address() == 'G' || word.address() == 'M') && word.value() instanceof Expression.Number number) {
			String known = CodeText.meaning(machine, word.address(), (int) Math.round(number.value() * 10));
			says = known.isEmpty() ? "not known to the machine profile " + machine.name() : known;
		} else {
			says = CodeText.role(word.address(), motion);
		}
		return says.isEmpty() ? "" : ": " + says;
	}

	private static String value(Setting value, Expression expression) {
		if (!value.known()) {
			return "not known" + (value.why().isEmpty() || !value.isSet() ? "" : ": " + value.why().words());
		}
		boolean condition = expression instanceof Expression.Binary binary
				&& List.of("EQ", "NE", "GT", "GE", "LT", "LE").contains(binary.operator());
		return condition ? value.value() == 0 ? "does not hold" : "holds" : Figures.number(value.value(), DECIMALS);
	}
}
