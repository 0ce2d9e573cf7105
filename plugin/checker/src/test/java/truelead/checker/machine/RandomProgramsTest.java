package truelead.checker.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import truelead.checker.profile.MachineProfile;

/** Whatever stands in a program, following it ends, throws nothing and makes up no number. */
class RandomProgramsTest {

	private static final MachineProfile SMALL = MachineProfile.generic().with("budget", "3000");

	@Property(tries = 400)
	void programsOfWordsNeverThrowOrHang(@ForAll("programs") List<String> lines) {
		assertThat(Followed.on(SMALL, lines.toArray(String[]::new)).steps()).isNotEmpty();
	}

	@Property(tries = 150)
	void neitherOnTheOtherProfiles(@ForAll("programs") List<String> lines, @ForAll("profiles") MachineProfile profile) {
		assertThat(Followed.on(profile, lines.toArray(String[]::new)).steps()).isNotEmpty();
	}

	@Property(tries = 200)
	void textOfAnyKindNeverThrows(@ForAll String text) {
		Followed.on(SMALL, text);
	}

	@Property(tries = 200)
	void theSameProgramGivesTheSameSteps(@ForAll("programs") List<String> lines) {
		String[] program = lines.toArray(String[]::new);
		assertThat(Followed.on(SMALL, program).steps().toString()).isEqualTo(Followed.on(SMALL, program).steps().toString());
	}

	@Property(tries = 200)
	void noCoordinateIsEndless(@ForAll("programs") List<String> lines) {
		for (Step.Move move : Followed.on(SMALL, lines.toArray(String[]::new)).moves()) {
			assertThat(Double.isInfinite(move.to().x()) || Double.isInfinite(move.to().y()) || Double.isInfinite(move.to().z())).isFalse();
		}
	}

	@Provide
	Arbitrary<MachineProfile> profiles() {
		return Arbitraries.of(MachineProfile.shipped()).map(name -> MachineProfile.named(name).with("budget", "3000"));
	}

	@Provide
	Arbitrary<List<String>> programs() {
		return blocks().list().ofMinSize(1).ofMaxSize(40);
	}

	private Arbitrary<String> blocks() {
		Arbitrary<String> words = words().list().ofMinSize(0).ofMaxSize(7).map(list -> String.join("", list));
		return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(12, words), net.jqwik.api.Tuple.of(5, statements()),
				net.jqwik.api.Tuple.of(1, Arbitraries.strings().ofMaxLength(30).map(text -> text.replace('\n', ' '))));
	}

	private Arbitrary<String> words() {
		Arbitrary<String> codes = Arbitraries.of("G0", "G1", "G2", "G3", "G4", "G10", "G16", "G15", "G17", "G18", "G19", "G20", "G21",
				"G28", "G33", "G33.1", "G40", "G41",
				"G43", "G49", "G50", "G50.1", "G51", "G51.1", "G52", "G53", "G54", "G55", "G54.1", "G65", "G66", "G67", "G68", "G69", "G73",
				"G74", "G76", "G80", "G81",
				"G83", "G84", "G85", "G90", "G91", "G92", "G92.1", "G93", "G94", "G95", "G96", "G97", "G98", "G99", "G123", "M0", "M3",
				"M4", "M5", "M6", "M29", "M30",
				"M97", "M98", "M99", "L0", "L2", "K3", "P1", "P2", "P10", "P20010", "/", "L50", "D1", "H1", "T1", "T0202", "(note)");
		Arbitrary<String> numbers = Combinators.combine(Arbitraries.of("X", "Y", "Z", "I", "J", "K", "R", "Q", "F", "S", "A", "C", "U", "W",
				"P"), values()).as((letter, value) -> letter + value);
		return Arbitraries.oneOf(codes, numbers);
	}

	private Arbitrary<String> values() {
		return Arbitraries.oneOf(Arbitraries.integers().between(-30, 30).map(String::valueOf),
				Arbitraries.of("1.5", "-.25", "0", "#1", "#101", "[#1+2]", "[1/0]", "[#1/#2]", "SIN[#1]", "[SQRT[-1]]", "#5001", "##1",
						"1E9", "99999999."));
	}

	private Arbitrary<String> statements() {
		return Arbitraries.of("#1=1", "#1=#1+1", "#2=#1*#101", "#101=[#1-5]", "IF[#1 LT 5]GOTO10", "IF[#101 EQ #0]THEN #101=3", "N10",
				"N20", "GOTO 10", "GOTO 20", "GOTO[#1]",
				"WHILE[#1LT9]DO1", "END1", "DO2", "END2", "O10", "O1", "O2", "M98P10", "M98P2L3", "M97P20", "M99", "M99P10", "G65P10A1.B#1",
				"o1 sub", "o1 endsub", "o1 call [3]",
				"o2 if [#1 gt 2]", "o2 else", "o2 endif", "o3 while [#1 lt 3]", "o3 endwhile", "o4 repeat [5]", "o4 endrepeat", "o3 break",
				"o3 continue", "%", "R1=R1+1",
				"IF R1<5 GOTOB AGAIN", "AGAIN:", "TRANS X5", "IF R1>2", "IF R9>2", "ELSEIF R1==1", "ELSE", "ENDIF", "FOR R1=0 TO 3",
				"FOR R2=R9 TO 3", "ENDFOR", "WHILE R1<4",
				"WHILE R9<4", "ENDWHILE", "LOOP", "ENDLOOP", "REPEAT", "UNTIL R1>3", "UNTIL R9>3",
				"CASE R1 OF 1 GOTOF AGAIN DEFAULT GOTOB N10", "REPEAT AGAIN P=2", "R[R1]=R1", "DEF INT K=2",
				"PROC PART(REAL A, REAL B=2)", "PART(1)", "PART P2", "MCALL PART(R1)", "MCALL", "RET", "M17", "M2", "CYCLE84(1,2)",
				"#[#1]=#[#2+1]", "X=IC(2)");
	}
}
