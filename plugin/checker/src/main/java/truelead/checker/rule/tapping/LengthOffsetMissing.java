package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** The program's other tools run with their length offsets, and the threading tool runs with none or with another tool's. */
public final class LengthOffsetMissing implements Rule {

	@Override
	public String name() {
		return "length-offset-missing";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.LEFT_ON, Slip.FEED_AND_DRILL, Slip.NO_TAP);
	}

	/**
	 * The stays that an offset is looked for in, by their numbers: enough of each kind to tell whether there is another one.
	 *
	 * @param count     how many tools cut or move with an offset or without
	 * @param first     the first two of them
	 * @param without   the first two that run without an offset
	 * @param otherwise the first two that run with another one than their own
	 */
	private record Offsets(int count, List<Integer> first, List<Integer> without, List<Integer> otherwise) {

		static Offsets of(List<ToolUse> all) {
			List<Integer> first = new ArrayList<>();
			List<Integer> without = new ArrayList<>();
			List<Integer> otherwise = new ArrayList<>();
			int count = 0;
			for (ToolUse tool : all) {
				boolean none = tool.summary().lengthOffsets().isEmpty();
				boolean bare = tool.summary().movedWithoutOffset();
				if (tool.change().isPresent() && (!none || bare)) {
					count++;
					addUpToTwo(first, tool, true);
					addUpToTwo(without, tool, none || bare);
					addUpToTwo(otherwise, tool, !ownNumber(tool));
				}
			}
			return new Offsets(count, first, without, otherwise);
		}

		private static void addUpToTwo(List<Integer> tools, ToolUse tool, boolean one) {
			if (one && tools.size() < 2) {
				tools.add(tool.index());
			}
		}
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Offsets offsets = work.ofTools(Offsets.class, Offsets::of);
		Set<Integer> checked = new HashSet<>();
		for (ThreadingOperation operation : work.operations()) {
			ToolUse tool = operation.tool();
			boolean first = checked.add(tool.index());
			if (first && tool.change().isPresent() && !noOther(offsets.first(), tool)) {
				check(tool, work, offsets).ifPresent(draft -> found.accept(draft.on(operation).finding()));
			}
		}
	}

	private static boolean noOther(List<Integer> tools, ToolUse than) {
		return tools.stream().allMatch(tool -> tool == than.index());
	}

	private Optional<Draft> check(ToolUse tool, Work work, Offsets offsets) {
		if (tool.summary().lengthOffsets().isEmpty()) {
			return noOther(offsets.without(), tool) && tool.summary().movedWithoutOffset() ? Optional.of(missing(tool, work, offsets)) : Optional.empty();
		}
		boolean numbered = noOther(offsets.otherwise(), tool);
		return tool.summary().lengthOffsets().stream().filter(h -> numbered && h.known() && tool.number() > 0 && Math.abs(h.value() - tool.number()) > 1e-6)
				.findFirst().map(h -> wrong(tool, h));
	}

	private static boolean ownNumber(ToolUse tool) {
		boolean own = tool.number() > 0 && !tool.summary().lengthOffsets().isEmpty();
		for (Setting h : tool.summary().lengthOffsets()) {
			own &= h.known() && Math.abs(h.value() - tool.number()) < 1e-6;
		}
		return own;
	}

	private Draft missing(ToolUse tool, Work work, Offsets offsets) {
		int others = offsets.count() - 1;
		int other = offsets.first().stream().filter(number -> number != tool.index()).findFirst().orElseThrow();
		String h = "G43 H" + (tool.number() > 0 ? String.valueOf(tool.number()) : "");
		return Draft.of(this, Severity.ERROR, Location.of(tool.change().orElseThrow()), tool.name() + " runs without a length offset, the "
				+ others + (others == 1 ? " other tool has one" : " other tools have theirs")
				+ ": it goes too deep or too high by the difference of the tools' lengths; " + h.strip())
				.related(work.tools().get(other).change().orElseThrow(), "a tool that has its offset");
	}

	private static boolean leftOver(ToolUse tool, WordRef word) {
		return tool.change().filter(change -> change.file().name().equals(word.block().file().name()) && word.block().line() < change.line()).isPresent();
	}

	private Draft wrong(ToolUse tool, Setting own) {
		if (own.word().isPresent() && leftOver(tool, own.word().get())) {
			return Draft.of(this, Severity.ERROR, Location.of(tool.change().orElseThrow()), tool.name() + " runs with "
					+ Figures.written(own.word().get()) + ", left over from the tool before: it goes too deep or too high by the difference of the tools' lengths; G43 H"
					+ tool.number()).programmed("length offset", Figures.written(own.word().get()), own).related(Location.of(own.word().get()), "the offset left over");
		}
		String said = own.word().map(Figures::written).orElse("H" + Figures.number(own.value(), 0));
		Draft draft = Draft.of(this, Severity.ERROR, own, tool.change().orElseThrow(), said + " is not " + tool.name()
				+ "'s, and the other tools take their own number: it goes too deep or too high by the difference of the tools' lengths; H" + tool.number())
				.programmed("length offset", said, own).from("tool", tool.name(), "programmed");
		own.word().filter(WordRef::literal).flatMap(word -> Draft.change(word, tool.number(), 0, false,
				"see that the offset table holds this tool's length there")).ifPresent(draft::fix);
		return draft;
	}
}
