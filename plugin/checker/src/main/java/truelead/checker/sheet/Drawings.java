package truelead.checker.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import truelead.checker.drawing.Drawing;
import truelead.checker.drawing.FeedDrift;
import truelead.checker.drawing.HelixPlan;
import truelead.checker.drawing.HoleSection;
import truelead.checker.drawing.Ink;
import truelead.checker.drawing.TurnedSection;
import truelead.checker.job.Fact;
import truelead.checker.machine.Point;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Finding;
import truelead.checker.thread.BoltRoot;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.turn.SinglePoint;
import truelead.checker.work.ThreadMilling;

/** Chooses the drawing that shows what a sheet or a finding says. */
public final class Drawings {

	private static final double WORTH_DRAWING = 1e-4;

	private Drawings() {
	}

	/** The drawing beside an operation: its tightest hole in section, or the mill in its hole. */
	public static Optional<Drawing> of(OperationSheet sheet, Ink ink) {
		return sheet.operation() instanceof ThreadMilling milling ? helix(sheet, milling, ink) : section(sheet, tightest(sheet), ink);
	}

	/** The same of any thread; of one that a lathe cuts by a single point half of the part in section. */
	public static Optional<Drawing> of(ThreadSheet sheet, Ink ink) {
		return sheet instanceof OperationSheet operation ? of(operation, ink) : turned((TurnedSheet) sheet, ink);
	}

	private static Optional<Drawing> turned(TurnedSheet sheet, Ink ink) {
		// away from the chuck is to the right
		double right = sheet.cut().grows() ? -1 : 1;
		double depth = sheet.thread().map(Fact::value).map(spec -> spec.system().profileOverPitch() * spec.pitch())
				.orElse(BoltRoot.USUAL / 2 * sheet.advance());
		double root = sheet.diameter() / 2;
		double slope = sheet.thread().map(Fact::value).map(ThreadSpec::taperOnDiameter).orElse(0.0) / (sheet.outside() ? -2 : 2);
		double crest = slope == 0 && sheet.crests() > 0 ? sheet.crests() / 2 : sheet.outside() ? root + depth : root - depth;
		boolean known = root > 0 && crest > 0 && sheet.from() != sheet.to() && Double.isFinite(sheet.from() + sheet.to() + crest)
				&& sheet.advance() > 0;
		boolean shoulder = sheet.cut().shaft().map(SinglePoint.Shaft::wider).orElse(sheet.cut().inside());
		return known ? Optional.of(new TurnedSection(sheet.cut().inside(), crest, root, slope,
				sheet.thread().map(fact -> fact.value().pitch()).orElse(sheet.advance()), right * sheet.from(), right * sheet.to(),
				right * sheet.prepared(), shoulder, sheet.firstDiameter() / 2, sheet.unit(), level -> SheetFigures.level(right * level,
						new Figures(sheet.unit()))).draw(ink)) : Optional.empty();
	}

	/** The drawing of one hole of an operation: in section, or the mill in it. */
	public static Optional<Drawing> of(OperationSheet sheet, HoleSheet hole, Ink ink) {
		return sheet.operation() instanceof ThreadMilling milling ? helix(sheet, milling, ink) : section(sheet, Optional.of(hole), ink);
	}

	/** The drawing beside a finding: the feed running off, the hole it speaks of, the helix. */
	public static Optional<Drawing> of(Finding finding, ThreadSheet any, Ink ink) {
		if (finding.rule().startsWith("feed-") || finding.rule().equals("inch-metric-mixup")) {
			return drift(any, ink);
		}
		if (!(any instanceof OperationSheet sheet)) {
			return of(any, ink);
		}
		if (sheet.operation() instanceof ThreadMilling milling) {
			return helix(sheet, milling, ink);
		}
		boolean spindle = finding.rule().startsWith("spindle-") || finding.rule().startsWith("speed-")
				|| finding.rule().startsWith("rigid-") || finding.rule().startsWith("callout-") || finding.rule().startsWith("cycle-")
				|| finding.rule().startsWith("note-");
		Optional<HoleSheet> hole = sheet.holes().stream().filter(one -> one.block().line() == finding.at().line()).findFirst();
		return spindle ? Optional.empty() : section(sheet, hole.or(() -> tightest(sheet)), ink);
	}

	private static Optional<Drawing> drift(ThreadSheet sheet, Ink ink) {
		boolean known = sheet.advance() > 0 && sheet.lead() > 0 && sheet.turns() > 0;
		return known && Math.abs(sheet.feedError()) > WORTH_DRAWING
				? Optional.of(new FeedDrift(sheet.lead(), sheet.advance(), sheet.turns(), sheet.unit()).draw(ink)) : Optional.empty();
	}

	private static Optional<HoleSheet> tightest(OperationSheet sheet) {
		return sheet.holes().stream().filter(hole -> !Double.isNaN(hole.tip()))
				.min((a, b) -> Double.compare(Double.isNaN(a.clearance()) ? 1e9 : a.clearance(), Double.isNaN(b.clearance()) ? 1e9
						: b.clearance()));
	}

	private static Optional<Drawing> section(OperationSheet sheet, Optional<HoleSheet> hole, Ink ink) {
		double major = sheet.thread().map(Fact::value).map(ThreadSpec::diameter)
				.orElse(sheet.tool().facts().diameter().map(Fact::value).orElse(Double.NaN));
		return hole.filter(one -> !Double.isNaN(one.drill()) || !Double.isNaN(major))
				.map(one -> new HoleSection(major, sheet.lead(), one.drill(), one.drillFull(), one.drillTip(), one.tip(), one.fullThread(),
						sheet.leadAssumed(), sheet.called(), sheet.wall(), sheet.through().orElse(false), one.edge(), one.start(),
						sheet.unit()).draw(ink));
	}

	private static Optional<Drawing> helix(OperationSheet sheet, ThreadMilling milling, Ink ink) {
		MillPass pass = milling.finishing(milling.passes().get(0).hole()).get(0);
		List<Point> path = new ArrayList<>();
		List<Step> steps = new ArrayList<>(pass.entry());
		steps.addAll(pass.helix());
		steps.addAll(pass.exit());
		for (Step step : steps) {
			ToolPath.add(path, step, pass.place().plane());
		}
		double major = sheet.thread().map(Fact::value).map(ThreadSpec::diameter).orElse(Double.NaN);
		double cutter = milling.tool().facts().diameter().map(Fact::value).orElse(Double.NaN);
		boolean onContour = Double.isNaN(sheet.cutDiameter()) || sheet.cutDiameter() <= 2 * pass.radius() + 1e-9;
		return Optional.of(new HelixPlan(sheet.holes().get(0).drill(), major, sheet.cutDiameter(), onContour ? Double.NaN : cutter,
				new Point(pass.place().u(), pass.place().v(), 0), path, sheet.unit()).draw(ink));
	}
}
