package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.profile.MachineProfile;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;

/** Threads that a lathe cuts in cycles called by name: several starts, chains, few passes (order of arguments from memory). */
class NamedThreadTest {

	private static final String TWO_STARTS = "CYCLE97(8,,0,-60,20,20,16,8,2.25,0.05,15,0,20,2,3,2)";
	private static final String CHAIN = "CYCLE98(0,30,-20,30,-35,30,-50,30,8,3,1.227,0.04,29,0,9,1,2,2,2,3,1)";

	@Test
	void twoStartsAreCutHalfATurnApart() {
		assertThat(said("TR20X8 P4", TWO_STARTS)).isEmpty();
		assertThat(said("TR20X8 P4", TWO_STARTS.replace("(8,", "(4,"))).singleElement().asString()
				.startsWith("feed-off-pitch P4 cuts a lead of 4.000 mm, Tr20x8P4 has 8.000");
		assertThat(said("TR20X8 P4", TWO_STARTS.replace("3,2)", "3,1)"))).singleElement().asString()
				.startsWith("feed-off-pitch all passes start at one place: one groove is cut, Tr20x8P4 has 2 starts");
		assertThat(said("TR20X8 P4", TWO_STARTS.replace("2.25", "1.25"))).singleElement().asString()
				.startsWith("helix-off-size the deepest pass of this start outside goes to diameter 17.5 mm");
		assertThat(said("M20X2.5", "CYCLE97(2.5,,0,-28,20,20,6,1,1.534,0.03,29,0,9,1,3,2)")).singleElement().asString()
				.startsWith("helix-uneven passes from here on begin 1.25 mm beside the groove").endsWith("start them all at one angle");
	}

	@Test
	void aChainIsAsLongAsItsParts() {
		assertThat(said("M30X2", CHAIN)).isEmpty();
		assertThat(said("M30X2", CHAIN.replace("2,2,2,3", "2,2,2.5,3"))).singleElement().asString()
				.startsWith("feed-off-pitch P2.5 cuts a lead of 2.500 mm, M30x2 has 2.000");
		assertThat(said("M30X2", CHAIN.replace("1.227", "0.727"))).singleElement().asString().startsWith("helix-off-size");
		String turned = """
				G0 X34 Z2
				G1 X29.9 F0.2
				Z-60
				X44
				G0 X60 Z10
				""";
		assertThat(said("M30X2", turned + CHAIN)).isEmpty();
		assertThat(said("M30X2", turned + CHAIN.replace("-50,30", "-70,30"))).singleElement().asString()
				.startsWith("thread-into-shoulder the thread goes on to Z-73");
	}

	/** CYCLE97 with so many cuts before the finishing one. */
	@Test
	void aCutOrTwoAreTooFew() {
		String cycle = "CYCLE97(2.5,,0,-28,20,20,6,1,1.534,0.03,29,0,9,1,3,1)";
		assertThat(said("M20X2.5", cycle)).isEmpty();
		String turned = """
				G0 X24 Z2
				G1 X19.9 F0.2
				Z-50
				X34
				G0 X60 Z10
				""";
		assertThat(said("M20X2.5", turned + cycle.replace("0,9,1", "0,1,0"))).singleElement().asString()
				.startsWith("passes-too-heavy the first pass takes 1.504 mm of the thread's 1.534 mm at once");
		assertThat(said("M20X2.5", cycle.replace("0,9,1", "0,,"))).as("their number is left out").isEmpty();
	}

	@Test
	void aModalCallIsPointedAtByItsCycle() {
		String program = """
				G17 G21 G90 G54
				T5 M6 (TAP M8)
				S500 M3
				G0 X0 Y0 Z50
				F100
				MCALL CYCLE81(5,0,2,-15)
				X10 Y10
				MCALL
				G0 Z100
				M30
				""";
		Finding torn = Samples.findings(MachineProfile.generic(), program).stream()
				.filter(finding -> finding.rule().equals("tap-in-drilling-cycle")).findFirst().orElseThrow();
		assertThat("MCALL CYCLE81(5,0,2,-15)".substring(torn.at().span().start(), torn.at().span().end())).isEqualTo("CYCLE81");
	}

	private static List<String> said(String thread, String cycle) {
		return Samples.findings(MachineProfile.named("turning"), "G18 G21 G90 G95\nT5 (AUSSENGEWINDE " + thread
				+ ")\nG97 S600 M3\nG0 X50 Z10\n" + cycle + "\nG0 X100 Z100\nM30\n").stream()
				.filter(finding -> finding.severity() != Severity.INFORMATION)
				.map(finding -> finding.rule() + " " + finding.message()).toList();
	}
}
