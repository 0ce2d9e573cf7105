package truelead.checker.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

class SheetsTest {

	private static final String PLATE = """
			G21 G90 G94 G17
			T1 M6 (DRILL 5.0)
			G54 G0 X10. Y10. S3000 M3
			G81 Z-20. R2. F300
			G80
			T2 M6 (M6X1 TAP)
			(THREAD: M6X1-6H, DEPTH 10, BLIND)
			G0 X10. Y10. S520 M3
			G84 Z-14.5 R5. F500
			G80
			M30
			""";

	private final OperationSheet sheet = sheet(PLATE);

	private static OperationSheet sheet(String program) {
		return Sheets.of(WorkReader.read(new ProgramFile("plate.nc", ProgramText.of(program)), ProgramFolder.EMPTY, Job.EMPTY,
				MachineProfile.generic())).get(0);
	}

	@Test
	void namesAWorkOffsetAsTheProgramDoes() {
		assertThat(sheet(PLATE.replace("G54", "G59.1")).holes().get(0).label()).isEqualTo("G59.1 X10 Y10");
		assertThat(sheet(PLATE.replace("G54", "G54.1 P300")).holes().get(0).label()).isEqualTo("G54.1 P300 X10 Y10");
	}

	@Test
	void saysWhatFeedAndSpeedAdvance() {
		assertThat(sheet.advance()).isCloseTo(0.9615, within(1e-4));
		assertThat(sheet.lead()).isEqualTo(1.0);
		assertThat(sheet.turns()).isCloseTo(14.5, within(1e-9));
	}

	@Test
	void measuresTheHoleBeforeAndTheTapIn() {
		HoleSheet hole = sheet.holes().get(0);
		assertThat(hole.label()).isEqualTo("G54 X10 Y10");
		assertThat(hole.drill()).isEqualTo(5.0);
		assertThat(hole.drillTip()).isEqualTo(20.0);
		assertThat(hole.drillFull()).isCloseTo(20 - 2.5 / Math.tan(Math.toRadians(59)), within(1e-6));
		assertThat(hole.tip()).isEqualTo(14.5);
		assertThat(hole.start()).isEqualTo(5.0);
		assertThat(hole.clearance()).isCloseTo(3.998, within(1e-3));
	}

	@Test
	void takesTheLimitsOfTheClassCalledOut() {
		assertThat(sheet.limits().orElseThrow().minorMaxMm().orElseThrow()).isCloseTo(5.153, within(1e-9));
		assertThat(sheet.called()).isEqualTo(10.0);
	}
}
