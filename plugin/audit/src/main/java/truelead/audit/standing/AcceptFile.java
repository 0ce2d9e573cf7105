package truelead.audit.standing;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;
import truelead.audit.report.WholeFile;
import truelead.audit.result.Acceptance;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.source.Paths;
import truelead.audit.source.ProgramBytes;
import truelead.audit.terminal.Complaint;
import truelead.audit.terminal.Printable;
import truelead.checker.program.ProgramFile;
import truelead.checker.rule.Finding;

/**
 * Findings accepted outside the programs: a CSV file (RFC 4180, UTF-8) with the columns
 * {@code fingerprint,rule,program,reason,person,date}. The fingerprint stands in every report; the program is a file name without folders,
 * or empty for any program; an entry without a reason is refused. An entry whose finding is gone from its program is reported as stale.
 */
public final class AcceptFile implements Standing {

	/** The columns, in the order they are written. */
	public static final List<String> COLUMNS = List.of("fingerprint", "rule", "program", "reason", "person", "date");

	/**
	 * A line of the file.
	 *
	 * @param line       from 1; of an entry of several lines the last
	 * @param start      its first character in the file
	 * @param rule       empty for any rule
	 * @param program    empty for any program
	 * @param acceptance why, by whom and when
	 */
	public record Entry(long line, long start, String fingerprint, String rule, String program, Acceptance acceptance) {

		/** Whether it accepts that finding, where its program is the one it speaks of. */
		public boolean accepts(Judged judged) {
			return fingerprint.equals(judged.fingerprint()) && (rule.isEmpty() || rule.equals(judged.finding().rule()));
		}

		/** Whether it is about that program. */
		public boolean speaksOf(Audited.Checked checked) {
			return speaksOf(checked.file().name(), checked.source().shown());
		}

		private boolean speaksOf(String name, String programShown) {
			return program.isEmpty() || program.equals(name) || program.equals(programShown) || program.equals(written(name));
		}
	}

	private final String shown;
	private final List<Entry> entries;
	private final Map<String, List<Entry>> byFingerprint = new HashMap<>();
	private final Set<Entry> seenProgram = new HashSet<>();
	private final Set<Entry> used = new HashSet<>();

	private AcceptFile(String shown, List<Entry> entries) {
		this.shown = shown;
		this.entries = List.copyOf(entries);
		entries.forEach(entry -> byFingerprint.computeIfAbsent(entry.fingerprint, any -> new ArrayList<>()).add(entry));
	}

