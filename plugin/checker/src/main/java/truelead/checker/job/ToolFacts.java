package truelead.checker.job;

import java.util.Optional;
import java.util.Set;
import truelead.checker.program.Location;
import truelead.checker.thread.TapStyle;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/**
 * What is known of a tool, each fact with who says so; empty where nobody does. Lengths in mm, angles in radians.
 *
 * @param kind       what it is called
 * @param styles     what is said of a tap's flutes and lead
 * @param diameter   cutting diameter; of a tap its nominal one
 * @param thread     the thread it is made for: tap, comb or form cutter
 * @param pitch      its pitch, where it is said or follows from {@code thread}
 * @param leadTurns  length of a tap's lead in turns, from a number or a named form; DEFAULT by the kind of tap where nothing is said
 * @param pointAngle full point angle of a drill; DEFAULT 118 degrees for a drill where nothing is said
 * @param holder     how it is held, where the tool says so
 * @param teeth      number of flutes
 * @param reach      length that can go into the hole
 * @param cutting    length of a thread mill's cutting part
 * @param nose       diameter of a tap's front end
 * @param tipFlat    width of the flat at the tip of a thread mill's tooth
 * @param comb       whether a thread mill has several rows of teeth a pitch apart (true) or one (false)
 * @param leftCutting whether a thread mill is ground to cut turning counter-clockwise
 * @param toothFeed  feed a tooth
 * @param edgeFeed   whether the feed is said to be that of the cutter's edge
 * @param limit      limit mark of a tap as written: {@code H3}, {@code 6HX}, {@code 6G}
 */
