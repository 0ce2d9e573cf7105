package truelead.checker.work;

import java.util.Optional;
import truelead.checker.machine.FeedMode;
import truelead.checker.machine.LengthUnit;
import truelead.checker.machine.MachineProfile;

/**
 * Tells the unit of a program that states none: where feed and speed of its taps fit the threads called out in the other unit only, that unit
 * is meant. A tap that fits in neither tells nothing, so that a wrong feed stays a wrong feed.
 */
public final class AssumedUnit {

	private static final double NEAR = 0.03;

	private AssumedUnit() {
	}

	/** The profile with the other unit, where the program is to be read again with it; empty where the profile's unit stands. */
	public static Optional<MachineProfile> better(Work work) {
		if (work.shop().unit().stated()) {
			return Optional.empty();
		}
		LengthUnit assumed = work.shop().unit().value();
		double factor = assumed == LengthUnit.MM ? LengthUnit.INCH.mm() : 1 / LengthUnit.INCH.mm();
		int fits = 0;
		int fitsOtherwise = 0;
		for (ThreadingOperation operation : work.operations()) {
			double share = operation instanceof Tapping tapping ? leadOverPitch(tapping) : Double.NaN;
			fits += Math.abs(share - 1) < NEAR ? 1 : 0;
			fitsOtherwise += Math.abs(share * factor - 1) < NEAR ? 1 : 0;
		}
		String other = assumed == LengthUnit.MM ? "inch" : "mm";
		return fitsOtherwise > 0 && fits == 0 ? Optional.of(read(work.shop().profile(), other)) : Optional.empty();
	}

	private static MachineProfile read(MachineProfile profile, String unit) {
		return profile.with("unit", unit).with("name", profile.name() + " with " + unit + ", which alone fits the taps");
	}

	private static double leadOverPitch(Tapping tapping) {
		if (tapping.strokes().isEmpty() || tapping.wanted().statedThread().isEmpty()) {
			return Double.NaN;
		}
		TapStroke stroke = tapping.strokes().get(0);
		double mm = stroke.modal().unit().mm();
		double lead = stroke.lead().isSet() ? stroke.lead().value()
				: stroke.modal().feedMode() == FeedMode.PER_REVOLUTION ? stroke.feed().value() : stroke.feed().value() / stroke.speed().value();
		return Math.abs(lead) * mm / tapping.wanted().statedThread().get().value().lead();
	}
}
