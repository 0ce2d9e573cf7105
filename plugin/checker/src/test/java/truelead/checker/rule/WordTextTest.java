package truelead.checker.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.WordRef;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** A fix writes a value the way the programmer wrote the old one. */
class WordTextTest {

	@ParameterizedTest
	@CsvSource({ "F500, 520, F520", "F500., 520, F520.", "f500, 520, f520", "F 500, 520, F 520", "F7.9, 7.85, F7.85",
			"F500.00, 520, F520.00", "F.03125, 0.05, F.05000", "F0.03125, 0.05, F0.05000", "Z-.5, -0.75, Z-.75", "Z-12, -14.2, Z-14.2",
			"F500, 422.91, F422.91", "F1.000, 30, F30.000", "F500, 733.7777, F733.778" })
	void keepsTheDressOfTheOldWord(String old, double value, String expected) {
		assertThat(WordText.rewrite(word(old), value, 3)).isEqualTo(expected);
	}

	private static WordRef word(String text) {
		int point = text.indexOf('.');
		BlockRef block = new BlockRef(new ProgramFile("A.NC", ProgramText.of(text)), 0, Optional.empty());
		return new WordRef(block, Character.toUpperCase(text.charAt(0)), new Span(0, text.length()),
				point < 0 ? 0 : text.length() - point - 1, true, text);
	}
}
