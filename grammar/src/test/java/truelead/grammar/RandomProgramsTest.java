package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Random blocks of all forms read without a problem; random bytes never throw. */
class RandomProgramsTest {

	@Property(tries = 2000)
	void aValidBlockHasNoProblem(@ForAll("blocks") String block) {
		assertThat(BlockReader.read(block).problems()).as(block).isEmpty();
		Coverage.check(BlockReader.read(block));
	}

	@Property(tries = 1000)
	void randomBytesAreKept(@ForAll byte[] bytes) {
		ProgramText program = ProgramText.read(bytes);
		assertThat(program.bytes()).isEqualTo(bytes);
		for (int line = 0; line < program.lineCount(); line++) {
			Coverage.check(program.block(line));
		}
	}

	@Property(tries = 3000)
	void randomPiecesOfCodeAreKept(@ForAll("soup") String line) {
		Coverage.check(BlockReader.read(line));
	}

	@Provide
	Arbitrary<String> soup() {
		return Arbitraries.oneOf(Arbitraries.of("G", "X", "O", "N", "1", "2.5", ".", "-", "#", "[", "]", "(", ")", "/", "**", "=", "==",
				"<", ">", "IF", "THEN", "WHILE", "DO", "END", "GOTO", "SIN", "ATAN", "MOD", "AND", "EQ", "sub", "call", "\"", ";", "%", ":",
				",", "$", "o<", "#<a>", "_X", "DEF", "MSG(", "FOR", "TO", "CASE", "OF", "PROC", "UNTIL", "ELSEIF", "REPEAT", "CALL",
				"MCALL", "LOOP", "ENDFOR", "R", "P", "AGAIN",  "é", "\0", "l", "E-05", " "), Arbitraries.strings().ofMaxLength(2)).list()
				.ofMaxSize(15).map(parts -> String.join("", parts));
	}

	@Provide
	Arbitrary<String> blocks() {
		Arbitrary<String> word = Combinators.combine(Arbitraries.of("G", "X", "Y", "Z", "F", "S", "M", "r", "i", "K", "@", "^"), values())
				.as((letter, value) -> letter + value);
		Arbitrary<String> words = Combinators.combine(word.list().ofMinSize(1).ofMaxSize(8), Arbitraries.of("", " ", "  ", "\t"))
				.as((list, gap) -> String.join(gap, list));
		Arbitrary<String> assignment = Combinators.combine(variables(), expressions(3)).as((variable, value) -> variable + "=" + value);
		Arbitrary<String> condition = Combinators.combine(expressions(2), Arbitraries.of(" EQ ", "GT", " LE", " <> ", "=="), expressions(1))
				.as((left, compare, right) -> "[" + left + compare + right + "]");
		Arbitrary<String> flow = Combinators.combine(Arbitraries.of("IF %s GOTO 10", "IF%sTHEN#1=2", "WHILE %s DO 1", "o100 if %s",
				"O<name> while %s", "IF %s GOTO#5", "IF %s", "WHILE %s", "UNTIL %s", "ELSEIF %s", "FOR R1=1 TO %s",
				"CASE %s OF 1 GOTOF AGAIN DEFAULT GOTOB N10", "REPEAT ROW P=%s", "DEF REAL DEPTH=%s", "R[%s]=1", "HOLES P=%s"), condition)
				.as((form, text) -> form.replace("%s", text));
		Arbitrary<String> body = Arbitraries.oneOf(words, words, assignment, flow);
		return Combinators.combine(Arbitraries.of("", "/", "/2 ", "N10 ", "N5"), body, Arbitraries.of("", " (NOTE)", "(M8 (FINE))",
				" ; note")).as((before, text, behind) -> {
			boolean oWord = text.startsWith("o") || text.startsWith("O");
			return (oWord ? "" : before) + text + behind;
		});
	}

	private static Arbitrary<String> values() {
		return Arbitraries.oneOf(numbers(), numbers(), numbers().map(number -> "-" + number), numbers().map(number -> " + " + number),
				variables(), variables().map(text -> "-" + text), expressions(2).map(text -> "[" + text + "]"));
	}

	private static Arbitrary<String> numbers() {
		return Combinators.combine(Arbitraries.integers().between(0, 9999), Arbitraries.of("", ".", ".5", ".0250"))
				.as((whole, fraction) -> whole + fraction);
	}

	private static Arbitrary<String> variables() {
		return Arbitraries.of("#1", "#100", "#<depth>", "#<_safe height>", "#[#1+2]", "##3", "# 5");
	}

	private static Arbitrary<String> expressions(int depth) {
		Arbitrary<String> simple = Arbitraries.oneOf(numbers(), variables());
		if (depth == 0) {
			return simple;
		}
		Arbitrary<String> inner = Arbitraries.lazy(() -> expressions(depth - 1));
		Arbitrary<String> binary = Combinators.combine(inner, Arbitraries.of("+", " - ", "*", "/", "**", "MOD", " AND ", "OR", " XOR "),
				inner).as((a, sign, b) -> a + sign + b);
		Arbitrary<String> function = Combinators.combine(Arbitraries.of("SIN", "cos", "ROUND", "FIX", "ABS", "SQRT", "BIN"), inner)
				.as((name, value) -> name + "[" + value + "]");
		Arbitrary<String> tangent = Combinators.combine(inner, inner).as((a, b) -> "ATAN[" + a + "]/[" + b + "]");
		return Arbitraries.oneOf(simple, binary, function, tangent, inner.map(text -> "[" + text + "]"));
	}
}
