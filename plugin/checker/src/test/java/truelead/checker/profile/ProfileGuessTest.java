package truelead.checker.profile;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.grammar.ProgramText;

class ProfileGuessTest {

	private static ProfileGuess guess(String text) {
		return ProfileGuess.of(ProgramText.of(text), MachineProfile.generic());
	}

	@Test
	void aSpeedLimitAndSurfaceSpeedTellTurning() {
		ProfileGuess guess = guess("G50 S2000\nT0101\nG96 S180 M3\nG0 X42. Z2.\nG1 Z-30. F.2\n");
		assertThat(guess.profile().name()).isEqualTo("turning");
		assertThat(guess.assumed()).hasValue("no machine is named: taken for turning, as the program says G50 and has no Y word");
	}

	@Test
	void aTurretWordWithOffsetOfTheToolsNumberTellsTurning() {
		assertThat(guess("T0303\nS300 M3\nG0 X0 Z5.\nG84 Z-12. F1.\n").profile().name()).isEqualTo("turning");
	}

	@Test
	void homingByIncrementsTellsTurning() {
		assertThat(guess("G28 U0\nG0 X0 Z5.\n").profile().name()).isEqualTo("turning");
	}

	@Test
	void feedPerTurnAndThreadingByG32TellTurning() {
		assertThat(guess("G21 G99\nT12\nS150 M3\nG0 X0 Z8.\nG32 Z-25. F1.5\n").profile().name()).isEqualTo("turning");
	}

	@Test
	void aToolOfThreeDigitsAloneIsNoEvidence() {
		assertThat(guess("T123\nG0 X42. Z2.\n").profile()).isEqualTo(MachineProfile.generic());
		assertThat(guess("T123\nG0 X42. Z2.\n").assumed()).hasValue("no machine is named: generic milling is assumed");
	}

	/** DIAMON and LIMS are words of lathes, in whatever plane their live tools work. */
	@Test
	void diametersAndTheLimitOfSurfaceSpeedTellTurning() {
		assertThat(guess("G18 G71 G90 G95 DIAMON\nT5 D1\nS2500 M3\nG17\nG0 X40 Z5\n").profile().name()).isEqualTo("turning");
		assertThat(guess("LIMS=2500\nT5 D1\nG17\nG0 X40 Y5 Z5\n").profile().name()).isEqualTo("turning");
	}

	@Test
	void aLatheWithLiveToolsAndAYAxisIsALathe() {
		String live = "G28 U0\nT0505\nG98 G97 S2500 M13\nG17\nG0 X40. Y0 Z5.\nG83 X40. Y15. Z-24. R-3. Q5000 F250\n";
		assertThat(guess(live).profile().name()).isEqualTo("turning");
		assertThat(guess(live).assumed()).hasValue("no machine is named: taken for turning, as the program says G28 U or W and turret tools");
		assertThat(guess("T0101\nG17 G97 S2500 M3\nG43 H1 Z5.\nG0 X40. Y0\n").profile()).isEqualTo(MachineProfile.generic());
	}

	/** Where a turret's tools are all there is, M6 is the machine's own, such as closing a collet. */
	@Test
	void m6WithoutAMagazineToolDoesNotSpeakForAMill() {
		assertThat(guess("G50 U0 W0\nM6\nG99 M3 S3000\nT0300\nG0 X0\n").profile().name()).isEqualTo("turning");
		assertThat(guess("M6\nT3\nG50 U0 W0\nG0 X0\n").profile()).isEqualTo(MachineProfile.generic());
	}

	@Test
	void feedPerTurnAndSpeedThatIsNotOfTheSurfaceTellTurningWhereNothingMovesInY() {
		assertThat(guess("G71 G95 G54\nT3 D3\nS800 M3 G97\nG0 X0 Z5\nG1 Z-30 F0.15\n").profile().name()).isEqualTo("turning");
		assertThat(guess("G95\nT3\nG0 X0 Z5\nG95\nG0 X10 Z5\n").profile()).isEqualTo(MachineProfile.generic());
		assertThat(guess("G18 G95 G97 S800\nG0 X0 Y10\n").profile()).isEqualTo(MachineProfile.generic());
	}

	@Test
	void aMillingProgramIsNeverTakenForTurning() {
		assertThat(guess("G50\nT1 M6\nG97 S500 M3\nG0 X1. Y1.\n").profile()).isEqualTo(MachineProfile.generic());
	}

	@Test
	void aNamedTurningMachineIsKept() {
		MachineProfile lathe = MachineProfile.named("turning").with("name", "bay 2");
		assertThat(ProfileGuess.of(ProgramText.of("G50 S2000\nG96 S180\n"), lathe).profile()).isSameAs(lathe);
	}
}
