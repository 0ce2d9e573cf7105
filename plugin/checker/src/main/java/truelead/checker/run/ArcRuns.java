package truelead.checker.run;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.function.Consumer;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.Plane;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolLog;

/**
 * Finds runs of arcs about one centre among the steps as they come, with the motions before and after. Kept are helices of 0.4 turns and
 * more and flat circles of 0.95 turns and more; all other arcs cost nothing.
 *
 * Two arcs are of one run where centres are within 12 % of the radius and radii within 3 %: half arcs written with an R a hair larger than
 * half the chord have centres that far apart (R 6.01 over a chord of 12: 0.35 mm), while a lead-in arc has another centre and radius.
 * Helical arcs of one R, or of one that grows with a taper, are of one run though an end written wrong moves their centres further.
 */
public final class ArcRuns {

	private static final int MOST_ARCS = 5_000;
	private static final double CENTRES = 0.12;
	private static final double RADII = 0.03;
	private static final double SAME = 1e-6;
	private static final double STRAYED = 0.6;
	/**
	 * Part of its rise that the R of an arc may be more or less than that before: twice what a taper pipe thread grows, since R is rounded.
	 */
	private static final double GROWS = ThreadSpec.PIPE_TAPER;
	private static final double HELIX = 0.4 * 2 * Math.PI;
	/**
	 * An arc, or several about one centre, that go round at least so far are a circle, radians: the rest is what rounding leaves of the
	 * whole.
	 */
	public static final double CIRCLE = 0.95 * 2 * Math.PI;

	private final Consumer<ArcRun> found;
	private final Deque<Step> recent = new ArrayDeque<>(ArcRun.MOST_AROUND + 1);
	private final List<Step.Arc> arcs = new ArrayList<>();
	private final List<Open> open = new ArrayList<>();
	private final Chords chords = new Chords();
	private ToolLog tool;
	/** Whether what came just before is not known. */
	private boolean lost;
	/** The same of what came before the arcs. */
	private boolean beginsLost;
	/** The stay of the chords that are held back. */
	private ToolLog holder;
	private int order;
	private int last;

	/** A run that is over but whose exit is still being made. */
	private record Open(ArcRun run, List<Step> after) {
	}

	/** @param found gets each run when it has ended */
	public ArcRuns(Consumer<ArcRun> found) {
		this.found = found;
	}

	/** An arc, the step of that number. */
	public void arc(Step.Arc arc, ToolLog inSpindle, int number) {
		release();
		add(arc, inSpindle, number, number);
	}

	private void add(Step.Arc arc, ToolLog inSpindle, int first, int lastNumber) {
		if (unknown(arc.from(), arc.modal().plane())) {
			forget();
		}
		if (!arcs.isEmpty() && (!follows(arcs.get(arcs.size() - 1), arc) || arcs.size() == MOST_ARCS)) {
			endRun();
		}
		after(arc);
		if (arcs.isEmpty()) {
			tool = inSpindle;
			order = first;
			beginsLost = lost;
		}
		lost = false;
		arcs.add(arc);
		last = lastNumber;
	}

	/** Any other motion, the step of that number. Straight feeds that go round a circle in chords are arcs. */
	public void move(Step step, ToolLog inSpindle, int number) {
		if (Chords.may(step)) {
			holder = inSpindle;
			release(chords.add((Step.Move) step, number));
		} else {
			release();
			move(step);
		}
	}

	private void release() {
		if (!chords.isEmpty()) {
			release(chords.takeAll());
		}
	}

	private void release(List<Chords.Chord> held) {
		List<ChordArcs.Part> parts = held.size() < ChordPath.LEAST ? List.of() : ChordArcs.of(held);
		if (!helix(parts)) {
			held.forEach(chord -> move(chord.move()));
			return;
		}
		for (ChordArcs.Part part : parts) {
			if (part.step() instanceof Step.Arc arc) {
				add(arc, holder, part.first(), part.last());
			} else {
				move(part.step());
			}
		}
	}

	/** Whether a helix is among them, and not only corners and flat circles of a contour. */
	private static boolean helix(List<ChordArcs.Part> parts) {
		double sweep = 0;
		for (int i = 0; i < parts.size() && sweep < HELIX; i++) {
			boolean climbs = parts.get(i).step() instanceof Step.Arc arc && Math.abs(arc.rise()) > SAME;
			sweep = climbs ? sweep + Math.abs(((Step.Arc) parts.get(i).step()).sweep()) : 0;
		}
		return sweep >= HELIX;
	}

