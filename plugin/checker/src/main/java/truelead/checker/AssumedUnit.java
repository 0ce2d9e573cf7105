package truelead.checker;

import java.util.Optional;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.NoLead;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * Tells the unit of a program that states none: where feed and speed of its taps fit the threads called out in the other unit only, that unit
 * is meant. Their depths speak before that, so that a wrong feed stays a wrong feed: 16 deep is no thread of M8 in inches, 0.75 none of 5/16-18 in mm.
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

	/** The profile with the other unit, where the program is to be read again with it; empty where the profile's unit stands. */
	static Optional<MachineProfile> better(Work work) {
		if (work.shop().unit().stated()) {
			return Optional.empty();
		}
		LengthUnit assumed = work.shop().unit().value();
		double factor = assumed == LengthUnit.MM ? LengthUnit.INCH.mm() : 1 / LengthUnit.INCH.mm();
		int fits = 0;
		int fitsOtherwise = 0;
		int deep = 0;
		int deepOtherwise = 0;
		int absurd = 0;
		for (ThreadingOperation operation : work.operations()) {
			double share = operation instanceof Tapping tapping ? leadOverPitch(tapping) : operation instanceof ThreadMilling milling ? leadOverPitch(milling) : Double.NaN;
			double depth = operation instanceof Tapping tapping ? depthOverDiameter(tapping) : Double.NaN;
			deep += usual(depth) ? 1 : 0;
			absurd += depth < ABSURD ? 1 : 0;
			deepOtherwise += usual(depth * factor) ? 1 : 0;
			fits += Math.abs(share - 1) < NEAR ? 1 : 0;
			fitsOtherwise += Math.abs(share * factor - 1) < NEAR || operation instanceof Tapping tapping && leadOnlyOtherwise(tapping, factor) ? 1 : 0;
		}
		String other = assumed == LengthUnit.MM ? "inch" : "mm";
		boolean depth = (deep == 0) != (deepOtherwise == 0);
		return depth ? other(deep == 0, fits == 0 || absurd > 0, work, other) : other(fitsOtherwise > 0, fits == 0, work, other);
	}

	private static Optional<MachineProfile> other(boolean meant, boolean noneFits, Work work, String other) {
		return meant && noneFits ? Optional.of(read(work.shop().profile(), other)) : Optional.empty();
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
		return milling.wanted().statedThread().map(thread -> Math.abs(milling.passes().get(0).lead()) / thread.value().lead()).orElse(Double.NaN);
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
