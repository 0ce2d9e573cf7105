package truelead.checker.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Location;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Related;
import truelead.checker.work.Work;

/**
 * The threads of a program, and which of them a finding is about: one about a turned thread stands at a block of its passes, or names one.
 */
public final class ProgramThreads {

	private final Work work;
	private final List<TurnedSheet> turned;
	private final Map<String, TurnedSheet> cutThere = new HashMap<>();

	/** The threads of a program that was read. */
	public ProgramThreads(Work work) {
		this.work = work;
		turned = Sheets.turned(work);
		for (TurnedSheet sheet : turned) {
			sheet.blocks().forEach(block -> cutThere.putIfAbsent(place(block), sheet));
		}
	}

	/** Those in holes and on bosses, made anew at each call. */
	public List<OperationSheet> operations() {
		return Sheets.of(work);
	}

	/** Those that a lathe cuts by a single point. */
	public List<TurnedSheet> turned() {
		return turned;
	}

	/** Whether there are none. */
	public boolean isEmpty() {
		return work.operations().isEmpty() && turned.isEmpty();
	}

	/** The thread that a finding is about; of several by the same blocks, such as those of a loop, the first. */
	public Optional<ThreadSheet> about(Finding finding) {
		if (finding.operation() >= 0) {
			return finding.operation() < work.operations().size() ? Optional.of(Sheets.of(work.operations().get(finding.operation())))
					: Optional.empty();
		}
		Stream<Location> named = Stream.concat(finding.related().stream().map(Related::at),
				finding.evidence().stream().map(Evidence::at).flatMap(Optional::stream));
		return Stream.concat(Stream.of(finding.at()), named).map(at -> cutThere.get(place(at.file().name(), at.line())))
				.filter(sheet -> sheet != null).map(ThreadSheet.class::cast).findFirst();
	}

	/** The number of that thread, or -1 for none. */
	public int number(Finding finding) {
		return finding.operation() >= 0 ? finding.operation() < work.operations().size() ? finding.operation() : -1
				: about(finding).map(ThreadSheet::index).orElse(-1);
	}

	private static String place(BlockRef block) {
		return place(block.file().name(), block.line());
	}

	private static String place(String file, int line) {
		return line + " " + file;
	}
}
