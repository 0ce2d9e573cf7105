package truelead.checker.turn;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Places;
import truelead.checker.job.Fact;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.program.LengthUnit;
import truelead.checker.run.AxisRun;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.tool.ToolLog;
import truelead.checker.tool.ToolUse;

/**
 * One thread that a lathe cuts by a single point: its passes, between what distances from the axis and what levels they go, and how often
 * the tool went away from the axis to begin one.
 */
final class Chase {

	/** Part of the pitch that a taper thread may be off its basic size where it begins (common practice, no source). */
	private static final double MOUTH = 0.8;
	/** So much of a lead the same lead is rounded another time: .08333 for .083333. */
	private static final double ROUNDED = 1e-4;
	/** Leads that another thread beside it is wider or narrower, whose way in runs over its end. */
	private static final double ANOTHER = 2;
	private static final double MOSTLY = 0.9;
	/** Part of a pass that another thread behind the first shares with it, where its way in runs over the end of that. */
	private static final double BARELY = 0.25;
	/** What a lead may be off to be a thread's. */
	private static final double NEAR = 0.01;
	/** Depth of a thread outside on the diameter, in pitches (ISO 68-1). */
	private static final double DEPTH = 1.2269;
	/** What a bore may be off the crests of the thread inside it, pitches (common practice, no source). */
	private static final double BORED = 0.2;

	private final int order;
	private final boolean goesOn;
	final ToolLog tool;
	final List<SinglePoint.Pass> passes = new ArrayList<>();
	private final DoubleSummaryStatistics radii = new DoubleSummaryStatistics();
	private final DoubleSummaryStatistics ends = new DoubleSummaryStatistics();
	private final DoubleSummaryStatistics levels = new DoubleSummaryStatistics();
	private int outwards;
	private int inwards;

	/** @param goesOn whether its first pass goes on where another one of another lead has ended */
	Chase(int order, ToolLog tool, boolean goesOn) {
		this.order = order;
		this.tool = tool;
		this.goesOn = goesOn;
	}

	/** Whether a pass of this tool and lead may belong to it: one beside it along the axis is another thread's. */
	boolean takes(Step.Synchronised pass, ToolLog of) {
		double shared = Math.min(Math.max(pass.from().z(), pass.to().z()), levels.getMax())
				- Math.max(Math.min(pass.from().z(), pass.to().z()), levels.getMin());
		double beside = Math.max(Math.abs(pass.to().x()) - radii.getMax(), radii.getMin() - Math.abs(pass.to().x()));
		double way = Math.abs(pass.to().z() - pass.from().z());
		boolean apart = shared < BARELY * way || beside > ANOTHER * passes.get(0).lead() && shared < MOSTLY * way;
		return leads(pass, of) && !apart;
	}

	/** Whether a motion has its tool and lead. */
	boolean leads(Step.Synchronised pass, ToolLog of) {
		double lead = first().lead().value();
		return tool == of && (Double.compare(lead, pass.lead().value()) == 0
				|| Math.abs(lead - pass.lead().value()) <= ROUNDED * Math.abs(lead));
	}

	private static boolean sameWay(Step.Synchronised one, Step.Synchronised other) {
		return (one.to().z() - one.from().z()) * (other.to().z() - other.from().z()) > 0;
	}

	/**
	 * Takes a pass that the tool began from a distance from the axis, mm, NaN where that is not known; or what is joined to the one before,
	 * unless it goes back.
	 */
	void take(SinglePoint.Pass pass, double before, boolean chained) {
		Step.Synchronised step = pass.step();
		if (chained && !sameWay(first(), step)) {
			return;
		}
		outwards += before < Math.abs(step.from().x()) ? 1 : 0;
		inwards += before > Math.abs(step.from().x()) ? 1 : 0;
		if (passes.isEmpty() || !chained) {
			// where the point runs out of the wall it cuts no thread
			radii.accept(Math.abs(step.to().x()));
		}
		ends.accept(step.to().z());
		levels.accept(step.from().z());
		levels.accept(step.to().z());
		if (passes.isEmpty() || !chained && passes.size() < SinglePoint.MOST) {
			passes.add(pass);
		} else if (chained && step.to().x() == step.from().x() && last().step().block().equals(step.block())) {
			// a cycle's chain goes on as far
			passes.set(passes.size() - 1, last().to(step.to()));
		}
	}

	private SinglePoint.Pass last() {
		return passes.get(passes.size() - 1);
	}

