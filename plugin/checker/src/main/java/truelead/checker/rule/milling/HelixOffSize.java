package truelead.checker.rule.milling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.Plane;
import truelead.checker.rule.AnotherThread;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.Severity;
import truelead.checker.rule.Slip;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.Work;

/**
 * The helix and the cutter together cut another diameter than the thread's. The major diameter cut is 2 R + dc, or 2 R where compensation
 * takes the cutter's radius off; the pitch diameter is that less 1.732 (P/2 − tip flat) (geometry of the 60 degree flank). Without a stated
 * tip flat only what no flat can mend is judged: below D too small, above D + 0.2165 P and the class's tolerance too large.
 */
public final class HelixOffSize implements Rule {

	/**
	 * A sharp tip instead of the flat of P/8 cuts this much of the pitch more on the major diameter for the same pitch diameter: 1.732 / 8.
	 */
	private static final double SHARP = Math.sqrt(3) / 8;
	/** As many times the right radius is typed wrong for certain, as by a zero. */
	private static final double FAR = 2;
	/** What one circle may differ from the others, mm: more is another number. */
	private static final double ODD = 0.05;
	/** How far a lead-in from the middle may end beside the right radius, a part of it. */
	private static final double LED = 0.02;
	/** What computed numbers leave open, mm. */
	private static final double FOLLOWS = 0.002;

	@Override
	public String name() {
		return "helix-off-size";
	}

	@Override
	public Set<Slip> silentWhere() {
		return Set.of(Slip.UNREAD_BLOCK, Slip.OTHER_PLANE, Slip.UNIT_WORD, Slip.HELIX_AND_DRILL, Slip.NO_CENTRE, Slip.CUTTER_TOO_BIG,
				Slip.TAPER, Slip.NO_COMPENSATION);
	}

	@Override
	public void check(Work work, Consumer<Finding> found) {
		List<Finding> sized = new ArrayList<>();
		List<Finding> odd = new ArrayList<>();
		for (ThreadMilling operation : work.threadMillings()) {
			Optional<ThreadSpec> thread = MillFacts.parallelThread(operation);
			MillFacts.look(operation.passes(), (pass, wrong) -> OddCircle.of(this, operation, pass).ifPresent(draft ->
					wrong.accept(draft.finding())), odd::add);
			operation.wanted().statedThread().filter(taper -> taper.value().taperOnDiameter() > 0)
					.ifPresent(taper -> MillFacts.look(operation.allFinishing().where(pass -> !pass.modal().scaled()), (pass, wrong) ->
							TaperSize.of(this, operation, pass, taper).ifPresent(draft -> wrong.accept(draft.finding())), found));
			if (thread.isPresent()) {
				MillFacts.look(operation.allFinishing().where(pass -> !pass.external() && !pass.modal().scaled()
						&& (MillFacts.cutter(operation).isPresent() || isWall(pass, thread.get()))), (pass, wrong) ->
						look(work, operation, pass, thread.get(), wrong), one -> sized.add(one));
			}
			if (thread.isPresent() && MillFacts.cutter(operation).isPresent()) {
				boolean bolt = operation.passes().typical().stream().allMatch(MillPass::external);
				MillFacts.look(operation.allFinishing().where(pass -> bolt && !pass.modal().scaled()), (pass, wrong) ->
						BoltSize.of(this, operation, pass, thread.get()).ifPresent(draft -> wrong.accept(draft.finding())), found);
			}
		}
		odd.stream().filter(circle -> sized.stream().noneMatch(size -> size.at().equals(circle.at()))).forEach(found);
		OneCutter.fold(work, sized).forEach(found);
		work.course().singlePoints().forEach(turned -> TurnedSize.of(this, work, turned).map(Draft::finding).ifPresent(found));
	}

	/**
	 * Whether a path is meant to be the wall, of which nobody says what cutter goes along it: no cutter is so small that it would be its
	 * centre's.
	 */
	private static boolean isWall(MillPass pass, ThreadSpec thread) {
		return pass.compensation() != Compensation.OFF && Math.abs(2 * pass.radius() - thread.diameter()) < thread.pitch() / 2;
	}

