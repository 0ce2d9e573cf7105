package truelead.checker.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import truelead.checker.callout.CalloutReader;
import truelead.checker.comment.Commentary;
import truelead.checker.hole.Places;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Cycle;
import truelead.checker.machine.Modal;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.Meaning;
import truelead.checker.program.Plane;
import truelead.checker.program.Setting;
import truelead.checker.run.AxisRun;
import truelead.checker.stroke.Stroke;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ToolKind;
import truelead.checker.tool.Stays;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;
import truelead.checker.wanted.Callouts;
import truelead.grammar.Expression;

/** Tells tapping from drilling among the cycles and the runs along an axis, and gathers the strokes into operations. */
final class TapDrafts {

	/** Lines between a tool change and a comment that surely names that tool. */
	private static final int NAME_AT_CHANGE = 3;

	/** What a drill of a size that is threaded is fed in a turn at most, mm (common practice, no source). */
	private static final double DRILLS_FEED = 0.45;

	/** How far F may be rounded, a part of itself. */
	private static final double ROUNDED = 0.007;

	/** A cycle's block under one stay of a tool: run again by a loop or another call, it is the same operation. */
	private record Key(ToolLog log, Tapping.Method method, String file, int line) {
	}

	private final MachineProfile profile;
	private final boolean turning;
	private final Commentary commentary;
	private final Stays stays;
	private final List<Draft> drafts = new ArrayList<>();
	private final Map<Key, Draft> cycles = new HashMap<>();
	/** The operation of the cycle in force. */
	private Draft cycleDraft;
	private Draft runDraft;

	TapDrafts(MachineProfile profile, Commentary commentary, Stays stays) {
		this.profile = profile;
		this.turning = profile.isLathe();
		this.commentary = commentary;
		this.stays = stays;
	}

	List<Draft> drafts() {
		return drafts;
	}

	/** Takes a cycle, at a place or a row of them, where it taps or where a tap moves in it; false where it is for the holes. */
	boolean cycle(TimedStroke timed, ToolUse tool) {
		ToolLog log = timed.tool();
		Step.Stroke stroke = timed.stroke();
		Cycle.Kind kind = stroke.cycle().kind();
		boolean drills = kind == Cycle.Kind.DRILL || kind == Cycle.Kind.PECK_DRILL || kind == Cycle.Kind.BORE_FEED_OUT
				|| kind == Cycle.Kind.BORE;
		if (!kind.taps() && !drills) {
			return false;
		}
		Stroke made = stroke(timed, tool);
		if (!kind.taps() && !tool.facts().isTap() && !turnsLikeATap(made)) {
			return false;
		}
		boolean reversing = kind == Cycle.Kind.BORE_FEED_OUT
				&& tool.facts().holder().filter(h -> h.value().kind() == HolderKind.SELF_REVERSING).isPresent();
		Tapping.Method method = reversing ? Tapping.Method.CYCLE : !kind.taps() ? Tapping.Method.DRILLING_CYCLE
				: surelyNoTap(log, tool) ? Tapping.Method.WRONG_TOOL : Tapping.Method.CYCLE;
		if (cycleDraft != null && cycleDraft.log != log && !stroke.positioned() && cycleDraft.block.sameBlock(stroke.cycle().start())) {
			cycleDraft.strays.add(made);
			return true;
		}
		Key key = new Key(log, method, stroke.cycle().start().file().name(), stroke.cycle().start().line());
		Draft inForce = cycleDraft;
		boolean goesOn = goesOn(log, method, stroke);
		cycleDraft = cycles.computeIfAbsent(key, k -> goesOn ? inForce
				: add(new Draft(Optional.of(method), log, tool, stroke.cycle().start(), Optional.of(stroke.cycle()))));
		cycleDraft.strokes.add(made);
		return true;
	}

