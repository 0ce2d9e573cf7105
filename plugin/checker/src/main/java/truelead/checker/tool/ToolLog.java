package truelead.checker.tool;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.program.Setting;
import truelead.checker.program.WordRef;

/** One stay of a tool while the program runs: gathers what a contour of a million blocks may cost nothing to keep. */
public final class ToolLog {

	private static final int MOST_FEED_MODES = 1_000;
	private static final int FEW_FEED_MODES = 4;

	private final int index;
	private final int part;
	private final Setting tool;
	private final Optional<BlockRef> change;
	private final Optional<BlockRef> behind;
	private final Setting feedAtChange;
	private final int firstOrder;
	private int lastOrder;
	private BlockRef lastMotion;
	private BlockRef motionBefore;
	private boolean cutWithCoolant;
	private boolean cutDry;
	private boolean movedWithoutOffset;
	private boolean tapping;
	private boolean drilling;
	private int optionalStops;
	private Optional<WordRef> rigid = Optional.empty();
	private final List<Setting> lengthOffsets = new ArrayList<>();
	private final List<FeedUse> feeds = new ArrayList<>(1);
	/** Where the feeds of a mode word stand, where there are many. */
	private final Map<Optional<WordRef>, Integer> feedsOf = new HashMap<>(0);
	private Modal seen;
	private final Plunges plunges;

	/** What is in the spindle when a program begins. */
	public static ToolLog unknown(int index, int part, Optional<BlockRef> behind, int order) {
		return new ToolLog(index, part, Setting.NONE, Optional.empty(), behind, Setting.NONE, order, new Plunges());
	}

	/** A tool that a block changes to. */
	public static ToolLog changed(int index, int part, Setting tool, BlockRef change, Setting feedAtChange, int order) {
		return new ToolLog(index, part, tool, Optional.of(change), Optional.empty(), feedAtChange, order, new Plunges());
	}

	private ToolLog(int index, int part, Setting tool, Optional<BlockRef> change, Optional<BlockRef> behind, Setting feedAtChange,
			int order, Plunges plunges) {
		this.plunges = plunges;
		this.behind = behind;
		this.index = index;
		this.part = part;
		this.tool = tool;
		this.change = change;
		this.feedAtChange = feedAtChange;
		this.firstOrder = order;
		this.lastOrder = order;
	}

	/** The same stay as far as it has gone, which goes on by itself from now on. */
	public ToolLog(ToolLog other) {
		this(other.index, other.part, other.tool, other.change, other.behind, other.feedAtChange, other.firstOrder,
				new Plunges(other.plunges));
		lastOrder = other.lastOrder;
		lastMotion = other.lastMotion;
		motionBefore = other.motionBefore;
		cutWithCoolant = other.cutWithCoolant;
		cutDry = other.cutDry;
		movedWithoutOffset = other.movedWithoutOffset;
		optionalStops = other.optionalStops;
		rigid = other.rigid;
		lengthOffsets.addAll(other.lengthOffsets);
		other.feeds.forEach(this::fed);
		seen = other.seen;
		tapping = other.tapping;
		drilling = other.drilling;
	}

	/** Number of the stay in the program, from 0. */
	public int index() {
		return index;
	}

	/** Number of the program in the file that it belongs to, from 0. */
	public int part() {
		return part;
	}

	/** The T number as programmed; NONE before the first change. */
	public Setting tool() {
		return tool;
	}

	/** The number of the tool; -1 where it is not known. */
	int number() {
		return tool.known() ? (int) Math.round(tool.value()) : -1;
	}

	/** The block that changes to it; empty before the first change. */
	public Optional<BlockRef> change() {
		return change;
	}

	/** The block that ended the program before, where a further program of the file begins with this stay. */
	public Optional<BlockRef> behind() {
		return behind;
	}

	/** Number of its first step in the order of execution. */
	public int firstOrder() {
		return firstOrder;
	}

	/** Number of its last step so far. */
	public int lastOrder() {
		return lastOrder;
	}

	/** The block of its last motion but the way home, where it has made any. */
	public Optional<BlockRef> lastMotion() {
		return Optional.ofNullable(lastMotion);
	}

	/** Whether an F was in force already when the tool came, and no word of the change block set it. */
	public boolean stale(Setting feed) {
		return change.isPresent() && feed.isSet() && feed == feedAtChange
				&& feed.word().map(w -> !w.block().sameBlock(change.get())).orElse(true);
	}

	/** Any motion, of which {@code order} is the number. */
	public void motion(Step step, int order) {
		lastOrder = order;
		plunges.motion(step, !lengthOffsets.isEmpty());
		if (step instanceof Step.Move move && home(move)) {
			lastMotion = lastMotion == step.block() ? motionBefore : lastMotion;
			return;
		}
		motionBefore = lastMotion == step.block() ? motionBefore : lastMotion;
		lastMotion = step.block();
	}