	private void move(Step step) {
		if (step instanceof Step.Move move && unknown(move.from(), move.modal().plane())) {
			forget();
		}
		endRun();
		after(step);
		remember(step);
		lost = false;
	}

	/** The tool changes or a cycle runs: no motion before belongs to a run behind. */
	public void interrupt() {
		release();
		endRun();
		open.forEach(this::finish);
		open.clear();
		recent.clear();
		lost = false;
	}

	/**
	 * What follows is not known: arcs of less than a turn just before it are the beginning of something, those just behind it the end, and
	 * no run by themselves.
	 */
	public void lost() {
		release();
		forget();
		lost = true;
	}

	private void forget() {
		if (ArcRun.sweep(arcs) < CIRCLE) {
			arcs.clear();
		}
	}

	private static boolean unknown(Point at, Plane plane) {
		return Double.isNaN(at.along(plane.first())) || Double.isNaN(at.along(plane.second()));
	}

	/** Chords that are held back end here, where what comes next is none. */
	public void settle(Step next) {
		if (!Chords.may(next)) {
			release();
		}
	}

	/** Whether no run goes on, and none waits for what leads out of it. */
	public boolean idle() {
		return arcs.isEmpty() && open.isEmpty() && chords.isEmpty() && !lost;
	}

	/** The motions before the next one, as far as a run may name them. */
	public List<Step> recent() {
		return List.copyOf(recent);
	}

	/** Goes on idle behind some motions. */
	public void resume(List<Step> before) {
		recent.addAll(before);
	}

	private void remember(Step step) {
		recent.addLast(step);
		if (recent.size() > ArcRun.MOST_AROUND) {
			recent.removeFirst();
		}
	}

	private void endRun() {
		if (arcs.isEmpty()) {
			return;
		}
		double sweep = ArcRun.sweep(arcs);
		if (sweep >= HELIX && !(beginsLost && sweep < CIRCLE)) {
			ArcRun run = new ArcRun(order, last, tool, List.copyOf(recent), arcs, List.of());
			if (run.helical() || sweep >= CIRCLE) {
				open.add(new Open(run, new ArrayList<>()));
			}
		}
		// the rest is left for what led to them: whether the tool came from the middle
		for (Step.Arc arc : arcs.subList(Math.max(0, arcs.size() - ArcRun.MOST_AROUND / 2), arcs.size())) {
			remember(arc);
		}
		arcs.clear();
	}

	private void after(Step step) {
		if (open.isEmpty()) {
			return;
		}
		for (int i = 0; i < open.size(); i++) {
			Open one = open.get(i);
			one.after().add(step);
			if (one.after().size() == ArcRun.MOST_AROUND || clears(step)) {
				finish(one);
				open.remove(i--);
			}
		}
	}

	private void finish(Open one) {
		ArcRun run = one.run();
		found.accept(new ArcRun(run.order(), run.last(), run.tool(), run.before(), run.arcs(), one.after()));
	}

	/** Whether a move takes the tool away along the axis. */
	private static boolean clears(Step step) {
		if (step instanceof Step.Move move) {
			int axis = move.modal().plane().axis();
			return move.rapid() && Double.compare(move.from().along(axis), move.to().along(axis)) != 0;
		}
		return false;
	}

	private static boolean follows(Step.Arc one, Step.Arc next) {
		Plane plane = one.modal().plane();
		if (plane != next.modal().plane() || one.sweep() > 0 != next.sweep() > 0) {
			return false;
		}
		double radius = one.endRadius();
		if (one.byRadius() && next.byRadius() && one.rise() != 0 && next.rise() != 0 && Math.abs(next.startRadius() - radius) < SAME
				+ GROWS * Math.abs(next.rise())) {
			return one.centre().distanceInPlane(next.centre(), plane) <= STRAYED * radius;
		}
		return Math.abs(next.startRadius() - radius) <= RADII * radius
				&& one.centre().distanceInPlane(next.centre(), plane) <= CENTRES * radius;
	}
}
