package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.rule.Finding;

/** Where F does not fit S, whichever of the two is the slip more likely is to be changed. */
class MeantSpeedTest {

	private static Finding found(String speed, String cycle) {
		return Samples.findings("G21 G90", "T1 M6 (DRILL 5.0)", "S3200 M3", "G0 X0 Y0 Z5", "G81 Z-20 R3 F200", "G80", "T2 M6 (M6 TAP)",
				speed, "G0 X0 Y0 Z5", cycle, "G80", "M30").stream().filter(f -> f.rule().equals("feed-off-pitch")).findFirst()
				.orElseThrow();
	}

	private static String typed(Finding finding) {
		return finding.fixes().get(0).edits().get(0).text().strip();
	}

	@Test
	void theDrillsSpeed() {
		Finding finding = found("S3200 M3", "G84 Z-14 R5 F500");
		assertThat(finding.message()).endsWith("; S500, if S3200, the drill's, is a slip, else F3200");
		assertThat(typed(finding)).isEqualTo("S500");
	}

	@Test
	void theSpeedOfTheToolBefore() {
		Finding finding = found("M3", "G84 Z-14 R5 F500");
		assertThat(finding.message()).endsWith("; S500, if S3200 is left over from the tool before, else F3200");
		assertThat(typed(finding)).as("in the tapping block").isEqualTo("S500");
	}

	@Test
	void aSpeedOfItsOwnIsAsGoodAsTheFeed() {
		assertThat(typed(found("S400 M3", "G84 Z-14 R5 F500"))).isEqualTo("F400");
	}

	@Test
	void aFeedThatFitsNoWholeSpeed() {
		assertThat(typed(found("S3200 M3", "G84 Z-14 R5 F500.3"))).isEqualTo("F3200.0");
	}

	@Test
	void theDrillOfAWireInsertMakesNoOtherThread() {
		Finding finding = Samples.findings("G20 G90", "T1 M6 (17/64 DRILL)", "S3000 M3", "G0 X0 Y0 Z1", "G81 Z-.82 R.1 F12.", "G80",
				"T2 M6 (1/4-20 STI TAP)", "S350 M3", "G0 X0 Y0 Z1", "G84 Z-.6 R.2 F12.5", "G80", "M30").stream()
				.filter(f -> f.rule().equals("feed-off-pitch")).findFirst().orElseThrow();
		assertThat(finding.message()).as("17/64 and 28 turns an inch are G 1/16").endsWith("; F17.5");
		assertThat(typed(finding)).isEqualTo("F17.5");
	}
}
