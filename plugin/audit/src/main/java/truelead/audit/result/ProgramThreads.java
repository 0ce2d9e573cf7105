package truelead.audit.result;

import java.util.ArrayList;
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
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.Sheets;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.sheet.TurnedSheet;

/** The threads of a program, and which finding is about which: one about a turned thread stands at a block of its passes, or names one. */
public final class ProgramThreads {

	private final List<OperationSheet> operations;
	private final List<TurnedSheet> turned;
	private final Map<String, TurnedSheet> cutThere = new HashMap<>();
	private final Map<Integer, List<Judged>> open = new HashMap<>();

	/** The threads of a checked program. */
	public ProgramThreads(Audited.Checked program) {
		operations = Sheets.of(program.result().work());
		turned = Sheets.turned(program.result().work());
		for (TurnedSheet sheet : turned) {
			sheet.blocks().forEach(block -> cutThere.putIfAbsent(place(block), sheet));
		}
		program.findings().stream().filter(Judged::open).forEach(judged -> about(judged.finding()).ifPresent(sheet -> open.computeIfAbsent(sheet.index(), any -> new ArrayList<>()).add(judged)));
	}

	/** Those in holes. */
	public List<OperationSheet> operations() {
		return operations;
	}

	/** Those that a lathe cuts by a single point. */
	public List<TurnedSheet> turned() {
		return turned;
	}

	/** All of them, in the order of their numbers. */
	public List<ThreadSheet> all() {
		return Stream.concat(operations.stream(), turned.stream()).map(ThreadSheet.class::cast).toList();
	}

	/** Whether it makes none. */
	public boolean isEmpty() {
		return operations.isEmpty() && turned.isEmpty();
	}

	/** The thread that a finding is about; of several by the same blocks, such as those of a loop, the first. */
	public Optional<ThreadSheet> about(Finding finding) {
		if (finding.operation() >= 0) {
			return finding.operation() < operations.size() ? Optional.of(operations.get(finding.operation())) : Optional.empty();
		}
		Stream<Location> named = Stream.concat(finding.related().stream().map(Related::at), finding.evidence().stream().map(Evidence::at).flatMap(Optional::stream));
		return Stream.concat(Stream.of(finding.at()), named).map(at -> cutThere.get(place(at.file().name(), at.line()))).filter(sheet -> sheet != null).map(ThreadSheet.class::cast).findFirst();
	}

	/** The open findings about a thread. */
	public List<Judged> open(ThreadSheet sheet) {
		return open.getOrDefault(sheet.index(), List.of());
	}

	private static String place(BlockRef block) {
		return place(block.file().name(), block.line());
	}

	private static String place(String file, int line) {
		return line + " " + file;
	}
}
