package truelead.checker.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.job.GaugingInterval;
import truelead.checker.job.TapTorque;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileKey;

/**
 * What a method takes of the machine and of the person at it, as estimates.
 *
 * @param speed    spindle, rev/min
 * @param torque   of a tap, N m (kc P² D / 8000, from memory); empty for a thread mill, and where the stock is not said
 * @param power    for that torque at that speed, kW (2 pi n M / 60,000); empty as above
 * @param seconds  in one hole, without positioning
 * @param interval holes between two gaugings while it runs well
 */
public record Demand(double speed, OptionalDouble torque, OptionalDouble power, double seconds, int interval) {
	/** The demand of a method whose hole is known. */
	public static Demand of(Method method, Request request, HolePlan hole) {
		if (!method.tap()) {
			MillBlocks mill = new MillBlocks(request, method, hole);
			return new Demand(mill.cut().speed(), OptionalDouble.empty(), OptionalDouble.empty(), mill.minutes() * 60,
					GaugingInterval.of(false));
		}
		TapBlocks tap = new TapBlocks(request, method, hole);
		OptionalDouble torque = request.stock().isEmpty() ? OptionalDouble.empty()
				: TapTorque.of(request.group(), request.thread(), method.forming());
		OptionalDouble power = torque.isEmpty() ? torque : OptionalDouble.of(2 * Math.PI * tap.speed() * torque.getAsDouble() / 60_000);
		return new Demand(tap.speed(), torque, power, tap.minutes() * 60, GaugingInterval.of(method.forming()));
	}

	/** Why the spindle stalls, with what it takes and what the machine's profile gives; empty where it does not, or either is not known. */
	Optional<String> stalls(MachineProfile profile) {
		return over(torque, profile.number(ProfileKey.SPINDLE_TORQUE), "N m")
				.or(() -> over(power, profile.number(ProfileKey.SPINDLE_POWER), "kW"));
	}

	private Optional<String> over(OptionalDouble wanted, OptionalDouble given, String unit) {
		boolean over = wanted.isPresent() && given.isPresent() && wanted.getAsDouble() > given.getAsDouble();
		return over ? Optional.of("takes about " + Figure.plain(wanted.getAsDouble(), 2) + " " + unit + " at S" + Figure.plain(speed, 1)
				+ " (estimate), the spindle gives " + Figure.plain(given.getAsDouble(), 2) + " " + unit + ": it stalls in the hole")
				: Optional.empty();
	}
}
