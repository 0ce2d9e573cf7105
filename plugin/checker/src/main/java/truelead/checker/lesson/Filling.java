package truelead.checker.lesson;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import truelead.checker.CheckResult;
import truelead.checker.job.Fact;
import truelead.checker.job.Holder;
import truelead.checker.job.TapTorque;
import truelead.checker.machine.Compensation;
import truelead.checker.pass.MillPass;
import truelead.checker.profile.ProfileKey;
import truelead.checker.program.BlockRef;
import truelead.checker.program.FeedMode;
import truelead.checker.rule.Finding;
import truelead.checker.rule.TapLead;
import truelead.checker.rule.ToolName;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.sheet.Sheets;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.sheet.TurnedSheet;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.Hand;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.work.NearestOperation;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;

/** Takes the numbers of a lesson from what a program does. What is not known there stays where the lesson has it. */
public final class Filling {

	private final CheckResult result;

	/** From a program that was checked. */
	public Filling(CheckResult result) {
		this.result = result;
	}

	/** The lesson of a finding with the numbers of its thread; empty where no lesson tells more about it or it is about no thread. */
	public Optional<Filled> of(Finding finding) {
		String found = finding.rule() + ": " + finding.message();
		Optional<ThreadSheet> about = new ProgramThreads(result.work()).about(finding);
		return Lessons.of(finding.rule(), about).map(lesson -> about.get() instanceof TurnedSheet turned
				? of(lesson, turned, finding.rule(), found) : of(lesson, ((OperationSheet) about.get()).operation(), found));
	}

	/**
	 * The lesson at a line, from 0: of a finding there, else of the thread nearest to it; only the lesson of that name where one is given.
	 */
	public Optional<Filled> at(int line, Optional<Lesson> wanted) {
		List<Finding> here = result.findings().stream().filter(finding -> finding.at().line() == line
				&& finding.at().file().name().equals(result.work().shop().program().name())).toList();
		Optional<Filled> found = here.stream().map(this::of).flatMap(Optional::stream)
				.filter(f -> wanted.isEmpty() || wanted.get() == f.lesson()).findFirst();
		return found.or(() -> turnedAt(line, wanted)).or(() -> operationAt(line, here)
				.map(o -> of(wanted.filter(lesson -> Lessons.fits(lesson, o)).orElseGet(() -> usual(o)), o, ""))
				.filter(f -> wanted.isEmpty() || wanted.get() == f.lesson()));
	}

	/** The thread turned at a line; the nearest one where the lesson of turned ones is asked for, or there is no other thread. */
	private Optional<Filled> turnedAt(int line, Optional<Lesson> wanted) {
		Lesson passes = Lessons.named("passes").orElseThrow();
		if (wanted.isPresent() && wanted.get() != passes) {
			return Optional.empty();
		}
		List<TurnedSheet> turned = Sheets.turned(result.work());
		boolean nearest = wanted.isPresent() || result.work().operations().isEmpty();
		return turned.stream().filter(sheet -> nearest || distance(sheet, line) == 0)
				.min(Comparator.comparingInt(sheet -> distance(sheet, line))).map(sheet -> of(passes, sheet, "", ""));
	}

	/** Lines from a line to the nearest block of a turned thread. */
	private static int distance(TurnedSheet sheet, int line) {
		return sheet.blocks().stream().mapToInt(block -> Math.abs(block.outermost().line() - line)).min().orElse(Integer.MAX_VALUE);
	}

	private Optional<ThreadingOperation> operationAt(int line, List<Finding> here) {
		return NearestOperation.at(result.work(), line).or(() -> result.work().operations().stream()
				.filter(o -> here.stream().anyMatch(f -> f.operation() == o.index())).findFirst())
				.or(() -> NearestOperation.to(result.work(), line));
	}

	private static Lesson usual(ThreadingOperation operation) {
		return Lessons.named(operation instanceof Tapping ? "feed" : "helix").orElseThrow();
	}

	private Filled of(Lesson lesson, ThreadingOperation operation, String found) {
		OperationSheet sheet = Sheets.of(operation);
		Values values = thread(Values.usual(lesson), sheet).with("force", force(operation));
		if (operation instanceof ThreadMilling milling) {
			values = helix(values, milling, sheet);
		} else if (operation instanceof Tapping tapping) {
			values = lesson.name().equals("feed") ? feed(values, tapping, sheet) : depth(values, tapping, sheet);
		}
		return new Filled(lesson, values, about(operation.block(), sheet, found));
	}

	private static Filled of(Lesson lesson, TurnedSheet sheet, String rule, String found) {
		return new Filled(lesson, new PassesFilling(sheet, rule).onto(Values.usual(lesson)), about(sheet.block(), sheet, found));
	}

	private static String about(BlockRef block, ThreadSheet sheet, String found) {
		String where = block.file().name() + ":" + (block.line() + 1) + " " + sheet.name();
		return found.isEmpty() ? where : where + ", " + found;
	}