	/** The one arc of a helix that goes round at another radius than all others; the whole pass where none does, or the others are few. */
	private static MillPass odd(MillPass pass) {
		double[] radii = pass.helix().stream().mapToDouble(Step.Arc::startRadius).sorted().toArray();
		double usual = radii[radii.length / 2];
		List<Step.Arc> odd = pass.helix().stream().filter(arc -> Math.abs(arc.startRadius() - usual) > ODD + 3 * HelixForm.of(pass).open())
				.toList();
		return radii.length > 2 && odd.size() == 1 && !odd.get(0).byRadius() && !odd.get(0).inChords() ? pass.only(odd.get(0)) : pass;
	}

	/** Whether another tool mills the same thread at the place afterwards: what is small for now is a roughing pass. */
	private static boolean finishedLater(Work work, ThreadMilling operation, MillPass pass) {
		return work.threadMillings().stream().anyMatch(other -> other.tool().index() != operation.tool().index()
				&& other.firstOrder() > operation.lastOrder() && other.passes().at(pass.place())
				&& other.wanted().statedThread().map(Fact::value).map(ThreadSpec::withoutClass).equals(operation.wanted().statedThread()
						.map(Fact::value).map(ThreadSpec::withoutClass)));
	}

	/** Whether the program could not be followed behind the last pass of its last operation: the next one may be wider. */
	private static boolean mayBeWidened(Work work, ThreadMilling operation) {
		return work.troubleOfProgram().notFollowed().stream().anyMatch(trouble -> trouble.stops()
				&& trouble.order() >= operation.lastOrder()) && operation.index() == work.operationsOfProgram().size() - 1;
	}

	private void look(Work work, ThreadMilling operation, MillPass whole, ThreadSpec thread, Consumer<Finding> found) {
		MillPass pass = odd(whole);
		Optional<Fact<Double>> said = operation.tool().facts().diameter();
		HelixForm form = HelixForm.of(pass);
		double wanted = thread.diameter();
		// where nobody says the cutter, the path is the wall
		double cutter = said.map(Fact::value).orElse(wanted);
		double cut = form.cutDiameter(wanted, cutter);
		double open = form.diameterRounding() + said.map(HelixOffSize::cutterRounding).orElse(0.0);
		double tolerance = MillFacts.pitchTolerance(thread);
		double smallest = wanted;
		double largest = wanted + SHARP * thread.pitch() + tolerance;
		boolean sixty = thread.system().hasFlanksOf(60);
		Optional<Fact<Double>> flat = operation.tool().facts().tipFlat().filter(f -> sixty);
		if (flat.isPresent()) {
			double height = MillFacts.FLANK * (thread.pitch() / 2 - flat.get().value());
			double basic = ThreadTable.standard().limits(thread).map(Limits::pitchMinMm).filter(d -> d.isPresent())
					.map(d -> d.getAsDouble()).orElse(wanted - thread.system().depthOverPitch() * thread.pitch());
			smallest = basic + height;
			largest = smallest + tolerance;
		}
		double error = cut < smallest - open ? cut - smallest : cut > largest + open ? cut - largest : 0;
		boolean above = HelixForm.of(pass).deepest(operation.wanted().surface().value()) < -thread.pitch()
				&& MillFacts.reachesSurface(work, operation, pass);
		if (error == 0 || above || Double.isNaN(cut) || error < 0 && (finishedLater(work, operation, pass) || mayBeWidened(work, operation))
				|| HelixWrongHand.turnedLead(pass, thread)) {
			return;
		}
		boolean contour = form.onContour(wanted, cutter);
		Figures figures = new Figures(work.shop().unit().value());
		double aim = flat.isPresent() ? (smallest + largest) / 2 : wanted;
		double radius = (aim - (contour ? 0 : cutter)) / 2;
		String how = contour ? "2 x R" + figures.fine(pass.radius()) + " with compensation"
				: "2 x R" + figures.fine(pass.radius()) + " + cutter " + figures.fine(cutter);
		String message = how + " cuts " + figures.fine(cut) + ", " + MillFacts.name(operation)
				+ (error < 0 ? " needs at least " : " allows at most ") + figures.fine(error < 0 ? smallest : largest) + ": "
				+ figures.fine(Math.abs(error)) + (error < 0 ? " too small" : " too large") + "; radius " + figures.fine(radius);
		Optional<Double> drill = pass.hole().threadedBefore(pass.order(), thread.diameter()).flatMap(Cut::diameter).filter(Fact::stated)
				.map(Fact::value);
		Optional<AnotherThread> another = operation.wanted().wireInsert() ? Optional.empty() : AnotherThread.ofDiameter(cut, drill, thread);
		message += another.map(other -> other.said("path", figures)).orElse("");
		Severity severity = pass.compensation() != Compensation.OFF && Math.abs(error) <= tolerance ? Severity.WARNING : Severity.ERROR;
		Draft draft = Draft.of(this, severity, MillFacts.radiusWord(pass.block()), message).on(operation)
				.programmed("radius", figures.fine(pass.radius()), pass.block())
				.known("the callout", thread.designation(), operation.wanted().statedThread().orElseThrow())
				.from("pitch diameter tolerance", figures.fine(tolerance), "class of the thread");
		said.ifPresent(diameter -> draft.known("cutter diameter", figures.fine(cutter), diameter));
		another.ifPresent(other -> other.tell(draft.tells(Slip.PATH_AND_DRILL), "helix", operation.wanted().statedThread().orElseThrow(),
				operation.block().file()));
		if (centreFollows(work, operation, pass, radius)) {
			draft.from("centre beside the hole by as much", figures.fine(Math.abs(radius - pass.radius())), "geometry")
					.tells(Slip.CENTRE_WITH_RADIUS);
		}
		if (Math.abs(error) > thread.pitch()) {
			draft.tells(Slip.OTHER_CIRCLE);
		}
		draft.from(OneCutter.SUITS, figures.fine(aim - 2 * pass.radius()), contour ? "compensation" : "geometry");
		flat.ifPresent(f -> draft.known("tip flat", figures.fine(f.value()), f));
		found.accept(draft.finding());
	}

