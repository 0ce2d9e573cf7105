package truelead.checker.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/** Finds the names in a block, from the grammar's tree and what the profile knows of calls. */
public final class Names {

	private static final int PACKED = 10_000;

	private final MachineProfile profile;

	public Names(MachineProfile profile) {
		this.profile = profile;
	}

	/** The names of a block in the order written. */
	public List<Name> in(Block block) {
		List<Name> names = new ArrayList<>();
		Meaning call = call(block);
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				word(names, word, call);
			} else if (element instanceof Element.Label label) {
				named(names, Name.Kind.LABEL, label.name(), label.span(), true);
			} else if (element instanceof Element.Assignment assignment) {
				variables(names, assignment.target(), true);
				variables(names, assignment.value(), false);
			} else if (element instanceof Element.Jump jump) {
				jump.condition().ifPresent(condition -> variables(names, condition, false));
				target(names, jump.target());
			} else {
				statement(names, element);
			}
		}
		return names;
	}

	/** The name at a column of a block; the smallest where one stands in another. */
	public Optional<Name> at(Block block, int column) {
		Optional<Name> found = Optional.empty();
		for (Name name : in(block)) {
			if (name.span().start() <= column && column <= name.span().end()
					&& found.filter(other -> other.span().length() < name.span().length()).isEmpty()
					&& found.filter(other -> other.span().end() > column && name.span().end() == column).isEmpty()) {
				found = Optional.of(name);
			}
		}
		return found;
	}

	/** What makes a P word of the block the name of something; NONE where nothing does. */
	private Meaning call(Block block) {
		for (Element.Word word : block.words()) {
			if ((word.address() == 'G' || word.address() == 'M') && word.value() instanceof Expression.Number number) {
				int tenfold = (int) Math.round(number.value() * 10);
				for (Meaning meaning : word.address() == 'G' ? profile.gCode(tenfold) : profile.mCode(tenfold)) {
					switch (meaning) {
						case CALL, LOCAL_CALL, RETURN, MACRO_CALL, MODAL_MACRO_CALL, TURNING_CYCLE -> {
							return meaning;
						}
						default -> {
							// calls nothing
						}
					}
				}
			}
		}
		return Meaning.NONE;
	}

	private static void word(List<Name> names, Element.Word word, Meaning call) {
		if (!(word.value() instanceof Expression.Number number)) {
			variables(names, word.value(), false);
			return;
		}
		Span value = number.span();
		long whole = Math.round(number.value());
		if (word.address() == 'N') {
			names.add(new Name(Name.Kind.BLOCK, Long.toString(whole), word.span(), value, true));
		} else if (word.address() == 'O') {
			names.add(new Name(Name.Kind.PROGRAM, Long.toString(whole), word.span(), value, true));
		} else if (word.address() == 'P' && (call == Meaning.CALL || call == Meaning.MACRO_CALL || call == Meaning.MODAL_MACRO_CALL)) {
			long program = call == Meaning.CALL && whole >= PACKED ? whole % PACKED : whole;
			names.add(new Name(Name.Kind.PROGRAM, Long.toString(program), word.span(), value, false));
		} else if (jumps(word.address(), call)) {
			names.add(new Name(Name.Kind.BLOCK, Long.toString(whole), word.span(), value, false));
		} else {
			names.add(new Name(Name.Kind.WORD, word.address() + (word.extension() < 0 ? "" : word.extension() + "=") + number.value(),
					word.span(), value, false));
		}
	}

	private static boolean jumps(char address, Meaning call) {
		return switch (call) {
			case RETURN, LOCAL_CALL -> address == 'P';
			case TURNING_CYCLE -> address == 'P' || address == 'Q';
			case CALL -> address == 'Q';
			default -> false;
		};
	}

	/** Where a jump goes: a block number, or a label, which may be a block number written with its N. */
	private static void target(List<Name> names, Expression target) {
		if (target instanceof Expression.Number number) {
			names.add(new Name(Name.Kind.BLOCK, Long.toString(Math.round(number.value())), target.span(), target.span(), false));
		} else if (target instanceof Expression.NamedVariable label) {
			Optional<String> number = numbered(label.name());
			Span span = label.span();
			names.add(number.isPresent() ? new Name(Name.Kind.BLOCK, number.get(), span, new Span(span.start() + 1, span.end()), false)
					: new Name(Name.Kind.LABEL, label.name(), span, span, false));
		} else {
			variables(names, target, false);
		}
	}

	/** The number of a label in small letters that is a block number with its N. */
	private static Optional<String> numbered(String label) {
		boolean digits = label.length() > 1 && label.length() < 11 && label.charAt(0) == 'n'
				&& label.chars().skip(1).allMatch(c -> c >= '0' && c <= '9');
		return digits ? Optional.of(Long.toString(Long.parseLong(label.substring(1)))) : Optional.empty();
	}

	private static void statement(List<Name> names, Element element) {
		if (element instanceof Element.OStatement statement) {
			if (!statement.name().isEmpty()) {
				boolean start = statement.keyword() == Element.OKeyword.SUB;
				names.add(new Name(Name.Kind.SUB, statement.name(), statement.span(), statement.span(), start));
			}
			statement.arguments().forEach(argument -> variables(names, argument, false));
		} else if (element instanceof Element.Conditional conditional) {
			variables(names, conditional.condition(), false);
		} else if (element instanceof Element.LoopStart loop) {
			loop.condition().ifPresent(condition -> variables(names, condition, false));
		} else if (element instanceof Element.Statement statement) {
			named(names, Name.Kind.SUB, statement.name(), statement.span(), false);
			statement.arguments().forEach(argument -> variables(names, argument, false));
		} else if (element instanceof Element.Corner corner) {
			variables(names, corner.value(), false);
		} else {
			richer(names, element);
		}
	}

	/** Statements of richer control languages. */
	private static void richer(List<Name> names, Element element) {
		if (element instanceof Element.Control control) {
			control.values().forEach(value -> variables(names, value, false));
		} else if (element instanceof Element.Choice choice) {
			variables(names, choice.value(), false);
			choice.values().forEach(value -> variables(names, value, false));
			choice.targets().forEach(target -> target(names, target));
			choice.otherwise().ifPresent(target -> target(names, target));
		} else if (element instanceof Element.Repetition repetition) {
			target(names, repetition.from());
			repetition.to().ifPresent(to -> target(names, to));
			repetition.count().ifPresent(count -> variables(names, count, false));
		} else if (element instanceof Element.Definition definition) {
			definition.variables().forEach(variable -> variables(names, variable, true));
			definition.values().forEach(value -> variables(names, value, false));
		} else if (element instanceof Element.Procedure procedure) {
			names.add(new Name(Name.Kind.SUB, procedure.name().toLowerCase(Locale.ROOT), procedure.span(), procedure.span(), true));
			procedure.parameters().forEach(parameter -> variables(names, parameter, true));
		} else if (element instanceof Element.ModalCall call && !call.name().isEmpty()) {
			names.add(new Name(Name.Kind.SUB, call.name().toLowerCase(Locale.ROOT), call.span(), call.span(), false));
			call.arguments().forEach(argument -> variables(names, argument, false));
		}
	}

	/** A name that an element begins with. */
	private static void named(List<Name> names, Name.Kind kind, String name, Span element, boolean defines) {
		Span span = new Span(element.start(), Math.min(element.end(), element.start() + name.length()));
		names.add(new Name(kind, name.toLowerCase(Locale.ROOT), span, span, defines));
	}

	private static void variables(List<Name> names, Expression expression, boolean set) {
		if (expression instanceof Expression.NumberedVariable variable) {
			if (variable.index() instanceof Expression.Number number) {
				names.add(new Name(Name.Kind.VARIABLE, "#" + Math.round(number.value()), variable.span(), number.span(), set));
			} else {
				variables(names, variable.index(), false);
			}
		} else if (expression instanceof Expression.NamedVariable variable) {
			names.add(new Name(Name.Kind.VARIABLE, variable.name(), variable.span(), variable.span(), set));
		} else {
			parts(expression).forEach(part -> variables(names, part, false));
		}
	}

	/** The expressions that an expression is made of, in the order written. */
	static List<Expression> parts(Expression expression) {
		if (expression instanceof Expression.Group group) {
			return List.of(group.inner());
		} else if (expression instanceof Expression.Unary unary) {
			return List.of(unary.operand());
		} else if (expression instanceof Expression.Binary binary) {
			return List.of(binary.left(), binary.right());
		} else if (expression instanceof Expression.Function function) {
			return function.arguments();
		} else if (expression instanceof Expression.NumberedVariable variable) {
			return List.of(variable.index());
		}
		return List.of();
	}
}
