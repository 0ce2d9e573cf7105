package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.grammar.ProgramText;

/** A name's other places are found by what it stands for, not by its letters. */
class PlacesTest {

	@Test
	void aVariableStandsWhereItIsSetAndUsed() {
		assertThat(places("#101=5.\nG0 X#101 Y[#101+1.]\n#1010=2.\n(#101)\n", "#101")).containsExactly("1 #101 set", "2 #101", "2 #101");
	}

	@Test
	void aBlockNumberStandsWhereItIsJumpedToInItsOwnProgram() {
		assertThat(places("O1\nN10 X10.\nGOTO 10\nIF [#1 EQ 0] GOTO10\nM30\nO2\nN10 X1.\n", "N10"))
				.containsExactly("2 N10 set", "3 10", "4 10");
	}

	@Test
	void aSubprogramStandsWhereItIsCalled() {
		assertThat(places("M98 P2000\nG65 P2000 A1.\nG4 P2000\nM30\nO2000\nM99\n", "P2000"))
				.containsExactly("1 P2000", "2 P2000", "5 O2000 set");
	}

	@Test
	void aWordStandsWhereTheSameAddressHasTheSameNumber() {
		assertThat(places("F520\nG1 F520. X520.\nF052\n", "F520")).containsExactly("1 F520", "2 F520.");
	}

	@Test
	void howANumberIsWrittenDoesNotMatter() {
		assertThat(places("X0.05\nX.05\nX+0.0500\nX5.\n", "X0.05")).containsExactly("1 X0.05", "2 X.05", "3 X+0.0500");
		assertThat(places("Z-0.\nZ0\nZ-0\n", "Z0")).containsExactly("1 Z-0.", "2 Z0", "3 Z-0");
		assertThat(places("N0010 G0\nGOTO 10\n", "N0010")).containsExactly("1 N0010 set", "2 10");
	}

	@Test
	void labelsAndNamedSubprogramsAreFoundWhateverTheirCase() {
		assertThat(places("AGAIN:\nG0 X1.\nGOTO again\n", "AGAIN")).hasSize(2);
		assertThat(places("o<holes> sub\nG0\no<holes> endsub\nO<Holes> call\n", "o<holes>")).hasSize(3);
	}

	private static List<String> places(String program, String at) {
		ProgramText text = ProgramText.of(program);
		Places places = new Places(text, MachineProfile.named("milling-metric"));
		int offset = program.indexOf(at) + 1;
		int line = text.lineOf(offset);
		Name name = places.at(line, offset - text.lineStart(line)).orElseThrow();
		return places.of(name, line, 100, () -> false).stream()
				.map(place -> (place.line() + 1) + " " + text.line(place.line()).substring(place.name().span().start(),
						place.name().span().end()) + (place.name().defines() ? " set" : "")).toList();
	}
}
