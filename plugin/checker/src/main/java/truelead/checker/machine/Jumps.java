package truelead.checker.machine;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import truelead.checker.arithmetic.Evaluator;
import truelead.checker.arithmetic.Value;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Reason;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Jumps to block numbers and labels, with and without a condition. */
final class Jumps {

	private Jumps() {
	}

	/** Makes the jump where its condition holds; a place that is not there, or not known, ends the program. */
	static void jump(Flow flow, CallFrame frame, Element.Jump jump, MachineProfile profile) {
		Value condition = jump.condition().map(flow.endless()::condition).orElse(Value.ONE);
		if (!condition.known() || condition.number() != 0) {
			go(flow, frame, jump.target(), condition, profile);
		}
	}

	/** Jumps to the target of the first value that fits, else to the one for all others. */
	static void choose(Flow flow, CallFrame frame, Element.Choice choice, MachineProfile profile) {
		flow.endless().decided();
		Value value = flow.evaluator().value(choice.value()).inArithmetic();
		for (int i = 0; i < choice.values().size(); i++) {
			Value one = flow.evaluator().value(choice.values().get(i)).inArithmetic();
			Value fits = value.known() && one.known() ? Value.of(Evaluator.same(value.number(), one.number())) : value.known()
					? one : value;
			if (!fits.known() || fits.number() != 0) {
				go(flow, frame, choice.targets().get(i), fits, profile);
				return;
			}
		}
		choice.otherwise().ifPresent(target -> go(flow, frame, target, Value.ONE, profile));
	}

	private static void go(Flow flow, CallFrame frame, Expression to, Value condition, MachineProfile profile) {
		OptionalInt line = target(flow, frame, to);
		Optional<String> doubt = line.isPresent() ? flow.doubts().leaving(frame, line.getAsInt()) : Optional.empty();
		if (!condition.known() && line.isPresent() && Detour.anew(frame.source, frame.line, line.getAsInt())) {
			Reason why = condition.why().behind("whether the program begins again here is not known");
			flow.out().remark(flow.block(), why);
		} else if (!condition.known() || doubt.isPresent()) {
			unknown(flow, frame, line, condition.known() ? Reason.of("it depends on " + doubt.get() + ", which is not followed")
					: condition.why(), profile);
		} else if (line.isPresent()) {
			flow.goTo(frame, line.getAsInt());
		} else {
			Value target = flow.evaluator().value(to);
			boolean label = to instanceof Expression.NamedVariable;
			flow.out().stopped(flow.block(), target.known() || label ? Reason.of("the block that the program jumps to is not in this file")
					: target.why().behind("where the program jumps to is not known"), Optional.empty());
			flow.stop();
		}
	}

	private static OptionalInt target(Flow flow, CallFrame frame, Expression target) {
		Optional<String> label = target instanceof Expression.NamedVariable named ? Optional.of(named.name())
				: target instanceof Expression.Text text ? Optional.of(text.text()) : Optional.empty();
		if (label.isPresent()) {
			OptionalInt line = frame.source.outline().label(label.get().toUpperCase(Locale.ROOT), frame.line, true);
			if (line.isPresent()) {
				return line;
			}
		}
		if (!(target instanceof Expression.Number)) {
			flow.endless().decided();
		}
		Value number = flow.evaluator().value(target);
		return number.known() ? frame.source.outline().blockNumber((int) Math.round(number.number()), frame.line - 1) : OptionalInt.empty();
	}

	/**
	 * A jump on something that is not known is not made, unless the program would end right there, and not by an alarm where it jumps to;
	 * worth a warning only where it may matter to a thread. What is set on one way alone is not known behind it.
	 */
	private static void unknown(Flow flow, CallFrame frame, OptionalInt line, Reason why, MachineProfile profile) {
		Reason message = why.behind("which way the program goes here is not known");
		if (line.isPresent() && Detour.deadEnd(frame.source, frame.line, line.getAsInt(), profile)
				&& !Detour.alarms(frame.source, line.getAsInt(), profile)) {
			flow.out().remark(flow.block(), message);
			frame.line = line.getAsInt();
		} else if (line.isPresent() && Detour.harmless(frame.source, frame.line, line.getAsInt(), profile)) {
			flow.out().remark(flow.block(), message);
			flow.endless().wayOut(frame);
			if (!Detour.deadEnd(frame.source, line.getAsInt(), Integer.MAX_VALUE, profile)) {
				Detour.variables(frame.source, frame.line, line.getAsInt()).forEach(variable -> flow.assign(variable, Value.unknown(why)));
				frame.line = line.getAsInt();
			}
		} else if (line.isPresent() && Detour.sister(frame.source, frame.line, line.getAsInt(), profile)) {
			flow.out().remark(flow.block(), message);
		} else {
			flow.out().notFollowed(flow.block(), message, Optional.empty());
		}
	}
}