	/**
	 * Whether a cycle is the one in force said anew, as many write it at every hole; what is said between the two may be about the second
	 * alone.
	 */
	private boolean goesOn(ToolLog log, Tapping.Method method, Step.Stroke next) {
		return cycleDraft != null && cycleDraft.log == log && cycleDraft.method.filter(method::equals).isPresent()
				&& cycleDraft.cycle.filter(cycle -> cycle.code() == next.cycle().code()).isPresent()
				&& commentary.between(cycleDraft.lastBlock(), next.block()).isEmpty();
	}

	/** Takes a run along an axis where it taps; false where it is for the holes or for nothing. */
	boolean run(AxisRun run, ToolUse tool) {
		Optional<Tapping.Method> method = method(run, tool);
		if (method.isEmpty()) {
			return false;
		}
		boolean goesOn = runDraft != null && runDraft.log == run.tool() && runDraft.method.equals(method)
				&& !newCallout(runDraft, run.in());
		if (!goesOn) {
			runDraft = add(new Draft(method, run.tool(), tool, run.in().block(), Optional.empty()));
		}
		runDraft.strokes.add(stroke(run, tool));
		return true;
	}

	/** A cycle is over, or something is met while it is on. */
	void event(Step.Event event, int order, ToolLog log) {
		switch (event.kind()) {
			case CYCLE_CANCELLED, SUB_END -> cycleDraft = null;
			case TOOL_CHANGE -> leftOn(Tapping.Met.TOOL_CHANGE, event, order);
			case PROGRAM_END -> {
				leftOn(Tapping.Met.PROGRAM_END, event, order);
				cycleDraft = null;
			}
			case SPINDLE -> {
				if (event.modal().spindle() == SpindleTurn.STOPPED) {
					leftOn(Tapping.Met.SPINDLE_STOP, event, order);
				}
			}
			default -> {
				// Says nothing about the cycle.
			}
		}
	}

	/** Another cycle that does not tap takes over. */
	void otherCycle() {
		cycleDraft = null;
	}

	private void leftOn(Tapping.Met met, Step.Event event, int order) {
		if (cycleDraft != null) {
			cycleDraft.leftOn.add(new Tapping.LeftOn(met, event.block(), order));
		}
	}

	/** Whether a tool that nobody calls anything advances in a turn just what the thread in its comments does, as no drill would. */
	static boolean turnsLikeATap(Stroke stroke) {
		double advance = stroke.advance();
		return advance > DRILLS_FEED && stroke.tool().facts().kind().isEmpty() && stroke.tool().comments().stream()
				.flatMap(comment -> CalloutReader.read(comment.text()).stream())
				.anyMatch(callout -> Math.abs(callout.spec().lead() - advance) <= ROUNDED * advance);
	}

	private boolean newCallout(Draft before, Step next) {
		return Callouts.any(commentary.between(before.lastBlock(), next.block()));
	}

	private Draft add(Draft draft) {
		drafts.add(draft);
		return draft;
	}

	private Optional<Tapping.Method> method(AxisRun run, ToolUse tool) {
		boolean tap = tool.facts().isTap();
		if (run.synchronised()) {
			if (turning && run.place().plane() == Plane.XY && !(Math.abs(run.place().u()) <= AxisRun.CENTRE_LINE) && !tap
					&& !(run.in() instanceof Step.Synchronised move && move.drivesTap())) {
				return Optional.empty();
			}
			boolean head = tool.facts().holder().filter(h -> h.value().kind() == HolderKind.SELF_REVERSING).isPresent();
			return Optional.of(surelyNoTap(run.tool(), tool) ? Tapping.Method.WRONG_TOOL : tap && run.rapidOut() && !head
					? Tapping.Method.DRILLING_CYCLE : run.out().isEmpty() ? Tapping.Method.SYNCHRONISED_BLOCK
					: Tapping.Method.SYNCHRONISED);
		}
		if (tool.facts().kind().filter(kind -> kind.value() == ToolKind.DIE_HEAD).isPresent()) {
			// it opens at the end of the thread, and may be pulled back at rapid
			return Optional.of(Tapping.Method.FEED);
		}
		if (tap || tool.facts().kind().isEmpty() && floating(run.in())) {
			return Optional.of(run.rapidOut() ? Tapping.Method.DRILLING_CYCLE : Tapping.Method.FEED);
		}
		boolean reversed = run.out().filter(out -> opposite(run.in().modal().spindle()) == out.modal().spindle()).isPresent()
				&& run.in().modal().spindle() != SpindleTurn.STOPPED && run.in().modal().spindle() != SpindleTurn.UNKNOWN
				&& run.turnsOneWayIn();
		return reversed && !run.rapidOut() && tool.facts().kind().isEmpty() ? Optional.of(Tapping.Method.FEED) : Optional.empty();
	}

