package truelead.checker.lesson;

import java.util.List;
import java.util.Optional;
import truelead.checker.job.Fact;
import truelead.checker.machine.Modal;
import truelead.checker.sheet.TurnedSheet;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;

/** Takes the numbers of the lesson of passes from a thread that a lathe cuts. What is not known there stays where the lesson has it. */
final class PassesFilling {

	/** Part of a depth that passes of the same depth may differ by (a choice of ours). */
	private static final double ALIKE = 0.1;

	private final TurnedSheet sheet;
	private final boolean uneven;
	private final boolean heavy;
	private final Optional<ThreadSpec> thread;

	/** @param rule name of the rule that found something there; empty for none */
	PassesFilling(TurnedSheet sheet, String rule) {
		this.sheet = sheet;
		// unless that is found, passes that begin elsewhere are fed along a flank
		this.uneven = rule.equals("helix-uneven");
		this.heavy = rule.equals("passes-too-heavy");
		this.thread = sheet.thread().map(Fact::value);
	}

	/** The lesson's values with what the thread says. */
	Values onto(Values start) {
		List<SinglePoint.Pass> passes = sheet.cut().passes();
		SinglePoint.Pass first = passes.get(0);
		SinglePoint.Pass last = beside().orElse(passes.get(passes.size() - 1));
		boolean over = sheet.from() * sheet.to() < 0;
		Values values = start.with("pitch", thread.map(ThreadSpec::pitch).orElse(first.lead()))
				.with("starts", thread.map(spec -> (double) spec.starts()).orElse(1.0))
				.with("diameter", thread.map(ThreadSpec::diameter).orElse(sheet.diameter())).with("side", sheet.outside() ? 1 : 0)
				.with("length", Math.abs(over ? sheet.to() : sheet.to() - sheet.from()))
				.with("approach", over ? Math.abs(sheet.from()) : Double.NaN).with("feed", first.lead()).with("lastFeed", last.lead())
				.with("speed", turns(first)).with("lastSpeed", turns(last))
				.with("begin", thread.filter(spec -> uneven).map(spec -> sheet.cut().beside(last, spec)).map(PassesFilling::rounded)
						.orElse(Double.NaN));
		return depths(values);
	}

	/** The first pass that begins beside the groove of the first one. */
	private Optional<SinglePoint.Pass> beside() {
		return thread.filter(spec -> uneven).flatMap(spec -> sheet.cut().passes().stream()
				.filter(pass -> rounded(sheet.cut().beside(pass, spec)) != 0).findFirst());
	}

	/** Without what is left of subtracting levels, mm. */
	private static double rounded(double length) {
		return Math.rint(length * 1e6) / 1e6;
	}

	/** How fast the spindle turns in a pass, rev/min; under constant surface speed for the diameter where it begins to cut. */
	private static double turns(SinglePoint.Pass pass) {
		Modal modal = pass.step().modal();
		double metres = modal.unit().mm() == 1 ? 1000 : 12 * modal.unit().mm();
		return modal.constantSurface() ? modal.speed().value() * metres / (2 * Math.PI * Math.abs(pass.step().from().x()))
				: modal.speed().value();
	}

	private Values depths(Values values) {
		double whole = sheet.dividedByControl() ? sheet.height() : Math.abs(sheet.diameter() - sheet.crests()) / 2;
		boolean even = !sheet.dividedByControl() && even(sheet.firstDeep());
		// as many passes as the program has, where it is not the first one that matters
		double first = heavy || even || !sheet.counted() ? sheet.firstDeep() : whole / Math.sqrt(sheet.passes());
		return values.with("depth", whole).with("first", first).with("division", even ? 1 : 0);
	}

	/** Whether all passes but the last take about as much as the first, mm on the radius. */
	private boolean even(double first) {
		List<Double> diameters = sheet.diameters();
		for (int i = 1; i + 1 < diameters.size(); i++) {
			double taken = Math.abs(diameters.get(i) - diameters.get(i - 1)) / 2;
			if (!(Math.abs(taken - first) <= ALIKE * first)) {
				return false;
			}
		}
		return diameters.size() > 2;
	}
}
