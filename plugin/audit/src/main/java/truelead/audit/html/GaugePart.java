package truelead.audit.html;

import java.util.List;
import truelead.audit.gauge.GaugeRow;
import truelead.audit.result.Audited;

/** The gauge sheet: for each thread what to put in it, how deep, how often, and boxes to tick. */
final class GaugePart {

	private final Audited.Checked program;
	private final int every;

	GaugePart(Audited.Checked program, int every) {
		this.program = program;
		this.every = every;
	}

	void write(Html html) {
		List<GaugeRow> rows = GaugeRow.of(program.result().work(), every);
		if (rows.isEmpty()) {
			return;
		}
		html.raw("<section class=\"sheet\"><h2>Gauge sheet</h2>\n")
				.element("p", "", "Program " + program.source().shown() + ". How often, and chamfers: common practice, no source;"
						+ " --gauge-every sets another number.").raw("<div class=\"wide\"><table class=\"list gauge\">");
		html.heads(List.of("thread", "tool", "number", "measured", "go", "no-go", "thread gauge", "depth", "countersink or chamfer",
				"which", "go", "no-go", "depth"));
		for (GaugeRow row : rows) {
			html.cells(List.of(row.thread(), row.tool(), "" + row.number(), row.gauges().measured(), row.gauges().go(), row.gauges().noGo(),
					row.gauges().thread(), row.depth(), row.gauges().edge(), row.interval(), "\u2610", "\u2610", "\u2610"));
		}
		html.raw("</table></div>\n");
		html.list(rows.stream().map(row -> row.thread() + ": " + row.gauges().source()).distinct().toList());
		html.raw("<table class=\"sign\"><tr><td>order</td><td>part</td><td>name</td><td>date</td></tr></table></section>\n");
	}
}
