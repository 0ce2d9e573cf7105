package truelead.checker.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.chunk.Contour;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Copies;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Step;
import truelead.checker.machine.Step.EventKind;
import truelead.checker.machine.StepSink;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.BlockRef;
import truelead.checker.run.ArcCopies;
import truelead.checker.run.ArcRuns;
import truelead.checker.run.AxisRuns;
import truelead.checker.tool.CompensationLog;
import truelead.checker.tool.StopComments;
import truelead.checker.tool.ToolLog;
import truelead.checker.turn.LatheMotions;

/** Takes the machine's steps and keeps what holes, threads and rules need; plain contours leave nothing behind. */
final class Recorder implements StepSink {

	static final int MOST_EVENTS = 100_000;

	final List<ToolLog> tools = new ArrayList<>();
	final Kept kept = new Kept(first -> tooMany(first));
	final List<LoggedEvent> events = new ArrayList<>();
	final CompensationLog compensation = new CompensationLog();
	private final OpenArcs open;
	final List<Step.Arc> openArcs;
	private final UnfollowedBlocks troubles = new UnfollowedBlocks();

	final LatheMotions turned;
	private final AxisRuns axisTracker;
	private final ArcRuns arcTracker = new ArcRuns(kept::run);
	/** The stay that what is recorded belongs to. */
	private ToolLog tool;
	/** What gathers its steps: itself, unless it was gathered before and only a part of it is followed again. */
	private ToolLog log;
	/** The stay that is followed again, where it is known. */
	private Optional<ToolLog> known = Optional.empty();
	private Compensation lastCompensation = Compensation.OFF;
	private Modal firstLengthModal;
	private int order;
	private int part;
	/** The block that ended the program before this step, if one has. */
	private Optional<BlockRef> ended = Optional.empty();

	private boolean ends;

	private final boolean lathe;
	/** Number of the first of the stays. */
	private final int firstStay;

	private final boolean compact;

	/** @param compact whether what comes again is kept as such */
	Recorder(MachineProfile profile, boolean compact) {
		this(profile, compact, 0, ToolLog.unknown(0, 0, Optional.empty(), 0), 0);
		tools.add(tool);
	}

	/** Goes on from a change of the tool, of which another recorder has taken the steps before. */
	Recorder(MachineProfile profile, int stay, int order, Compensation before) {
		this(profile, true, stay, ToolLog.unknown(stay - 1, 0, Optional.empty(), order), order);
		this.lastCompensation = before;
	}

	private Recorder(MachineProfile profile, boolean compact, int firstStay, ToolLog tool, int order) {
		// what turns is the part: a tool beside the axis bores or chases
		this.lathe = profile.isLathe();
		this.turned = new LatheMotions(lathe);
		this.open = new OpenArcs(profile);
		this.openArcs = open.all();
		this.axisTracker = new AxisRuns(kept::run, lathe);
		this.firstStay = firstStay;
		this.compact = compact;
		this.tool = tool;
		this.log = tool;
		this.order = order;
	}

	/**
	 * Goes on from a change of the tool for its stay alone.
	 *
	 * @param whole the whole stay as it was, which what is recorded belongs to
	 */
	Recorder(MachineProfile profile, ToolLog whole, int order, Compensation before) {
		this(profile, whole.index(), order, before);
		known = Optional.of(whole);
	}

	/**
	 * Goes on in the middle of a tool's stay.
	 *
	 * @param whole the whole stay as it was, which what is recorded belongs to
	 */
	Recorder(MachineProfile profile, ToolLog whole, int order, Halt before) {
		this(profile, whole.index(), order, before.compensated());
		tool = whole;
		log = new ToolLog(before.log());
		tools.add(tool);
		axisTracker.resume(before.rapid());
		arcTracker.resume(before.recent());
	}

	/** What a recorder with nothing under way remembers in the middle of a tool's stay. */
	record Halt(ToolLog log, Compensation compensated, boolean rapid, List<Step> recent) {

		/** Whether another one goes on alike. */
		boolean same(Halt other) {
			return compensated == other.compensated && rapid == other.rapid && recent.equals(other.recent) && log.goesOnAs(other.log);
		}
	}

	/** The stay so far. */
	ToolLog stay() {
		return log;
	}

	/** What it remembers. */
	Halt halt() {
		return new Halt(new ToolLog(log), lastCompensation, axisTracker.beforeWasRapid(), arcTracker.recent());
	}

	/** Whether nothing is under way. */
	boolean resting() {
		return axisTracker.idle() && arcTracker.idle() && ended.isEmpty();
	}

	/** The next step has this number, unless it is behind it already. */
	void skipTo(int number) {
		order = Math.max(order, number);
	}

	/** Compensation at the last motion. */
	Compensation compensated() {
		return lastCompensation;
	}

	@Override
	public void accept(Step step) {
		int number = order++;
		if (ended.isPresent()) {
			begin(number);
		}
		if (step instanceof Step.Move move) {
			move(move, number);
		} else if (step instanceof Step.Contour contour) {
			contour(contour, number);
		} else if (step instanceof Step.Arc arc) {
			arc(arc, number);
		} else if (step instanceof Step.Stroke stroke) {
			stroke(stroke, number);
		} else if (step instanceof Step.Row row) {
			row(row, number);
			order += row.count() - 1;
		} else if (step instanceof Step.Again again) {
			again(again.copies(), number);
		} else if (step instanceof Step.Synchronised synchronised) {
			synchronised(synchronised, number);
		} else if (step instanceof Step.Event event) {
			event(event, number);
		} else if (step instanceof Step.NotFollowed notFollowed) {
			troubles.add(new UnfollowedBlocks.Logged(number, tool, notFollowed));
			if (notFollowed.weight() == Step.NotFollowed.Weight.THREAD || notFollowed.weight() == Step.NotFollowed.Weight.CALL
					|| notFollowed.weight() == Step.NotFollowed.Weight.PLAIN_CALL
					|| notFollowed.weight() == Step.NotFollowed.Weight.BY_TOOL) {
				arcTracker.lost();
			}
		}
	}

