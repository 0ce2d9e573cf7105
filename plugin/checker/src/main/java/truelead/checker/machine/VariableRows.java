package truelead.checker.machine;

import java.util.List;
import java.util.Locale;
import truelead.checker.arithmetic.Value;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * Variables with places, that get their values in a row: {@code DEF REAL PX[3]=SET(10,20,30)}, {@code PX[1]=SET(5,6)},
 * {@code DEF REAL PX[3]=REP(0)}. Places count from 0, the last of several fastest; what is left out keeps its value (from memory).
 */
final class VariableRows {

	private static final int MOST = 10_000;

	private final Flow flow;

	VariableRows(Flow flow) {
		this.flow = flow;
	}

	/** Defines the places of a variable that has some; false where it has none, or too many. */
	boolean define(Expression variable, Expression given) {
		if (!(variable instanceof Expression.Function row)) {
			return false;
		}
		List<Value> sizes = row.arguments().stream().map(flow.evaluator()::value).toList();
		double all = sizes.stream().mapToDouble(Value::number).reduce(1, (a, b) -> a * b);
		if (!(all >= 1 && all <= MOST) || row.arguments().isEmpty()) {
			return false;
		}
		int last = (int) sizes.get(sizes.size() - 1).number();
		boolean same = given instanceof Expression.Function function && function.name().equals("REP");
		boolean listed = given instanceof Expression.Function function && function.name().equals("SET");
		for (int i = 0; i < all && (same || listed); i++) {
			List<Expression> values = ((Expression.Function) given).arguments();
			int at = same ? 0 : i;
			if (at < values.size() && !(values.get(at) instanceof Expression.Missing)) {
				String place = sizes.size() == 1 ? "[" + i : "[" + i / last + "[" + i % last;
				flow.variables().define(row.name().toLowerCase(Locale.ROOT) + place, flow.evaluator().value(values.get(at)));
			}
		}
		return sizes.size() <= 2;
	}

	/** Sets the places from one on, where a row of values is given to it; false where it is no such row. */
	boolean assign(Element.Assignment assignment, Assignments assignments) {
		if (!(assignment.target() instanceof Expression.Function row) || row.arguments().size() != 1
				|| !(assignment.value() instanceof Expression.Function values) || !values.name().equals("SET")) {
			return false;
		}
		Value first = flow.evaluator().value(row.arguments().get(0)).inArithmetic();
		String name = row.name().toLowerCase(Locale.ROOT) + (row.name().length() == 1 ? "" : "[");
		for (int i = 0; i < values.arguments().size() && first.known(); i++) {
			if (!(values.arguments().get(i) instanceof Expression.Missing)) {
				assignments.assign(name + Math.round(first.number() + i), true, flow.evaluator().value(values.arguments().get(i)));
			}
		}
		return first.known();
	}
}