	/**
	 * Whether the helix starts where it should, and its centre lies beside the hole by what its radius is wrong; or goes on from one about
	 * another centre.
	 */
	private static boolean centreFollows(Work work, ThreadMilling operation, MillPass pass, double right) {
		boolean beside = pass.besideHole() > 0 && Math.abs(pass.besideHole() - Math.abs(startFrom(pass, pass.place()) - pass.radius()))
				< 2 * HelixForm.of(pass).open() + FOLLOWS
				|| work.holesNear(pass.place(), right).stream().anyMatch(hole -> hole.madeBefore(pass.order())
						&& follows(pass, startFrom(pass, hole.place()), hole.place().distance(pass.place()), right));
		Optional<Step> in = pass.entry().stream().findFirst();
		Plane plane = pass.place().plane();
		double led = in.isEmpty() ? Double.NaN : (in.get() instanceof Step.Move move ? move.from()
				: ((Step.Arc) in.get()).from()).distanceInPlane(pass.first().from(), plane);
		boolean ledIn = HelixForm.of(pass).goesRound() && pass.radius() > FAR * right && Math.abs(led - right) < LED * right
				|| follows(pass, led, in.map(step -> fromCentre(step, pass)).orElse(Double.NaN), right);
		return beside || ledIn || operation.beside(pass).stream().anyMatch(other -> !other.place().equals(pass.place())
				&& (joined(other.last().to(), pass.first().from()) || joined(pass.last().to(), other.first().from())));
	}

	/** Whether a turn starts at the right radius from where the hole is and its centre lies beside that by what its own radius is wrong. */
	private static boolean follows(MillPass pass, double start, double beside, double right) {
		double open = 2 * HelixForm.of(pass).open() + FOLLOWS;
		return HelixForm.of(pass).goesRound() && beside > open && Math.abs(start - right) < LED * right
				&& Math.abs(beside - Math.abs(start - pass.radius())) < open;
	}

	/** How far a motion begins from the centre of the helix, mm. */
	private static double fromCentre(Step step, MillPass pass) {
		return HelixForm.of(pass).fromAxis(step instanceof Step.Move move ? move.from() : ((Step.Arc) step).from());
	}

	private static boolean joined(Point one, Point other) {
		return Math.abs(one.x() - other.x()) + Math.abs(one.y() - other.y()) + Math.abs(one.z() - other.z()) < FOLLOWS;
	}

	/** How far from a place the helix starts, mm. */
	private static double startFrom(MillPass pass, Place place) {
		Plane plane = pass.place().plane();
		return Math.hypot(pass.first().from().along(plane.first()) - place.u(), pass.first().from().along(plane.second()) - place.v());
	}

	/** Half of the last decimal a shop writes of a cutter's diameter, mm; inch fractions are exact. */
	private static double cutterRounding(Fact<Double> cutter) {
		double tenths = cutter.value() * 100;
		return Math.abs(tenths - Math.rint(tenths)) < 1e-6 ? 0.005 : 0.0005 * 25.4 / 2;
	}
}