	/** Reads the file that was named; ends the command with a complaint where it is not one. */
	public static AcceptFile read(String typed) {
		Path path = Paths.of(typed);
		CSVFormat format = CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).setIgnoreEmptyLines(true).setTrim(true).get();
		try (Reader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8); CSVParser csv = CSVParser.parse(reader, format)) {
			List<String> header = csv.getHeaderNames().stream().map(name -> name.replace("\uFEFF", "")).toList();
			if (!header.equals(COLUMNS)) {
				throw new Complaint(typed + ": the first line must be " + String.join(",", COLUMNS));
			}
			List<Entry> entries = new ArrayList<>();
			for (CSVRecord record : csv) {
				entries.add(entry(typed, csv.getCurrentLineNumber(), record));
			}
			return new AcceptFile(typed, entries);
		} catch (FileSystemException unreadable) {
			throw new Complaint(typed + ": " + ProgramBytes.why(unreadable));
		} catch (IOException | UncheckedIOException | IllegalArgumentException unreadable) {
			boolean text = !(unreadable instanceof CharacterCodingException)
					&& !(unreadable.getCause() instanceof CharacterCodingException);
			throw new Complaint(typed + ": is no accept file (" + (text ? unreadable.getMessage() : "it is no UTF-8 text") + ")");
		}
	}

	/** Adds a line to an accept file, which is made where it is missing; it is there whole or as it was. */
	public static void add(Path file, String fingerprint, String rule, String program, Acceptance why) throws IOException {
		String before = Files.exists(file) ? Files.readString(file, StandardCharsets.UTF_8) : String.join(",", COLUMNS) + "\r\n";
		try (WholeFile whole = WholeFile.at(file); CSVPrinter csv = new CSVPrinter(whole.writer(), CSVFormat.RFC4180)) {
			whole.writer().write(before);
			whole.writer().write(before.isEmpty() || before.endsWith("\n") ? "" : "\r\n");
			csv.printRecord(fingerprint, rule, written(program), why.reason(), why.person(), why.date());
			csv.flush();
			whole.finish();
		}
	}

	/** All entries, in the order of the file. */
	public List<Entry> entries() {
		return entries;
	}

	/**
	 * Takes entries out of the file they were read from; all other lines stay as they are. Does nothing where the file has changed since.
	 */
	public static boolean remove(Path file, List<Entry> gone) throws IOException {
		List<Entry> all = read(file.toString()).entries();
		if (!all.containsAll(gone)) {
			return false;
		}
		String before = Files.readString(file, StandardCharsets.UTF_8);
		StringBuilder after = new StringBuilder(before.substring(0, all.isEmpty() ? before.length() : (int) all.get(0).start()));
		for (int i = 0; i < all.size(); i++) {
			int end = i + 1 < all.size() ? (int) all.get(i + 1).start() : before.length();
			after.append(gone.contains(all.get(i)) ? "" : before.substring((int) all.get(i).start(), end));
		}
		try (WholeFile whole = WholeFile.at(file)) {
			whole.writer().append(after);
			whole.finish();
		}
		return true;
	}

	/** A program's name as it stands in a list, which can be printed and opened as a table whatever the name holds. */
	public static String written(String name) {
		return Printable.field(name).strip();
	}

	private static Entry entry(String typed, long line, CSVRecord record) {
		if (record.size() != COLUMNS.size()) {
			throw new Complaint(typed + ": line " + line + " has " + record.size() + " columns instead of " + COLUMNS.size());
		}
		if (record.get(0).isEmpty() || record.get(3).isEmpty()) {
			throw new Complaint(typed + ": line " + line + " has no " + (record.get(0).isEmpty() ? "fingerprint" : "reason"));
		}
		return new Entry(line, record.getCharacterPosition(), record.get(0), record.get(1), record.get(2),
				new Acceptance(false, record.get(3), record.get(4), record.get(5)));
	}

	@Override
	public Audited.Checked judge(Audited.Checked checked) {
		byFingerprint.values().forEach(entries -> entries.stream().filter(entry -> entry.speaksOf(checked)).forEach(seenProgram::add));
		List<Judged> judged = new ArrayList<>();
		for (Judged finding : checked.findings()) {
			Optional<Entry> entry = find(checked, finding);
			entry.ifPresent(used::add);
			boolean accept = entry.isPresent() && finding.acceptance().isEmpty();
			judged.add(accept ? finding.accepted(entry.get().acceptance) : finding);
		}
		return checked.with(judged, checked.gone());
	}

	private Optional<Entry> find(Audited.Checked checked, Judged judged) {
		return byFingerprint.getOrDefault(judged.fingerprint(), List.of()).stream()
				.filter(entry -> entry.speaksOf(checked) && entry.accepts(judged)).findFirst();
	}

	/** A program's findings, all that were found in their order, with the reason at those that an entry accepts. */
	public List<Finding> accept(ProgramFile program, String programShown, List<Finding> findings) {
		List<Finding> judged = new ArrayList<>();
		for (Judged one : Judged.all(findings)) {
			Finding found = one.finding();
			Optional<String> reason = found.accepted().or(() -> byFingerprint.getOrDefault(one.fingerprint(), List.of()).stream()
					.filter(entry -> entry.speaksOf(program.name(), programShown) && entry.accepts(one))
					.map(entry -> entry.acceptance.reason()).findFirst());
			judged.add(reason.equals(found.accepted()) ? found : found.acceptedFor(reason.get()));
		}
		return judged;
	}

	/** One sentence for every stale entry, by line. */
	@Override
	public List<String> remarks() {
		return seenProgram.stream().filter(entry -> !used.contains(entry)).sorted((a, b) -> Long.compare(a.line, b.line))
				.map(entry -> shown + " line " + entry.line + " accepts what is no longer found: " + entry.rule
						+ (entry.program.isEmpty() ? "" : " in " + entry.program) + " (" + entry.acceptance.reason() + ")")
				.toList();
	}
}
