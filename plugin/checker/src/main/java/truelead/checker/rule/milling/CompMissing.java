package truelead.checker.rule.milling;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.machine.Compensation;
import truelead.checker.pass.MillPass;
import truelead.checker.pass.MillPasses;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The path is the thread's wall and no compensation takes the cutter's radius off, so that the hole is cut a cutter's diameter too big; or
 * the compensation is for the other side, and it is cut two of them too big; or it takes another tool's radius; or one pass lacks it.
 */
public final class CompMissing implements Rule {

	/** A path within this part of the pitch of the major diameter is meant to be the wall. */
	private static final double NEAR = 0.25;
	/** The same for a taper thread, whose size depends on how deep it is cut. */
	private static final double TAPER = 1;
	/** A pass that is wider than another by this is no spring pass of it, mm. */
	private static final double WIDER = 1e-3;
	/** Shops that keep radii apart from lengths add a round number to the tool's (common practice, no source). */
	private static final int ROUND = 10;

	@Override
	public String name() {
		return "comp-missing";
	}

	@Override
	public Set<Slip> tells() {
		return Set.of(Slip.NO_COMPENSATION);
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNIT_WORD, Slip.TURNED_ROUND, Slip.NO_CENTRE);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		Set<Integer> tools = work.ofTools(Numbers.class, Numbers::of).numbers();
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<ThreadSpec> thread = MillFacts.cutThread(operation).map(Fact::value);
			OptionalDouble cutter = MillFacts.cutter(operation);
			thread.ifPresent(any -> operation.passes().typical().stream().filter(pass -> isWrongSide(pass, any, cutter)).findFirst()
					.ifPresent(pass -> found.accept(wrongSide(work, operation, pass, any, cutter))));
			BoltCompensation.of(this, work, operation).map(Draft::finding).ifPresent(found);
			MillPasses walls = operation.passes().where(pass -> thread.filter(any -> isWall(operation, pass, any, cutter)).isPresent());
			thread.ifPresent(any -> walls.forEach(pass -> found.accept(finding(work, operation, pass, any, cutter))));
			if (walls.isEmpty()) {
				UncompensatedPass.of(this, operation).map(Draft::finding).ifPresent(found);
			}
			operation.passes().typical().stream().filter(pass -> isOfAnother(pass, operation.tool(), tools)).findFirst()
					.ifPresent(pass -> found.accept(ofAnother(operation, pass)));
		}
	}

	/** The numbers of the tools of a program. */
	private record Numbers(Set<Integer> numbers) {

		static Numbers of(List<ToolUse> tools) {
			Set<Integer> numbers = new HashSet<>();
			for (ToolUse tool : tools) {
				if (tool.change().isPresent()) {
					numbers.add(tool.number());
				}
			}
			return new Numbers(numbers);
		}
	}

	/** Compensation by the number of another tool of the program, where the length is taken by the tool's own. */
	private static boolean isOfAnother(MillPass pass, ToolUse tool, Set<Integer> tools) {
		Setting offset = pass.compensationOffset();
		if (pass.compensation() == Compensation.OFF || !offset.known() || tool.number() <= 0) {
			return false;
		}
		int number = (int) Math.round(offset.value());
		boolean ownLength = !tool.summary().lengthOffsets().isEmpty()
				&& tool.summary().lengthOffsets().stream().allMatch(h -> h.value() == tool.number());
		return number != tool.number() && (number - tool.number()) % ROUND != 0 && ownLength && tools.contains(number);
	}

	private Finding ofAnother(ThreadMilling operation, MillPass pass) {
		Setting offset = pass.compensationOffset();
		ToolUse tool = operation.tool();
		String said = offset.word().map(Figures::written).orElse("D" + Figures.number(offset.value(), 0));
		Draft draft = Draft.of(this, Severity.WARNING, offset, pass.block(), said + " is the number of T" + Figures.number(offset.value(),
				0) + ", and H" + tool.number() + " is " + tool.name() + "'s own: with that tool's radius the thread is off size; D"
				+ tool.number()).on(operation).programmed("radius offset", said, offset);
		offset.word().filter(WordRef::literal)
				.flatMap(word -> Draft.change(word, tool.number(), 0, false, "see that the offset table holds this tool's radius there"))
				.ifPresent(draft::fix);
		return draft.related(pass.block(), "the helix").finding();
	}

	/** Compensation that puts the cutter outside a path that is the wall: G42 counter-clockwise, G41 clockwise inside a hole. */
	private static boolean isWrongSide(MillPass pass, ThreadSpec thread, OptionalDouble cutter) {
		boolean wall = inWall(HelixForm.of(pass).pathDiameter(), thread, cutter);
		boolean outside = pass.compensation() == (pass.counterclockwise() ? Compensation.RIGHT : Compensation.LEFT);
		return wall && outside && !pass.external() && !pass.modal().mirrored();
	}

	private Finding wrongSide(Work work, ThreadMilling operation, MillPass pass, ThreadSpec thread, OptionalDouble cutter) {
		Figures figures = new Figures(work.shop().unit().value());
		String on = pass.compensation() == Compensation.LEFT ? "G41" : "G42";
		String right = pass.compensation() == Compensation.LEFT ? "G42" : "G41";
		BlockRef at = work.course().compensation().lastTo(pass.compensation(), pass.order()).map(c -> c.step().block())
				.orElse(pass.block());
		double path = HelixForm.of(pass).pathDiameter();
		String cuts = cutter.isPresent() ? ", which cuts " + figures.length(path + 2 * cutter.getAsDouble()) + " with a cutter of "
				+ figures.length(cutter.getAsDouble()) : "";
		Draft draft = Draft.of(this, Severity.ERROR, MillFacts.word(at, "G", pass.compensation() == Compensation.LEFT ? 41 : 42),
				on + " puts the cutter outside the wall of " + MillFacts.name(operation) + cuts + ": the path goes round "
						+ (pass.counterclockwise() ? "counter-clockwise" : "clockwise") + " inside the hole; " + right).on(operation)
				.programmed("diameter of the path", figures.length(path), pass.block())
				.known("the callout", thread.designation(), operation.wanted().statedThread().orElseThrow());
		operation.tool().facts().diameter().ifPresent(d -> draft.known("cutter diameter", figures.length(d.value()), d));
		return draft.related(pass.block(), "the helix").finding();
	}

	private static double near(ThreadSpec thread) {
		return (thread.taperOnDiameter() == 0 ? NEAR : TAPER) * thread.pitch();
	}

	/**
	 * Whether a path lies in the thread's wall, between the hole and its major diameter, where a cutter's centre does not go: it would cut
	 * too large by far.
	 */
	private static boolean inWall(double path, ThreadSpec thread, OptionalDouble cutter) {
		double near = near(thread);
		return cutter.isEmpty() ? Math.abs(path - thread.diameter()) <= near
				: path > Math.min(MillFacts.minor(thread), thread.diameter() - near) && path <= thread.diameter() + near && path
				+ cutter.getAsDouble() > thread.diameter() + near;
	}

	private static boolean isWall(ThreadMilling operation, MillPass pass, ThreadSpec thread, OptionalDouble cutter) {
		double path = HelixForm.of(pass).pathDiameter();
		return pass.compensation() == Compensation.OFF && !pass.external() && inWall(path, thread, cutter)
				&& (Math.abs(path - thread.diameter()) <= near(thread)
						|| operation.passesAt(pass.hole()).stream().anyMatch(other -> other.radius() > pass.radius() + WIDER
								&& other.compensation() != Compensation.OFF));
	}

	private Finding finding(Work work, ThreadMilling operation, MillPass pass, ThreadSpec thread, OptionalDouble cutter) {
		Figures figures = new Figures(work.shop().unit().value());
		boolean left = pass.counterclockwise();
		String cuts = cutter.isPresent() ? figures.length(cutter.getAsDouble()) + ", cuts "
				+ figures.length(HelixForm.of(pass).pathDiameter() + cutter.getAsDouble()) : "whatever it is, cuts wider by its diameter";
		Draft draft = Draft.of(this, Severity.ERROR, MillFacts.word(pass.block(), "G"),
				"the path of " + figures.length(HelixForm.of(pass).pathDiameter()) + " is the wall of " + MillFacts.name(operation)
						+ " and no compensation is in force: the cutter, " + cuts + "; " + (left ? "G41" : "G42")
						+ " with D on the move before the lead-in").on(operation)
				.programmed("diameter of the path", figures.length(HelixForm.of(pass).pathDiameter()), pass.block())
				.known("the callout", thread.designation(), operation.wanted().statedThread().orElseThrow());
		operation.tool().facts().diameter()
				.ifPresent(diameter -> draft.known("cutter diameter", figures.length(diameter.value()), diameter));
		return draft.finding();
	}
}
