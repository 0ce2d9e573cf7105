package truelead.checker.rule.hole;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Stream;
import truelead.checker.hole.Cut;
import truelead.checker.hole.Hole;
import truelead.checker.program.Plane;
import truelead.checker.rule.ToolName;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.Work;

/**
 * What speaks for a tapped hole to go through where nobody says so: a tap that sends its chips ahead, a drill that comes out at level 0
 * where no hole of the program opens there, holes without a thread whose drills, of other diameters, end with their full diameter at the
 * same level, as it is computed for a plate, or an outline that is milled no deeper than the tap comes out (common practice, no source).
 */
final class ThroughSigns {

	/** Levels of one plate, and drills that are another size, mm. */
	private static final double SAME_LEVEL = 0.02;
	private static final double OTHER_DIAMETER = 1;

	private final Tapping tapping;
	/** Levels and centres that are the same, mm. */
	private static final double SAME = 0.05;

	private final Work work;

	ThroughSigns(Tapping tapping, Work work) {
		this.tapping = tapping;
		this.work = work;
	}

	/**
	 * The first sign, as the end of a sentence, for a hole of which a cut goes deepest with its full diameter, so many mm below its
	 * surface.
	 */
	Optional<String> of(Cut sized, TapDepth depth, double full) {
		boolean said = tapping.wanted().through().isPresent() || tapping.wanted().depth().isPresent()
				|| tapping.wanted().holeBottom().isPresent() || tapping.wanted().wall().isPresent();
		if (said) {
			return Optional.empty();
		}
		return Stream.of(point(), passesAxis(sized), comesOut(sized), underside(sized), level(sized)).flatMap(Optional::stream).findFirst()
				.or(() -> outline(depth, full));
	}

	private Optional<String> point() {
		return ToolName.spiralPoint(tapping.tool().facts()) ? Optional.of("a spiral point sends its chips ahead") : Optional.empty();
	}

	private Optional<String> outline(TapDepth depth, double full) {
		OptionalDouble deep = Outlines.passed(depth, full, work);
		return deep.isPresent() ? Optional.of("an outline is milled down to " + depth.figures().length(deep.getAsDouble()))
				: Optional.empty();
	}

	/** In the side of a turned part. */
	private Optional<String> passesAxis(Cut sized) {
		boolean side = work.shop().profile().isLathe() && sized.place().plane() == Plane.YZ;
		return side && sized.start() > 0 && sized.tip() < 0 ? Optional.of("it passes the part's axis") : Optional.empty();
	}

	/** In the side of a hollow part, whose bore is wider than where the full diameter ends. */
	private Optional<String> comesOut(Cut sized) {
		boolean side = work.shop().profile().isLathe() && sized.place().plane() == Plane.YZ && !Double.isNaN(sized.shoulder());
		return side && work.survey(tapping, BORES, bores -> bores.stream().anyMatch(bore -> bore.opens(sized)))
				? Optional.of("it comes out in the part's bore") : Optional.empty();
	}

	/** A hole in the middle of a turned part: its frame, the levels between which it has its radius, mm, and the step that makes it. */
	private record Bore(int frame, int order, double low, double high, double radius) {

		/** Whether a hole in the side ends in it with its full diameter. */
		boolean opens(Cut side) {
			double z = side.place().v();
			boolean over = side.place().frame() == frame && order < side.order() && low <= z && z <= high;
			return over && Math.abs(side.shoulder()) <= radius + SAME;
		}
	}

	private static final Survey<Bore, Set<Bore>> BORES = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Bore> said) {
			for (Hole hole : work.holes()) {
				if (hole.place().plane() == Plane.XY && Math.hypot(hole.place().u(), hole.place().v()) <= SAME) {
					hole.making().stream().filter(cut -> cut.diameter().isPresent() && !Double.isNaN(cut.shoulder()))
							.forEach(cut -> said.accept(Survey.stay(hole), new Bore(hole.place().frame(), cut.order(),
									Math.min(cut.start(), cut.shoulder()), Math.max(cut.start(), cut.shoulder()),
									cut.diameter().get().value() / 2)));
				}
			}
		}

		@Override
		public Set<Bore> all(List<Bore> said) {
			return Set.copyOf(said);
		}
	};

	/**
	 * Where level 0 is the underside of a plate, the drill comes out there with its full diameter; a boss on a thicker part is drilled so
	 * too, and other holes open at level 0 beside it.
	 */
	private Optional<String> underside(Cut sized) {
		boolean out = PlaneHeightsWrong.farAbove(sized, sized.direction()) && sized.direction() * sized.shoulder() >= 0;
		return out && !work.survey(tapping, OPEN_LOW, open -> open) ? Optional.of("no hole opens at level 0, and the drill comes out there")
				: Optional.empty();
	}

	/** Whether a tool goes into a hole from level 0 or not far above. */
	private static final Survey<Boolean, Boolean> OPEN_LOW = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Boolean> said) {
			for (Hole hole : work.holes()) {
				if (hole.cuts().stream().anyMatch(cut -> !PlaneHeightsWrong.farAbove(cut, cut.direction()))) {
					said.accept(Survey.stay(hole), true);
				}
			}
		}

		@Override
		public Boolean all(List<Boolean> said) {
			return !said.isEmpty();
		}
	};

	/** The sign that holes of another diameter end where a cut does. */
	Optional<String> level(Cut sized) {
		boolean same = coned(sized) && work.survey(tapping, LEVELS, levels -> levels.stream().anyMatch(level -> level.isAt(sized)));
		return same ? Optional.of("holes of another diameter end at the same full depth") : Optional.empty();
	}

	/** Where the cuts end that go deepest in holes without a thread. */
	private static final Survey<Level, Set<Level>> LEVELS = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Level> said) {
			work.unthreaded().forEach(hole -> hole.deepestBefore(Integer.MAX_VALUE).filter(ThroughSigns::coned)
					.ifPresent(cut -> said.accept(Survey.stay(hole), Level.of(cut))));
		}

		@Override
		public Set<Level> all(List<Level> said) {
			return new HashSet<>(said);
		}
	};

	/** The level down to which a drill has its full diameter, which way it goes, and the diameter, mm. */
	private record Level(double shoulder, double direction, double diameter) {

		static Level of(Cut cut) {
			return new Level(cut.shoulder(), cut.direction(), cut.diameter().orElseThrow().value());
		}

		/** Whether a drill of another diameter ends at the level. */
		boolean isAt(Cut cut) {
			Level other = of(cut);
			return Math.abs(shoulder - other.shoulder) < SAME_LEVEL && direction == other.direction
					&& Math.abs(diameter - other.diameter) >= OTHER_DIAMETER;
		}
	}

	private static boolean coned(Cut cut) {
		return cut.kind().drills() && cut.diameter().isPresent() && Math.abs(cut.tip() - cut.shoulder()) > SAME_LEVEL;
	}
}
