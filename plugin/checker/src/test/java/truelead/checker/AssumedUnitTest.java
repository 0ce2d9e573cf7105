package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;

class AssumedUnitTest {

	private static CheckResult check(String... blocks) {
		return Samples.check(MachineProfile.generic(), Job.EMPTY, blocks);
	}

	@Test
	void anInchTapInAProgramWithoutAUnitTellsTheUnit() {
		CheckResult result = check("T3 M6 (1/4-20 TAP)", "S500 M3", "G43 H3 G0 X1. Y1. Z1.", "G84 Z-.5 R.1 F25.", "G80", "M30");
		assertThat(result.work().shop().unit().value()).isEqualTo(LengthUnit.INCH);
		assertThat(result.assumptions())
				.contains("the unit was taken from the taps: their feeds and speeds fit the threads called out in no other");
	}

	@Test
	void aStatedUnitStands() {
		CheckResult result = check("G21", "T3 M6 (1/4-20 TAP)", "S500 M3", "G43 H3 G0 X1. Y1. Z1.", "G84 Z-.5 R.1 F25.", "G80", "M30");
		assertThat(result.work().shop().unit().value()).isEqualTo(LengthUnit.MM);
	}

	@Test
	void whereTheFeedIsWrongInBothTheDepthTellsTheUnit() {
		CheckResult result = check("T3 M6 (5/16-18 TAP)", "S360 M3", "G43 H3 G0 X1. Y1. Z1.", "G84 Z-.75 R.2 F15.", "G80", "M30");
		assertThat(result.work().shop().unit().value()).isEqualTo(LengthUnit.INCH);
		assertThat(result.findings()).anySatisfy(f -> assertThat(f.message())
				.startsWith("F15. at S360 advances 0.04167 in a turn, 5/16-18 UNC needs 0.05556"));
	}

	@Test
	void aFeedInTheOtherUnitDoesNotTurnTheProgramRound() {
		CheckResult metric = check("T3 M6 (M4 TAP)", "S500 M3", "G43 H3 G0 X5. Y5. Z5.", "G84 Z-8. R3. F13.78", "G80", "M30");
		assertThat(metric.work().shop().unit().value()).isEqualTo(LengthUnit.MM);
		assertThat(metric.findings()).anySatisfy(f -> assertThat(f.rule()).isEqualTo("inch-metric-mixup"));
		CheckResult inch = check("T3 M6 (1/4-20 TAP)", "S600 M3", "G43 H3 G0 X1. Y1. Z1.", "G84 Z-.9 R.2 F762.", "G80", "M30");
		assertThat(inch.work().shop().unit().value()).isEqualTo(LengthUnit.INCH);
		assertThat(inch.findings()).anySatisfy(f -> assertThat(f.rule()).isEqualTo("inch-metric-mixup"));
	}

	@Test
	void aFeedThatFitsInNeitherTellsNothing() {
		CheckResult result = check("T3 M6 (M6X1 TAP)", "S500 M3", "G43 H3 G0 X1. Y1. Z1.", "G84 Z-10. R2. F700.", "G80", "M30");
		assertThat(result.work().shop().unit().value()).isEqualTo(LengthUnit.MM);
	}
}
