package truelead.checker.rule.hole;

import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.program.Plane;
import truelead.checker.rule.ToolName;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * What speaks for a tapped hole to go through where nobody says so: a tap that sends its chips ahead, or holes without a
 * thread whose drills, of other diameters, end with their full diameter at the same level, as it is computed for a plate (common practice, no source).
 */
final class ThroughSigns {

	/** Levels of one plate, and drills that are another size, mm; holes that are looked through, so that a field of thousands costs nothing. */
	private static final double SAME_LEVEL = 0.02;
	private static final double OTHER_DIAMETER = 1;
	private static final int MOST_HOLES = 5_000;

	private final Tapping tapping;
	private final Work work;

	ThroughSigns(Tapping tapping, Work work) {
		this.tapping = tapping;
		this.work = work;
	}

	/** The first sign, as the end of a sentence, for a hole of which a cut goes deepest with its full diameter. */
	Optional<String> of(Cut sized) {
		boolean said = tapping.wanted().through().isPresent() || tapping.wanted().depth().isPresent() || tapping.wanted().holeBottom().isPresent()
				|| tapping.wanted().wall().isPresent();
		if (said) {
			return Optional.empty();
		}
		return Stream.of(point(), passesAxis(sized), level(sized)).flatMap(Optional::stream).findFirst();
	}

	private Optional<String> point() {
		return ToolName.spiralPoint(tapping.tool().facts()) ? Optional.of("a spiral point sends its chips ahead") : Optional.empty();
	}

	/** In the side of a turned part. */
	private Optional<String> passesAxis(Cut sized) {
		boolean side = work.shop().profile().isLathe() && sized.place().plane() == Plane.YZ;
		return side && sized.start() > 0 && sized.tip() < 0 ? Optional.of("it passes the part's axis") : Optional.empty();
	}

	/** The sign that holes of another diameter end where a cut does. */
	Optional<String> level(Cut sized) {
		if (work.isLong()) {
			// to look for them in all holes would make each edit there a long one
			return Optional.empty();
		}
		work.dependsOnAll();
		boolean same = coned(sized) && work.derived(Others.class, Others::new).cuts.stream().anyMatch(cut -> alike(cut, sized));
		return same ? Optional.of("holes of another diameter end at the same full depth") : Optional.empty();
	}

	/** The cuts that go deepest in holes without a thread, one of each level and diameter. */
	private static final class Others {

		private record Kind(double shoulder, double direction, double diameter) {
		}

		private final Collection<Cut> cuts;

		Others(Work work) {
			Map<Kind, Cut> kinds = new HashMap<>();
			work.unthreaded().stream().limit(MOST_HOLES).flatMap(hole -> hole.deepestBefore(Integer.MAX_VALUE).stream()).filter(ThroughSigns::coned)
					.forEach(cut -> kinds.putIfAbsent(new Kind(cut.shoulder(), cut.direction(), cut.diameter().orElseThrow().value()), cut));
			cuts = kinds.values();
		}
	}

	private static boolean coned(Cut cut) {
		return cut.kind().drills() && cut.diameter().isPresent() && Math.abs(cut.tip() - cut.shoulder()) > SAME_LEVEL;
	}

	private static boolean alike(Cut one, Cut other) {
		return Math.abs(one.shoulder() - other.shoulder()) < SAME_LEVEL && one.direction() == other.direction()
				&& Math.abs(one.diameter().orElseThrow().value() - other.diameter().orElseThrow().value()) >= OTHER_DIAMETER;
	}
}
