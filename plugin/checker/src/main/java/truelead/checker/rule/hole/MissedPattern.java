package truelead.checker.rule.hole;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.hole.Place;
import truelead.checker.job.Fact;
import truelead.checker.program.Plane;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.FormHole;
import truelead.checker.thread.Limits;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Holes of the program that an operation without any hole was most likely meant for, because nothing ever threads them: at the same
 * coordinates under another work offset, shift or rotation, or as many as its places and drilled for its thread.
 */
final class MissedPattern {

	private static final double SAME = 0.001;

	/** Operations of a program in which the hole meant for a single place is looked for (a choice of ours). */
	private static final int FEW = 50;

	/** The holes that are made and never threaded. */
	private static final Survey<Hole, List<Hole>> UNTHREADED = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Hole> said) {
			work.unthreaded().forEach(hole -> said.accept(Survey.stay(hole), hole));
		}

		@Override
		public List<Hole> all(List<Hole> said) {
			return said;
		}
	};

	private MissedPattern() {
	}

	/**
	 * The holes that were meant, in the order they are made; none where nothing points to any. Holes of other programs of the file never
	 * count.
	 */
	static List<Hole> of(ThreadingOperation operation, List<Visit> missing, Work work) {
		Set<Place> places = new HashSet<>();
		missing.forEach(visit -> places.add(visit.hole().place()));
		if (places.size() == 1 && (work.operationsOfProgram().size() > FEW || !work.troubleOfProgram().notFollowed().isEmpty())) {
			// its hole may be made in what is not followed; in a long program too many holes would fit
			return List.of();
		}
		Place first = missing.get(0).hole().place();
		return work.survey(operation, UNTHREADED, unthreaded -> of(operation, places, first, unthreaded));
	}

	private static List<Hole> of(ThreadingOperation operation, Set<Place> places, Place first, List<Hole> unthreaded) {
		List<Hole> idle = unthreaded.stream().filter(hole -> hole.place().sameProgram(first)).toList();
		Set<Numbers> wanted = new HashSet<>();
		places.forEach(place -> wanted.add(new Numbers(place)));
		Set<Numbers> met = new HashSet<>();
		List<Hole> elsewhere = idle.stream().filter(hole -> !hole.place().comparable(first) && wanted.contains(new Numbers(hole.place())))
				.filter(hole -> met.add(new Numbers(hole.place()))).toList();
		if (met.size() == wanted.size() && (places.size() > 1 || elsewhere.size() == 1 && aside(first) && fits(operation, elsewhere.get(0))
				&& deepEnough(operation, elsewhere.get(0)))) {
			return elsewhere;
		}
		List<Hole> atZero = atZero(operation, first, idle);
		if (!atZero.isEmpty()) {
			return atZero;
		}
		// one hole alone may be for a dowel, where nothing but its size speaks for it
		List<Hole> fitting = idle.stream().filter(hole -> (places.size() > 1 ? fits(operation, hole) || bored(operation, hole)
				: fits(operation, hole) && inLine(hole.place(), first) && deepEnough(operation, hole))).toList();
		return fitting.size() == places.size() ? fitting : List.of();
	}

	/**
	 * Holes drilled for the thread whose helices all go round the zero of the work offset, where nothing is: as many as there are passes,
	 * so that each pass was meant for one of them and the shift to it is left out.
	 */
	private static List<Hole> atZero(ThreadingOperation operation, Place place, List<Hole> idle) {
		if (!(operation instanceof ThreadMilling milling) || aside(place) || milling.holes().size() != 1) {
			return List.of();
		}
		List<Hole> fitting = idle.stream().filter(hole -> hole.place().comparable(place) && fits(operation, hole)
				&& deepEnough(operation, hole)).toList();
		return fitting.size() == milling.passes().size() ? fitting : List.of();
	}

	/** Whether a place is not at the zero of its work offset, where each part has something. */
	private static boolean aside(Place place) {
		return Math.abs(place.u()) > SAME || Math.abs(place.v()) > SAME;
	}

	/** Whether one number of a place alone is another one, as where one is typed wrong. */
	private static boolean inLine(Place hole, Place place) {
		return hole.comparable(place) && (Math.abs(hole.u() - place.u()) < SAME || Math.abs(hole.v() - place.v()) < SAME);
	}

	/** Whether a hole is drilled as deep as the tap or the helix of an operation goes: one alone that is not may be for a dowel. */
	private static boolean deepEnough(ThreadingOperation operation, Hole hole) {
		return operation instanceof ThreadMilling milling && milling.passes().typical().stream().allMatch(pass ->
				hole.deepestBefore(pass.order())
				.filter(cut -> Math.max(pass.below(pass.startLevel(), cut.tip()), pass.below(pass.endLevel(), cut.tip())) <= 0).isPresent())
				|| operation instanceof Tapping tapping && tapping.strokes().typical().stream().allMatch(stroke ->
						hole.deepestBefore(stroke.order()).filter(cut -> cut.direction() * (cut.tip() - stroke.bottom()) >= 0).isPresent());
	}

	/** The numbers of a place, to a thousandth, whatever they count from. */
	private record Numbers(Plane plane, long u, long v) {

		Numbers(Place place) {
			this(place.plane(), Math.round(place.u() / SAME), Math.round(place.v() / SAME));
		}
	}

	/**
	 * Whether a hole is milled or bored to a size that the thread is cut in: one alone may be for anything, several in just the number of
	 * its places are for it.
	 */
	private static boolean bored(ThreadingOperation operation, Hole hole) {
		Optional<ThreadSpec> thread = operation.wanted().statedThread().map(Fact::value).filter(any -> !operation.wanted().wireInsert()
				&& !ToolName.forms(operation.tool().facts()));
		Optional<Cut> size = thread.flatMap(spec -> hole.threadedBefore(Integer.MAX_VALUE, spec.diameter()))
				.filter(cut -> cut.kind() == Cut.Kind.MILL || cut.kind() == Cut.Kind.BORE || cut.kind() == Cut.Kind.REAM);
		return size.flatMap(Cut::diameter).filter(Fact::stated).filter(diameter -> fits(thread.get(), diameter.value(), false)).isPresent();
	}

	/** Whether a drill, and nothing else, made the hole in a size that the thread of the operation is made in. */
	private static boolean fits(ThreadingOperation operation, Hole hole) {
		Optional<ThreadSpec> thread = operation.wanted().statedThread().map(Fact::value);
		Optional<Double> diameter = hole.threadedBefore(Integer.MAX_VALUE, thread.map(ThreadSpec::diameter).orElse(Double.NaN))
				.flatMap(Cut::diameter).filter(Fact::stated).map(Fact::value);
		boolean drilled = hole.making().stream().allMatch(cut -> cut.kind().drills() || cut.kind() == Cut.Kind.PLUNGE);
		if (operation.wanted().wireInsert()) {
			return drilled && thread.isPresent() && diameter.filter(d -> InsertHole.fits(thread.get(), d)).isPresent();
		}
		return drilled && thread.isPresent()
				&& diameter.filter(d -> fits(thread.get(), d, ToolName.forms(operation.tool().facts()))).isPresent();
	}

	/** Whether a thread is made in the hole of a drill, mm. */
	static boolean fits(ThreadSpec thread, double drill, boolean forming) {
		if (thread.system().taper()) {
			return TapDrill.cutting(thread).filter(usual -> Math.abs(usual.diameter() - drill) <= thread.pitch() / 2).isPresent();
		}
		if (forming) {
			return FormHole.percent(thread, drill) >= DrillTooBig.LOW && FormHole.percent(thread, drill) <= DrillTooSmall.HIGH;
		}
		return ThreadTable.standard().limits(thread).filter(limits -> within(limits, drill)).isPresent();
	}

	private static boolean within(Limits limits, double drill) {
		return drill >= limits.minorMinMm().orElse(Double.MAX_VALUE) - DrilledSize.WRITTEN && drill <= limits.minorMaxMm().orElse(0)
				+ DrilledSize.WRITTEN;
	}
}
