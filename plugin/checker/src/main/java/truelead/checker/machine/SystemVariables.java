package truelead.checker.machine;

import truelead.checker.arithmetic.Value;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Plane;
import truelead.checker.program.Setting;

/** System variables that follow from the state; all others are known at the machine only. */
final class SystemVariables {

	private final MachineState state;

	SystemVariables(MachineState state) {
		this.state = state;
	}

	/** The value of a variable from 1000 on; null where the state does not tell. */
	Value value(int number) {
		if (number >= 5001 && number <= 5003) {
			return position(number - 5001);
		} else if (number >= 5041 && number <= 5043) {
			return position(number - 5041);
		} else if (number >= 5420 && number <= 5422) {
			return position(number - 5420);
		}
		return switch (number) {
			case 4002 -> Value.of(state.plane == Plane.XY ? 17 : state.plane == Plane.ZX ? 18 : 19);
			case 4003 -> Value.of(state.absolute ? 90 : 91);
			case 4005 -> Value.of(state.feedMode == FeedMode.PER_MINUTE ? 94 : state.feedMode == FeedMode.PER_REVOLUTION ? 95 : 93);
			case 4006 -> Value.of(state.unit == LengthUnit.INCH ? 20 : 21);
			case 4010 -> Value.of(state.returnToInitial ? 98 : 99);
			case 4014 -> Value.of(state.place.workOffset() < 100 ? state.place.workOffset() : 54.1);
			case 4109, 4119, 4120 -> setting(number);
			default -> null;
		};
	}

	private Value setting(int number) {
		Setting setting = number == 4109 ? state.feed : number == 4119 ? state.speed : state.tool;
		return setting.known() ? Value.of(setting.value()) : Value.unknown(setting.why());
	}

	private Value position(int axis) {
		double mm = state.place.programmed().along(axis);
		return Double.isNaN(mm) ? Value.unknown("where the axis stands is not known") : Value.of(mm / state.unit.mm());
	}
}
