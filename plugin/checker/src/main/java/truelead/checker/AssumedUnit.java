package truelead.checker;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.NoLead;
import truelead.checker.work.Survey;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Tells the unit of a program that states none: where feed and speed of its taps fit the threads called out in the other unit only, that
 * unit is meant. Their depths speak before that, so that a wrong feed stays a wrong feed: 16 deep is no thread of M8 in inches, 0.75 none
 * of 5/16-18 in mm.
 */
final class AssumedUnit {

	private static final double NEAR = 0.03;
	/** Way of a tap from R to its depth, in diameters of the thread, that is usual in one unit and absurd in the other. */
	private static final double SHORTEST = 0.4;
	private static final double LONGEST = 9;
	/** Less than this nobody taps, whatever the feed says. */
	private static final double ABSURD = 0.2;

	private AssumedUnit() {
	}

	/**
	 * What a tapping or thread milling operation says of the two units.
	 *
	 * @param fits          whether its advance fits its thread in the unit assumed
	 * @param fitsOtherwise the same in the other one
	 * @param deep          whether its depth is usual in the unit assumed
	 * @param deepOtherwise the same in the other one
	 * @param absurd        whether nobody taps so shallow, whatever the advance says
	 */
	private record Said(boolean fits, boolean fitsOtherwise, boolean deep, boolean deepOtherwise, boolean absurd) {

		static Said of(ThreadingOperation operation, double factor) {
			double share = operation instanceof Tapping tapping ? leadOverPitch(tapping) : operation instanceof ThreadMilling milling
					? leadOverPitch(milling) : Double.NaN;
			double depth = operation instanceof Tapping tapping ? depthOverDiameter(tapping) : Double.NaN;
			boolean otherwise = Math.abs(share * factor - 1) < NEAR || operation instanceof Tapping tapping
					&& leadOnlyOtherwise(tapping, factor);
			return new Said(Math.abs(share - 1) < NEAR, otherwise, usual(depth), usual(depth * factor), depth < ABSURD);
		}
	}

	/** Whether the other unit is meant. */
	private static final Survey<Said, Boolean> OTHER = new Survey<>() {

		@Override
		public void of(Work work, BiConsumer<Integer, Said> said) {
			double factor = work.shop().unit().value() == LengthUnit.MM ? LengthUnit.INCH.mm() : 1 / LengthUnit.INCH.mm();
			work.operations().forEach(operation -> said.accept(operation.tool().index(), Said.of(operation, factor)));
		}

		@Override
		public Boolean all(List<Said> said) {
			boolean fits = said.stream().anyMatch(Said::fits);
			boolean deep = said.stream().anyMatch(Said::deep);
			boolean byDepth = deep != said.stream().anyMatch(Said::deepOtherwise);
			return byDepth ? !deep && (!fits || said.stream().anyMatch(Said::absurd))
					: !fits && said.stream().anyMatch(Said::fitsOtherwise);
		}
	};

	/** The profile with the other unit, where the program is to be read again with it; empty where the profile's unit stands. */
	static Optional<MachineProfile> better(Work work) {
		if (work.shop().unit().stated() || !work.survey(OTHER)) {
			return Optional.empty();
		}
		return Optional.of(read(work.shop().profile(), work.shop().unit().value() == LengthUnit.MM ? "inch" : "mm"));
	}

	private static MachineProfile read(MachineProfile profile, String unit) {
		return profile.with("unit", unit).with("name", profile.name() + " with " + unit + ", which alone fits the taps");
	}

	private static boolean usual(double depth) {
		return depth >= SHORTEST && depth <= LONGEST;
	}

	private static double depthOverDiameter(Tapping tapping) {
		if (tapping.strokes().isEmpty() || tapping.wanted().statedThread().isEmpty()) {
			return Double.NaN;
		}
		TapStroke stroke = tapping.strokes().get(0);
		return Math.abs(stroke.bottom() - stroke.start()) / tapping.wanted().statedThread().get().value().diameter();
	}

	private static double leadOverPitch(ThreadMilling milling) {
		return milling.wanted().statedThread().map(thread -> Math.abs(milling.passes().get(0).lead()) / thread.value().lead())
				.orElse(Double.NaN);
	}

	/** Whether a tap whose thread nothing names advances as no thread does in the unit assumed, and as a usual one in the other. */
	private static boolean leadOnlyOtherwise(Tapping tapping, double factor) {
		if (tapping.strokes().isEmpty() || tapping.wanted().statedThread().isPresent()) {
			return false;
		}
		return NoLead.unless(Math.abs(tapping.advance()), Math.abs(tapping.advance()) * factor);
	}

	private static double leadOverPitch(Tapping tapping) {
		if (tapping.strokes().isEmpty() || tapping.wanted().statedThread().isEmpty()) {
			return Double.NaN;
		}
		return Math.abs(tapping.advance()) / tapping.wanted().statedThread().get().value().lead();
	}
}
