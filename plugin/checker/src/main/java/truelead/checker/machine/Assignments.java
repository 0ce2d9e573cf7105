package truelead.checker.machine;

import java.util.List;
import java.util.Optional;
import truelead.checker.arithmetic.Value;
import truelead.checker.arithmetic.Variables;
import truelead.checker.program.Reason;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Gives values to variables, those that stand for something of the machine included. */
final class Assignments {

	/** System variable that raises an alarm, and those that hold work offsets, as the usual macro languages number them. */
	private static final int ALARM = 3000;
	private static final int FIRST_OFFSET = 5201;
	private static final int LAST_OFFSET = 5326;

	private final Flow flow;
	private final Variables variables;
	private final MachineState state;
	private final Doubts doubts;
	private final VariableRows rows;

	Assignments(Flow flow, Variables variables, MachineState state, Doubts doubts) {
		this.flow = flow;
		this.variables = variables;
		this.state = state;
		this.doubts = doubts;
		this.rows = new VariableRows(flow);
	}

	/** Sets the variable of an assignment; words of a motion are none. */
	void assign(Element.Assignment assignment) {
		if (!assignment.ofMotion() && !rows.assign(assignment, this)) {
			assign(assignment.target(), flow.evaluator().value(assignment.value()));
		}
	}

	/** Where a condition is not known and only variables would be set, they are not known from here on; true if that is all. */
	boolean forgets(Element.Conditional conditional, List<Element> behind) {
		Value condition = flow.evaluator().value(conditional.condition()).inArithmetic();
		boolean assignments = !condition.known()
				&& behind.stream().allMatch(element -> element instanceof Element.Assignment || element instanceof Element.Comment);
		if (assignments) {
			for (Element element : behind) {
				if (element instanceof Element.Assignment assignment && !isAlarm(assignment)) {
					assign(assignment.target(), Value.unknown(condition.why()));
				}
			}
		}
		return assignments;
	}

	private static boolean isAlarm(Element.Assignment assignment) {
		return assignment.target() instanceof Expression.NumberedVariable variable && variable.index() instanceof Expression.Number number
				&& number.value() == ALARM;
	}

	/** Sets a variable; one whose number is not known is said so. */
	void assign(Expression target, Value value) {
		if (target instanceof Expression.NumberedVariable variable) {
			Value index = flow.evaluator().value(variable.index());
			if (index.known()) {
				assign((int) Math.round(index.number()), value);
			} else {
				unknownTarget(index.why());
			}
		} else if (target instanceof Expression.NamedVariable variable) {
			assign(variable.name(), variable.bare(), value);
		} else if (target instanceof Expression.Function array) {
			flow.evaluator().arrayName(array).ifPresentOrElse(name -> assign(name, true, value),
					() -> unknownTarget(Reason.of("the place in " + array.name() + " is not known")));
		}
	}

	private void unknownTarget(Reason why) {
		flow.out().notFollowed(flow.block(), why.behind("which variable is set here is not known"), Optional.empty());
	}

	/** Sets a named variable. */
	void assign(String name, boolean bare, Value value) {
		variables.set(name, bare, value);
		doubts.set(name, variables.local(name, bare), variables.depth(), why -> variables.set(name, bare, Value.unknown(why)));
	}

	private void assign(int variable, Value value) {
		variables.set(variable, value);
		doubts.set(variable, Variables.local(variable), variables.depth(), why -> variables.set(variable, Value.unknown(why)));
		if (variable == ALARM && doubts.statement().isEmpty()) {
			flow.out().alarm(flow.block());
			flow.stop();
		} else if (variable >= FIRST_OFFSET && variable <= LAST_OFFSET) {
			state.place.offsetVariable(variable, value.number());
		}
	}
}
