package truelead.checker.rule.tapping;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.machine.Modal;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.HoleMakers;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.rule.WordText;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The program's other tools run with their length offsets, and the threading tool, or a drill or countersink of its holes, runs with none
 * or with another tool's.
 */
public final class LengthOffsetMissing implements Rule {

	@Override
	public String name() {
		return "length-offset-missing";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.LEFT_ON, Slip.FEED_AND_DRILL, Slip.NO_TAP);
	}

	/** A stay of a tool; the same tool may come again and again, as by a subprogram that is called for each part. */
	private record Stay(int index, int number) {

		static Stay of(ToolUse tool) {
			return new Stay(tool.index(), tool.number());
		}

		boolean sameTool(Stay other) {
			return index == other.index || number >= 0 && number == other.number;
		}
	}

	/**
	 * The tools that an offset is looked for in: enough of each kind to tell whether there is another one.
	 *
	 * @param count     how many tools cut or move with an offset or without
	 * @param first     the first two of them
	 * @param without   the first two that run without an offset
	 * @param otherwise the first two that run with another one than their own
	 * @param said      the first two whose offset an H word says
	 * @param unsaid    the first two whose G43 has no H
	 * @param coded     the first two whose H stands under a code of their own
	 * @param uncoded   the first two whose H stands under the G43 of the tool before
	 * @param called    the numbers of all of them
	 * @param own       the numbers of tools that have run with their own alone
	 * @param unlisted  the first two that no tool list names
	 * @param ahead     by how much the H of every tool is ahead of its number, as where H21 is T1's: what three tools or more have in
	 *                  common, all but one of them; else 0
	 * @param shared    whether those that run with another one all do so by one H word, as in a subprogram that several tools run, and are
	 *                  no more than the others
	 */
	private record Offsets(int count, List<Stay> first, List<Stay> without, List<Stay> otherwise, List<Stay> said, List<Stay> unsaid,
			List<Stay> coded, List<Stay> uncoded, Set<Integer> called, Set<Integer> own, List<Stay> unlisted, int ahead, boolean shared) {

		static Offsets of(List<ToolUse> all) {
			List<Stay> first = new ArrayList<>();
			List<Stay> without = new ArrayList<>();
			List<Stay> otherwise = new ArrayList<>();
			List<Stay> said = new ArrayList<>();
			List<Stay> unsaid = new ArrayList<>();
			List<Stay> coded = new ArrayList<>();
			List<Stay> uncoded = new ArrayList<>();
			List<Stay> unlisted = new ArrayList<>();
			Set<Integer> numbers = new HashSet<>();
			Set<Integer> own = new HashSet<>();
			Set<Integer> others = new HashSet<>();
			List<Setting> words = new ArrayList<>();
			int count = 0;
			int ahead = OffsetNumbers.ahead(all);
			for (ToolUse tool : all) {
				boolean none = tool.summary().lengthOffsets().isEmpty();
				boolean bare = tool.summary().movedWithoutOffset();
				if (tool.change().isPresent() && (!none || bare)) {
					count += tool.number() < 0 || numbers.add(tool.number()) ? 1 : 0;
					boolean itsOwn = ownNumber(tool, ahead);
					boolean withoutH = !none && withoutH(tool).isPresent();
					addUpToTwo(first, tool, true);
					addUpToTwo(unlisted, tool, !MeantTool.listed(tool));
					addUpToTwo(without, tool, none || bare);
					addUpToTwo(otherwise, tool, !itsOwn);
					addUpToTwo(unsaid, tool, withoutH);
					addUpToTwo(said, tool, !none && !withoutH);
					addUpToTwo(coded, tool, !none && withoutCode(tool).isEmpty());
					addUpToTwo(uncoded, tool, withoutCode(tool).isPresent());
					if (itsOwn) {
						own.add(tool.number());
					} else {
						others.add(tool.number());
						words.addAll(tool.summary().lengthOffsets());
					}
				}
			}
			return new Offsets(count, first, without, otherwise, said, unsaid, coded, uncoded, numbers, own, unlisted, ahead,
					others.size() <= own.size() && areOneWord(words));
		}

		private static boolean areOneWord(List<Setting> offsets) {
			Optional<WordRef> first = offsets.stream().findFirst().flatMap(Setting::word).filter(WordRef::literal);
			return first.isPresent() && offsets.stream().allMatch(h -> h.word().filter(other -> sameWord(other, first.get())).isPresent());
		}

		private static boolean sameWord(WordRef one, WordRef other) {
			return one.block().sameBlock(other.block()) && one.span().equals(other.span());
		}

		/** Whether the tools that run with another offset share one word, and this is the first of them, where it is said. */
		private boolean sharedFrom(ToolUse tool) {
			return shared && otherwise.get(0).index() == tool.index();
		}

		private static void addUpToTwo(List<Stay> tools, ToolUse tool, boolean one) {
			if (one && (tools.isEmpty() || tools.size() < 2 && !noOther(tools, tool))) {
				tools.add(Stay.of(tool));
			}
		}
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Offsets offsets = work.ofTools(Offsets.class, Offsets::of);
		BitSet checked = new BitSet();
		for (ThreadingOperation operation : work.operations()) {
			ToolUse tool = operation.tool();
			boolean first = !checked.get(tool.index());
			checked.set(tool.index());
			if (first && tool.change().isPresent()) {
				Optional<Draft> draft = noOther(offsets.first(), tool) ? anotherTools(tool, offsets) : check(tool, work, offsets);
				draft.ifPresent(said -> found.accept(said.on(underOther(operation, work)).finding()));
			}
		}
		drills(work, offsets, checked, found);
	}

	/**
	 * Of a tool's operations the first under an offset that is not its own: where a tool change is left out, that of the tool that was to
	 * come.
	 */
	private static ThreadingOperation underOther(ThreadingOperation first, Work work) {
		return work.operations().stream().skip(Math.max(0, work.operations().indexOf(first)))
				.takeWhile(one -> one.tool().index() == first.tool().index()).filter(one -> one instanceof Tapping tapping
						&& !tapping.strokes().isEmpty() && tapping.strokes().get(0).modal().lengthOffset().known()
						&& Math.abs(tapping.strokes().get(0).modal().lengthOffset().value() - first.tool().number()) > 1e-6).findFirst()
				.orElse(first);
	}

	/**
	 * The only tool that runs with another offset, where it makes the holes of threads, or spots or countersinks them: they are too deep or
	 * too shallow. The first tool may be the one that the others are measured by.
	 */
	private void drills(Work work, Offsets offsets, BitSet checked, Consumer<Finding> found) {
		Set<Integer> suspects = new HashSet<>();
		offsets.otherwise().forEach(stay -> suspects.add(stay.index()));
		offsets.unsaid().forEach(stay -> suspects.add(stay.index()));
		offsets.uncoded().stream().filter(stay -> offsets.uncoded().size() == 1).forEach(stay -> suspects.add(stay.index()));
		offsets.without().stream().filter(stay -> stay.index() > offsets.first().get(0).index())
				.forEach(stay -> suspects.add(stay.index()));
		suspects.removeIf(checked::get);
		for (HoleMakers.Maker maker : suspects.isEmpty() ? List.<HoleMakers.Maker>of() : HoleMakers.of(work)) {
			ToolUse tool = maker.cut().tool();
			boolean alone = noOther(offsets.first(), tool);
			boolean measuring = maker.cut().kind().atEdge() && tool.summary().lengthOffsets().isEmpty()
					&& tool.index() == offsets.first().get(0).index();
			if (suspects.remove(tool.index()) && !measuring && tool.change().isPresent()
					&& (!alone || offsets.own().contains(tool.number()))) {
				work.dependsOnAll();
				(alone ? anotherTools(tool, offsets) : check(tool, work, offsets))
						.ifPresent(said -> found.accept(said.on(maker.operation()).finding()));
			}
		}
	}

	private static boolean noOther(List<Stay> tools, ToolUse than) {
		Stay stay = Stay.of(than);
		for (Stay tool : tools) {
			if (!tool.sameTool(stay)) {
				return false;
			}
		}
		return true;
	}

	private Optional<Draft> check(ToolUse tool, Work work, Offsets offsets) {
		if (tool.summary().lengthOffsets().isEmpty()) {
			return noOther(offsets.without(), tool) && tool.summary().movedWithoutOffset() ? Optional.of(missing(tool, work, offsets))
					: Optional.empty();
		}
		boolean own = ownNumber(tool, offsets.ahead());
		Optional<Setting> subtracted = own ? Optional.empty()
				: tool.summary().lengthOffsets().stream().filter(h -> h.value() < 0).findFirst();
		if (subtracted.isPresent()) {
			return subtracted.filter(h -> noOther(offsets.otherwise(), tool)).map(h -> subtracted(tool, h));
		}
		Optional<Setting> unsaid = withoutH(tool).filter(g -> noOther(offsets.unsaid(), tool) && !offsets.said().isEmpty());
		if (unsaid.isPresent()) {
			return unsaid.map(g -> unsaid(tool, g));
		}
		if (own) {
			boolean alone = noOther(offsets.uncoded(), tool) && !offsets.coded().isEmpty()
					&& work.shop().profile().text(ProfileKey.TOOL_CHANGE_CANCELS_LENGTH_OFFSET.key()).filter("no"::equals).isEmpty();
			return alone ? withoutCode(tool).map(h -> uncoded(tool, h, offsets.coded().size())) : Optional.empty();
		}
		boolean numbered = noOther(offsets.otherwise(), tool) || offsets.sharedFrom(tool);
		return tool.summary().lengthOffsets().stream().filter(h -> numbered && h.known() && tool.number() > 0
				&& Math.abs(h.value() - tool.number() - offsets.ahead()) > 1e-6).findFirst().map(h -> wrong(tool, h, offsets));
	}

	/** The only tool of a program takes its own offset elsewhere and another one here: one of the two numbers is another tool's. */
	private Optional<Draft> anotherTools(ToolUse tool, Offsets offsets) {
		if (!offsets.own().contains(tool.number()) || tool.summary().lengthOffsets().size() != 1) {
			return Optional.empty();
		}
		Setting other = tool.summary().lengthOffsets().get(0);
		return Optional.of(other).filter(h -> h.known() && Math.abs(h.value() - tool.number()) > 1e-6 && h.word().isPresent()).map(h -> {
			String said = Figures.written(h.word().get());
			return Draft.of(this, Severity.ERROR, h, tool.change().orElseThrow(), said + " is not " + tool.name() + "'s, which runs with H"
					+ tool.number() + " elsewhere: tool or offset is another one's, and it goes too deep or too high by the difference of "
					+ "the tools' lengths; T" + Figures.number(h.value(), 0) + ", or H" + tool.number())
					.programmed("length offset", said, h).from("tool", tool.name(), "programmed");
		});
	}

	private static boolean ownNumber(ToolUse tool, int ahead) {
		boolean own = tool.number() > 0 && !tool.summary().lengthOffsets().isEmpty();
		for (Setting h : tool.summary().lengthOffsets()) {
			own &= h.known() && Math.abs(h.value() - tool.number() - ahead) < 1e-6;
		}
		return own;
	}

	/** An offset that G43 takes without H. */
	private static Optional<Setting> withoutH(ToolUse tool) {
		for (Setting h : tool.summary().lengthOffsets()) {
			if (h.word().isPresent() && h.word().get().address() == 'G') {
				return Optional.of(h);
			}
		}
		return Optional.empty();
	}

	/** An H that stands under the G43 of the tool before. */
	private static Optional<Setting> withoutCode(ToolUse tool) {
		for (Setting h : tool.summary().lengthOffsets()) {
			if (h.why().equals(Modal.CODE_OF_TOOL_BEFORE)) {
				return Optional.of(h);
			}
		}
		return Optional.empty();
	}

	/** @param others how many tools have a code of their own, 2 for more: one alone may say it for all that follow */
	private Draft uncoded(ToolUse tool, Setting h, int others) {
		String said = h.word().map(Figures::written).orElse("H");
		return Draft.of(this, others > 1 ? Severity.WARNING : Severity.INFORMATION, h, tool.change().orElseThrow(),
				said + " stands without G43, the other " + (others > 1 ? "tools have" : "tool has")
				+ " it: a control that cancels G43 at a tool change or on the way home runs " + tool.name() + " without its length; G43 "
				+ said).programmed("length offset", said, h);
	}

	private Draft unsaid(ToolUse tool, Setting g) {
		return Draft.of(this, Severity.WARNING, g, tool.change().orElseThrow(), Figures.written(g.word().orElseThrow()) + " names no H for "
				+ tool.name() + ", for the other tools it does: some controls take the tool's own length then, others none or that of the "
				+ "tool before; H" + tool.number());
	}

	private Draft subtracted(ToolUse tool, Setting h) {
		return Draft.of(this, Severity.ERROR, h, tool.change().orElseThrow(), "G44 subtracts the length of " + tool.name()
				+ ", for the other tools it is added: it goes in too deep by twice its length; G43")
				.from("tool", tool.name(), "programmed");
	}

	private Draft missing(ToolUse tool, Work work, Offsets offsets) {
		int others = offsets.count() - 1;
		int other = offsets.first().stream().filter(stay -> !stay.sameTool(Stay.of(tool))).findFirst().orElseThrow().index();
		String h = "G43 H" + (tool.number() > 0 ? String.valueOf(tool.number()) : "");
		return Draft.of(this, Severity.ERROR, Location.of(tool.change().orElseThrow()), tool.name() + " runs without a length offset, the "
				+ others + (others == 1 ? " other tool has one" : " other tools have theirs")
				+ ": it goes too deep or too high by the difference of the tools' lengths; " + h.strip())
				.related(work.tools().get(other).change().orElseThrow(), "a tool that has its offset");
	}

	private static boolean leftOver(ToolUse tool, WordRef word) {
		return tool.change().filter(word.block()::above).isPresent();
	}

	private Draft wrong(ToolUse tool, Setting own, Offsets offsets) {
		int right = tool.number() + offsets.ahead();
		if (own.word().isPresent() && leftOver(tool, own.word().get())) {
			return Draft.of(this, Severity.ERROR, Location.of(tool.change().orElseThrow()), tool.name() + " runs with "
					+ Figures.written(own.word().get())
					+ ", left over from the tool before: it goes too deep or too high by the difference of the tools' lengths; G43 H"
					+ right).programmed("length offset", Figures.written(own.word().get()), own)
					.related(Location.of(own.word().get()), "the offset left over");
		}
		String said = own.word().map(Figures::written).orElse("H" + Figures.number(own.value(), 0));
		int number = own.value() == Math.rint(own.value()) ? (int) own.value() - offsets.ahead() : 0;
		MeantTool meant = offsets.otherwise().size() > 1 ? new MeantTool(number, MeantTool.Culprit.OFFSET, false)
				: MeantTool.of(tool, number, offsets.called(), offsets.own(), noOther(offsets.unlisted(), tool));
		boolean turret = own.word().filter(word -> word.address() == 'T').isPresent();
		String offset = turret ? MeantTool.pocket(own.word().get(), tool.number(), right) : "H" + right;
		String other = turret ? MeantTool.pocket(own.word().get(), number, (int) Math.round(own.value())) : meant.said();
		Draft draft = Draft.of(this, Severity.ERROR, own, tool.change().orElseThrow(), said + " is not " + tool.name()
				+ "'s, and the other tools take their own number" + (offsets.ahead() == 0 ? "" : " and " + offsets.ahead() + " more")
				+ ": it goes too deep or too high by the difference of the tools' lengths; " + switch (meant.likelier()) {
					case OFFSET -> offset;
					case TOOL -> other + ", or " + offset;
					case EITHER -> offset + ", or " + other;
				}).programmed("length offset", said, own).from("tool", tool.name(), "programmed");
		if (meant.likelier() == MeantTool.Culprit.TOOL) {
			draft.tells(Slip.OTHER_TOOL);
		} else {
			own.word().filter(WordRef::literal).map(word -> MeantTool.fix(word, turret ? offset : WordText.rewrite(word, right, 0),
					"see that the offset table holds this tool's length there")).ifPresent(draft::fix);
		}
		if (meant.likelier() != MeantTool.Culprit.OFFSET) {
			(turret ? own.word().filter(WordRef::literal).map(word -> MeantTool.fix(word, other,
					"see that T" + number + " is the tool that is meant here")) : meant.fix(tool)).ifPresent(draft::fix);
		}
		return draft;
	}
}
