package truelead.editor.outline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.hole.Hole;
import truelead.checker.pass.MillPass;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.editor.check.CheckedText;

/** Makes the outline of a checked program: tools, the threading they do, the holes they do it at. */
public final class OutlineReader {

	private static final int MOST_HOLES = 500;

	/** A tree of more than this costs the screen's time and is no overview. */
	private static final int MOST_OPERATIONS = 2000;

	private final CheckedText checked;
	private final ProgramThreads threads;
	private final Map<Integer, Severity> worst = new HashMap<>();
	private final Map<Integer, Severity> worstAtLine = new HashMap<>();
	private final Figures figures;

	public OutlineReader(CheckedText checked) {
		this.checked = checked;
		LengthUnit unit = checked.result().work().shop().unit().value();
		this.figures = new Figures(unit);
		this.threads = new ProgramThreads(checked.result().work());
		for (Finding finding : checked.shown()) {
			worst.merge(threads.number(finding), finding.severity(), OutlineReader::worse);
			if (checked.here(finding.at())) {
				worstAtLine.merge(finding.at().line(), finding.severity(), OutlineReader::worse);
			}
		}
	}

	/** The tools in the order they come into the spindle. */
	public List<Entry> read() {
		Map<ToolUse, List<Entry>> byTool = new LinkedHashMap<>();
		checked.result().work().tools().forEach(tool -> byTool.put(tool, new ArrayList<>()));
		List<ThreadingOperation> all = checked.result().work().operations();
		for (ThreadingOperation operation : all.subList(0, Math.min(MOST_OPERATIONS, all.size()))) {
			byTool.computeIfAbsent(operation.tool(), tool -> new ArrayList<>()).add(entry(operation));
		}
		if (all.size() > MOST_OPERATIONS) {
			ThreadingOperation next = all.get(MOST_OPERATIONS);
			byTool.computeIfAbsent(next.tool(), tool -> new ArrayList<>())
					.add(new Entry("and " + (all.size() - MOST_OPERATIONS) + " more threading operations", lineOf(next.block()),
							Optional.empty(), List.of()));
		}
		threads.turned().stream().limit(MOST_OPERATIONS).forEach(sheet -> byTool.computeIfAbsent(sheet.tool(), tool -> new ArrayList<>())
				.add(new Entry(sheet.name() + " · " + sheet.method(), lineOf(sheet.block()),
						Optional.ofNullable(worst.get(sheet.index())), List.of())));
		List<Entry> entries = new ArrayList<>();
		byTool.forEach((tool, operations) -> {
			if (tool.change().isPresent() || !operations.isEmpty()) {
				int line = tool.change().map(this::lineOf).orElseGet(() -> operations.get(0).line());
				entries.add(new Entry(nameOf(tool), line, worstOf(operations), operations));
			}
		});
		return entries;
	}

	private Entry entry(ThreadingOperation operation) {
		List<Entry> holes = new ArrayList<>();
		int line = lineOf(operation.block());
		for (Hole hole : operation.holes().subList(0, Math.min(MOST_HOLES, operation.holes().size()))) {
			holes.add(entry(operation, hole, line));
		}
		String thread = operation.wanted().thread().map(fact -> fact.value().designation()).orElse("thread not named");
		String how = operation instanceof ThreadMilling ? "thread milling" : "tapping";
		int count = operation.holes().size();
		return new Entry(thread + " · " + how + " · " + count + (count == 1 ? " hole" : " holes"), line,
				Optional.ofNullable(worst.get(operation.index())), holes);
	}

	/** A hole with its state: the worst finding at one of its blocks, else whether it is made before it is threaded. */
	private Entry entry(ThreadingOperation operation, Hole hole, int cycle) {
		int line = threadedIn(operation, hole).map(this::lineOf).orElse(cycle);
		Stream<Integer> blocks = Stream.concat(Stream.of(line), hole.cuts().stream().map(cut -> lineOf(cut.block())));
		Optional<Severity> state = blocks.flatMap(block -> Optional.ofNullable(worstAtLine.get(block)).stream()).min(Severity::compareTo);
		String made = hole.madeBefore(operation.lastOrder()) ? state.isEmpty() ? " ✓" : "" : " · not drilled before";
		return new Entry(placeOf(hole) + made, line, state, List.of());
	}

	private static Optional<BlockRef> threadedIn(ThreadingOperation operation, Hole hole) {
		if (operation instanceof Tapping tapping) {
			return tapping.strokes().stream().filter(stroke -> stroke.hole().place().equals(hole.place()))
					.map(TapStroke::block).findFirst();
		}
		return operation instanceof ThreadMilling milling ? milling.passesAt(hole).stream().map(MillPass::block).findFirst()
				: Optional.empty();
	}

	private static Severity worse(Severity a, Severity b) {
		return a.compareTo(b) < 0 ? a : b;
	}

	private String nameOf(ToolUse tool) {
		String kind = tool.facts().kind().map(fact -> " · " + fact.value().toString().toLowerCase(Locale.ROOT).replace('_', ' '))
				.orElse("");
		String size = tool.facts().thread().map(fact -> " " + fact.value().designation())
				.or(() -> tool.facts().diameter().map(fact -> " " + figures.length(fact.value()))).orElse("");
		return tool.name() + kind + size;
	}

	private String placeOf(Hole hole) {
		if (!hole.place().known()) {
			return "at a place that is not known";
		}
		return figures.length(hole.place().u()) + ", " + figures.length(hole.place().v());
	}

	/** The line in the program itself: for a block of a called one, the line of the call. */
	private int lineOf(BlockRef block) {
		return checked.here(Location.of(block)) ? block.line()
				: Math.min(block.outermost().line(), checked.program().text().lineCount() - 1);
	}

	private static Optional<Severity> worstOf(List<Entry> entries) {
		return entries.stream().flatMap(entry -> entry.worst().stream()).min(Severity::compareTo);
	}
}
