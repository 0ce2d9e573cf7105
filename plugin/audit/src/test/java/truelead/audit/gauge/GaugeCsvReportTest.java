package truelead.audit.gauge;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import truelead.audit.Recorded;

/** What a gauge sheet asks for at each thread. */
class GaugeCsvReportTest {

	private static final String PLATE = """
			G21 G90
			T1 M6 (DRILL 6.8)
			G54 G0 X10 Y10 S2000 M3
			G81 Z-20 R2 F300
			X30
			G80
			T2 M6 (M8 TAP)
			G0 X10 Y10 S500 M3
			G84 Z-14 R5 F625
			X30
			G80
			M30
			""";
	private static final String SHAFT = """
			O0042 (SHAFT END)
			G21 G40 G99
			T0303 (THREAD M20X1.5-6G)
			G97 S600 M3
			G0 X24. Z6.
			G92 X19.3 Z-27. F1.5
			X18.7
			X18.16
			G0 X100. Z100.
			M30
			""";
	private static final String RING = """
			O0043 (RING)
			G21 G40 G99
			T0404 (BORE)
			G97 S900 M3
			G0 X22.4 Z2.
			G1 Z-25. F.1
			X21.
			G0 Z100.
			T0505 (M24X1.5 INSIDE)
			G97 S500 M3
			G0 X21. Z6.
			G92 X22.9 Z-20. F1.5
			X23.5
			X24.
			G0 Z100.
			M30
			""";

	@TempDir
	Path folder;

	private List<CSVRecord> rows(String program, Object... options) throws IOException {
		Path file = Files.writeString(folder.resolve("part.nc"), program);
		Object[] all = new Object[4 + options.length];
		System.arraycopy(new Object[] {"check", file, "--report", "gauge-csv"}, 0, all, 0, 4);
		System.arraycopy(options, 0, all, 4, options.length);
		try (CSVParser parser = CSVParser.parse(Recorded.run(all).out(),
				CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get())) {
			return parser.getRecords();
		}
	}

	private static List<String> cells(CSVRecord row, String... names) {
		return List.of(names).stream().map(row::get).toList();
	}

	@Test
	void tappedHolesByPinAndPlug() throws IOException {
		CSVRecord row = rows(PLATE).get(0);
		assertThat(cells(row, "thread", "tool", "number", "measured", "go", "no-go", "countersink or chamfer", "check"))
				.containsExactly("M8x1.25", "T2", "2", "minor diameter, pin", "6.647 mm", "6.912 mm", "over 8 mm", "first and last hole");
		assertThat(row.get("thread gauge")).isEqualTo("M8x1.25 (6H where the drawing gives no class) go / no-go thread gauge");
	}

	@Test
	void aThreadTurnedOutsideByMicrometerAndRing() throws IOException {
		CSVRecord row = rows(SHAFT).get(0);
		assertThat(cells(row, "thread", "tool", "number", "measured", "go", "no-go", "depth", "countersink or chamfer", "check"))
				.containsExactly("M20x1.5-6G", "T3", "1", "major diameter, micrometer", "19.968 mm", "19.732 mm",
						"as drawn, programmed to Z-27", "to 18.16 mm or less",
						"first part, every 25th, last part; after each new point or offset");
		assertThat(row.get("thread gauge")).isEqualTo("M20x1.5-6g go / no-go ring gauge, or pitch diameter 18.854 to 18.994 mm");
		assertThat(row.get("source")).contains("ISO 965-1", "from memory");
		assertThat(rows(SHAFT, "--gauge-every", 10).get(0).get("check")).startsWith("first part, every 10th");
	}

	@Test
	void aThreadTurnedInsideByPinAndPlug() throws IOException {
		assertThat(cells(rows(RING).get(0), "thread", "number", "measured", "go", "no-go", "thread gauge", "depth",
				"countersink or chamfer")).containsExactly("M24x1.5", "1", "minor diameter, pin", "22.376 mm", "22.676 mm",
						"M24x1.5 (6H where the drawing gives no class) go / no-go thread gauge", "as drawn, programmed to Z-20",
						"over 24 mm");
	}

	@Test
	void aTaperOutsideByItsRing() throws IOException {
		String taper = SHAFT.replace("M20X1.5-6G", "1/2-14 NPT").replace("G92 X19.3 Z-27. F1.5\nX18.7\nX18.16\n",
				"G92 X20.3 Z-14. R-.625 F1.8143\nX19.7\nX19.3\n");
		assertThat(cells(rows(taper).get(0), "go", "no-go", "thread gauge", "countersink or chamfer", "source"))
				.containsExactly("as drawn", "as drawn", "1/2-14 NPT taper ring gauge, gauge plane 0.32 in behind the small end",
						"as drawn", "ASME B1.20.1 Table 2");
	}

	@Test
	void whatNoTableHoldsIsAsDrawnAndSaysSo() throws IOException {
		assertThat(cells(rows(SHAFT.replace("M20X1.5-6G", "1-14 UNS-2B").replace("F1.5", "F1.8143")).get(0), "measured", "go", "no-go",
				"source")).containsExactly("major diameter, micrometer", "as drawn", "as drawn", "class 2B outside is not in the tables");
		assertThat(cells(rows(SHAFT.replace("M20X1.5-6G", "SHAFT")).get(0), "thread", "go", "thread gauge", "source"))
				.containsExactly("thread not named", "as drawn", "ring gauge as drawn", "not in the tables");
	}

	@Test
	void whatALoopCutsAgainAndWhatAnotherToolFinishesIsGaugedOnce() throws IOException {
		assertThat(rows(SHAFT.replace("T0303", "#1=0\nWHILE [#1 LT 5] DO1\nT0303").replace("M30", "T0101\n#1=#1+1\nEND1\nM30"))).hasSize(1)
				.allSatisfy(row -> assertThat(row.get("number")).isEqualTo("1"));
		String finished = SHAFT.replace("X18.16\n", "X18.3\n")
				.replace("M30", "T0707 (FINISH THREAD M20X1.5-6G)\nG97 S600 M3\nG0 X24. Z6.\nG92 X18.2 Z-27. F1.5\nX18.16\n"
						+ "G0 X100. Z100.\nM30");
		assertThat(rows(finished)).extracting(row -> row.get("tool")).containsExactly("T7");
	}

	@Test
	void aThreadMilledOnABossIsOneOutside() throws IOException {
		String boss = """
				G21 G90
				T1 M6 (THREAD MILL D10 M30X1.5-6G OUTSIDE)
				G54 G0 X0 Y0 S2000 M3
				G0 X25. Y0
				Z-12.
				G1 X19.08 F200
				G2 X19.08 Y0 Z-10.5 I-19.08
				G2 X19.08 Y0 Z-9. I-19.08
				G1 X25.
				G0 Z50.
				M30
				""";
		assertThat(cells(rows(boss).get(0), "measured", "go", "no-go")).containsExactly("major diameter, micrometer",
				"29.968 mm", "29.732 mm");
	}
}
