package truelead.checker.plan;

import java.util.OptionalDouble;
import truelead.checker.job.TapTorque;
import truelead.checker.machine.ProfileKey;

/**
 * What a method takes of the machine and of the person at it, as estimates.
 *
 * @param speed    spindle, rev/min
 * @param torque   of a tap, N m (kc P² D / 8000, from memory); empty for a thread mill, and where the stock is not said
 * @param power    for that torque at that speed, kW (2 pi n M / 60,000); empty as above
 * @param seconds  in one hole, without positioning
 * @param interval holes between two gaugings while it runs well (common practice, no source: 25 cut or milled, 50 formed)
 */
public record Demand(double speed, OptionalDouble torque, OptionalDouble power, double seconds, int interval) {
	private static final int CUT = 25;
	private static final int FORMED = 50;

	/** The demand of a method whose hole is known. */
	public static Demand of(Method method, Request request, HolePlan hole) {
		if (!method.tap()) {
			MillBlocks mill = new MillBlocks(request, hole);
			return new Demand(mill.speed(), OptionalDouble.empty(), OptionalDouble.empty(), mill.minutes() * 60, CUT);
		}
		TapBlocks tap = new TapBlocks(request, method, hole);
		OptionalDouble torque = request.stock().isEmpty() ? OptionalDouble.empty() : TapTorque.of(request.group(), request.thread(), method.forming());
		OptionalDouble power = torque.isEmpty() ? torque : OptionalDouble.of(2 * Math.PI * tap.speed() * torque.getAsDouble() / 60_000);
		return new Demand(tap.speed(), torque, power, tap.minutes() * 60, method.forming() ? FORMED : CUT);
	}

	/** Whether it is more than the machine's profile says that the spindle gives; false where either is not known. */
	public boolean stalls(Request request) {
		return over(torque, request.profile().number(ProfileKey.SPINDLE_TORQUE)) || over(power, request.profile().number(ProfileKey.SPINDLE_POWER));
	}

	private static boolean over(OptionalDouble wanted, OptionalDouble given) {
		return wanted.isPresent() && given.isPresent() && wanted.getAsDouble() > given.getAsDouble();
	}
}
