package truelead.checker.work;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import truelead.checker.job.ProgramComment;
import truelead.checker.machine.ChunkFacts;
import truelead.checker.machine.Location;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.Meaning;
import truelead.checker.machine.ProgramFile;
import truelead.checker.thread.CalloutReader;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Problem;
import truelead.grammar.ProgramText;

/** One reading of a program's lines for what is not motion: comments that may speak of threads and tools, unreadable blocks, program starts. */
final class ProgramScan {

	private static final Set<Meaning> THREADING = EnumSet.of(Meaning.TAP, Meaning.TAP_LEFT, Meaning.SYNCHRONISED_MOTION, Meaning.SYNCHRONISED_TAP,
			Meaning.FLOATING_TAP, Meaning.TAPPING_MODE);

	private final ProgramFile file;
	private final List<LineComment> comments = new ArrayList<>();
	private final List<BlockProblem> problems = new ArrayList<>();
	private final List<Integer> starts = new ArrayList<>();
	private final MachineProfile profile;
	private int blocks;
	private boolean threadingCode;

	ProgramScan(ProgramFile file, MachineProfile profile) {
		this.file = file;
		this.profile = profile;
		ProgramText text = file.text();
		for (int chunk = 0; chunk < text.chunks().size(); chunk++) {
			ChunkFacts facts = ChunkFacts.of(text.chunks().get(chunk));
			blocks += facts.blocks();
			for (int noted : facts.noted()) {
				int line = text.firstLine(chunk) + noted;
				read(line, text.block(line));
			}
		}
	}

	private void read(int line, Block block) {
		boolean code = false;
		int tool = -1;
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				code |= word.address() != 'N' && word.address() != 'O';
				if (word.address() == 'T' && word.value() instanceof Expression.Number number) {
					tool = (int) number.value();
				} else if (word.address() == 'O') {
					starts.add(line);
				} else if (word.address() == 'G' && !threadingCode) {
					threadingCode = makesThreads(word);
				}
			} else if (element instanceof Element.OStatement) {
				starts.add(line);
			} else if (!(element instanceof Element.Comment) && !(element instanceof Element.Percent)) {
				code = true;
			}
		}
		for (Problem problem : block.problems()) {
			problems.add(new BlockProblem(new Location(file, line, problem.span()), problem.message(), false));
		}
		for (Element element : block.elements()) {
			if (element instanceof Element.Comment comment && (comment.text().indexOf(':') >= 0 || CalloutReader.mayHoldCallout(comment.text()))) {
				comments.add(new LineComment(new ProgramComment(new Location(file, line, comment.textSpan()), comment.text()), line, tool, code));
			}
		}
	}

	private boolean makesThreads(Element.Word word) {
		if (!(word.value() instanceof Expression.Number number)) {
			return true;
		}
		return profile.gCode((int) Math.round(number.value() * 10)).stream().anyMatch(THREADING::contains);
	}

	/** Whether a code stands in the file that makes threads, executed or not, or one whose number is computed. */
	boolean threadingCode() {
		return threadingCode;
	}

	ProgramFile file() {
		return file;
	}

	/** Comments worth reading, in order. */
	List<LineComment> comments() {
		return comments;
	}

	/** Comments worth reading in a range of lines, both included. */
	List<LineComment> between(int from, int to) {
		int low = 0;
		int high = comments.size();
		while (low < high) {
			int middle = (low + high) / 2;
			if (comments.get(middle).line() < from) {
				low = middle + 1;
			} else {
				high = middle;
			}
		}
		int end = low;
		while (end < comments.size() && comments.get(end).line() <= to) {
			end++;
		}
		return comments.subList(low, end);
	}

	/** Parts of blocks that could not be read. */
	List<BlockProblem> problems() {
		return problems;
	}

	/** The line at which the program or subprogram that a line belongs to begins; 0 where none does before it. */
	int startOf(int line) {
		int found = 0;
		for (int start : starts) {
			if (start > line) {
				break;
			}
			found = start;
		}
		return found;
	}

	/** Lines with code. */
	int blocks() {
		return blocks;
	}
}
