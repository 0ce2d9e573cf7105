package truelead.checker.job;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.thread.HolderKind;
import truelead.checker.thread.ThreadSpec;
import truelead.checker.thread.ToolKind;

/** One row of the tool list file, read into tool facts; cells that cannot be read become remarks. */
final class ToolRow {

	private final Map<ToolColumn, String> cells;
	private final Location at;
	private final List<Remark> remarks;
	private final LengthUnit unit;
	private final ToolFacts.Builder facts = new ToolFacts.Builder();

	ToolRow(Map<ToolColumn, String> cells, Location at, List<Remark> remarks) {
		this.cells = cells;
		this.at = at;
		this.remarks = remarks;
		this.unit = cells.getOrDefault(ToolColumn.UNIT, "mm").toLowerCase(Locale.ROOT).startsWith("in") ? LengthUnit.INCH : LengthUnit.MM;
	}

	ToolFacts facts() {
		kindAndThread();
		facts.diameter = length(ToolColumn.DIAMETER).or(() -> facts.diameter);
		facts.pitch = length(ToolColumn.PITCH).or(() -> number(ToolColumn.TPI).map(tpi -> tpi.map(n -> 25.4 / n)));
		facts.pointAngle = number(ToolColumn.ANGLE).map(angle -> angle.map(Math::toRadians)).or(() -> facts.pointAngle);
		facts.teeth = number(ToolColumn.TEETH).map(teeth -> teeth.map(n -> (int) Math.round(n)));
		facts.reach = length(ToolColumn.REACH);
		facts.nose = length(ToolColumn.NOSE);
		facts.tipFlat = length(ToolColumn.FLAT);
		facts.limit = cell(ToolColumn.LIMIT).map(text -> fact(text, text));
		lead();
		holder();
		return facts.build();
	}

	private void kindAndThread() {
		String kind = cells.getOrDefault(ToolColumn.KIND, "");
		facts.or(FreeText.tool(kind, FactSource.TOOL_FILE, at, unit));
		cell(ToolColumn.THREAD).ifPresent(text -> {
			Optional<ThreadSpec> thread = FreeText.thread(text);
			thread.ifPresentOrElse(t -> facts.thread = Optional.of(fact(t, text)),
					() -> bad(ToolColumn.THREAD, text, "a thread such as M6X1 or 1/4-20 UNC"));
		});
	}

	private void lead() {
		cell(ToolColumn.LEAD).ifPresent(text -> {
			Optional<TapLead> lead = TapLead.ofCell(text, facts.kind.filter(k -> k.value() == ToolKind.FORM_TAP).isPresent());
			facts.leadTurns = lead.flatMap(TapLead::turns).map(turns -> fact(turns, text));
			facts.leadLength = lead.flatMap(TapLead::length).map(length -> fact(length, text));
			if (lead.isEmpty()) {
				bad(ToolColumn.LEAD, text, "threads such as 2.5 or 2-3, a length with its unit, or a form such as C or BOTTOMING");
			}
		});
	}

	private void holder() {
		cell(ToolColumn.HOLDER).ifPresent(text -> {
			Optional<HolderKind> kind = HolderKind.named(text);
			if (kind.isEmpty()) {
				bad(ToolColumn.HOLDER, text, "rigid, synchro, floating or self-reversing");
				return;
			}
			Holder usual = Holder.usual(kind.get());
			facts.holder = Optional.of(fact(length(ToolColumn.TRAVEL).map(t -> new Holder(usual.kind(), t.value())).orElse(usual), text));
		});
	}

	private Optional<String> cell(ToolColumn column) {
		return Optional.ofNullable(cells.get(column));
	}

	private <T> Fact<T> fact(T value, String text) {
		return Fact.of(value, FactSource.TOOL_FILE, at, text);
	}

	private Optional<Fact<Double>> length(ToolColumn column) {
		return number(column).map(n -> n.map(value -> value * unit.mm()));
	}

	private Optional<Fact<Double>> number(ToolColumn column) {
		Optional<String> cell = cell(column);
		if (cell.isEmpty()) {
			return Optional.empty();
		}
		try {
			double value = Double.parseDouble(cell.get().replace(',', '.'));
			if (value > 0 && value < 1e6) {
				return Optional.of(fact(value, cell.get()));
			}
		} catch (NumberFormatException noNumber) {
			// Said below.
		}
		bad(column, cell.get(), "a positive number");
		return Optional.empty();
	}

	private void bad(ToolColumn column, String text, String expected) {
		remarks.add(new Remark(at, "\"" + text + "\" in column " + column + " is not understood; " + expected + " is expected"));
	}
}
