package truelead.checker.thread;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The data files beside this package: comma separated, a comment line that says what the file is, a line of names, a source a row. */
final class DataFile {
	private static final CSVFormat FORMAT = CSVFormat.DEFAULT.builder().setCommentMarker('#').setHeader().setSkipHeaderRecord(true)
			.setIgnoreEmptyLines(true).get();

	private DataFile() {
	}

	/** The rows of a file; a missing or broken file is a fault of the build. */
	static List<CSVRecord> rows(String name) {
		try (InputStream bytes = DataFile.class.getResourceAsStream(name)) {
			if (bytes == null) {
				throw new IllegalStateException("the data file " + name + " is not in the build");
			}
			// a size such as #10 stands in quotes, so that its line is no comment
			return CSVParser.parse(new InputStreamReader(bytes, StandardCharsets.UTF_8), FORMAT).getRecords();
		} catch (IOException e) {
			throw new UncheckedIOException(e);
		}
	}

	/** A number of a row. */
	static double number(CSVRecord row, String name) {
		return Double.parseDouble(row.get(name));
	}
}
