package truelead.checker.summary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.hole.Cut;
import truelead.checker.machine.Modal;
import truelead.checker.pass.MillPass;
import truelead.checker.program.FeedMode;
import truelead.checker.program.Setting;
import truelead.checker.rule.Figures;
import truelead.checker.stroke.TapStroke;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;

/**
 * A threading operation in one quiet line for the end of its block: the thread, the feed against speed times pitch, the depth, and what
 * is left below the tap: {@code M6x1 · 520 × 1.000 = 520 ✓ · 14.5 deep, 3.1 below the tap}. Parts that are not known are left out.
 */
final class OperationSummary {

	private OperationSummary() {
	}

	/** The line; empty where nothing worth saying is known. */
	static String of(ThreadingOperation operation) {
		List<String> parts = new ArrayList<>();
		operation.wanted().thread().filter(thread -> thread.stated()).ifPresent(thread -> parts.add(thread.value().designation()));
		if (operation instanceof Tapping tapping && !tapping.strokes().isEmpty()) {
			TapStroke stroke = tapping.strokes().get(0);
			feed(tapping, stroke).ifPresent(parts::add);
			depth(tapping, stroke).ifPresent(parts::add);
		} else if (operation instanceof ThreadMilling milling) {
			MillPass pass = milling.passes().get(milling.passes().size() - 1);
			Figures figures = new Figures(pass.modal().unit());
			parts.add(figures.advance(Math.abs(pass.lead())) + " a turn, " + Figures.turns(pass.turns()) + " turns");
			parts.add("path radius " + figures.fine(pass.radius()));
			parts.add(pass.rightHand() ? "right hand" : "left hand");
		}
		return String.join(" · ", parts);
	}

	private static Optional<String> feed(Tapping tapping, TapStroke stroke) {
		if (tapping.wanted().thread().filter(thread -> thread.stated()).isEmpty()) {
			return Optional.empty();
		}
		Modal modal = stroke.modal();
		double lead = tapping.wanted().thread().get().value().lead() / modal.unit().mm();
		String advance = new Figures(modal.unit()).advance(tapping.wanted().thread().get().value().lead());
		Setting written = tapping.method().synchronised() ? stroke.lead() : stroke.feed();
		if (!written.known()) {
			return Optional.empty();
		}
		if (tapping.method().synchronised() || modal.feedMode() == FeedMode.PER_REVOLUTION) {
			return Optional.of(Figures.number(written.value(), 5) + " a turn, pitch " + advance + mark(written, lead));
		}
		if (modal.feedMode() != FeedMode.PER_MINUTE || !stroke.speed().known()) {
			return Optional.empty();
		}
		double right = stroke.speed().value() * lead;
		String product = Figures.number(stroke.speed().value(), 1) + " × " + advance + " = " + Figures.number(right, 3);
		return Optional.of(fits(written, right) ? product + " ✓" : product + " ✗ F" + Figures.number(written.value(), 4));
	}

	private static String mark(Setting written, double right) {
		return fits(written, right) ? " ✓" : " ✗";
	}

	/** Within half a unit of the last decimal written, as the rule on feed and pitch allows, and at most 1 %. */
	private static boolean fits(Setting written, double right) {
		return fits(written.value(), written.rounding(), right);
	}

	/** The same of a number that is rounded to so much. */
	static boolean fits(double written, double rounding, double right) {
		double allowed = Math.min(Math.max(rounding, 1e-9), 0.01 * right);
		return Math.abs(written - right) <= allowed * (1 + 1e-9);
	}

	private static Optional<String> depth(Tapping tapping, TapStroke stroke) {
		double deep = stroke.direction() * (stroke.bottom() - tapping.wanted().surface().value());
		if (Double.isNaN(deep)) {
			return Optional.empty();
		}
		Figures figures = new Figures(stroke.modal().unit());
		Optional<Cut> hole = stroke.hole().deepestBefore(stroke.order());
		if (hole.isEmpty() || Double.isNaN(hole.get().shoulder())) {
			return Optional.of(figures.length(deep) + " deep");
		}
		double left = stroke.direction() * (hole.get().shoulder() - stroke.bottom());
		return Optional.of(figures.length(deep) + " deep, "
				+ (left >= 0 ? figures.length(left) + " below the tap" : figures.length(-left) + " beyond the full diameter"));
	}
}
