package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.grammar.ProgramText;

/** A word's meaning is what the machine makes of it where it stands. */
class WordMeaningTest {

	private static final String PROGRAM = """
			G21 G90 G94 G17
			T3 M6
			#101=12.5
			G0 X0 Y0 S520 M3 F320
			N40 G99 G84 Z-[#101+2.] R5. F520
			IF [#101 GT 20.] GOTO 40
			G80
			M30
			""";

	@Test
	void aFeedTellsWhatWasInForceBeforeAndIsBehind() {
		assertThat(meaning("F520")).startsWith("F520: feed").contains("feed: 320 mm/min before, 520 mm/min behind this block",
				"cycles return to: the initial level before, the R level behind this block");
	}

	@Test
	void anExpressionTellsWhatItsPartsComeTo() {
		assertThat(meaning("Z-[#101")).startsWith("Z-[#101+2.]: bottom of the hole", "-[#101+2.] = -14.5", "#101+2. = 14.5", "#101 = 12.5");
	}

	@Test
	void aConditionTellsWhetherItHolds() {
		assertThat(meaning("IF [#101")).contains("#101 GT 20. = does not hold", "#101 = 12.5");
	}

	@Test
	void aCodeTellsItsMeaningInTheProfileAndTheStateInForce() {
		assertThat(meaning("G84")).startsWith("G84: tap")
				.anyMatch(line -> line.startsWith("in force behind it: motion cycle G84 · unit mm · plane XY") && line.contains("tool T3")
						&& line.contains("speed 520 rev/min"));
	}

	@Test
	void behindTheEndNothingIsInForce() {
		assertThat(meaning("M30")).startsWith("M30: program end").anyMatch(line -> line.startsWith("in force: "));
	}

	@Test
	void aBlockThatIsOnlyJumpedToIsFoundTooAndOneNeverReachedIsSaid() {
		String program = "GOTO 20\nF100\nN20 F[2*3]\nM30\n";
		assertThat(meaning(program, "F[")).contains("2*3 = 6");
		assertThat(meaning(program, "F100")).containsExactly("F100: feed", "the program was not followed to this block");
	}

	private static List<String> meaning(String at) {
		return meaning(PROGRAM, at);
	}

	private static List<String> meaning(String program, String at) {
		ProgramText text = ProgramText.of(program);
		int offset = program.indexOf(at);
		int line = text.lineOf(offset);
		MachineProfile machine = MachineProfile.named("milling-metric");
		return WordMeaning.of(new ProgramFile("test.nc", text), ProgramFolder.EMPTY, machine, line, offset - text.lineStart(line),
				Budget.of(machine));
	}
}