	@Override
	public boolean takesCopies() {
		return compact;
	}

	/** Ends what is still open; to be called once, after the last step. */
	void finish() {
		interrupt();
	}

	/** What could not be followed, each block and reason once, in the order of execution. */
	List<UnfollowedBlocks.Logged> trouble() {
		return troubles.all();
	}

	/** Whether a program has ended. */
	boolean ends() {
		return ends;
	}

	/** Number of steps so far. */
	int steps() {
		return order;
	}

	/** State at the first motion; empty where nothing ever moved. */
	Optional<Modal> firstMotion() {
		return Optional.ofNullable(firstLengthModal);
	}

	private void move(Step.Move move, int number) {
		motion(move, number);
		axisTracker.motion(move, tool, number);
		arcTracker.move(move, tool, number);
		turned.move(move, tool, number);
		if (!move.rapid()) {
			int axis = move.modal().plane().axis();
			log.cut(move, move.from().along(axis) != move.to().along(axis), true);
		}
	}

	/** A contour's moves make no hole, and are far from any arc that may. */
	private void contour(Step.Contour contour, int number) {
		motion(contour, number);
		axisTracker.contour(contour.rapid());
		arcTracker.interrupt();
		contour.cutting().forEach(modal -> log.cut(modal, contour.first(), contour.levels(), true));
	}

	private void arc(Step.Arc arc, int number) {
		motion(arc, number);
		axisTracker.interrupt();
		arcTracker.arc(arc, tool, number);
		log.cut(arc, false, true);
		turned.arc(arc, tool, number);
		open.add(arc);
	}

	private void stroke(Step.Stroke stroke, int number) {
		motion(stroke, number);
		interrupt();
		log.cycle(stroke.cycle().kind().taps());
		log.cut(stroke, true, !stroke.cycle().kind().taps());
		kept.stroke(number, tool, stroke);
	}

	private void row(Step.Row row, int number) {
		motion(row.first(), number);
		motion(row, number + row.count() - 1);
		interrupt();
		log.cycle(row.first().cycle().kind().taps());
		log.cut(row.first(), true, !row.first().cycle().kind().taps());
		kept.row(number, tool, row);
	}

	/** Motions that come again: helices alone are kept as such, all others are taken one by one. */
	private void again(Copies copies, int number) {
		arcTracker.settle(copies.steps(0).get(0));
		Optional<ArcCopies> helices = lathe || !arcTracker.idle() || !axisTracker.idle() ? Optional.empty()
				: ArcCopies.of(copies, tool, number);
		int runs = helices.map(found -> found.first().size()).orElse(0) * copies.count();
		boolean closed = copies.steps(0).stream().noneMatch(step -> step instanceof Step.Arc arc && open.is(arc));
		if (runs > 0 && kept.hasRoom(runs) && closed && compensation.add(number, tool, copies, lastCompensation)) {
			kept.copies(helices.get(), runs);
			order = number + copies.count() * copies.stepsEach();
		} else {
			order = number;
			copies.all(this::accept);
		}
	}

	private void synchronised(Step.Synchronised move, int number) {
		motion(move, number);
		arcTracker.move(move, tool, number);
		axisTracker.motion(move, tool, number);
		log.cut(move, true, false);
		turned.synchronised(move, tool, number);
	}

	private void event(Step.Event event, int number) {
		Optional<ToolLog> next = StopComments.newTool(event, firstStay + tools.size(), part, number);
		if (next.isPresent()) {
			interrupt();
			turned.changed();
			log = next.get();
			tool = tools.isEmpty() ? known.orElse(log) : log;
			tools.add(tool);
		}
		log.event(event, number);
		if (event.ends()) {
			ends = true;
			interrupt();
			ended = Optional.of(event.block());
		}
		if (event.kind() != EventKind.SUB_CALL && event.kind() != EventKind.SUB_RETURN && event.kind() != EventKind.DWELL) {
			if (events.size() < MOST_EVENTS) {
				events.add(new LoggedEvent(number, tool, event));
			}
		}
	}

	/** A further program of the file: it starts without a tool and on another part. */
	private void begin(int number) {
		part++;
		tool = ToolLog.unknown(tools.size(), part, ended, number);
		log = tool;
		ended = Optional.empty();
		tools.add(tool);
		lastCompensation = Compensation.OFF;
	}

	private void motion(Step step, int number) {
		log.motion(step, number);
		Compensation now = step.modal().compensation();
		if (now != lastCompensation) {
			compensation.add(number, tool, step, lastCompensation);
			lastCompensation = now;
		}
		if (firstLengthModal == null) {
			firstLengthModal = step.modal();
		}
	}

	private void interrupt() {
		axisTracker.interrupt();
		arcTracker.interrupt();
	}

	/** A program that makes more holes and threads than any part needs is said to be checked in part only. */
	private void tooMany(Step first) {
		troubles.tooMany(order, tool, first);
	}
}
