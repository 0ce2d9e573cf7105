package truelead.checker.job;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.grammar.Span;

/**
 * Reads a tool list file: CSV with a line of headers, see {@link ToolColumn}, parted by commas, semicolons or tabs. A cell that cannot be
 * read is a remark on its row; the other cells of the row still count.
 */
final class ToolTable {

	/**
	 * What a file says.
	 *
	 * @param tools   facts by tool number
	 * @param lines   the line of each tool, from 0
	 * @param remarks rows that were not understood
	 */
	record Reading(Map<Integer, ToolFacts> tools, Map<Integer, Integer> lines, List<Remark> remarks) {
	}

	private final ProgramFile file;
	private final Map<Integer, ToolFacts> tools = new HashMap<>();
	private final Map<Integer, Integer> lines = new HashMap<>();
	private final List<Remark> remarks = new ArrayList<>();

	private ToolTable(ProgramFile file) {
		this.file = file;
	}

	static Reading read(ProgramFile file) {
		ToolTable table = new ToolTable(file);
		String text = file.text().toString();
		String content = text.startsWith("\uFEFF") ? text.substring(1) : text;
		try (CSVParser parser = CSVParser.parse(content, CSVFormat.DEFAULT.builder().setDelimiter(delimiter(file)).setTrim(true)
				.setIgnoreEmptyLines(true).get())) {
			table.rows(parser);
		} catch (IOException | UncheckedIOException | IllegalStateException unreadable) {
			table.remarks.add(new Remark(table.line(0),
					"the tool list is no CSV text: a quotation mark is open or followed by other text"));
		}
		return new Reading(table.tools, table.lines, table.remarks);
	}

	private static String delimiter(ProgramFile file) {
		String header = file.text().line(0);
		return header.indexOf(';') >= 0 ? ";" : header.indexOf('\t') >= 0 ? "\t" : ",";
	}

	private void rows(CSVParser parser) {
		Map<ToolColumn, Integer> columns = new EnumMap<>(ToolColumn.class);
		boolean header = true;
		for (CSVRecord row : parser) {
			int line = file.text().lineOf((int) Math.min(file.text().length(), row.getCharacterPosition()));
			if (header) {
				for (int i = 0; i < row.size(); i++) {
					int column = i;
					ToolColumn.of(row.get(i)).ifPresent(c -> columns.putIfAbsent(c, column));
				}
				if (!columns.containsKey(ToolColumn.TOOL)) {
					remarks.add(new Remark(line(line),
							"the tool list has no column TOOL; its first line names the columns, such as TOOL,KIND,DIAMETER,THREAD"));
					return;
				}
				header = false;
			} else {
				row(row, columns, line);
			}
		}
	}

	private void row(CSVRecord row, Map<ToolColumn, Integer> columns, int line) {
		Map<ToolColumn, String> cells = new EnumMap<>(ToolColumn.class);
		columns.forEach((column, index) -> {
			if (index < row.size() && !row.get(index).isBlank()) {
				cells.put(column, row.get(index).strip());
			}
		});
		if (cells.isEmpty()) {
			return;
		}
		Location at = line(line);
		Optional<Integer> number = number(cells.getOrDefault(ToolColumn.TOOL, ""));
		if (number.isEmpty()) {
			remarks.add(new Remark(at, "the row has no tool number in column TOOL"));
			return;
		}
		ToolFacts facts = new ToolRow(cells, at, remarks).facts();
		lines.putIfAbsent(number.get(), line);
		if (tools.putIfAbsent(number.get(), facts) != null) {
			remarks.add(new Remark(at, "tool " + number.get() + " stands in the list twice; the first row counts"));
		}
	}

	private static Optional<Integer> number(String cell) {
		String digits = !cell.isEmpty() && Character.toUpperCase(cell.charAt(0)) == 'T' ? cell.substring(1).strip() : cell;
		if (digits.isEmpty() || digits.length() > 6 || !digits.chars().allMatch(c -> c >= '0' && c <= '9')) {
			return Optional.empty();
		}
		return Optional.of(Integer.parseInt(digits));
	}

	private Location line(int line) {
		return new Location(file, line, new Span(0, file.text().line(line).length()));
	}
}
