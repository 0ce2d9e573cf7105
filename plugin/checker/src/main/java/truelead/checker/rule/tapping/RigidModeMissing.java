package truelead.checker.rule.tapping;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.program.WordRef;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.stroke.TapStroke;
import truelead.checker.tool.ToolUse;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * The machine profile asks for a rigid-tap code before a tapping cycle, or the program gives it before all its other ones, and none is in
 * force.
 */
public final class RigidModeMissing extends TappingRule {

	public RigidModeMissing() {
		super("rigid-mode-missing");
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.DRILLING_CYCLE, Slip.NO_TAP);
	}

	@Override
	void check(Tapping tapping, Work work, Consumer<Draft> found) {
		boolean required = work.shop().profile().yes(ProfileKey.RIGID_TAP_REQUIRED);
		if (!cycled(tapping) || tapping.wanted().holder().value().floats()) {
			return;
		}
		TapStroke bare = null;
		for (TapStroke stroke : tapping.strokes().typical()) {
			bare = bare == null && stroke.modal().rigid().isEmpty() ? stroke : bare;
		}
		if (bare != null && required) {
			found.accept(draft(work, tapping));
		} else if (bare != null && work.shop().profile().is(ProfileKey.KIND, "milling")) {
			Habit habit = work.ofTools(Habit.class, Habit::of);
			if (tapping.tool().summary().rigid().isPresent()) {
				elsewhere(tapping, bare, work).ifPresent(found);
			} else if (habit.with().isPresent() && habit.without().equals(Set.of(tapping.tool().index()))) {
				unlike(tapping, bare, habit).ifPresent(found);
			}
		}
	}

	private static boolean cycled(Tapping tapping) {
		// G84.2 and G84.3 are synchronised by themselves (from memory)
		return tapping.cycle().filter(cycle -> cycle.code() % 10 == 0 && cycle.code() < 1000).isPresent() && tapping.method().taps();
	}

	/**
	 * What a program does before its tapping cycles; taps in a holder that floats need nothing.
	 *
	 * @param with    the rigid-tap code of a tool
	 * @param often   how many tools have one
	 * @param without numbers of the stays that never have one
	 */
	private record Habit(Optional<WordRef> with, int often, Set<Integer> without) {

		static Habit of(List<ToolUse> tools) {
			Optional<WordRef> with = Optional.empty();
			Set<Integer> without = new HashSet<>();
			int often = 0;
			for (ToolUse tool : tools) {
				boolean taps = tool.summary().tapping() && !tool.facts().cannotTap()
						&& tool.facts().holder().filter(holder -> holder.value().floats()).isEmpty();
				with = with.isEmpty() && taps ? tool.summary().rigid() : with;
				often += taps && tool.summary().rigid().isPresent() ? 1 : 0;
				if (taps && tool.summary().rigid().isEmpty()) {
					without.add(tool.index());
				}
			}
			return new Habit(with, often, without);
		}
	}

	/**
	 * The only cycle of a tool without the code that its others have each for itself, at least two: a code that counts for the whole stay
	 * is written once.
	 */
	private Optional<Draft> elsewhere(Tapping tapping, TapStroke bare, Work work) {
		List<Tapping> of = work.group(tapping).stream().filter(Tapping.class::isInstance).map(Tapping.class::cast)
				.filter(one -> one.tool().index() == tapping.tool().index()).toList();
		Set<WordRef> codes = new HashSet<>();
		int without = 0;
		for (Tapping one : of) {
			one.strokes().typical().forEach(stroke -> stroke.modal().rigidWord().ifPresent(codes::add));
			without += one.strokes().typical().stream().anyMatch(stroke -> stroke.modal().rigid().isEmpty()) ? 1 : 0;
		}
		if (without != 1 || of.size() < 3 || codes.size() < of.size() - 1) {
			return Optional.empty();
		}
		WordRef code = codes.iterator().next();
		return Optional.of(Draft.of(this, Severity.WARNING, Location.of(block(tapping, bare)),
				"no rigid-tap code is in force, the other cycles of " + tapping.tool().name() + " have " + Figures.written(code)
				+ " each: spindle and feed are not synchronised; the same before this cycle")
				.from("rigid-tap code", "before the other cycles", "programmed")
				.related(Location.of(code), "the code before another cycle"));
	}

	/** Whether the feed is the pitch to the last decimal, as for a rigid holder. */
	private static boolean exact(Tapping tapping, TapStroke stroke) {
		return tapping.wanted().statedThread().isPresent()
				&& TapFeed.of(tapping, stroke).filter(feed -> feed.exact(tapping.wanted().statedThread().get().value().lead())).isPresent();
	}

	/**
	 * The only tap without the code that all others have; one alone is a habit where the feed is exact too. It leaves S and the start of
	 * the spindle out as well where it says them.
	 */
	private Optional<Draft> unlike(Tapping tapping, TapStroke stroke, Habit habit) {
		WordRef code = habit.with().orElseThrow();
		String message = "no rigid-tap code is in force, the program's other " + (habit.often() == 1 ? "tap has " : "taps have ")
				+ Figures.written(code)
				+ ": spindle and feed are not synchronised; the same before this cycle, or say FLOATING HOLDER if it is one";
		boolean stale = stroke.speed().word().filter(word -> tapping.tool().change().filter(word.block()::above).isPresent()).isPresent();
		boolean speedToo = stale || !stroke.speed().isSet();
		if (!speedToo && habit.often() < 2 && !exact(tapping, stroke)) {
			return Optional.empty();
		}
		Draft draft = Draft.of(this, speedToo ? Severity.ERROR : Severity.WARNING, Location.of(block(tapping, stroke)), message)
				.from("rigid-tap code", "before the other taps", "programmed").related(Location.of(code), "the code before another tap");
		return Optional.of(speedToo ? draft.tells(Slip.RIGID_CODE_LEFT_OUT) : draft);
	}

	private Draft draft(Work work, Tapping tapping) {
		String message =
				"no rigid-tap code is in force: spindle and feed are not synchronised, and a rigid holder takes no difference; the "
				+ "rigid-tap code " + "with S before the cycle";
		return Draft.of(this, Severity.ERROR, Location.of(tapping.block()), message)
				.from("rigid-tap code", "asked for before a tapping cycle", "machine profile " + work.shop().profile().name());
	}
}
