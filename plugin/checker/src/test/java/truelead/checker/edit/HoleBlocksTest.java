package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.work.WorkReader;
import truelead.grammar.ProgramText;

/** From one block at a hole to all of them. */
class HoleBlocksTest {

	private static final String PROGRAM = """
			G21 G90 G17
			T1 M6 (DRILL 5.0)
			G0 X0 Y0 S2000 M3
			G99 G81 Z-20. R2. F200
			X10.
			G80
			T2 M6 (M6X1 TAP)
			G0 X0 Y0 S500 M3
			G99 G84 Z-12. R5. F500
			X10.
			G80
			M30
			""";

	@Test
	void theTapBlockLeadsToItsDrillBlock() {
		assertThat(touches(10)).containsExactly(Map.entry("Hole at 10 mm, 0 mm", List.of("5 T1 drill to -20 mm", "10 T2 tap to -12 mm")));
		assertThat(touches(5)).isEqualTo(touches(10));
	}

	@Test
	void aBlockThatTouchesNoHoleLeadsNowhere() {
		assertThat(touches(3)).isEmpty();
	}

	private static Map<String, List<String>> touches(int line) {
		ProgramFile file = new ProgramFile("test.nc", ProgramText.of(PROGRAM));
		Map<String, List<String>> found = new java.util.LinkedHashMap<>();
		HoleBlocks.at(WorkReader.read(file, ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.named("milling-metric")), line - 1)
				.forEach((hole, touches) -> found.put(hole, touches.stream().map(touch -> (touch.line() + 1) + " "
						+ touch.text()).toList()));
		return found;
	}
}
