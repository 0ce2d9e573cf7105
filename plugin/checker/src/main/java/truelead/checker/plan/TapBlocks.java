package truelead.checker.plan;

import java.util.Locale;
import java.util.OptionalDouble;
import truelead.checker.profile.Meaning;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;

/** The tapping cycle: speed, feed by the pitch, R plane with run-up, depth with the lead. */
final class TapBlocks {
	/** Run-up to the hole, in leads (common practice, no source). */
	private static final double RUN_UP = 3;
	/** The fastest that is planned where the profile names no limit, rev/min (common practice, no source). */
	private static final double FASTEST = 3000;
	private final Request request;
	private final Method method;
	private final HolePlan hole;

	TapBlocks(Request request, Method method, HolePlan hole) {
		this.request = request;
		this.method = method;
		this.hole = hole;
	}

	String toolComment() {
		return method.tool() + " " + request.thread().designation().toUpperCase(Locale.ROOT);
	}

	/** rev/min: a multiple of 10, in inch programs of the threads per inch, so that F is written exactly. */
	double speed() {
		ThreadSpec spec = request.thread();
		double most = Math.min(FASTEST, request.profile().number(ProfileKey.TAPPING_SPEED_LIMIT).orElse(FASTEST));
		double wanted = Math.min(most, SpeedBand.speed(SpeedBand.of(method, request).start(), spec.diameter()));
		double tpi = spec.tpi();
		double step = spec.unit() == LengthUnit.MM || tpi <= 0 ? 10 : tpi == Math.rint(tpi) ? tpi : 2 * tpi;
		return Math.max(step, Math.floor(wanted / step) * step);
	}

	/** The code that turns the spindle into the hole. */
	String spindle() {
		return left() ? "M4" : "M3";
	}

	/** Run-up: 3 P, or (S/60)^2 P / (2 a) with the profile's acceleration a in rev/s^2, whichever is more; mm. */
	double plane() {
		double pitch = request.thread().lead();
		OptionalDouble acceleration = request.profile().number(ProfileKey.SPINDLE_ACCELERATION);
		double turns = acceleration.isPresent() ? Math.pow(speed() / 60, 2) / (2 * acceleration.getAsDouble()) : 0;
		return Math.ceil(Math.max(RUN_UP, 1.1 * turns) * pitch * 10 + 1e-9) / 10;
	}

	/** The cycle with the word of its retract level, empty where the tool stands there. */
	String cycle(Dialect dialect, String level) {
		Figure figure = new Figure(request.unit());
		String code = left() ? dialect.g(Meaning.TAP_LEFT, 74).orElse("G74") : dialect.g(Meaning.TAP, 84).orElse("G84");
		return code + " Z-" + figure.word(hole.toolTip()) + level + " F" + figure.feed(request.thread().lead(), speed(),
				request.feedPerRev() || request.profile().is(ProfileKey.TAPPING_FEED, "pitch")) + " ("
				+ request.thread().designation().toUpperCase(Locale.ROOT) + " TAP)";
	}

	/** In and out at the pitch, minutes. */
	double minutes() {
		return 2 * (plane() + hole.toolTip()) / (speed() * request.thread().lead());
	}

	private boolean left() {
		return request.thread().hand() == Hand.LEFT;
	}
}
