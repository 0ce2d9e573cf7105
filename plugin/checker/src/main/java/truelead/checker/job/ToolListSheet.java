package truelead.checker.job;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import truelead.checker.program.ProgramFile;
import truelead.checker.thread.ThreadSpec;

/**
 * What was read from a tool list file, for whoever shows it.
 *
 * @param rows    one a tool, by its number
 * @param remarks lines, and cells of lines, that were not understood
 */
public record ToolListSheet(List<Row> rows, List<Remark> remarks) {

	/**
	 * A tool as it was understood.
	 *
	 * @param line where it stands, from 0
	 * @param read what was read, in words: lengths in mm, angles in degrees; a column of which nothing is known is not there
	 */
	public record Row(int tool, int line, Map<ToolColumn, String> read) {

		public Row {
			read = Map.copyOf(read);
		}

		/** What was read for a column; empty for nothing. */
		public String read(ToolColumn column) {
			return read.getOrDefault(column, "");
		}
	}

	public ToolListSheet {
		rows = List.copyOf(rows);
		remarks = List.copyOf(remarks);
	}

	/** Reads a file, whatever it holds. */
	public static ToolListSheet of(ProgramFile csv) {
		ToolTable.Reading reading = ToolTable.read(csv);
		return new ToolListSheet(new TreeMap<>(reading.tools()).entrySet().stream().map(tool ->
				new Row(tool.getKey(), reading.lines().get(tool.getKey()), words(tool.getValue()))).toList(), reading.remarks());
	}

	private static Map<ToolColumn, String> words(ToolFacts tool) {
		Map<ToolColumn, String> words = new EnumMap<>(ToolColumn.class);
		put(words, ToolColumn.KIND, tool.kind().map(kind -> name(kind.value())));
		put(words, ToolColumn.DIAMETER, mm(tool.diameter()));
		put(words, ToolColumn.THREAD, tool.thread().map(Fact::value).map(ThreadSpec::designation));
		put(words, ToolColumn.PITCH, mm(tool.pitch()));
		put(words, ToolColumn.LEAD, tool.leadTurns().map(lead -> number(lead.value()) + " threads"));
		put(words, ToolColumn.ANGLE, tool.pointAngle().map(angle -> number(Math.toDegrees(angle.value())) + "\u00b0"));
		put(words, ToolColumn.TEETH, tool.teeth().map(teeth -> teeth.value().toString()));
		put(words, ToolColumn.REACH, mm(tool.reach()));
		put(words, ToolColumn.NOSE, mm(tool.nose()));
		put(words, ToolColumn.FLAT, mm(tool.tipFlat()));
		put(words, ToolColumn.HOLDER, tool.holder().map(holder -> name(holder.value().kind())));
		put(words, ToolColumn.TRAVEL, tool.holder().map(holder -> number(holder.value().travel()) + " mm"));
		put(words, ToolColumn.LIMIT, tool.limit().map(Fact::value));
		return words;
	}

	private static void put(Map<ToolColumn, String> words, ToolColumn column, Optional<String> text) {
		text.ifPresent(said -> words.put(column, said));
	}

	private static Optional<String> mm(Optional<Fact<Double>> length) {
		return length.map(fact -> number(fact.value()) + " mm");
	}

	private static String name(Enum<?> kind) {
		return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ');
	}

	private static String number(double value) {
		return BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
	}
}
