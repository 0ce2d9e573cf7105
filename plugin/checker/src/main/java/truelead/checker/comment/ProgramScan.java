package truelead.checker.comment;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.callout.ToolListLine;
import truelead.checker.job.ProgramComment;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.grammar.Chunk;
import truelead.grammar.ProgramText;

/** What stands in a program besides motion: comments that may speak of threads and tools, unreadable blocks, program starts. */
public final class ProgramScan {

	private static final Set<Meaning> THREADING = EnumSet.of(Meaning.TAP, Meaning.TAP_LEFT, Meaning.SYNCHRONISED_MOTION,
			Meaning.SYNCHRONISED_TAP, Meaning.SYNCHRONISED_IN, Meaning.FLOATING_TAP, Meaning.TAPPING_MODE);

	private final ProgramFile file;
	private final MachineProfile profile;
	private final List<LineComment> comments = new ArrayList<>();
	private final List<BlockProblem> problems = new ArrayList<>();
	private final List<Integer> starts = new ArrayList<>();
	private int blocks;
	private boolean threadingCode;

	ProgramScan(ProgramFile file, MachineProfile profile) {
		this.file = file;
		this.profile = profile;
		ProgramText text = file.text();
		int number = 0;
		for (Chunk chunk : text.chunks()) {
			ChunkScan scan = ChunkScan.of(chunk);
			blocks += scan.blocks;
			if (!scan.silent()) {
				add(scan, text.firstLine(number));
			}
			number++;
		}
	}

	private void add(ChunkScan scan, int first) {
		for (ChunkScan.Remark remark : scan.remarks) {
			int line = first + remark.line();
			comments.add(new LineComment(new ProgramComment(new Location(file, line, remark.span()), remark.text()), line, remark.tool(),
					remark.name(), remark.code(), Optional.empty()));
		}
		for (ChunkScan.Unread unread : scan.unread) {
			problems.add(new BlockProblem(new Location(file, first + unread.line(), unread.problem().span()),
					unread.problem().message(), false));
		}
		for (int start : scan.programStarts) {
			// O2000 right behind M30
			if (starts.isEmpty() || starts.get(starts.size() - 1) != first + start) {
				starts.add(first + start);
			}
		}
		threadingCode |= scan.gCodes.stream().anyMatch(code -> code < 0 || profile.gCode(code).stream().anyMatch(THREADING::contains));
		threadingCode |= scan.statements.stream().anyMatch(profile::threads);
	}

	/** Whether a code stands in the file that makes threads, executed or not, or one whose number is computed, or a statement that does. */
	public boolean threadingCode() {
		return threadingCode;
	}

	/** The file that was looked through. */
	public ProgramFile file() {
		return file;
	}

	/** Comments worth reading, in order. */
	public List<LineComment> comments() {
		return comments;
	}

	/** Comments worth reading in a range of lines, both included. */
	public List<LineComment> between(int from, int to) {
		int first = before(from);
		return comments.subList(first, Math.max(first, to == Integer.MAX_VALUE ? comments.size() : before(to + 1)));
	}

	/** How many comments stand before a line. */
	private int before(int line) {
		int low = 0;
		int high = comments.size();
		while (low < high) {
			int middle = (low + high) >>> 1;
			if (comments.get(middle).line() < line) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		return low;
	}

	/** Takes comments for what they are: lines of a list that numbers its tools without a letter. */
	public void list(Map<LineComment, ToolListLine> lines) {
		comments.replaceAll(comment -> lines.containsKey(comment) ? comment.asListed(lines.get(comment)) : comment);
	}

	/** Parts of blocks that could not be read. */
	public List<BlockProblem> problems() {
		return problems;
	}

	/** The line at which the program or subprogram that a line belongs to begins; 0 where none does before it. */
	public int startOf(int line) {
		int place = Collections.binarySearch(starts, line);
		int before = place >= 0 ? place : -place - 2;
		return before < 0 ? 0 : starts.get(before);
	}

	/** The line at which the next program or subprogram behind a line begins; the number of lines where none does. */
	public int nextStart(int line) {
		int place = Collections.binarySearch(starts, line);
		int next = place >= 0 ? place + 1 : -place - 1;
		return next < starts.size() ? starts.get(next) : file.text().lineCount();
	}

	/** Lines with code. */
	public int blocks() {
		return blocks;
	}
}
