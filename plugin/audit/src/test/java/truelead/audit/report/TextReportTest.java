package truelead.audit.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.audit.run.Sample;
import truelead.checker.rule.Severity;

class TextReportTest {

	private final Sample bracket = Sample.of("bracket.nc", Sample.BRACKET);

	@Test
	void oneFindingALineThenTheCounts() throws IOException {
		assertThat(report(bracket.with(bracket.feedOffPitch(), bracket.finding("edge-not-broken", Severity.INFORMATION,
				"no countersink", "X30."))))
				.isEqualTo("""
						bracket.nc:5:19 error feed-off-pitch F500 at S520 advances 0.962 mm a turn, M6x1 needs 1.000: 0.46 mm behind after 12 turns; F520
						bracket.nc:6:5 information edge-not-broken no countersink

						1 program, 9 blocks, 1 threading operation
						1 error, 0 warnings, 1 information; 0 not followed
						""");
	}

	@Test
	void aMessageCannotMoveTheCursorOrBreakTheLine() throws IOException {
		assertThat(report(bracket.with(bracket.finding("not-understood", Severity.ERROR, "what is \u001b[2J\nthis", "X30."))))
				.contains("not-understood what is \uFFFD[2J this\n");
	}

	private static String report(Audited.Checked program) throws IOException {
		StringWriter out = new StringWriter();
		TextReport report = new TextReport(out);
		Tally tally = new Tally(Severity.WARNING);
		report.add(program);
		tally.add(program);
		report.finish(tally);
		return out.toString();
	}
}
