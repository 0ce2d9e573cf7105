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

	@TempDir
	Path folder;

	@Test
	void theSameProgramIsTheSame() throws IOException {
		assertThat(compare(PLATE, PLATE).out()).startsWith("0 threading operations different, 1 the same; 0 findings new, 0 gone, ");
	}

	@Test
	void linesThatChangeNothingChangeNothing() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("T2 M6", "(SECOND TOOL)\n\nN900 T2 M6")).out()).startsWith("0 threading operations different");
	}

	@Test
	void anotherDepthIsTold() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("Z-12.", "Z-14.")).out()).contains("changed operation, line 10: M6x1, T2", "    end of the tool 12 mm \u2192 14 mm");
	}

	@Test
	void lengthsAreShownAsOnDrawingsUnlessTheDifferenceWouldNotBeSeen() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("Z-12.", "Z-12.138")).out()).contains("    end of the tool 12 mm \u2192 12.14 mm");
		assertThat(compare(PLATE, PLATE.replace("Z-12.", "Z-12.003")).out()).contains("    end of the tool 12 mm \u2192 12.003 mm");
	}

	@Test
	void anotherFeedIsToldAndWhatItDoes() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("R5. F500", "R5. F480")).out()).contains("    feed F500 mm/min \u2192 F480 mm/min", "    advance a turn 1 mm \u2192 0.96 mm");
	}

	@Test
	void anotherPositionAndAnotherToolAreTold() throws IOException {
		Recorded run = compare(PLATE, PLATE.replace("X30.", "X35.").replace("T2 M6", "T7 M6"));
		assertThat(run.out()).contains("tool T2 \u2192 T7", "position new G54 X35 Y10", "position gone G54 X30 Y10");
	}

	@Test
	void anOperationThatIsGoneIsTold() throws IOException {
		assertThat(compare(PLATE, PLATE.substring(0, PLATE.indexOf("T2 M6")) + "M30\n").out()).contains("gone operation, was line 10: M6x1, T2");
	}

	@Test
	void aHoleThatIsNoLongerMadeIsTold() throws IOException {
		assertThat(compare(PLATE, PLATE.replace("F300\nX30.\n", "F300\n")).out()).contains("hole made by T1 drill \u2192 nothing in this program at G54 X30 Y10").doesNotContain("not known");
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
		assertThat(page(PLATE, PLATE.replace("Z-12.", "Z-14."))).contains("<strong>1 threading operation different</strong>", "<li>end of the tool 12 mm \u2192 14 mm</li>", "<svg ");
	}

	@Test
	void thePageIsAsGraveAsWhatCame() throws IOException {
		assertThat(page(PLATE, PLATE.replace("R5. F500", "R2. F500"))).contains("<p class=\"verdict look\">", "1 finding came: 1 information; 0 findings went.", "<span class=\"level\">\u00b7 information</span>");
		assertThat(page(PLATE, PLATE.replace("R5. F500", "R5. F480"))).contains("<p class=\"verdict bad\">", "1 finding came: 1 error; 0 findings went.");
		assertThat(page(PLATE, PLATE)).contains("<p class=\"verdict good\">", "<strong>The threads are the same</strong>", "1 threading operation, no finding came or went.");
	}

	private String page(String before, String after) throws IOException {
		Path page = folder.resolve("page.html");
		Recorded.run("compare", Files.writeString(folder.resolve("a.nc"), before), Files.writeString(folder.resolve("b.nc"), after), "--report", "html:" + page);
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
