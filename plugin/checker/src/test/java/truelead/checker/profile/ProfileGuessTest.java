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
		String live = """
				G28 U0
				T0505
				G98 G97 S2500 M13
				G17
				G0 X40. Y0 Z5.
				G83 X40. Y15. Z-24. R-3. Q5000 F250
				""";
		assertThat(guess(live).profile().name()).isEqualTo("turning");
		assertThat(guess(live).assumed())
				.hasValue("no machine is named: taken for turning, as the program says G28 U or W and turret tools");
		assertThat(guess("T0101\nG17 G97 S2500 M3\nG43 H1 Z5.\nG0 X40. Y0\n").profile()).isEqualTo(MachineProfile.generic());
	}

	/** Where a turret's tools are all there is, M6 is the machine's own, such as closing a collet. */
	@Test
	void m6WithoutAMagazineToolDoesNotSpeakForAMill() {
		assertThat(guess("G50 U0 W0\nM6\nG99 M3 S3000\nT0300\nG0 X0\n").profile().name()).isEqualTo("turning");
		assertThat(guess("M6\nT3\nG50 U0 W0\nG0 X0\n").profile()).isEqualTo(MachineProfile.generic());
	}

	/**
	 * A lathe with a simple changer says T1 M6, and some have a length offset: what tells it is that nothing moves in Y, and its plane,
	 * surface speed or feed per turn.
	 */
	@Test
	void m6FromAMagazineIsALatheWhereNothingMovesInY() {
		assertThat(guess("G21 G18\nT1 M6\nG97 S900 M3\nG0 X0 Z3\nG33 Z-18 K1.5\n").profile().name()).isEqualTo("turning");
		assertThat(guess("G21\nT1 M6\nG96 S180 M3\nG0 X42 Z3\nG1 Z-18 F.2\n").profile().name()).isEqualTo("turning");
		assertThat(guess("G95\nT1 M6\nG97 S180 M3\nG0 X0 Z3\nG1 Z-18 F.2\n").profile().name()).isEqualTo("turning");
		assertThat(guess("G99\nT1 M6\nG97 S180 M3\nG0 X0 Z3\nG99 G84 Z-18 R2 F.2\n").profile()).as("G99 and G97 are mills' too")
				.isEqualTo(MachineProfile.generic());
		assertThat(guess("G18\nT1 M6\nG96 S180 M3\nG0 X42 Y2 Z3\n").profile()).isEqualTo(MachineProfile.generic());
	}

	/** Lathes for training change tools by M6 T1, home by G28 U0 W0 and feed by the minute. */
	@Test
	void m6IsALathesWhereAContourIsTurnedOrUAndWGoHome() {
		assertThat(guess("G21 G98\nG28 U0 W0\nM06 T04\nM03 S300\nG00 X23 Z3\nG92 X19.2 Z-22 F2\nX18.6\n").profile().name())
				.isEqualTo("turning");
		assertThat(guess("G21 G98\nM06 T01\nM03 S1000\nG0 X25 Z2\nG71 U1 R1\nG71 P100 Q200 U0.1 W0.1 F60\nN100 G1 X0 Z0\nN200 X25\n")
				.profile().name()).isEqualTo("turning");
		assertThat(guess("G21\nG28 U0 W0\nM06 T04\nG43 H4 Z20\nG0 X23\n").profile()).as("a boring mill with U and W")
				.isEqualTo(MachineProfile.generic());
		assertThat(guess("G71 G90\nT1 M6\nG28 W0\nG76 X0 Z-20 R2 P100 Q0.2 F50\n").profile()).as("fine boring")
				.isEqualTo(MachineProfile.generic());
	}

	@Test
	void surfaceSpeedWithoutM6IsALatheWhateverMovesInY() {
		ProfileGuess guess = guess("G50 S2500\nT1\nG96 S150 M3\nG0 X42. Z0 Y0\n");
		assertThat(guess.profile().name()).isEqualTo("turning");
		assertThat(guess.assumed()).hasValue("no machine is named: taken for turning, as the program says G50");
	}

	/**
	 * The third way of a lathe's codes turns by G20 and threads by G21, and says its unit by G70 or G71; in the second one G98 and G99 are
	 * levels.
	 */
	@Test
	void theSystemOfCodesIsToldToo() {
		ProfileGuess third = guess("G71 G95\nG92 S2000\nT0101\nG96 S180 M4\nG20 X36. Z-30. F.3\nX32.\n");
		assertThat(third.profile().gCode(200)).containsExactly(Meaning.TURNING_PASS);
		assertThat(third.assumed()).hasValue("no machine is named: taken for turning, as the program says G95 and has no Y word; G20, G21 "
				+ "and G24 are taken for its passes, G98 and G99 for levels");
		assertThat(guess("G21 G95\nT0101\nG97 S800 M4\nG0 X0 Z5.\n").profile().gCode(990)).containsExactly(Meaning.RETURN_R_LEVEL);
		assertThat(guess("G21 G99\nT0101\nG97 S800 M4\nG0 X0 Z5.\n").profile().gCode(990)).containsExactly(Meaning.FEED_PER_REVOLUTION);
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
