package truelead.checker.arithmetic;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import truelead.checker.program.Reason;

/**
 * The variables of a run: local ones (1 to 33 and names without an underscore) in levels, one for each macro call; common ones (100 to 999
 * and above, names that begin with an underscore); system ones, which the state answers where it can.
 */
public final class Variables {

	private static final int LOCALS = 33;
	/** More variables than any control has; what is set beyond them stays not known. */
	private static final int MOST = 100_000;

	/** One level of local variables. */
	private static final class Level {
		final Map<Integer, Value> numbered = new HashMap<>();
		final Map<String, Value> named = new HashMap<>();
		final Set<String> defined = new HashSet<>();
		final Value unset;
		int print;

		Level(Value unset) {
			this.unset = unset;
		}
	}

	private final Map<Integer, Value> common = new HashMap<>();
	private final Map<String, Value> global = new HashMap<>();
	private final Deque<Level> levels = new ArrayDeque<>();
	private final IntFunction<Value> system;
	private final boolean unsetIsZero;
	private final BooleanSupplier numberIsZero;
	private int print;

	/**
	 * Variables with nothing set; {@code system} answers numbers from 1000 on, with null where the machine does not say.
	 *
	 * @param numberIsZero whether those with numbers alone are zero until they are set
	 */
	public Variables(IntFunction<Value> system, boolean unsetIsZero, BooleanSupplier numberIsZero) {
		this.system = system;
		this.numberIsZero = numberIsZero;
		this.unsetIsZero = unsetIsZero;
		levels.push(new Level(null));
	}

	/** A new level of locals; arguments are set in it next, the others have the value {@code unset}. */
	public void enter(Value unset) {
		levels.push(new Level(unset));
	}

	/** Back to the level before. */
	public void leave() {
		if (levels.size() > 1) {
			levels.pop();
		}
	}

	Value get(int number) {
		return get(number, false);
	}

	/**
	 * The value of a word that is one variable and nothing else: one that nothing has set was forgotten, even where it would count as zero
	 * in a sum.
	 */
	Value alone(int number) {
		return get(number, true);
	}

	private Value get(int number, boolean alone) {
		if (number == 0) {
			return Value.VACANT;
		}
		Value value = local(number) ? levels.peek().numbered.get(number) : common.get(number);
		if (value != null) {
			return value;
		}
		if (local(number) && levels.peek().unset != null) {
			return levels.peek().unset;
		}
		Value told = number >= 1000 ? system.apply(number) : null;
		if (told == null && number < 1000 && (unsetIsZero || !alone && numberIsZero.getAsBoolean())) {
			return Value.ZERO;
		}
		return told != null ? told : Value.unknown(number >= 1000 ? Reason.of("#" + number + " is known at the machine only")
				: Reason.notSet("#" + number));
	}

	/** The value of a named one; {@code bare} without the marks of RS-274, so that R1 is common to all programs. */
	Value get(String name, boolean bare) {
		Value value = common(name, bare) ? global.get(name) : level(name, bare).named.get(name);
		return value != null ? value : unsetIsZero ? Value.ZERO : Value.unknown(Reason.notSet(spoken(name, bare)));
	}

	/** Whether a name has been set. */
	public boolean set(String name, boolean bare) {
		return common(name, bare) ? global.containsKey(name) : level(name, bare).named.containsKey(name);
	}

	/**
	 * The level of a name without marks: that in force, or the nearest one before it whose program has defined it, where the one in force
	 * knows nothing of that name (subprograms may see what their callers define, as the control is set; from memory).
	 */
	private Level level(String name, boolean bare) {
		Level inForce = levels.peek();
		if (!bare || inForce.named.containsKey(name) || inForce.defined.contains(name)) {
			return inForce;
		}
		return levels.stream().filter(level -> level.defined.contains(name)).findFirst().orElse(inForce);
	}

	/**
	 * Whether a name is one for all programs: RS-274's with an underscore, R1 and its like, but for what a program has defined for itself.
	 */
	private boolean common(String name, boolean bare) {
		boolean shared = name.startsWith("_") || bare && name.charAt(0) == 'r' && name.length() > 1
				&& name.chars().skip(1).allMatch(Character::isDigit);
		return shared && !levels.peek().defined.contains(name);
	}

	/** A name is one of the program in hand alone. */
	public void define(String name, Value value) {
		if (levels.peek().named.size() < MOST) {
			levels.peek().defined.add(name);
			levels.peek().named.put(name, value);
		}
	}

	/** Sets a numbered one; #0 stays vacant. */
	public void set(int number, Value value) {
		Map<Integer, Value> variables = local(number) ? levels.peek().numbered : common;
		if (number != 0 && (variables.size() < MOST || variables.containsKey(number))) {
			changed(local(number), number * 31, variables.put(number, value), value);
		}
	}

	/** Sets a named one; {@code bare} without the marks of RS-274. */
	public void set(String name, boolean bare, Value value) {
		Map<String, Value> variables = common(name, bare) ? global : level(name, bare).named;
		if (variables.size() < MOST || variables.containsKey(name)) {
			changed(!common(name, bare), name.hashCode(), variables.put(name, value), value);
		}
	}

	private void changed(boolean local, int variable, Value before, Value now) {
		int change = (variable | 1) * (Double.hashCode(now.number()) - (before == null ? 0 : Double.hashCode(before.number())));
		if (local) {
			levels.peek().print += change;
		} else {
			print += change;
		}
	}

	/** A number that tells most states of the variables in reach apart. */
	public int print() {
		return 31 * print + levels.peek().print;
	}

	/** All variables, as a value. */
	public List<Object> memory() {
		List<Object> memory = new ArrayList<>(List.of(Map.copyOf(common), Map.copyOf(global)));
		levels.forEach(level -> memory.addAll(List.of(Map.copyOf(level.numbered), Map.copyOf(level.named), Set.copyOf(level.defined))));
		return memory;
	}

	/** How many levels of local variables there are. */
	public int depth() {
		return levels.size();
	}

	/** Whether a name is one of the level in force. */
	public boolean local(String name, boolean bare) {
		return !common(name, bare);
	}

	/** Whether a number is one of the level in force. */
	public static boolean local(int number) {
		return number >= 1 && number <= LOCALS;
	}

	private static String spoken(String name, boolean bare) {
		return bare ? name.toUpperCase(Locale.ROOT) : "#<" + name + ">";
	}
}
