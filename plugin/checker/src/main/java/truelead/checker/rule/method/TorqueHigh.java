package truelead.checker.rule.method;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.job.TapTorque;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The tap wants more torque than the spindle gives: M = kc P² D / 8000 in N m with kc in N/mm², P and D in mm, cutting; 2.5 times as much
 * forming (formula and kc from memory). Without a spindle torque in the profile, forming above M16 says so (common practice).
 */
public final class TorqueHigh extends OperationRule {

	private static final double LARGE = 16;

	public TorqueHigh() {
		super("torque-high");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		Optional<Fact<ThreadSpec>> thread = operation.wanted().thread();
		if (!(operation instanceof Tapping tapping) || !tapping.method().taps() || thread.isEmpty() || !firstOfGroup(operation, work)) {
			return;
		}
		ThreadSpec spec = thread.get().value();
		boolean forms = ToolName.forms(operation.tool().facts());
		OptionalDouble limit = work.shop().profile().number(ProfileKey.SPINDLE_TORQUE);
		Optional<Fact<Stock>> stock = operation.wanted().stock().filter(s -> TapTorque.of(s.value().group(), spec, forms).isPresent());
		if (limit.isPresent() && stock.isPresent()) {
			double torque = TapTorque.of(stock.get().value().group(), spec, forms).getAsDouble();
			if (torque > limit.getAsDouble()) {
				found.accept(Draft.of(this, Severity.WARNING, Location.of(operation.block()), spec.designation() + " in "
						+ stock.get().value().words() + " takes about "
						+ newtonMetres(torque) + (forms ? " to form" : "") + ", the spindle gives " + newtonMetres(limit.getAsDouble())
						+ ": it stalls in the hole; " + (forms ? "a cutting tap or a thread mill" : "a lower gear or a thread mill"))
						.known("thread", spec.designation(), thread.get()).known("stock", stock.get().value().words(), stock.get())
						.from("torque", Figures.number(torque, 1) + " N m", "kc P^2 D / 8000, from memory")
						.from("spindle torque", Figures.number(limit.getAsDouble(), 1) + " N m", "machine profile"));
			}
		} else if (forms && spec.diameter() > LARGE && limit.isEmpty()) {
			found.accept(Draft.of(this, Severity.INFORMATION, Location.of(operation.block()), "forming " + spec.designation()
					+ " takes two to three times the torque of cutting, which climbs steeply above M16; look what the spindle gives at S, "
					+ "or put spindle-torque in the machine profile").known("thread", spec.designation(), thread.get())
					.from("limit", "M16", "common practice, no source"));
		}
	}

	/** Two figures at least: taps below M8 take but a few N m. */
	private static String newtonMetres(double torque) {
		return Figures.number(torque, torque < 10 ? 1 : 0) + " N m";
	}
}