	/**
	 * To a place that the program does not know, as by G28 and G53, and to no other, or straight up in rapid: before a tool change it
	 * belongs to the next tool as well.
	 */
	private static boolean home(Step.Move move) {
		if (move.rapid() && !(move.to().z() <= move.from().z()) && move.to().x() == move.from().x() && move.to().y() == move.from().y()) {
			return true;
		}
		boolean lost = false;
		for (int axis = 0; axis < 3; axis++) {
			double to = move.to().along(axis);
			if (!Double.isNaN(to) && to != move.from().along(axis)) {
				return false;
			}
			lost |= Double.isNaN(to);
		}
		return move.rapid() && lost;
	}

	/** Anything that is no motion. */
	public void event(Step.Event event, int order) {
		lastOrder = order;
		if (event.kind() == Step.EventKind.OPTIONAL_STOP || event.kind() == Step.EventKind.STOP) {
			optionalStops++;
		}
	}

	/** A canned cycle at a place or at several; those that tap are told from the others. */
	public void cycle(boolean taps) {
		tapping |= taps;
		drilling |= !taps;
	}

	/** Whether it ran a tapping cycle. */
	public boolean taps() {
		return tapping;
	}

	/** Whether it ran tapping cycles and no other ones. */
	public boolean tapsAlone() {
		return tapping && !drilling;
	}

	/** Whether it ran canned cycles, none of them a tapping one. */
	public boolean drillsAlone() {
		return drilling && !tapping;
	}

	/** A feed move, an arc or a cycle; the feed counts only where it is not a threading one. */
	public void cut(Step step, boolean alongAxis, boolean countFeed) {
		cut(step.modal(), step.block(), alongAxis, countFeed);
	}

	/** The same for the first of several moves. */
	public void cut(Modal modal, BlockRef first, boolean alongAxis, boolean countFeed) {
		if (alongAxis && !modal.lengthOffset().isSet()) {
			movedWithoutOffset = true;
		}
		if (modal == seen) {
			return;
		}
		seen = modal;
		cutWithCoolant |= modal.coolant();
		cutDry |= !modal.coolant();
		rigid = rigid.isPresent() ? rigid : modal.rigidWord();
		Setting offset = modal.lengthOffset();
		if (offset.isSet() && !met(offset)) {
			lengthOffsets.add(offset);
		}
		if (countFeed && modal.feed().known() && feeds.size() < MOST_FEED_MODES) {
			fed(FeedUse.of(modal, first));
		}
	}

	private void fed(FeedUse use) {
		int known = feedsOf(use.modeWord());
		if (known >= 0) {
			feeds.set(known, feeds.get(known).with(use));
			return;
		}
		feeds.add(use);
		for (int at = feeds.size() > FEW_FEED_MODES ? feedsOf.size() : feeds.size(); at < feeds.size(); at++) {
			feedsOf.put(feeds.get(at).modeWord(), at);
		}
	}

	/** Where the feeds of a mode word stand; below 0 where there are none. */
	private int feedsOf(Optional<WordRef> modeWord) {
		if (feeds.size() > FEW_FEED_MODES) {
			return feedsOf.getOrDefault(modeWord, -1);
		}
		int at = feeds.size() - 1;
		while (at >= 0 && !feeds.get(at).modeWord().equals(modeWord)) {
			at--;
		}
		return at;
	}

	private boolean met(Setting offset) {
		for (Setting one : lengthOffsets) {
			if (Double.compare(one.value(), offset.value()) == 0) {
				return true;
			}
		}
		return false;
	}

	/** The speed of its last cut, rev/min; NaN where none is known. */
	double speed() {
		return seen == null || seen.constantSurface() ? Double.NaN : seen.speed().value();
	}

	/** Whether two stays of one number are the same for all that is known of them. */
	public boolean same(ToolLog other) {
		return firstOrder == other.firstOrder && lastOrder == other.lastOrder && tool.equals(other.tool) && change.equals(other.change)
				&& feedAtChange.equals(other.feedAtChange) && lastMotion().equals(other.lastMotion()) && tapping == other.tapping
				&& drilling == other.drilling && Double.compare(speed(), other.speed()) == 0 && summary().equals(other.summary());
	}

	/** Whether two stays that have come as far go on alike. */
	public boolean goesOnAs(ToolLog other) {
		return same(other) && Objects.equals(motionBefore, other.motionBefore) && plunges.same(other.plunges);
	}

	/** Whether the comments behind it begin where they did in another text of the program. */
	public boolean endsAs(ToolLog other) {
		return lastMotion().map(BlockRef::line).equals(other.lastMotion().map(BlockRef::line))
				&& change.map(BlockRef::line).equals(other.change.map(BlockRef::line));
	}

	/** What it has done so far besides holes and threads. */
	public ToolUse.Summary summary() {
		return new ToolUse.Summary(lastMotion != null, cutWithCoolant, cutDry, tapping, drilling, optionalStops, lengthOffsets,
				movedWithoutOffset, rigid, feeds, plunges.first());
	}
}