	/** Specific cutting force of the stock, N/mm²; NaN where nobody says what it is. */
	private static double force(ThreadingOperation operation) {
		return operation.wanted().stock().map(stock -> TapTorque.force(stock.value().group()).orElse(Double.NaN)).orElse(Double.NaN);
	}

	private static Values thread(Values values, OperationSheet sheet) {
		Optional<ThreadSpec> thread = sheet.thread().map(Fact::value);
		double pitch = thread.map(ThreadSpec::lead).orElse(sheet.advance());
		return values.with("pitch", pitch).with("diameter", thread.map(ThreadSpec::diameter).orElse(Double.NaN)).with("rise", pitch)
				.with("flat", pitch / 8).with("speed", sheet.speed());
	}

	private Values feed(Values start, Tapping tapping, OperationSheet sheet) {
		Values values = start;
		if (!tapping.strokes().isEmpty()) {
			TapStroke stroke = tapping.strokes().get(0);
			boolean perTurn = tapping.method().synchronised() || stroke.modal().feedMode() == FeedMode.PER_REVOLUTION;
			values = values.with("mode", perTurn ? 1 : 0).with("decimals", 4)
					.with("feed", perTurn ? sheet.advance() : sheet.advance() * sheet.speed());
		}
		Optional<Holder> holder = tapping.tool().facts().holder().map(Fact::value);
		double kind = holder.map(h -> h.floats() ? 2.0 : h.travel() > 0 ? 1.0 : 0.0).orElse(0.0);
		Optional<HoleSheet> hole = sheet.holes().stream().findFirst();
		return values.with("holder", kind).with("travel", holder.map(Holder::travel).orElse(Double.NaN))
				.with("stiffness", kind == 2 ? 30 : Double.NaN).with("depth", hole.map(HoleSheet::tip).orElse(Double.NaN))
				.with("height", hole.map(HoleSheet::start).orElse(Double.NaN))
				.with("lead", TapLead.of(tapping.tool().facts()).turns().value())
				.with("kind", ToolName.forms(tapping.tool().facts()) ? 1 : 0)
				.with("acceleration", result.work().shop().profile().number(ProfileKey.SPINDLE_ACCELERATION).orElse(Double.NaN));
	}

	private static Values depth(Values values, Tapping tapping, OperationSheet sheet) {
		Optional<HoleSheet> hole = sheet.holes().stream().findFirst();
		double drill = hole.map(HoleSheet::drill).orElse(Double.NaN);
		double point = hole.map(h -> h.drillTip() - h.drillFull()).orElse(Double.NaN);
		double angle = point > 0 ? 2 * Math.toDegrees(Math.atan(drill / 2 / point)) : Double.NaN;
		return values.with("drill", Double.isNaN(drill) ? values.of("diameter") - values.of("pitch") : drill).with("angle", angle)
				.with("drillTip", hole.map(HoleSheet::drillTip).orElse(Double.NaN))
				.with("tapTip", hole.map(HoleSheet::tip).orElse(Double.NaN))
				.with("wanted", Double.isNaN(sheet.called()) ? hole.map(HoleSheet::fullThread).orElse(Double.NaN) : sheet.called())
				.with("lead", TapLead.of(tapping.tool().facts()).turns().value())
				.with("leadAngle", ToolName.spiralPoint(tapping.tool().facts()) ? 8 : 15)
				.with("kind", ToolName.forms(tapping.tool().facts()) ? 1 : 0);
	}

	private static Values helix(Values values, ThreadMilling milling, OperationSheet sheet) {
		MillPass pass = milling.finishing(milling.passes().get(0).hole()).get(0);
		double cutter = milling.tool().facts().diameter().map(Fact::value).orElse(Double.NaN);
		boolean contour = pass.compensation() != Compensation.OFF && pass.radius() > values.of("diameter") / 2 - 0.5 * values.of("pitch");
		double path = contour && !Double.isNaN(cutter) ? pass.radius() - cutter / 2 : pass.radius();
		boolean perMinute = pass.modal().feedMode() == FeedMode.PER_MINUTE;
		double length = Math.abs(pass.endLevel() - pass.startLevel());
		boolean left = sheet.thread().map(t -> t.value().hand() == Hand.LEFT).orElse(false);
		return values.with("cutter", cutter).with("radius", path).with("rise", Math.abs(pass.lead()))
				.with("sense", pass.counterclockwise() ? 0 : 1).with("way", pass.endLevel() < pass.startLevel() ? 1 : 0)
				.with("hand", left ? 1 : 0).with("depth", Double.isNaN(sheet.called()) ? length : sheet.called())
				.with("flat", milling.tool().facts().tipFlat().map(Fact::value).orElse(Double.NaN))
				.with("entryRise", values.of("pitch") * values.of("entryAngle") / 360)
				.with("teeth", milling.tool().facts().teeth().map(t -> (double) t.value()).orElse(Double.NaN))
				.with("toothFeed", milling.tool().facts().toothFeed().map(Fact::value).orElse(Double.NaN))
				.with("feed", perMinute ? pass.modal().feed().value() * pass.modal().unit().mm()
						: pass.modal().feed().value() * pass.modal().unit().mm() * sheet.speed());
	}
}
