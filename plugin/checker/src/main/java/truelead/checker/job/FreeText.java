package truelead.checker.job;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.CommentReading;
import truelead.checker.callout.Dimension;
import truelead.checker.callout.ToolDescription;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.thread.LeadForm;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/** What the callout grammar and the words of the trade say of a tool in a free text. */
public final class FreeText {

	private static final Set<TapStyle> LEADS = Set.of(TapStyle.TAPER_LEAD, TapStyle.PLUG_LEAD, TapStyle.MODIFIED_BOTTOMING_LEAD,
			TapStyle.BOTTOMING_LEAD);

	private static final Set<Double> COUNTERSINK_ANGLES = Set.of(60.0, 82.0, 90.0, 100.0, 120.0);

	private FreeText() {
	}

	/** The thread that a text names as a whole; empty where it names none. */
	static Optional<ThreadSpec> thread(String text) {
		return CalloutReader.readExactly(text).or(() -> CalloutReader.read(text).stream().findFirst()).map(Callout::spec);
	}

	/**
	 * What a text says of a tool; {@link ToolFacts#NONE} where it says nothing. A drill named for a thread is a drill, not a tap.
	 *
	 * @param unit for lengths without a unit of their own
	 */
	public static ToolFacts tool(String text, FactSource source, Location at, LengthUnit unit) {
		return tool(text, source, at, unit, kind -> false);
	}

	/**
	 * The same of a tool that is seen at work: of several kinds that the text names, as 8.5 DRILL - M10 TAP does, the one that can do that
	 * work.
	 *
	 * @param atWork whether a tool of a kind can do what this one does
	 */
	public static ToolFacts tool(String text, FactSource source, Location at, LengthUnit unit, Predicate<ToolKind> atWork) {
		CommentReading reading = CalloutReader.readComment(text);
		ToolFacts.Builder facts = new ToolFacts.Builder();
		String said = text.strip();
		Optional<ToolDescription> named = agreed(reading, source, atWork);
		boolean threads = named.map(t -> t.kind().threading()).orElse(false);
		Optional<Callout> callout = reading.callouts().stream().filter(c -> c.certain() || threads).findFirst();
		named.ifPresent(tool -> {
			facts.kind = Optional.of(Fact.of(tool.kind(), source, at, said));
			if (!tool.styles().isEmpty()) {
				facts.styles = Optional.of(Fact.of(tool.styles(), source, at, said));
			}
			if (bareAngle(tool)) {
				facts.pointAngle = tool.diameter().map(d -> Fact.of(Math.toRadians(d.value()), source, at, said));
			} else {
				facts.diameter = tool.diameter()
						.map(d -> Fact.of(callout.map(thread -> thread.toolMm(d, unit)).orElseGet(() -> d.toolMm(unit)), source, at, said));
			}
			if (tool.pointAngle().isPresent()) {
				facts.pointAngle = Optional.of(Fact.of(tool.pointAngle().getAsDouble(), source, at, said));
			}
			if (tool.kind().tap() && tool.styles().stream().anyMatch(LEADS::contains)) {
				facts.leadTurns = Optional.of(Fact.of(LeadForm.typical(tool.kind(), tool.styles()).typicalThreads(), source, at, said));
			}
		});
		if (named.map(t -> t.kind() == ToolKind.THREAD_MILL).orElse(false)) {
			MillWords teeth = MillWords.read(text, unit);
			facts.comb = teeth.comb().map(comb -> Fact.of(comb, source, at, said));
			facts.leftCutting = teeth.left() ? Optional.of(Fact.of(true, source, at, said)) : Optional.empty();
			facts.pitch = teeth.pitch().map(pitch -> Fact.of(pitch, source, at, said));
			facts.teeth = teeth.teeth().map(count -> Fact.of(count, source, at, said));
			facts.cutting = teeth.cutting().map(length -> Fact.of(length, source, at, said));
			facts.toothFeed = teeth.toothFeed().map(feed -> Fact.of(feed, source, at, said));
		}
		// M16 FLOATING HOLDER: what has a thread and stands in a tap's holder
		boolean held = named.isEmpty() && reading.holder().isPresent() && reading.callouts().size() == 1;
		if (held) {
			facts.kind = Optional.of(Fact.of(ToolKind.TAP, source, at, said));
			facts.thread = Optional.of(Fact.of(reading.callouts().get(0).spec(), source, at, said));
		}
		boolean tap = held || named.map(t -> t.kind().tap()).orElse(false);
		facts.holder = reading.holder().map(holder -> Fact.of(Holder.usual(holder), source, at, said));
		if (threads || source == FactSource.NOTE || source == FactSource.TOOL_FILE) {
			facts.thread = callout.or(() -> source == FactSource.NOTE || source == FactSource.TOOL_FILE ? CalloutReader.readExactly(text)
					: Optional.empty()).map(c -> Fact.of(c.spec(), source, at, said));
		}
		if (facts.thread.isEmpty() && threads) {
			facts.thread = named.flatMap(tool -> SizedTap.thread(tool, unit)).map(thread -> Fact.of(thread, source, at, said));
		}
		if (facts.diameter.isEmpty() && tap) {
			facts.diameter = facts.thread.map(t -> t.map(ThreadSpec::diameter));
		}
		return facts.build();
	}

