package truelead.checker.turn;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import truelead.checker.hole.Cut;
import truelead.checker.job.Fact;
import truelead.checker.job.FactSource;
import truelead.checker.machine.Modal;
import truelead.checker.machine.Point;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.program.BlockRef;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolUse;

/**
 * A thread cut on a lathe by a single point.
 *
 * @param passes the motions that cut it with one lead, in order; of a chain of them the first; never empty, at most {@value #MOST}
 * @param tool   the tool
 * @param inside whether the tool goes away from the axis to begin a pass
 * @param thread the thread that the nearest comment or the tool names, else the one that all is cut for; empty where nothing tells
 * @param length how long a comment that names the thread says that it is, mm; empty where none does
 * @param bore   the hole it is cut in; empty for a thread outside, and where no hole in the middle is known or the named thread is not as
 *               wide as the passes go
 * @param shaft  what it is cut on; empty for a thread inside, and where the program does not turn the outside to about the diameter of the
 *               named thread before
 */
public record SinglePoint(List<Pass> passes, ToolUse tool, boolean inside, Optional<Fact<ThreadSpec>> thread,
		Optional<Fact<Double>> length, Optional<Bore> bore, Optional<Shaft> shaft) {

	/** As many passes as are kept of a thread. */
	public static final int MOST = 1_000;
	/** Parts of a lead that starts are told apart by. */
	private static final int PARTS = 100;
	private static final double ROUNDING = 1e-6;
	/** No thread has more starts than this. */
	private static final int MOST_STARTS = 9;
	/** Leads on the radius beyond which it is another thread (common practice, no source). */
	private static final double ANOTHER = 2;
	/** Part of the pitch that the starts of one groove may lie beside each other (common practice, no source). */
	private static final double BESIDE = 0.1;

	public SinglePoint {
		passes = List.copyOf(passes);
	}

	/**
	 * A pass.
	 *
	 * @param step   the motion that cuts; its lead is what F says
	 * @param begins the block that brought the tool to the level where it begins; empty where that is not known
	 * @param infeed the block that brought the tool to its distance from the axis; empty where that is not known
	 * @param turned part of a turn by which a word (Q) starts it later; NaN where that is not known
	 * @param back   the motion along Z that takes the tool back over the thread behind it, straight, or aslant behind one straight across;
	 *               empty where none does
	 */
	public record Pass(Step.Synchronised step, Optional<BlockRef> begins, Optional<BlockRef> infeed, double turned,
			Optional<Step.Move> back) {

		/** The same pass as far as another point. */
		Pass to(Point end) {
			Step.Synchronised all = new Step.Synchronised(step.block(), step.modal(), step.code(), step.from(), end, step.lead(),
					step.returns(), step.resolution(), step.turned(), step.computed());
			return new Pass(all, begins, infeed, turned, back);
		}

		/** The block whose X says how deep it goes: that of a cycle is its own. */
		public BlockRef deepBy() {
			return step.code() == 0 ? step.block() : infeed.orElse(step.block());
		}

		/** Where it starts, mm along Z, with what it is turned by. */
		private double start() {
			return step.from().z() + turned * lead();
		}

		/** Its lead, mm, without sign. */
		public double lead() {
			return Math.abs(step.lead().value()) * step.modal().unit().mm();
		}

		/** Distance from the axis where it ends, mm. */
		public double radius() {
			return Math.abs(step.to().x());
		}
	}

	/**
	 * A hole in the middle with a thread inside.
	 *
	 * @param cut   what gave it its diameter half way down the thread; the diameter is known; of a cone it is that at the face
	 * @param floor level down to which the hole is as wide as that, mm
	 * @param end   level of the thread's deep end, mm
	 * @param buried how far behind the mouth the first pass begins in the wall, mm; 0 where it does not
	 */
	public record Bore(Cut cut, double floor, double end, double buried) {
	}

	/**
	 * The outside that a thread is cut on.
	 *
	 * @param turned what turns it
	 * @param floor  level at which it ends and a shoulder begins, a relief before it included, mm
	 * @param way    +1 or -1, the way along Z towards that
	 * @param wider  whether the work is seen to be wider somewhere; else the bar may be no thicker than the thread
	 * @param buried how far behind the end of the work, or the step before its diameter, the first pass begins in the full, mm; 0 where it
	 *               does not
	 */
	public record Shaft(Step turned, double floor, double way, boolean wider, double buried) {

		/** The same for a thread that goes on where another one ends. */
		Shaft begunBefore() {
			return new Shaft(turned, floor, way, wider, 0);
		}
	}

	/**
	 * Whether Z is known to grow towards the chuck: what the thread is cut in was drilled or bored that way, or the outside turned that way
	 * from before the face, Z0.
	 */
	public boolean grows() {
		boolean turned = shaft.filter(outside -> outside.way() > 0 && outside.floor() > 0 && pass().from().z() <= 0).isPresent();
		return turned || bore.filter(hole -> hole.cut().direction() > 0).isPresent();
	}

	/** The thread that somebody names, or that lead, depth and what is turned before agree on: what passes, start and end are judged by. */
	public Optional<Fact<ThreadSpec>> agreed() {
		return thread.filter(known -> known.stated() || known.source() == FactSource.IMPLIED);
	}

	/** The step that made what it is cut in or on, along Z; empty where that is not known. */
	public Optional<Step> prepared() {
		return bore.map(hole -> hole.cut().step()).or(() -> shaft.map(Shaft::turned));
	}

	/** How far the thread goes on where its hole has ended, mm; 0 where it does not or nobody knows. */
	public double behindBore() {
		double behind = bore.map(hole -> hole.cut().direction() * (hole.end() - hole.floor())).orElse(0.0);
		return behind > 0 ? behind : 0;
	}

	/**
	 * How far its first pass begins behind where the work begins, with no relief there, mm: so far the point goes in without a thread; 0
	 * where it does not or nobody knows.
	 */
	public double buried() {
		return shaft.map(Shaft::buried).or(() -> bore.map(Bore::buried)).orElse(0.0);
	}

	/**
	 * Whether its passes go towards the chuck; empty where that is not certain. On a second spindle Z may grow towards its chuck: only what
	 * begins below the face comes out for certain.
	 */
	public Optional<Boolean> towardsChuck() {
		double way = grows() ? -1 : 1;
		double from = way * pass().from().z();
		double to = way * pass().to().z();
		boolean out = from < 0 && to > from && Math.abs(to) < Math.abs(from);
		return to < from || out ? Optional.of(to < from) : Optional.empty();
	}

	/**
	 * The hand that spindle and passes give it: under M3 a point that goes towards the chuck cuts a right-hand thread, as a tap goes into
	 * the turning part (geometry); empty where that is not certain.
	 */
	public Optional<Hand> hand() {
		Modal modal = pass().modal();
		boolean turns = modal.spindle() == SpindleTurn.CLOCKWISE || modal.spindle() == SpindleTurn.COUNTERCLOCKWISE;
		// the machine decides what M3 is on a second spindle; what bored or turned there tells
		boolean bored = prepared().filter(step -> grows() && step.modal().spindle() == modal.spindle()).isPresent();
		boolean sure = turns && !modal.mirrored() && !(bored && modal.spindle() == SpindleTurn.COUNTERCLOCKWISE);
		return towardsChuck().filter(in -> sure).map(in -> (modal.spindle() == SpindleTurn.CLOCKWISE) == in ? Hand.RIGHT : Hand.LEFT);
	}

	/** Whether a cycle of the control divides the depth into passes by itself, so that the program does not say where each goes. */
	public boolean dividedByControl() {
		return CycleDepth.calledByName(pass()) || CycleDepth.dividedByControl(pass());
	}

	/** Whether the program says how many passes there are: block by block, or as an argument of a cycle called by name. */
	public boolean counted() {
		return !dividedByControl() || passes.size() > 1 && CycleDepth.calledByName(pass());
	}

	/** The first motion that cuts. */
	public Step.Synchronised pass() {
		return passes.get(0).step();
	}

	/** The pass that goes deepest into the wall, of several the first. */
	public Pass deepest() {
		return deepest(passes);
	}

	/** The one of some of its passes, at least one, that goes deepest into the wall, of several the first. */
	public Pass deepest(List<Pass> some) {
		Pass deepest = some.get(0);
		for (Pass pass : some) {
			deepest = deeper(pass, deepest) ? pass : deepest;
		}
		return deepest;
	}

	private boolean deeper(Pass pass, Pass other) {
		return inside ? pass.radius() > other.radius() + ROUNDING : pass.radius() < other.radius() - ROUNDING;
	}

	/**
	 * The deepest pass of each of the thread's grooves, in the order that they are begun; of all together where the grooves are not told
	 * apart.
	 */
	public List<Pass> deepestOfEach(ThreadSpec thread) {
		if (thread.starts() < 2 || grooves(thread) < 2) {
			return List.of(deepest());
		}
		Map<Integer, Pass> deepest = new LinkedHashMap<>();
		for (Pass pass : passes) {
			deepest.merge(groove(pass, thread), pass, (known, other) -> deeper(other, known) ? other : known);
		}
		return List.copyOf(deepest.values());
	}

	/** The passes of each of the thread's grooves, in order; all in one row where the grooves are not told apart. */
	public List<List<Pass>> ofEach(ThreadSpec thread) {
		if (thread.starts() < 2 || grooves(thread) < 2) {
			return List.of(passes);
		}
		Map<Integer, List<Pass>> rows = new LinkedHashMap<>();
		for (Pass pass : passes) {
			rows.computeIfAbsent(groove(pass, thread), groove -> new ArrayList<>()).add(pass);
		}
		return List.copyOf(rows.values());
	}

	private int groove(Pass pass, ThreadSpec thread) {
		return Math.floorMod((int) Math.rint((pass.start() - passes.get(0).start() - beside(pass, thread)) / thread.pitch()),
				thread.starts());
	}

	/** Whether another thread lies for the most part over the same stretch along Z, about as far from the axis. */
	public boolean overlaps(SinglePoint other) {
		double shared = Math.min(level(false), other.level(false)) - Math.max(level(true), other.level(true));
		boolean over = shared > Math.min(level(false) - level(true), other.level(false) - other.level(true)) / 2;
		return over && Math.abs(deepest().radius() - other.deepest().radius()) <= ANOTHER * passes.get(0).lead();
	}

	private double level(boolean lowest) {
		double from = pass().from().z();
		double to = pass().to().z();
		return lowest ? Math.min(from, to) : Math.max(from, to);
	}

	/** How many places along the lead its passes start from; 0 where that is not known of one. */
	public int starts() {
		Set<Integer> phases = new HashSet<>();
		for (Pass pass : passes) {
			double turns = pass.start() / pass.lead();
			if (Double.isNaN(turns)) {
				return 0;
			}
			phases.add((int) Math.rint((turns - Math.floor(turns)) * PARTS) % PARTS);
		}
		return phases.size();
	}

	/**
	 * The thread with as many starts as its passes cut: a name of one start, whose passes have a multiple of its pitch for their lead and
	 * begin at several places along that, is that of each start.
	 */
	public ThreadSpec asCut(ThreadSpec named) {
		double times = passes.get(0).lead() / named.lead();
		boolean several = named.starts() == 1 && times > 1.5 && times < MOST_STARTS && Math.abs(times - Math.rint(times)) < BESIDE / 2
				&& starts() > 1;
		return several ? named.withStarts((int) Math.rint(times)) : named;
	}

	/** How far a pass starts beside the groove of the first one or of another start, mm, signed along Z; NaN where it is not known. */
	public double beside(Pass pass, ThreadSpec thread) {
		return Math.IEEEremainder(pass.start() - passes.get(0).start(), thread.pitch());
	}

	/** How many of the thread's grooves are cut; 0 where a pass lies beside them all, or is not known. */
	public int grooves(ThreadSpec thread) {
		for (Pass pass : passes) {
			if (!inGroove(pass, thread)) {
				return 0;
			}
		}
		return starts(thread);
	}

	/** How many of the thread's grooves are cut, passes beside them all not counted; 0 where it is not known of a pass. */
	public int starts(ThreadSpec thread) {
		Set<Integer> grooves = new HashSet<>();
		for (Pass pass : passes) {
			if (Double.isNaN(beside(pass, thread))) {
				return 0;
			}
			if (inGroove(pass, thread)) {
				grooves.add(groove(pass, thread));
			}
		}
		return grooves.size();
	}

	private boolean inGroove(Pass pass, ThreadSpec thread) {
		return Math.abs(beside(pass, thread)) <= BESIDE * thread.pitch();
	}
}
