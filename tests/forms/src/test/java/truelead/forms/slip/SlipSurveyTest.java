package truelead.forms.slip;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.checker.profile.MachineProfile;

/** Slips of a small program, counted and kept. */
class SlipSurveyTest {

	private static final int ALL = 10_000;

	/** Drilled and tapped as it should be. */
	private static final String COVER = """
			G21 G17 G90 G94 G40 G80
			T1 M6 (DRILL 6.8)
			G54 G0 X20. Y15. S1800 M3
			G43 H1 Z50.
			G99 G83 X20. Y15. Z-26. R2. Q3. F200.
			X60.
			G80
			G0 Z50. M5
			T2 M6 (TAP M8)
			G54 G0 X20. Y15. S400 M3
			G43 H2 Z50.
			G99 G84 X20. Y15. Z-18. R5. F500.
			X60.
			G80
			G0 Z50. M5
			M30
			""";

	@Test
	void slipsAreCountedByToolWordAndKind() {
		SlipTable table = surveyed(Optional.empty(), COVER).table();

		Slip.Kind backwards = new Slip.Kind("tap", "M3", "typed M4");
		assertThat(table.put(backwards)).isEqualTo(1);
		assertThat(table.told(backwards)).isEqualTo(1);
		assertThat(table.written(1)).containsPattern("tap, M3 typed M4 +1 put in, told +1, 100 %, information +0, silent +0  1 "
				+ "spindle-wrong-way\n");
		assertThat(table.told(new Slip.Kind("tap", "F of a cycle", "first digit one up"))).isEqualTo(1);
	}

	@Test
	void aSlipThatDoesNoHarmIsSilent() {
		Slip.Kind home = new Slip.Kind("no tool", "G40", "left out");
		SlipTable table = surveyed(Optional.empty(), COVER).table();

		assertThat(table.put(home)).isEqualTo(1);
		assertThat(table.told(home)).isZero();
	}

	@Test
	void aProgramWithAFaultIsLeftOut() {
		assertThat(surveyed(Optional.empty(), COVER.replace("F500.", "F400.")).programs()).isZero();
		assertThat(surveyed(Optional.empty(), "G21 G90\nG0 X0 Y0\nM30\n").programs()).isZero();
	}

	@Test
	void whatIsSilentIsKeptAsItWasCheckedAndMarked(@TempDir Path out) throws IOException {
		surveyed(Optional.of(new SilentSlips(out)), COVER);

		Path kept = out.resolve("no-tool").resolve("G40-left-out");
		assertThat(Files.readString(kept.resolve("1.nc"))).startsWith("G21 G17 G90 G94 G80\nT1 M6 (DRILL 6.8)\n");
		assertThat(Files.readString(kept.resolve("1.txt"))).startsWith("""
				COVER.NC: no tool, G40 left out

				-    1  G21 G17 G90 G94 G40 G80
				+    1  G21 G17 G90 G94 G80
				     2  T1 M6 (DRILL 6.8)
				""");
		assertThat(out.resolve("tap").resolve("M3-typed-M4")).doesNotExist();
	}

	@Test
	void aLineTwiceOrLostIsMarked() {
		Slip.Kind kind = new Slip.Kind("tap", "line", "twice");
		assertThat(SilentSlips.marked(new Slip(kind, 1, List.of("A", "B", "B", "C")), "P", List.of("A", "B", "C"))).endsWith("""
				     1  A
				     2  B
				+    3  B
				     4  C
				""");
		assertThat(SilentSlips.marked(new Slip(kind, 1, List.of("A", "C")), "P", List.of("A", "B", "C"))).endsWith("""
				     1  A
				-    2  B
				     2  C
				""");
	}

	private static SlipSurvey surveyed(Optional<SilentSlips> silent, String program) {
		SlipSurvey survey = new SlipSurvey(ALL, silent);
		survey.tryAll("COVER.NC", program, MachineProfile.generic());
		return survey;
	}
}
