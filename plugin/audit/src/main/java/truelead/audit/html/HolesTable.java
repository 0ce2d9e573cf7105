package truelead.audit.html;

import java.util.List;
import truelead.checker.rule.Figures;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;

/** The holes of an operation in numbers, and what is left between what is and what must be. */
final class HolesTable {

	private static final int MOST = 120;
	private static final List<String> HEADS = List.of("made by", "diameter", "full to", "end of tool", "clear below", "full thread",
			"over the depth called out", "R above");

	private final OperationSheet sheet;
	private final Figures figures;

	HolesTable(OperationSheet sheet) {
		this.sheet = sheet;
		this.figures = new Figures(sheet.unit());
	}

	void write(Html html) {
		AlikeTable table = new AlikeTable(HEADS);
		sheet.holes().stream().limit(MOST).forEach(hole -> table.add(hole.label(), numbers(hole)));
		table.write(html);
		if (sheet.holes().size() > MOST) {
			html.element("p", "class=\"cut\"", "Only the first " + MOST + " of " + sheet.holes().size()
					+ " holes are shown here; the JSON report has all.");
		}
	}

	private List<String> numbers(HoleSheet hole) {
		boolean through = sheet.through().orElse(false);
		double over = hole.fullThread() - sheet.called();
		String left = sheet.leadAssumed() && hole.tip() > sheet.called() ? about(over) : margin(over);
		return List.of(hole.madeBy(), length(hole.drill()), length(hole.drillFull()), length(hole.tip()), through ? "through"
				: margin(hole.clearance()), (sheet.leadAssumed() && !Double.isNaN(hole.fullThread()) ? "about " : "")
				+ length(hole.fullThread()), left, length(hole.start()));
	}

	private String length(double mm) {
		return Double.isNaN(mm) ? "?" : figures.length(mm);
	}

	/** What is left between what is and what must be, marked where it is too little. */
	private String margin(double mm) {
		return (mm < -1e-9 ? "\u2716 " : "") + signed(mm);
	}

	/** The same where the length of the tap's lead is only assumed: no proof of anything. */
	private String about(double mm) {
		return Double.isNaN(mm) ? "?" : "about " + signed(mm);
	}

	private String signed(double mm) {
		String shown = length(mm);
		return mm > 0 && !shown.startsWith("0 ") ? "+" + shown : shown;
	}
}
