package truelead.checker.machine;

import java.util.Optional;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Plane;
import truelead.checker.program.Setting;

/**
 * What a tapping cycle called by name says of spindle and lead: CYCLE84 leads the spindle, CYCLE840 has a floating holder. The order of
 * arguments is from memory.
 *
 * @param lead   lead a turn, program units; empty where F in force feeds the tap
 * @param left   whether it cuts a left-hand thread
 * @param speed  rev/min; empty where S in force turns the spindle
 * @param turn   direction in; empty where the spindle turns as it did
 * @param behind direction behind the cycle; empty where it is as before
 */
record NamedLead(Optional<Setting> lead, boolean left, Optional<Setting> speed, Optional<SpindleTurn> turn, Optional<SpindleTurn> behind) {

	private static final int AS_IN_FORCE = 1;

	/** Empty where the lead is not said by a pitch, or something about it is not known. */
	static Optional<NamedLead> of(NamedArguments given, MachineState state) {
		boolean rigid = given.name().equals("CYCLE84");
		int pitch = rigid ? 8 : 10;
		double axis = given.number(rigid ? 12 : 11, 0);
		// on a lathe the first axis is Z
		boolean alongZ = axis == 0 || axis == 3 || axis == 1 && state.plane == Plane.ZX;
		if (!alongZ) {
			return Optional.empty();
		}
		if (!rigid && given.number(8, 0) == AS_IN_FORCE) {
			boolean sure = state.feed.known() && state.speed.known() && state.spindle.turns();
			return sure ? Optional.of(new NamedLead(Optional.empty(), state.spindle == SpindleTurn.COUNTERCLOCKWISE, Optional.empty(),
					Optional.empty(), Optional.empty())) : Optional.empty();
		}
		int source = given.said(pitch) ? pitch : pitch - 1;
		double value = given.number(source);
		double lead = source < pitch ? StandardPitch.of(Math.abs(value)) / state.unit.mm()
				: Math.abs(value) * unit(given.number(pitch == 8 ? 13 : 12, 0), Math.abs(value), state.unit);
		if (!(lead > 0) || !rigid && !state.spindle.turns()) {
			return Optional.empty();
		}
		Optional<Setting> said = Optional.of(given.setting(source, source < pitch ? "MPIT" : "PIT", lead));
		if (!rigid) {
			return Optional.of(new NamedLead(said, state.spindle == SpindleTurn.COUNTERCLOCKWISE, Optional.empty(), Optional.empty(),
					Optional.empty()));
		}
		double speed = given.number(10, 0);
		SpindleTurn turn = value < 0 ? SpindleTurn.COUNTERCLOCKWISE : SpindleTurn.CLOCKWISE;
		if (Double.isNaN(speed) || speed < 0 || speed == 0 && !state.speed.known()) {
			return Optional.empty();
		}
		return Optional.of(new NamedLead(said, value < 0, speed == 0 ? Optional.empty() : Optional.of(given.setting(10, "SST", speed)),
				Optional.of(turn), Optional.of(behind(given.number(6)))));
	}

	/** What the number of a pitch is multiplied by to be one in program units: as it is, mm, threads an inch, inches a turn. */
	private static double unit(double kind, double value, LengthUnit unit) {
		return kind == 0 ? 1 : kind == 1 ? 1 / unit.mm() : kind == 2 ? LengthUnit.INCH.mm() / unit.mm() / (value * value) : kind == 3
				? LengthUnit.INCH.mm() / unit.mm() : Double.NaN;
	}

	private static SpindleTurn behind(double code) {
		return code == 3 ? SpindleTurn.CLOCKWISE : code == 4 ? SpindleTurn.COUNTERCLOCKWISE : code == 5 ? SpindleTurn.STOPPED
				: SpindleTurn.UNKNOWN;
	}

	/** The state in which the tap goes in. */
	Modal in(MachineState state) {
		return state.leadModal(lead, speed, turn);
	}

	/** The state behind it. */
	void behind(MachineState state) {
		behind.ifPresent(now -> {
			state.spindle = now;
			state.changed();
		});
	}
}
