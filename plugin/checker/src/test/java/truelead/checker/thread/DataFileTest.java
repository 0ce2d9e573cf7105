package truelead.checker.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import truelead.checker.callout.CalloutReader;

class DataFileTest {

	@Test
	void readsEveryFileAsAnyReaderOfSuchFilesDoes() throws Exception {
		assertThat(readAlike(DataFile.class, "npt.csv")).isGreaterThan(15);
		assertThat(readAlike(CalloutReader.class, "words.csv")).isGreaterThan(1);
	}

	/** How many files lie beside a class and one of them. */
	private static int readAlike(Class<?> beside, String one) throws Exception {
		CSVFormat format = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true)
				.setIgnoreEmptyLines(true).get();
		try (Stream<Path> files = Files.list(Path.of(beside.getResource(one).toURI()).getParent())) {
			List<String> names = files.map(file -> file.getFileName().toString()).filter(name -> name.endsWith(".csv")).toList();
			for (String name : names) {
				try (Reader in = new InputStreamReader(beside.getResourceAsStream(name), StandardCharsets.UTF_8);
						CSVParser parser = CSVParser.parse(in, format)) {
					List<CSVRecord> expected = parser.getRecords();
					List<DataRow> rows = DataFile.rows(beside, name);
					assertThat(rows).hasSameSizeAs(expected);
					for (int i = 0; i < rows.size(); i++) {
						for (String column : parser.getHeaderNames()) {
							assertThat(rows.get(i).get(column)).as(name + " row " + i).isEqualTo(expected.get(i).get(column));
						}
					}
				}
			}
			return names.size();
		}
	}

	@Test
	void readsQuotesEmptyCellsAndALastLineWithoutAnEnd() {
		List<DataRow> rows = DataFile.read("# of two sizes\r\nsize,drill,source\r\n\"#10\",,\"a, b\"\r\n\r\n1/4,\"7\",");
		assertThat(rows).hasSize(2);
		assertThat(rows.get(0).get("size")).isEqualTo("#10");
		assertThat(rows.get(0).get("drill")).isEmpty();
		assertThat(rows.get(0).get("source")).isEqualTo("a, b");
		assertThat(rows.get(1).get("drill")).isEqualTo("7");
		assertThat(rows.get(1).get("source")).isEmpty();
	}

	@Test
	void takesNoBrokenLine() {
		assertThatThrownBy(() -> DataFile.read("size,drill\n1/4\n")).hasMessageContaining("1/4");
		assertThatThrownBy(() -> DataFile.read("size,drill\n\"1/4,7\n")).hasMessageContaining("1/4");
		assertThatThrownBy(() -> DataFile.read("size,drill\n1/4,7,8\n")).hasMessageContaining("1/4");
	}
}
