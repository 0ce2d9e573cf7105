package truelead.checker.rule.method;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Severity;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * A tap whose limit mark cannot gauge in the class called out: an H or D limit n ends n x 0.0005 in above the basic pitch diameter (ASME
 * B94.9, from memory); a tap of position G ends where the standard's class of that name ends. Said only where no plating is called out.
 */
public final class TapLimitAgainstClass extends OperationRule {

	private static final double STEP = 0.0005 * 25.4;

	public TapLimitAgainstClass() {
		super("tap-limit-against-class");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		Optional<Fact<String>> limit = operation.tool().facts().limit();
		Optional<Fact<ThreadSpec>> thread = operation.wanted().statedThread();
		if (!(operation instanceof Tapping) || limit.isEmpty() || thread.isEmpty() || !firstOfGroup(operation, work)) {
			return;
		}
		Optional<Limits> limits = ThreadTable.standard().limits(thread.get().value());
		OptionalDouble over = limits.isPresent() ? over(limit.get().value(), thread.get().value(), limits.get()) : OptionalDouble.empty();
		if (over.isPresent() && over.getAsDouble() > 1e-6) {
			found.accept(Draft.of(this, Severity.INFORMATION, Location.of(operation.block()), "a tap of limit " + limit.get().value()
					+ " can cut " + figures(work).fine(over.getAsDouble()) + " above the largest pitch diameter of "
					+ thread.get().value().designation() + " (" + limits.orElseThrow().threadClass()
					+ "): the no-go gauge may go in; a tap of a lower limit, unless the part is plated")
					.known("limit of the tap", limit.get().value(), limit.get()).known("the callout", thread.get().value().designation(),
							thread.get()).from("largest pitch diameter", figures(work).fine(limits.orElseThrow().pitchMaxMm()
									.orElse(Double.NaN)), limits.orElseThrow().source()));
		}
	}

	/** How far the tap's largest pitch diameter lies above the class's, mm; empty for a mark that says nothing here. */
	private static OptionalDouble over(String mark, ThreadSpec thread, Limits limits) {
		if (limits.pitchMinMm().isEmpty() || limits.pitchMaxMm().isEmpty()) {
			return OptionalDouble.empty();
		}
		double room = limits.pitchMaxMm().getAsDouble() - limits.pitchMinMm().getAsDouble();
		boolean inchMark = mark.length() > 1 && mark.length() < 4 && (mark.charAt(0) == 'H' || mark.charAt(0) == 'D')
				&& mark.chars().skip(1).allMatch(Character::isDigit);
		if (inchMark) {
			return OptionalDouble.of(Integer.parseInt(mark.substring(1)) * STEP - room);
		}
		Optional<Limits> cut = mark.endsWith("G") ? ThreadTable.standard().limits(thread, mark) : Optional.empty();
		return cut.isPresent() && cut.get().pitchMaxMm().isPresent()
				? OptionalDouble.of(cut.get().pitchMaxMm().getAsDouble() - limits.pitchMaxMm().getAsDouble())
				: OptionalDouble.empty();
	}
}
