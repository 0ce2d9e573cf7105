package truelead.checker.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.machine.Compensation;
import truelead.checker.machine.Modal;
import truelead.checker.machine.SpindleTurn;
import truelead.checker.machine.Step;
import truelead.checker.pass.MillPass;
import truelead.checker.program.FeedMode;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Setting;
import truelead.checker.rule.Figures;
import truelead.checker.stroke.TapStroke;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.turn.SinglePoint;
import truelead.checker.wanted.Wanted;
import truelead.checker.work.Tapping;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/** Makes the sheets of a program's threading operations. */
public final class Sheets {

	private Sheets() {
	}

	/** One sheet an operation, in the order of execution. */
	public static List<OperationSheet> of(Work work) {
		return work.operations().stream().map(Sheets::of).toList();
	}

	/** One sheet for each thread that a lathe cuts by a single point, in the order of execution. */
	public static List<TurnedSheet> turned(Work work) {
		List<SinglePoint> threads = work.course().singlePoints();
		return IntStream.range(0, threads.size()).mapToObj(i -> turned(work.operations().size() + i, threads.get(i))).toList();
	}

	/** All of them, in the order of their numbers. */
	public static List<ThreadSheet> all(Work work) {
		return Stream.concat(of(work).stream(), turned(work).stream()).map(ThreadSheet.class::cast).toList();
	}

	private static TurnedSheet turned(int index, SinglePoint thread) {
		Step.Synchronised pass = thread.pass();
		Modal modal = pass.modal();
		return new TurnedSheet(index, thread, modal.constantSurface() ? Double.NaN : modal.speed().value(), turning(modal.spindle()),
				said("F", pass.lead(), FeedMode.PER_REVOLUTION, modal.unit()));
	}

	/** The sheet of one operation. */
	public static OperationSheet of(ThreadingOperation operation) {
		return operation instanceof Tapping tapping ? tapping(tapping) : milling((ThreadMilling) operation);
	}

	private static OperationSheet tapping(Tapping tapping) {
		Optional<TapStroke> first = tapping.strokes().stream().findFirst();
		Optional<Modal> modal = first.map(TapStroke::modal);
		LengthUnit unit = modal.map(Modal::unit).orElse(LengthUnit.MM);
		double lead = lead(tapping.wanted());
		double speed = first.map(stroke -> stroke.speed().value()).orElse(Double.NaN);
		double advance = tapping.advance();
		double tapered = tapping.tool().facts().leadTurns().map(turns -> turns.value() * lead).orElse(Double.NaN);
		double used = Double.isNaN(lead) ? advance : lead;
		List<HoleSheet> holes = new HoleReader(tapping.wanted(), tapered, unit).tapped(tapping);
		double deep = holes.isEmpty() ? Double.NaN : holes.get(0).tip();
		return sheet(tapping, method(tapping), unit, speed, first.map(TapStroke::turning).orElse(SpindleTurn.UNKNOWN),
				first.map(stroke -> feed(stroke, unit)).orElse(""), advance, deep / used, tapered, Double.NaN, holes);
	}

	private static OperationSheet milling(ThreadMilling milling) {
		MillPass pass = milling.finishing(milling.passes().get(0).hole()).get(0);
		LengthUnit unit = pass.modal().unit();
		double cutter = milling.tool().facts().diameter().map(Fact::value).orElse(Double.NaN);
		boolean compensated = pass.compensation() != Compensation.OFF;
		double cut = 2 * pass.radius() + (compensated && !isCentreLine(milling, pass, cutter) ? 0 : cutter);
		HoleReader holes = new HoleReader(milling.wanted(), 0, unit);
		return sheet(milling, "thread milling" + (compensated ? " with cutter compensation" : ""), unit, pass.modal().speed().value(),
				pass.modal().spindle(), said("F", pass.modal().feed(), pass.modal().feedMode(), unit), Math.abs(pass.lead()), pass.turns(),
				Double.NaN, cut, holes.milled(milling));
	}

	/**
	 * Whether a path under compensation is that of the cutter's centre, with D for its wear alone: the thread's diameter is nearer to it
	 * with the cutter than without.
	 */
	private static boolean isCentreLine(ThreadMilling milling, MillPass pass, double cutter) {
		double path = 2 * pass.radius();
		return !pass.external() && milling.wanted().statedThread().map(Fact::value).map(ThreadSpec::diameter)
				.filter(major -> Math.abs(path + cutter - major) < Math.abs(path - major)).isPresent();
	}

	private static OperationSheet sheet(ThreadingOperation operation, String method, LengthUnit unit, double speed, SpindleTurn turning,
			String feed, double advance, double turns, double tapered, double cut, List<HoleSheet> holes) {
		Wanted wanted = operation.wanted();
		Figures figures = new Figures(unit);
		Optional<Limits> limits = wanted.thread().filter(fact -> !OperationSheet.isOutside(operation))
				.flatMap(fact -> ThreadTable.standard().limits(fact.value()));
		String depth = wanted.depth().map(fact -> figures.length(fact.value()) + ", " + fact.origin()).orElse("");
		return new OperationSheet(operation, method, wanted.thread(), limits, unit, speed, turning(turning), feed, advance, lead(wanted),
				turns, depth, wanted.depth().map(Fact::value).orElse(Double.NaN), wanted.wall().map(Fact::value).orElse(Double.NaN),
				wanted.through().map(Fact::value), tapered, cut, holes);
	}

	/** What the thread advances in a turn, mm. */
	private static double lead(Wanted wanted) {
		return wanted.thread().map(Fact::value).map(ThreadSpec::lead).orElse(Double.NaN);
	}

	private static String feed(TapStroke stroke, LengthUnit unit) {
		return stroke.lead().isSet() ? said(stroke.lead().word().map(word -> "" + word.address()).orElse("K"), stroke.lead(),
				FeedMode.PER_REVOLUTION, unit) : said("F", stroke.feed(), stroke.modal().feedMode(), unit);
	}

	private static String said(String letter, Setting setting, FeedMode mode, LengthUnit unit) {
		if (!setting.known()) {
			return setting.isSet() ? "not known: " + setting.why().words() : "none";
		}
		String written = setting.word().filter(word -> word.literal()).map(Figures::written)
				.orElse(letter + Figures.number(setting.value(), 4));
		String length = unit == LengthUnit.INCH ? "in" : "mm";
		return written + switch (mode) {
			case PER_MINUTE -> " " + length + "/min";
			case PER_REVOLUTION -> " " + length + "/rev";
			case INVERSE_TIME -> " inverse time";
		};
	}

	private static String method(Tapping tapping) {
		return switch (tapping.method()) {
			case CYCLE -> "tapping cycle" + tapping.cycle().map(cycle -> " " + Figures.written(cycle.gWord())).orElse("");
			case SYNCHRONISED, SYNCHRONISED_BLOCK -> "synchronised move";
			case FEED -> "feed in and out";
			case DRILLING_CYCLE -> "a tap in a drilling cycle";
			case WRONG_TOOL -> "a tapping cycle with a tool that is no tap";
		};
	}

	private static String turning(SpindleTurn turn) {
		return switch (turn) {
			case CLOCKWISE -> "clockwise";
			case COUNTERCLOCKWISE -> "counter-clockwise";
			case STOPPED -> "stopped";
			case UNKNOWN -> "not known";
		};
	}
}