	/**
	 * Whether the tool went away from the axis to begin its passes; where not all tell the same, whether they go farther out each time, or
	 * as far out as the thread inside and not as far in as outside.
	 */
	boolean inside(Optional<ThreadSpec> thread) {
		boolean sure = (outwards == 0) != (inwards == 0);
		double outer = passes.get(passes.size() - 1).radius() - passes.get(0).radius();
		if (!sure && Math.abs(outer) > AxisRun.CENTRE_LINE) {
			return outer > 0;
		}
		boolean wide = thread.filter(this::asWide).isPresent();
		boolean bolt = thread.filter(spec -> !asWide(spec) && suits(spec)).isPresent();
		return sure ? outwards > 0 : wide || !bolt && outwards > inwards;
	}

	private boolean asWide(ThreadSpec thread) {
		return Math.abs(2 * radii.getMax() - thread.diameter()) <= 0.4 * thread.pitch();
	}

	/** A taper thread inside is widest where it begins, and that is a little before the gauge plane, where it has its basic size. */
	private boolean asWideAtItsMouth(ThreadSpec thread) {
		double widest = radii.getMax();
		for (SinglePoint.Pass pass : passes) {
			widest = Math.max(widest, Math.abs(pass.step().from().x()));
		}
		return Math.abs(2 * widest - thread.diameter()) <= MOUTH * thread.pitch();
	}

	/** Whether it is a taper thread inside, as wide as that at its mouth, whatever its lead. */
	boolean suitsCone(ThreadSpec thread) {
		return thread.system().taper() && inside(Optional.of(thread)) && asWideAtItsMouth(thread);
	}

	/** The shaft that it is cut on; a taper thread runs out of the wall by itself. */
	Optional<SinglePoint.Shaft> shaft(ThreadSpec thread, LatheMotions.Found found) {
		return inside(Optional.of(thread)) || thread.system().taper() || !suits(thread) ? Optional.empty() : turned(thread, found);
	}

	/** At the end that is in the chuck's front now, where that is turned; else as nobody says that the part was turned over. */
	private Optional<SinglePoint.Shaft> turned(ThreadSpec thread, LatheMotions.Found found) {
		int over = found.turned().applyAsInt(order);
		return turned(thread, found, over).or(() -> over < 0 ? Optional.empty() : turned(thread, found, -1));
	}

	private Optional<SinglePoint.Shaft> turned(ThreadSpec thread, LatheMotions.Found found, int after) {
		return found.outside().shaft(tool, after, order, thread.diameter() / 2, thread.pitch(), first(), levels)
				.map(shaft -> goesOn ? shaft.begunBefore() : shaft);
	}

	/**
	 * Whether the outside is turned to the diameter of a parallel thread where it is cut, or the hole bored as wide as its crests inside
	 * are.
	 */
	boolean prepared(ThreadSpec thread, LatheMotions.Found found, List<ToolUse> uses) {
		if (thread.system().taper()) {
			return false;
		}
		double crests = thread.diameter() - 2 * thread.system().profileOverPitch() * thread.pitch();
		return inside(Optional.of(thread)) ? hole(thread, found, uses).flatMap(bore -> bore.cut().diameter()).filter(bored ->
				Math.abs(bored.value() - crests) <= BORED * thread.pitch()).isPresent() : turned(thread, found).isPresent();
	}

	/** Distance from the axis where the pass ends that goes deepest into the wall, mm. */
	double deepest() {
		return inside(Optional.empty()) ? radii.getMax() : radii.getMin();
	}

	/** The tool goes back along Z behind the last pass. */
	void back(Step.Move move) {
		SinglePoint.Pass last = last();
		if (last.back().isEmpty()) {
			passes.set(passes.size() - 1, new SinglePoint.Pass(last.step(), last.begins(), last.infeed(), last.turned(),
					Optional.of(move)));
		}
	}

	/** Whether motions of its own go in and out at one distance from the axis, as those of a driven tap. */
	boolean straight() {
		return first().code() != 0 && radii.getMax() - radii.getMin() < AxisRun.CENTRE_LINE;
	}

	Step.Synchronised first() {
		return passes.get(0).step();
	}

	/**
	 * Whether the deepest pass is as deep as a thread's: out to the major diameter inside a bore; outside down to the minor diameter, 1.08
	 * to 1.3 P below the major one by the form of the root (ISO 68-1), with some room for how it is measured.
	 */
	boolean suits(ThreadSpec thread) {
		double pitch = thread.pitch();
		double outer = 2 * radii.getMax() - thread.diameter();
		double inner = thread.diameter() - 2 * radii.getMin();
		return Math.abs(outer) <= 0.4 * pitch || outer <= 0.4 * pitch && inner >= 0.9 * pitch && inner <= 1.4 * pitch;
	}

	/** Whether the lead is the thread's, and the deepest pass within a pitch of where it should be. */
	boolean near(ThreadSpec thread) {
		double lead = Math.abs(first().lead().value()) * first().modal().unit().mm();
		double off = inside(Optional.of(thread)) ? 2 * radii.getMax() - thread.diameter() : 2 * radii.getMin() - thread.diameter()
				+ DEPTH * thread.pitch();
		return Math.abs(lead - thread.lead()) <= NEAR * thread.lead() && Math.abs(off) <= thread.pitch();
	}

