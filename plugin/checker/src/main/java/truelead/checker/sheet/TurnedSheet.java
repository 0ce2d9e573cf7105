package truelead.checker.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import truelead.checker.job.Fact;
import truelead.checker.program.BlockRef;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Hand;
import truelead.checker.thread.Limits;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ThreadTable;
import truelead.checker.tool.ToolUse;
import truelead.checker.turn.CycleDepth;
import truelead.checker.turn.SinglePoint;

/**
 * The numbers of a thread that a lathe cuts by a single point. Lengths in mm; NaN where not known.
 *
 * @param index   number of the thread in the program, from 0, behind the operations
 * @param cut     the thread itself
 * @param speed   rev/min of the first pass; NaN under constant surface speed too
 * @param turning how the spindle turns, in words
 * @param feed    the lead as it is programmed
 */
public record TurnedSheet(int index, SinglePoint cut, double speed, String turning, String feed) implements ThreadSheet {

	@Override
	public BlockRef block() {
		return cut.pass().block();
	}

	@Override
	public ToolUse tool() {
		return cut.tool();
	}

	@Override
	public String method() {
		return "single point " + (cut.inside() ? "inside" : "outside");
	}

	@Override
	public Optional<Fact<ThreadSpec>> thread() {
		// one that is only worked out of what is cut is nothing to hold it to
		return cut.thread().filter(Fact::stated);
	}

	@Override
	public Optional<Limits> limits() {
		return thread().filter(named -> cut.inside()).flatMap(named -> ThreadTable.standard().limits(named.value()));
	}

	@Override
	public boolean outside() {
		return !cut.inside();
	}

	@Override
	public LengthUnit unit() {
		return cut.pass().modal().unit();
	}

	@Override
	public String revolutions() {
		return cut.pass().modal().constantSurface() ? "constant surface speed" : ThreadSheet.super.revolutions();
	}

	/** What a pass advances in a turn. */
	@Override
	public double advance() {
		return cut.passes().get(0).lead();
	}

	@Override
	public double lead() {
		return thread().map(fact -> fact.value().lead()).orElse(Double.NaN);
	}

	/** The hand that spindle and passes give it; empty where that is not certain. */
	public Optional<Hand> hand() {
		return cut.hand();
	}

	/** How many motions cut it; a cycle of the control that makes its passes by itself is one. */
	public int passes() {
		return cut.passes().size();
	}

	/** Whether the program says how many passes there are. */
	public boolean counted() {
		return cut.counted();
	}

	/** Whether the control divides the depth into passes by itself, so that the program does not say where each goes. */
	public boolean dividedByControl() {
		return cut.dividedByControl();
	}

	/** The diameter that each pass goes to, where it ends, mm, in order. */
	public List<Double> diameters() {
		return cut.passes().stream().map(pass -> 2 * pass.radius()).toList();
	}

	/** The diameter that the first pass goes to, mm; NaN where the control divides the depth. */
	public double firstDiameter() {
		return dividedByControl() ? Double.NaN : 2 * cut.passes().get(0).radius();
	}

	/** Depth of the first pass as the block of the control's cycle says it, mm on the radius; NaN for other threads. */
	public double firstDepth() {
		return cycle().map(CycleDepth::first).orElse(Double.NaN);
	}

	/** Height of the thread as that block says it, mm on the radius; NaN for other threads. */
	public double height() {
		return cycle().map(CycleDepth::height).orElse(Double.NaN);
	}

	private Optional<CycleDepth> cycle() {
		return CycleDepth.of(cut.pass()).filter(depth -> dividedByControl() && depth.sized());
	}

	/**
	 * Depth of the first pass, mm on the radius: as the control's cycle says it, else from the crests of a parallel thread outside or from
	 * the bore; NaN where that is not known, and where it begins outside the wall.
	 */
	public double firstDeep() {
		if (dividedByControl()) {
			return firstDepth();
		}
		double deep = (cut.inside() ? firstDiameter() - crests() : crests() - firstDiameter()) / 2;
		return deep > 0 ? deep : Double.NaN;
	}

	/** Diameter of the crests: of the bore, or the major one of a parallel thread outside, mm; NaN where that is not known. */
	public double crests() {
		return cut.inside() ? bore() : thread().map(Fact::value).filter(spec -> !spec.system()
				.taper()).map(ThreadSpec::diameter).orElse(Double.NaN);
	}

	/** Number of turns from the face, which is taken for Z0, or where the first pass begins, to where it ends. */
	public double turns() {
		boolean over = from() * to() < 0;
		return Math.abs(over ? to() : to() - from()) / advance();
	}

	/** Starts that its passes cut, without one that lies beside the grooves of a known thread; 0 where that is not known. */
	public int starts() {
		return thread().map(thread -> cut.starts(thread.value())).orElseGet(cut::starts);
	}

	/** The diameter that the deepest pass goes to, where it ends, mm. */
	public double diameter() {
		return 2 * cut.deepest().radius();
	}

	/** The block that says how deep the deepest pass goes. */
	public BlockRef deepBy() {
		return cut.deepest().deepBy();
	}

	/** The block of the last pass. */
	public BlockRef lastBlock() {
		return cut.passes().get(cut.passes().size() - 1).step().block();
	}

	/** Level along Z where the first pass begins, mm. */
	public double from() {
		return cut.pass().from().z();
	}

	/** Level where it ends, mm. */
	public double to() {
		return cut.pass().to().z();
	}

	/** Diameter of the bore that it is cut in, mm; NaN outside. */
	public double bore() {
		return cut.bore().flatMap(bore -> bore.cut().diameter()).map(Fact::value).orElse(Double.NaN);
	}

	/**
	 * Level along Z down to which the bore is as wide, or where a shoulder begins behind what the outside is turned to, mm; NaN where that
	 * is not known.
	 */
	public double prepared() {
		return cut.bore().map(SinglePoint.Bore::floor).or(() -> cut.shaft().map(SinglePoint.Shaft::floor)).filter(Double::isFinite)
				.orElse(Double.NaN);
	}

	/**
	 * Way between the deep end of the thread and where its bore ends or the shoulder begins, mm; negative where it goes on there, NaN where
	 * that is not known.
	 */
	public double room() {
		double way = cut.bore().map(bore -> (double) bore.cut().direction()).or(() -> cut.shaft().map(SinglePoint.Shaft::way))
				.orElse(Double.NaN);
		double end = cut.bore().map(SinglePoint.Bore::end).orElse(way * from() > way * to() ? from() : to());
		return way * (prepared() - end);
	}

	/** The blocks of its passes, and those that say how deep each goes. */
	public List<BlockRef> blocks() {
		return cut.passes().stream().flatMap(pass -> Stream.of(pass.step().block(), pass.deepBy())).toList();
	}
}