	/** The size of a tool that a text says nothing else of. */
	public static ToolFacts bareSize(String text, FactSource source, Location at, LengthUnit unit) {
		return sized(CalloutReader.bareSize(text), text, source, at, unit);
	}

	/** The size of a tool that a text gives a name that nobody knows, but is seen to drill. */
	public static ToolFacts sizeOfUnknown(String text, FactSource source, Location at, LengthUnit unit) {
		return sized(CalloutReader.sizeOfUnknown(text), text, source, at, unit);
	}

	private static ToolFacts sized(Optional<Dimension> size, String text, FactSource source, Location at, LengthUnit unit) {
		ToolFacts.Builder facts = new ToolFacts.Builder();
		facts.diameter = size.map(d -> Fact.of(d.toolMm(unit), source, at, text.strip()));
		return facts.build();
	}

	/**
	 * The tool that a text is about; none where it names several kinds, as in DRILL AND TAP, and not just one of them can do what the tool
	 * does. What a list says behind a tap, as in T3 M5 TAP - PREDRILL 4.65, is how the hole is made; so is what a drawing's callout says
	 * behind the thread, as in M5X0.8 12 DEEP DRILLED 4.2 X 17, of a tool that does not drill.
	 */
	private static Optional<ToolDescription> agreed(CommentReading reading, FactSource source, Predicate<ToolKind> atWork) {
		Optional<ToolDescription> first = reading.tool();
		boolean hole = source == FactSource.TOOL_LIST && first.filter(tool -> tool.kind().tap()).isPresent();
		boolean several = first.isPresent()
				&& reading.tools().stream().anyMatch(t -> !same(t.kind(), first.get().kind()) && !(hole && t.kind() == ToolKind.DRILL));
		if (!several) {
			return first.filter(tool -> tool.kind() != ToolKind.DRILL || reading.callouts().isEmpty() || atWork.test(ToolKind.DRILL));
		}
		List<ToolDescription> able = reading.tools().stream().filter(tool -> atWork.test(tool.kind())).toList();
		return able.stream().allMatch(tool -> same(tool.kind(), able.get(0).kind())) ? able.stream().findFirst() : Optional.empty();
	}

	/** COUNTERSINK 90 says its angle, not its diameter (60, 82, 90, 100 and 120 degrees are made; common practice, no source). */
	private static boolean bareAngle(ToolDescription tool) {
		return tool.kind() == ToolKind.COUNTERSINK && tool.pointAngle().isEmpty()
				&& tool.diameter().filter(d -> d.unit().isEmpty() && COUNTERSINK_ANGLES.contains(d.value())).isPresent();
	}

	/** Whether two names can be of one tool: the same kind, or one of them says no kind, or both are taps of some kind. */
	public static boolean compatible(ToolFacts one, ToolFacts other) {
		if (one.kind().isEmpty() || other.kind().isEmpty()) {
			return true;
		}
		return same(one.kind().get().value(), other.kind().get().value());
	}

	private static boolean same(ToolKind one, ToolKind other) {
		return one == other || one.tap() && other.tap();
	}
}
