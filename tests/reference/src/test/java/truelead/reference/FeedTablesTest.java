package truelead.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import truelead.audit.Main;
import truelead.audit.terminal.Terminal;

/** What a feed off the pitch does over 15 mm, computed by hand and said by the checker. */
class FeedTablesTest {

	@TempDir
	Path folder;

	static Stream<CSVRecord> rows() {
		return Table.rows("feed-error.csv");
	}

	@ParameterizedTest
	@MethodSource("rows")
	void driftOverTheDepth(CSVRecord row) throws IOException {
		String program = String.format(Locale.ROOT,
				"G21 G90 G94%nT1 M6 (%s TAP)%nS%s M3%nG0 X0 Y0%nG43 H1 Z20.%nG84 Z-15. R5. F%s%nG80%nM30%n", row.get("thread"),
				row.get("S_rpm"), row.get("F_programmed_mm_min"));
		String said = check(program);
		BigDecimal drift = new BigDecimal(row.get("error_15mm_depth_mm"));

		if (drift.signum() == 0) {
			assertThat(said).doesNotContain("feed-off-pitch");
		} else {
			assertThat(said).contains("feed-off-pitch")
					.contains(drift.abs().setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString() + " mm "
							+ (drift.signum() > 0 ? "ahead" : "behind"));
		}
	}

	private String check(String program) throws IOException {
		Path file = Files.writeString(folder.resolve("tap.nc"), program);
		ByteArrayOutputStream out = new ByteArrayOutputStream();
		PrintStream text = new PrintStream(out, false, StandardCharsets.UTF_8);
		Main.run(List.of("check", file.toString()), new Terminal(text, text, false));
		text.flush();
		return out.toString(StandardCharsets.UTF_8);
	}
}
