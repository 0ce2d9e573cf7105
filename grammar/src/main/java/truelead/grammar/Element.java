package truelead.grammar;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/** One part of a block, in the order written. White space between the parts is not kept here; the block's text has it. */
public sealed interface Element {

	/** Where it stands in the block. */
	Span span();

	/**
	 * An address letter, in upper case, and its value: {@code G84}, {@code Z-12.5}, {@code F[#2*#4]}, {@code X=_HOME}; of polar words the
	 * sign, {@code @25}, {@code ^60}.
	 *
	 * @param extension the number between letter and equals sign in {@code S1=500}, -1 where there is none
	 */
	record Word(char address, int extension, Expression value, Span span) implements Element {

		/** Whether the value is a plain number. */
		public boolean literal() {
			return value instanceof Expression.Number;
		}
	}

	/** Kinds of comment by how they are marked; what stands in quotes or angle brackets beside a call names the program that is called. */
	enum CommentMark {
		PARENTHESES, SEMICOLON, SLASHES, QUOTES, ANGLE_BRACKETS;

		/** Whether what stands between such marks may be the name of a program. */
		public boolean names() {
			return this == QUOTES || this == ANGLE_BRACKETS;
		}
	}

	/**
	 * A remark for people.
	 *
	 * @param text     what stands between the marks; nested parentheses are part of it
	 * @param textSpan where {@code text} stands
	 * @param closed   false for a parenthesis or quotation mark that is still open at the end of the line
	 */
	record Comment(CommentMark mark, String text, Span textSpan, boolean closed, Span span) implements Element {
	}

	/** A chamfer or radius at a corner, {@code ,C2.} or {@code ,R2.}; never an R or C word of its own. */
	record Corner(char address, Expression value, Span span) implements Element {
	}

	/** A slash that lets the operator skip the rest of the block; level 1 where no number is written. */
	record BlockDelete(int level, Span span) implements Element {
	}

	/** The {@code %} of a program's start or end; text behind it on the line is part of the span. */
	record Percent(Span span) implements Element {
	}

	/**
	 * A value given to a variable, {@code #1=2.}, {@code #<depth>=[#3-1]}, {@code R1=5}, or to a word of several letters, {@code CR=8.}.
	 */
	record Assignment(Expression target, Expression value, Span span) implements Element {

		private static final Set<String> OF_MOTIONS = Set.of("cr", "turn", "ap", "rp", "ar");

		/**
		 * Whether it is a word of a motion that has several letters, and no variable: the radius of an arc, its further turns or its angle,
		 * an angle or a radius about a pole (from memory).
		 */
		public boolean ofMotion() {
			return target instanceof Expression.NamedVariable name && name.bare() && OF_MOTIONS.contains(name.name());
		}
	}

	/** {@code GOTO 100}, {@code IF [#1 GT 3] GOTO 100}, {@code GOTOF LABEL}; without a condition it always jumps. */
	record Jump(Optional<Expression> condition, Expression target, Span span) implements Element {
	}

	/** {@code IF [..] THEN}: the elements behind it in the block are done only where the condition holds. */
	record Conditional(Expression condition, Span span) implements Element {
	}

	/** {@code WHILE [..] DO 1}; without a condition, {@code DO 1} alone, it repeats for ever. */
	record LoopStart(Optional<Expression> condition, Expression number, Span span) implements Element {
	}

	/** {@code END 1}. */
	record LoopEnd(Expression number, Span span) implements Element {
	}

	/** Keywords of statements that begin with an O word. */
	enum OKeyword {
		SUB, ENDSUB, CALL, IF, ELSEIF, ELSE, ENDIF, WHILE, ENDWHILE, DO, REPEAT, ENDREPEAT, BREAK, CONTINUE, RETURN
	}

	/**
	 * {@code o100 sub}, {@code o<holes> call [1] [2]}, {@code o101 if [#1 gt 0]}.
	 *
	 * @param name      the name in lower case without its brackets, or the digits of the number; empty where it is computed
	 * @param number    the expression behind the O where it is not a name
	 * @param arguments condition or arguments, in the order written
	 */
	record OStatement(OKeyword keyword, String name, Optional<Expression> number, List<Expression> arguments, Span span)
			implements Element {
	}

	/** Keywords of statements that open, divide and close branches and loops, one inside the other. */
	enum ControlKeyword {
		IF, ELSEIF, ELSE, ENDIF, FOR, ENDFOR, WHILE, ENDWHILE, LOOP, ENDLOOP, REPEAT, UNTIL
	}

	/**
	 * A statement of a branch or loop that ends by a statement of its own: {@code IF R1 > 5}, {@code FOR R1 = 1 TO 8},
	 * {@code UNTIL R1 == 3}.
	 *
	 * @param values the condition; for FOR the variable, its first and its last value
	 */
	record Control(ControlKeyword keyword, List<Expression> values, Span span) implements Element {
	}

	/** {@code REPEAT FIRST LAST P=3}: again from a block on, to another one or to this; blocks by label or number, as a jump has them. */
	record Repetition(Expression from, Optional<Expression> to, Optional<Expression> count, Span span) implements Element {
	}

	/** {@code CASE R1 OF 1 GOTOF ONE 2 GOTOF TWO DEFAULT GOTOF REST}: jumps to the target of the value that fits. */
	record Choice(Expression value, List<Expression> values, List<Expression> targets, Optional<Expression> otherwise, Span span)
			implements Element {
	}

	/** {@code DEF REAL DEPTH=5, PITCH}: variables of this program, each with its value, or a {@link Expression.Missing}. */
	record Definition(List<Expression> variables, List<Expression> values, Span span) implements Element {
	}

	/** {@code PROC HOLES(REAL DEPTH, INT COUNT=4)}: the head of a subprogram with what its arguments are called and are if left out. */
	record Procedure(String name, List<Expression> parameters, List<Expression> values, Span span) implements Element {
	}

	/**
	 * {@code MCALL HOLE(5)}: the subprogram runs behind every block that moves, until MCALL alone, which has an empty name; names in upper
	 * case.
	 */
	record ModalCall(String name, List<Expression> arguments, Span span) implements Element {
	}

	/** A label to jump to: {@code AGAIN:}; the name in upper case. */
	record Label(String name, Span span) implements Element {
	}

	/**
	 * A statement of a richer control language written as a call: {@code MSG("..")}, {@code CYCLE800()}, {@code HOLES P3}; the name in
	 * upper case.
	 *
	 * @param arguments in the order written; {@link Expression.Missing} for one left out
	 * @param repeats   how often, where it is said
	 */
	record Statement(String name, List<Expression> arguments, Optional<Expression> repeats, Span span) implements Element {
	}

	/**
	 * Text of a richer control language that is kept as it is and not understood: {@code DEF REAL _X}, {@code TRAFOOF}; first word in upper
	 * case as name.
	 */
	record Opaque(String name, Span span) implements Element {
	}

	/** Text that could not be read at all; a {@link Problem} of the block says why. */
	record Unread(Span span) implements Element {
	}
}