	/** Whether the block of a motion says by a code of its own that a tap in a floating holder is fed, G63. */
	private boolean floating(Step step) {
		return step.modal().overridesLocked() && step.block().file().text().block(step.block().line()).words().stream().anyMatch(word ->
				word.address() == 'G' && word.value() instanceof Expression.Number number
				&& profile.gCode(MachineProfile.tenfold(number.value())).contains(Meaning.FLOATING_TAP));
	}

	/**
	 * Whether the tool is called something that cannot tap by its own name: in a note, a tool list, a comment with its number, one right at
	 * its change, or one between the tool before and it. A title further above the first tool may speak of the whole job.
	 */
	private boolean surelyNoTap(ToolLog log, ToolUse tool) {
		if (!tool.facts().cannotTap()) {
			return false;
		}
		Fact<ToolKind> kind = tool.facts().kind().orElseThrow();
		if (kind.source() != FactSource.TOOL_COMMENT || kind.at().isEmpty() || log.change().isEmpty()) {
			return kind.source() != FactSource.TOOL_COMMENT;
		}
		int line = kind.at().get().line();
		boolean behindAnother = stays.changeLine(log) != stays.firstChange(log.part()) && line >= stays.freeFrom(log);
		return behindAnother || Math.abs(line - commentary.mainLine(log.change().get())) <= NAME_AT_CHANGE
				|| commentary.free(commentary.main().file(), line, line).stream().flatMap(c -> commentary.listLine(c).stream())
						.anyMatch(l -> l.number() == tool.number());
	}

	/** Strokes of a cycle, before their holes are known. */
	static Stroke stroke(TimedStroke timed, ToolUse tool) {
		Step.Stroke stroke = timed.stroke();
		Modal modal = stroke.modal();
		return new Stroke(timed.order(), stroke, Optional.empty(), timed.row(), tool, Places.of(timed.tool().part(), stroke),
				stroke.rLevel(), stroke.bottom(), stroke.initial(), modal.feed(), Setting.NONE, modal.speed(), modal.spindle(),
				modal.feed(), modal.speed(), opposite(modal.spindle()), timed.tool().stale(modal.feed()), stroke.positioned(),
				stroke.repeat(), stroke.resolution());
	}

	private static Stroke stroke(AxisRun run, ToolUse tool) {
		Modal in = run.in().modal();
		Modal out = run.out().map(Step::modal).orElse(in);
		Setting lead = run.in() instanceof Step.Synchronised synchronised ? synchronised.lead() : Setting.NONE;
		Setting feed = run.synchronised() ? Setting.NONE : in.feed();
		SpindleTurn turningOut = run.out().isPresent() ? out.spindle() : opposite(in.spindle());
		return new Stroke(run.order(), run.in(), run.out(), Optional.empty(), tool, run.place(), run.start(), run.bottom(), run.start(),
				feed, lead, in.speed(), in.spindle(), run.synchronised() ? Setting.NONE : out.feed(), out.speed(), turningOut,
				run.tool().stale(feed), true, 1, AxisRun.resolution(run.in()));
	}

	private static SpindleTurn opposite(SpindleTurn turn) {
		return switch (turn) {
			case CLOCKWISE -> SpindleTurn.COUNTERCLOCKWISE;
			case COUNTERCLOCKWISE -> SpindleTurn.CLOCKWISE;
			default -> turn;
		};
	}
}
