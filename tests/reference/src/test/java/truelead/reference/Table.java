package truelead.reference;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** The published tables beside these tests. */
final class Table {

	private Table() {
	}

	static Stream<CSVRecord> rows(String name) {
		CSVFormat format = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true).get();
		try (InputStreamReader text = new InputStreamReader(Table.class.getResourceAsStream(name), StandardCharsets.UTF_8)) {
			return format.parse(text).getRecords().stream();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}
}