public record ToolFacts(Optional<Fact<ToolKind>> kind, Optional<Fact<Set<TapStyle>>> styles, Optional<Fact<Double>> diameter,
		Optional<Fact<ThreadSpec>> thread,
		Optional<Fact<Double>> pitch, Optional<Fact<Double>> leadTurns, Optional<Fact<Double>> pointAngle,
		Optional<Fact<Holder>> holder, Optional<Fact<Integer>> teeth, Optional<Fact<Double>> reach, Optional<Fact<Double>> cutting,
		Optional<Fact<Double>> nose,
		Optional<Fact<Double>> tipFlat, Optional<Fact<Boolean>> comb, Optional<Fact<Boolean>> leftCutting, Optional<Fact<Double>> toothFeed,
		Optional<Fact<Boolean>> edgeFeed,
		Optional<Fact<String>> limit) {

	/** Nothing is known. */
	public static final ToolFacts NONE = new ToolFacts(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
			Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
			Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

	/** These facts where they are known, the other's elsewhere. */
	public ToolFacts or(ToolFacts other) {
		if (this == NONE || other == NONE) {
			return this == NONE ? other : this;
		}
		return new ToolFacts(kind(kind, other.kind), first(styles, other.styles), first(diameter, other.diameter),
				first(thread, other.thread), first(pitch, other.pitch),
				first(leadTurns, other.leadTurns), first(pointAngle, other.pointAngle),
				first(holder, other.holder), first(teeth, other.teeth), first(reach, other.reach), first(cutting, other.cutting),
				first(nose, other.nose),
				first(tipFlat, other.tipFlat), first(comb, other.comb), first(leftCutting, other.leftCutting),
				first(toothFeed, other.toothFeed), first(edgeFeed, other.edgeFeed),
				first(limit, other.limit));
	}

	/** Where the nearer says no more than tap, another may say whether it cuts or forms. */
	private static Optional<Fact<ToolKind>> kind(Optional<Fact<ToolKind>> nearer, Optional<Fact<ToolKind>> other) {
		boolean told = nearer.filter(kind -> kind.value() == ToolKind.TAP).isPresent()
				&& other.filter(kind -> kind.value().tap()).isPresent();
		return told ? other : first(nearer, other);
	}

	/** The same, said at another place. */
	public ToolFacts at(Location place) {
		Optional<Location> at = Optional.of(place);
		return this == NONE ? NONE : new ToolFacts(at(kind, at), at(styles, at), at(diameter, at), at(thread, at), at(pitch, at),
				at(leadTurns, at), at(pointAngle, at), at(holder, at), at(teeth, at), at(reach, at), at(cutting, at), at(nose, at),
				at(tipFlat, at), at(comb, at), at(leftCutting, at), at(toothFeed, at), at(edgeFeed, at), at(limit, at));
	}

	private static <T> Optional<Fact<T>> at(Optional<Fact<T>> said, Optional<Location> at) {
		return said.isEmpty() ? said : Optional.of(new Fact<>(said.get().value(), said.get().source(), at, said.get().said()));
	}

	/** These facts, with another diameter, mm. */
	public ToolFacts withDiameter(Fact<Double> other) {
		return new ToolFacts(kind, styles, Optional.of(other), thread, pitch, leadTurns, pointAngle, holder, teeth, reach, cutting, nose,
				tipFlat, comb, leftCutting, toothFeed, edgeFeed, limit);
	}

	/** These facts, with a lead in turns and a point angle in radians where none is known. */
	public ToolFacts withDefaults(Optional<Fact<Double>> turns, Optional<Fact<Double>> angle) {
		return turns.isEmpty() && angle.isEmpty() ? this : new ToolFacts(kind, styles, diameter, thread, pitch, first(leadTurns, turns),
				first(pointAngle, angle), holder, teeth, reach, cutting, nose, tipFlat, comb, leftCutting, toothFeed, edgeFeed, limit);
	}

	/** Whether it is called any kind of tap. */
	public boolean isTap() {
		return kind.filter(k -> k.value().tap()).isPresent();
	}

	/** Whether it is called a thread mill. */
	public boolean isThreadMill() {
		return kind.filter(k -> k.value() == ToolKind.THREAD_MILL).isPresent();
	}

	/** Whether it is called something that can never make a thread in a tapping cycle: a drill, a reamer, a mill and the like. */
	public boolean cannotTap() {
		return kind.filter(k -> !k.value().tap() && !k.value().die()).isPresent();
	}

	/** Whether it is called a die or a die head. */
	public boolean isDie() {
		return kind.filter(k -> k.value().die()).isPresent();
	}

	/** Whether a tap is said to have that style of flutes or lead. */
	public boolean has(TapStyle style) {
		return styles.filter(s -> s.value().contains(style)).isPresent();
	}

	private static <T> Optional<Fact<T>> first(Optional<Fact<T>> mine, Optional<Fact<T>> theirs) {
		return mine.isPresent() ? mine : theirs;
	}

	/** Gathers the facts of a tool one by one. */
	static final class Builder {

		Optional<Fact<ToolKind>> kind = Optional.empty();
		Optional<Fact<Set<TapStyle>>> styles = Optional.empty();
		Optional<Fact<Double>> diameter = Optional.empty();
		Optional<Fact<ThreadSpec>> thread = Optional.empty();
		Optional<Fact<Double>> pitch = Optional.empty();
		Optional<Fact<Double>> leadTurns = Optional.empty();
		Optional<Fact<Double>> leadLength = Optional.empty();
		Optional<Fact<Double>> pointAngle = Optional.empty();
		Optional<Fact<Holder>> holder = Optional.empty();
		Optional<Fact<Integer>> teeth = Optional.empty();
		Optional<Fact<Double>> reach = Optional.empty();
		Optional<Fact<Double>> cutting = Optional.empty();
		Optional<Fact<Double>> nose = Optional.empty();
		Optional<Fact<Double>> tipFlat = Optional.empty();
		Optional<Fact<Boolean>> comb = Optional.empty();
		Optional<Fact<Boolean>> leftCutting = Optional.empty();
		Optional<Fact<Double>> toothFeed = Optional.empty();
		Optional<Fact<Boolean>> edgeFeed = Optional.empty();
		Optional<Fact<String>> limit = Optional.empty();

		/** Fills what is not known yet from other facts. */
		void or(ToolFacts other) {
			ToolFacts both = build().or(other);
			kind = both.kind;
			styles = both.styles;
			diameter = both.diameter;
			thread = both.thread;
			pitch = both.pitch;
			leadTurns = both.leadTurns;
			pointAngle = both.pointAngle;
			holder = both.holder;
			teeth = both.teeth;
			reach = both.reach;
			cutting = both.cutting;
			nose = both.nose;
			tipFlat = both.tipFlat;
			comb = both.comb;
			leftCutting = both.leftCutting;
			toothFeed = both.toothFeed;
			edgeFeed = both.edgeFeed;
			limit = both.limit;
		}

		ToolFacts build() {
			Optional<Fact<Double>> p = pitch.isPresent() ? pitch : thread.map(t -> t.map(ThreadSpec::pitch));
			Optional<Fact<Double>> turns = leadTurns.isPresent() || p.isEmpty() ? leadTurns
					: leadLength.map(l -> l.map(mm -> mm / p.get().value()));
			return new ToolFacts(kind, styles, diameter, thread, p, turns, pointAngle, holder, teeth, reach, cutting, nose, tipFlat, comb,
					leftCutting, toothFeed, edgeFeed, limit);
		}
	}
}
