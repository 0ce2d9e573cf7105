package truelead.checker.rule.method;

import java.util.Optional;
import java.util.function.Consumer;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.job.StockGroup;
import truelead.checker.program.Location;
import truelead.checker.rule.Draft;
import truelead.checker.rule.Figures;
import truelead.checker.rule.Severity;
import truelead.checker.rule.ToolName;
import truelead.checker.thread.ToolKind;
import truelead.checker.work.ThreadMilling;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;

/**
 * The way to make the thread does not suit the stock: forming above 35 HRC, in cast iron or brittle brass; a cutting tap above 50 HRC; a
 * thread mill above 62 HRC (common practice, no source).
 */
public final class MethodWrongForStock extends OperationRule {

	private static final double FORMED = 35;
	private static final double CUT = 50;
	private static final double MILLED = 62;

	public MethodWrongForStock() {
		super("method-wrong-for-stock");
	}

	@Override
	void check(ThreadingOperation operation, Work work, Consumer<Draft> found) {
		Optional<Fact<Stock>> stock = operation.wanted().stock();
		if (stock.isEmpty()) {
			return;
		}
		Stock of = stock.get().value();
		double hardness = of.hardness().orElse(0);
		boolean formed = ToolName.forms(operation.tool().facts());
		boolean milled = operation instanceof ThreadMilling;
		boolean cutTap = !formed && !milled && operation.tool().facts().kind().filter(k -> k.value() == ToolKind.CUTTING_TAP
				|| k.value() == ToolKind.TAP).isPresent();
		String why = "";
		if (formed && of.group() == StockGroup.CAST_IRON) {
			why = "cast iron does not flow, the crests crumble; a cutting tap or a thread mill";
		} else if (formed && hardness > FORMED) {
			why = "forming goes up to about " + Figures.number(FORMED, 0) + " HRC; a cutting tap or a thread mill";
		} else if (cutTap && hardness > CUT) {
			why = "cutting taps go up to about " + Figures.number(CUT, 0) + " HRC; a thread mill";
		} else if (milled && hardness > MILLED) {
			why = "thread mills go up to about " + Figures.number(MILLED, 0) + " HRC; thread before hardening";
		}
		if (!why.isEmpty()) {
			String stockSaid = of.words().isEmpty() ? "stock" : of.words();
			boolean byHardness = of.group() != StockGroup.CAST_IRON || !formed;
			String hard = Figures.number(hardness, 0) + " HRC";
			Draft draft = Draft.of(this, Severity.WARNING, Location.of(operation.block()),
					"a " + (milled ? "thread mill" : ToolName.of(operation.tool().facts())) + " in " + stockSaid
					+ (byHardness ? " at " + hard : "") + ": " + why)
					.known("stock", stockSaid + (byHardness ? ", " + hard : ""), stock.get());
			found.accept(byHardness ? draft.from("limit", Figures.number(milled ? MILLED : formed ? FORMED : CUT, 0) + " HRC",
					"common practice, no source") : draft);
		}
	}
}
