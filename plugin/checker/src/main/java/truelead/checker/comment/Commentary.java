package truelead.checker.comment;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.callout.ToolListLine;
import truelead.checker.job.Allowance;
import truelead.checker.job.Note;
import truelead.checker.job.NoteReader;
import truelead.checker.job.NoteReading;
import truelead.checker.job.Remark;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.ProgramFile;

/** The comments of a program and of the files it calls, with our notes read from them. */
public final class Commentary {

	/** One file's comments: notes, and the numbers of the free ones. */
	private record Read(ProgramScan scan, ByLine<Note> notes, ByLine<Integer> free) {
	}

	/** Lines of tool lists by their text, which stands at every change of a tool again. */
	private final Map<String, Optional<ToolListLine>> listLines = new HashMap<>();
	private final LengthUnit unit;
	private final MachineProfile profile;
	private final ProgramFile program;
	private final Map<String, Read> files = new LinkedHashMap<>();
	/** The program's own comments, which far most questions are about. */
	private final Read main;
	private final List<Remark> remarks = new ArrayList<>();

	/** Reads the comments of a program; {@code unit} is that of bare lengths in them. */
	public Commentary(ProgramFile program, LengthUnit unit, MachineProfile profile) {
		this.unit = unit;
		this.profile = profile;
		this.program = program;
		main = read(program);
	}

	/** The unit that bare lengths in comments are taken in. */
	public LengthUnit unit() {
		return unit;
	}

	/** Lines, problems and comments of the program itself. */
	public ProgramScan main() {
		return main.scan();
	}

	/** Lines, problems and comments of a file that the program calls, or of itself. */
	public ProgramScan of(ProgramFile file) {
		return read(file).scan();
	}

	/** All files read so far, the program first. */
	public List<ProgramScan> scans() {
		return files.values().stream().map(Read::scan).toList();
	}

	/** What in notes was not understood. */
	public List<Remark> remarks() {
		return List.copyOf(remarks);
	}

	/** The notes of a file in a range of lines, both included, in order. */
	public List<Note> notes(ProgramFile file, int from, int to) {
		return read(file).notes().between(from, to);
	}

	/** Every note of the program and the files read so far. */
	public List<Note> allNotes() {
		return files.values().stream().flatMap(r -> r.notes().all().stream()).toList();
	}

	/** Every ALLOW note of the program and the files read so far. */
	public List<Allowance> allowances() {
		return allNotes().stream().filter(Note.OfAllowance.class::isInstance).flatMap(n -> ((Note.OfAllowance) n).allowances()
				.stream()).toList();
	}

	/** Free comments of a file in a range of lines, both included, our notes left out; not to be changed. */
	public List<LineComment> free(ProgramFile file, int from, int to) {
		Read read = read(file);
		if (read.free().all().size() == read.scan().comments().size()) {
			return read.scan().between(from, to);
		}
		List<Integer> numbers = read.free().between(from, to);
		return new AbstractList<>() {

			@Override
			public LineComment get(int index) {
				return read.scan().comments().get(numbers.get(index));
			}

			@Override
			public int size() {
				return numbers.size();
			}
		};
	}

	/**
	 * Free comments that are met on the way from one block to a later one: in their subprogram where one call of it executes both, else in
	 * the program.
	 */
	public List<LineComment> between(BlockRef block, BlockRef later) {
		if (together(block, later)) {
			return free(later.file(), block.line() + 1, later.line());
		}
		return mainLine(later) > mainLine(block) ? free(program, mainLine(block) + 1, mainLine(later)) : List.of();
	}

	/** Free comments from the head of the subprogram that a block stands in down to it, or from behind an earlier block there. */
	public List<LineComment> above(BlockRef block, Optional<BlockRef> behind) {
		return free(block.file(), behind.filter(before -> together(before, block)).map(before -> before.line() + 1).orElseGet(() ->
				of(block.file()).startOf(block.line())), block.line());
	}

	private static boolean together(BlockRef block, BlockRef later) {
		return block.caller().isPresent() && later.caller().isPresent() && later.line() > block.line()
				&& block.file().name().equals(later.file().name()) && block.caller().get().sameCall(later.caller().get());
	}

	/** The tool of a list that a comment speaks of, T0303 of a turret being tool 3; empty where it begins with no tool's number. */
	public Optional<ToolListLine> listLine(LineComment comment) {
		return comment.bare().isPresent() ? comment.bare() : listLines.computeIfAbsent(comment.text(),
				text -> ToolListLine.read(text).map(line -> line.onTurret(profile.is(ProfileKey.TOOL_WORD, "turret"))));
	}

	/** The tool that the T word beside a comment names, T0303 of a turret being tool 3; -1 without one. */
	public int tool(LineComment comment) {
		return comment.tool() >= 100 && profile.is(ProfileKey.TOOL_WORD, "turret") ? comment.tool() / 100 : comment.tool();
	}

	/** The line of the main program that a block is executed for; -1 where it is in another file altogether. */
	public int mainLine(BlockRef block) {
		BlockRef outermost = block.outermost();
		return outermost.file().name().equals(program.name()) ? outermost.line() : -1;
	}

	private Read read(ProgramFile file) {
		if (file == program && main != null) {
			return main;
		}
		Read known = files.get(file.name());
		if (known != null) {
			return known;
		}
		ProgramScan scan = new ProgramScan(file, profile);
		ByLine<Note> notes = new ByLine<>();
		ByLine<Integer> free = new ByLine<>();
		for (int i = 0; i < scan.comments().size(); i++) {
			LineComment comment = scan.comments().get(i);
			int number = i;
			Optional<NoteReading> reading = NoteReader.read(comment.comment(), unit);
			reading.ifPresentOrElse(r -> {
				r.note().ifPresent(note -> notes.add(comment.line(), note));
				remarks.addAll(r.remarks());
			}, () -> free.add(comment.line(), number));
		}
		Read read = new Read(scan, notes, free);
		files.put(file.name(), read);
		return read;
	}
}