	/** Whether lead and diameter are the thread's in the other unit, as under a wrong word for the unit. */
	boolean inOtherUnit(ThreadSpec thread) {
		double factor = first().modal().unit() == LengthUnit.INCH ? 1 / LengthUnit.INCH.mm() : LengthUnit.INCH.mm();
		double lead = Math.abs(first().lead().value()) * first().modal().unit().mm() * factor;
		double wide = 2 * (inside(Optional.of(thread)) ? radii.getMax() : radii.getMin()) * factor;
		return Math.abs(lead - thread.lead()) <= NEAR * thread.lead() && Math.abs(wide - thread.diameter()) <= ANOTHER * thread.pitch();
	}

	/** The hole that is threaded, where the passes go outwards as far as a thread inside does. */
	Optional<SinglePoint.Bore> bore(ThreadSpec thread, LatheMotions.Found found, List<ToolUse> uses) {
		boolean wide = thread.system().taper() ? asWideAtItsMouth(thread) : asWide(thread);
		return wide && inside(Optional.of(thread)) ? hole(thread, found, uses) : Optional.empty();
	}

	private Optional<SinglePoint.Bore> hole(ThreadSpec thread, LatheMotions.Found found, List<ToolUse> uses) {
		TurnedBores bores = found.bores();
		boolean cone = thread.system().taper() && bores.cone(tool.part(), thread.diameter() / 2);
		Hole hole = atThisEnd(found.holes().hole(Places.of(tool.part(), first().modal(), Places.across(2), new Point(0, 0, ends.getMin())),
				0), found.turned().applyAsInt(order));
		Optional<Cut> deepest = hole.deepestBefore(order);
		boolean down = deepest.map(cut -> cut.direction() < 0).orElse(first().to().z() < first().from().z());
		// a thread that is cut from the ground outwards begins at its deep end
		double end = down ? levels.getMin() : levels.getMax();
		double begin = down ? levels.getMax() : levels.getMin();
		// a deeper bore begins where the wider one ends
		double mouth = hole.makingBefore(order).stream().mapToDouble(Cut::start).reduce((one, other) -> down ? Math.max(one, other)
				: Math.min(one, other)).orElse(begin);
		double middle = (end + (down ? Math.min(mouth, begin) : Math.max(mouth, begin))) / 2;
		Optional<Cut> sized = cone ? bores.bored(tool.part(), order, thread.diameter() / 2).map(bored ->
				bored.cut(uses.get(bored.tool().index()))) : hole.sizedBefore(order, middle).filter(cut -> cut.diameter()
						.filter(Fact::stated).isPresent());
		return sized.map(cut -> new SinglePoint.Bore(cut, found.outside().hollowTo(tool.part(), order, cut, floor(hole, cut,
				thread.system().taper()), thread.pitch()), end, thread.system().taper() ? 0
				: buried(hole, cut, thread.pitch(), found.outside())));
	}

	/** How far behind the mouth the first pass begins in the wall, mm. */
	private double buried(Hole hole, Cut sized, double pitch, TurnedOutside turned) {
		double behind = TurnedOutside.behind(sized.direction(), sized.start(), first());
		boolean wide = behind > 0 && (goesOn || hole.sizedBefore(order, first().from().z()).flatMap(Cut::diameter).filter(bored ->
				bored.value() >= 2 * Math.abs(first().from().x())).isPresent() || turned.hollow(tool.part(), order, first(), pitch));
		return wide ? 0 : behind;
	}

	/** What is drilled may go through the part, what is bored before it is turned is at its other end. */
	private static Hole atThisEnd(Hole hole, int turned) {
		return turned < 0 ? hole : new Hole(hole.place(), hole.cuts().stream().filter(cut -> cut.order() > turned
				|| cut.kind() != Cut.Kind.BORE).toList());
	}

	/**
	 * The deepest level of what is as wide as a cut, a quarter of the lead taken for the same, and half of it for a cone, which is narrower
	 * there.
	 */
	private double floor(Hole hole, Cut sized, boolean cone) {
		double wide = sized.diameter().orElseThrow().value() - (cone ? 0.5 : 0.25) * first().lead().value() * first().modal().unit().mm();
		return hole.makingBefore(order).stream().filter(c -> c.diameter().filter(d -> d.value() >= wide).isPresent())
				.mapToDouble(Cut::shoulder).filter(level -> !Double.isNaN(level))
				.reduce(sized.tip(), (one, other) -> sized.direction() * (other - one) > 0 ? other : one);
	}
}
