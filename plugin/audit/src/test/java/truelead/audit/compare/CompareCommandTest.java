package truelead.audit.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.Recorded;

class CompareCommandTest {

	private static final String PLATE = """
			G21 G90 G94 G17
			T1 M6 (DRILL 5.0)
			G54 G0 X10. Y10. S3000 M3
			G81 Z-20. R2. F300
			X30.
			G80
			T2 M6 (M6X1 TAP)
			G0 X10. Y10. S500 M3
			M29 S500
			G84 Z-12. R5. F500
			X30.
			G80
			M30
			""";

	private static final String SHAFT = """
			O0042 (M20X1.5 SHAFT END)
			G21 G40 G99
			T0303 (THREAD M20X1.5)
			G97 S600 M3
			G0 X24. Z6.
			G92 X19.3 Z-27. F1.5
			X18.7
			X18.16
			G0 X100. Z100.
			M30
			""";

	@TempDir
	Path folder;

	@Test
	void theSameProgramIsTheSame() throws IOException {
		assertThat(compare(PLATE, PLATE).out()).startsWith("0 threading operations different, 1 the same; 0 findings new, 0 gone, ");
	}

	@Test
	void linesThatChangeNothingChangeNothing() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("T2 M6", "(SECOND TOOL)\n\nN900 T2 M6")).out())
				.startsWith("0 threading operations different");
	}

	@Test
	void anotherDepthIsTold() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("Z-12.", "Z-14.")).out()).contains("changed operation, line 10: M6x1, T2",
				"    end of the tool 12 mm \u2192 14 mm");
	}

	@Test
	void lengthsAreShownAsOnDrawingsUnlessTheDifferenceWouldNotBeSeen() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("Z-12.", "Z-12.138")).out()).contains("    end of the tool 12 mm \u2192 12.14 mm");
		assertThat(compare(PLATE, PLATE.replace("Z-12.", "Z-12.003")).out()).contains("    end of the tool 12 mm \u2192 12.003 mm");
	}

	@Test
	void anotherFeedIsToldAndWhatItDoes() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("R5. F500", "R5. F480")).out()).contains("    feed F500 mm/min \u2192 F480 mm/min",
				"    advance a turn 1 mm \u2192 0.96 mm");
	}

	@Test
	void anotherPositionAndAnotherToolAreTold() throws IOException {
		Recorded run = compare(PLATE, PLATE.replace("X30.", "X35.").replace("T2 M6", "T7 M6"));
		assertThat(run.out()).contains("tool T2 \u2192 T7", "position new G54 X35 Y10", "position gone G54 X30 Y10");
	}

	@Test
	void anOperationThatIsGoneIsTold() throws IOException {
		assertThat(compare(PLATE, PLATE.substring(0, PLATE.indexOf("T2 M6")) + "M30\n").out())
				.contains("gone operation, was line 10: M6x1, T2");
	}

	@Test
	void aHoleThatIsNoLongerMadeIsTold() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("F300\nX30.\n", "F300\n")).out())
				.contains("hole made by T1 drill \u2192 nothing in this program at G54 X30 Y10").doesNotContain("not known");
	}

	@Test
	void aTurnedThreadThatIsTheSameIsTold() throws IOException {
		assertThat(compare(SHAFT, SHAFT.replace("G0 X24.", "(CLEAR)\nG0 X24.")).out())
				.startsWith("0 threading operations different, 1 the same; ");
	}

	@Test
	void whatChangedInATurnedThreadIsTold() throws IOException {
		assertThat(compare(SHAFT, SHAFT.replace("Z-27.", "Z-25.")).out())
				.contains("changed operation, line 6: M20x1.5, T3\n    ends at Z-27 \u2192 Z-25\n");
		assertThat(compare(SHAFT, SHAFT.replace("X18.16", "X18.1")).out()).contains("    goes to diameter 18.16 mm \u2192 18.1 mm\n")
				.doesNotContain("pass 3");
		assertThat(compare(SHAFT, SHAFT.replace("X19.3", "X19.2")).out())
				.contains("    first pass to diameter 19.3 mm \u2192 to diameter 19.2 mm\n");
		assertThat(compare(SHAFT, SHAFT.replace("X18.7", "X18.6")).out()).contains("    pass 2 to diameter 18.7 mm \u2192 18.6 mm\n");
		assertThat(compare(SHAFT, SHAFT.replace("X18.16", "X18.3\nX18.16")).out()).contains("    passes 3 \u2192 4\n")
				.doesNotContain("pass 3 to");
		assertThat(compare(SHAFT, SHAFT.replace("F1.5", "F1.25")).out())
				.contains("    feed F1.5 mm/rev \u2192 F1.25 mm/rev\n    advance a turn 1.5 mm \u2192 1.25 mm\n");
		assertThat(compare(SHAFT, SHAFT.replace("M3", "M4")).out())
				.contains("    spindle clockwise \u2192 counter-clockwise\n    hand right \u2192 left\n");
	}

	@Test
	void whatChangedInACycleThatDividesTheDepthIsTold() throws IOException {
		String cycle = SHAFT.replace("G92 X19.3 Z-27. F1.5\nX18.7\nX18.16\n", "G76 P020060 Q50 R.02\nG76 X18.16 Z-27. P920 Q250 F1.5\n");
		assertThat(compare(cycle, cycle.replace("Q250", "Q350")).out()).contains("    first pass 0.25 mm deep \u2192 0.35 mm deep\n");
		assertThat(compare(cycle, cycle.replace("P920", "P92")).out()).contains("    height by the cycle 0.92 mm \u2192 0.092 mm\n");
		assertThat(compare(SHAFT, cycle).out()).contains("    passes 3 \u2192 as many as the control makes\n",
				"    first pass to diameter 19.3 mm \u2192 0.25 mm deep\n");
	}

	@Test
	void whatChangedInACycleThatIsCalledByNameIsToldAsFarAsItSaysIt() throws IOException {
		String named = SHAFT.replace("G92 X19.3 Z-27. F1.5\nX18.7\nX18.16\n", "CYCLE97(1.5,,0,-25,20,20,6,2,0.92,0.05,30,0,8,1,3,1)\n");
		assertThat(compare(named, named.replace(",8,1,", ",10,1,")).out()).contains("    passes 9 \u2192 11\n")
				.doesNotContain("first pass", "pass 2");
		assertThat(compare(named, named.replace("0.05", "0.1")).out()).contains("    the depth is divided into passes otherwise\n");
		assertThat(compare(named, named.replace("-25", "-24")).out()).contains("    ends at Z-27 \u2192 Z-26\n");
	}

	@Test
	void anotherStartOfATurnedThreadIsTold() throws IOException {
		String twoStarts = SHAFT.replace("M20X1.5", "M20X3 P1.5").replace("F1.5", "F3.")
				.replace("X18.16\n", "X18.16\nG0 Z7.5\nG92 X19.3 Z-27. F3.\nX18.7\nX18.16\n");
		assertThat(compare(SHAFT, twoStarts).out()).contains("    starts 1 \u2192 2\n", "    passes 3 \u2192 6\n");
	}

	@Test
	void aTurnedThreadThatIsGoneIsTold() throws IOException {
		assertThat(compare(SHAFT, SHAFT.substring(0, SHAFT.indexOf("T0303")) + "M30\n").out())
				.contains("gone operation, was line 6: M20x1.5, T3");
	}

	@Test
	void thePageTellsWhatChangedInATurnedThread() throws IOException {
		assertThat(page(SHAFT, SHAFT.replace("Z-27.", "Z-25."))).contains("<strong>1 threading operation different</strong>",
				"<li>ends at Z-27 \u2192 Z-25</li>", "then: Passes from Z6 to Z-27,", "now: Passes from Z6 to Z-25,");
	}

	@Test
	void aMissingFileIsNamed() throws IOException {
		Path one = Files.writeString(folder.resolve("a.nc"), PLATE);
		Recorded run = Recorded.run("compare", one, folder.resolve("gone.nc"));
		assertThat(run.status()).isEqualTo(2);
		assertThat(run.err()).contains("gone.nc: no such file or folder");
	}

	@Test
	void thePageTellsTheSame() throws IOException {
		assertThat(page(PLATE, PLATE.replace("Z-12.", "Z-14."))).contains("<strong>1 threading operation different</strong>",
				"<li>end of the tool 12 mm \u2192 14 mm</li>", "<svg ");
	}

	@Test
	void thePageIsAsGraveAsWhatCame() throws IOException {
		assertThat(page(PLATE, PLATE.replace("R5. F500", "R2. F500")))
				.contains("<p class=\"verdict look\">", "1 finding came: 1 information; 0 findings went.",
						"<span class=\"level\">\u00b7 information</span>");
		assertThat(page(PLATE, PLATE.replace("R5. F500", "R5. F480")))
				.contains("<p class=\"verdict bad\">", "1 finding came: 1 error; 0 findings went.");
		assertThat(page(PLATE, PLATE)).contains("<p class=\"verdict good\">", "<strong>The threads are the same</strong>",
				"1 threading operation, no finding came or went.");
	}

	private String page(String before, String after) throws IOException {
		Path page = folder.resolve("page.html");
		Recorded.run("compare", Files.writeString(folder.resolve("a.nc"), before), Files.writeString(folder.resolve("b.nc"), after),
				"--report", "html:" + page);
		return Files.readString(page);
	}

	private Recorded compare(String before, String after) throws IOException {
		Path old = Files.writeString(folder.resolve("a.nc"), before);
		Path now = Files.writeString(folder.resolve("b.nc"), after);
		Recorded run = Recorded.run("compare", old, now);
		assertThat(run.err()).isEmpty();
		return run;
	}
}
