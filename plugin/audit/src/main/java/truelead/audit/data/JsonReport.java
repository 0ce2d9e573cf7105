package truelead.audit.data;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import truelead.audit.report.Report;
import truelead.audit.report.SafeJson;
import truelead.audit.result.Audited;
import truelead.audit.result.Judged;
import truelead.audit.result.Tally;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Severity;
import truelead.checker.sheet.HoleSheet;
import truelead.checker.sheet.OperationSheet;
import truelead.checker.sheet.ProgramThreads;
import truelead.checker.sheet.ThreadSheet;
import truelead.checker.sheet.TurnedSheet;

/**
 * Programs, their threading operations with every hole, and their findings, as JSON. Lengths are mm and depths count from the top of the
 * hole; what is not known is null. The form is told in DEVELOPERS.md.
 */
public final class JsonReport implements Report {

	private final JsonWriter json;
	private final List<Audited.Refused> refused = new ArrayList<>();

	/** Starts the report on {@code out}. */
	public JsonReport(Writer out) throws IOException {
		json = SafeJson.on(out);
		json.setSerializeNulls(true);
		json.beginObject();
		json.name("format").value("truelead").name("formatVersion").value(1);
		json.name("programs").beginArray();
	}

	@Override
	public void add(Audited audited) throws IOException {
		if (audited instanceof Audited.Refused none) {
			refused.add(none);
			return;
		}
		Audited.Checked checked = (Audited.Checked) audited;
		json.beginObject();
		json.name("file").value(checked.source().shown()).name("sha256").value(checked.sha256());
		json.name("unit").value(checked.result().work().shop().unit().value().name().toLowerCase(Locale.ROOT));
		json.name("blocks").value(checked.result().blocks());
		json.name("assumptions").beginArray();
		for (String assumption : checked.result().assumptions()) {
			json.value(assumption);
		}
		json.endArray();
		json.name("operations").beginArray();
		ProgramThreads threads = new ProgramThreads(checked.result().work());
		for (OperationSheet sheet : threads.operations()) {
			operation(sheet);
		}
		for (TurnedSheet sheet : threads.turned()) {
			turned(sheet);
		}
		json.endArray();
		json.name("findings").beginArray();
		for (Judged judged : checked.findings()) {
			finding(checked, threads, judged);
		}
		json.endArray().endObject();
	}

	private void operation(OperationSheet sheet) throws IOException {
		thread(sheet);
		number("turns", sheet.turns());
		number("calledDepthMm", sheet.called());
		number("wallMm", sheet.wall());
		json.name("through").value(sheet.through().orElse(null));
		number("toolLeadMm", sheet.leadLength());
		number("cutDiameterMm", sheet.cutDiameter());
		json.name("notKnown").beginArray();
		for (String why : sheet.notKnown()) {
			json.value(why);
		}
		json.endArray();
		json.name("holes").beginArray();
		for (HoleSheet hole : sheet.holes()) {
			hole(hole);
		}
		json.endArray().endObject();
	}

	/** A thread that a lathe cuts by a single point has no holes; its number follows those of the others. */
	private void turned(TurnedSheet sheet) throws IOException {
		thread(sheet);
		json.name("hand").value(sheet.hand().map(hand -> hand.name().toLowerCase(Locale.ROOT)).orElse(null));
		number("cutDiameterMm", sheet.diameter());
		number("firstDiameterMm", sheet.firstDiameter());
		number("firstDepthMm", sheet.firstDepth());
		number("beginMm", sheet.from());
		number("endMm", sheet.to());
		number("clearanceMm", sheet.room());
		number("passes", sheet.passes());
		number("starts", sheet.starts() > 0 ? sheet.starts() : Double.NaN);
		json.name("notKnown").beginArray().endArray();
		json.name("holes").beginArray().endArray().endObject();
	}

	/** Begins the object of an operation with what every thread has. */
	private void thread(ThreadSheet sheet) throws IOException {
		json.beginObject();
		json.name("operation").value(sheet.index());
		json.name("line").value(sheet.block().outermost().line() + 1);
		json.name("method").value(sheet.method());
		json.name("tool").value(sheet.tool().name());
		json.name("thread").value(sheet.thread().map(fact -> fact.value().designation()).orElse(null));
		json.name("threadFrom").value(sheet.thread().map(fact -> fact.origin()).orElse(null));
		number("speed", sheet.speed());
		json.name("turning").value(sheet.turning());
		json.name("feed").value(sheet.feed());
		number("advanceMm", sheet.advance());
		number("leadMm", sheet.lead());
		number("pitchMm", sheet.pitch());
	}

	private void hole(HoleSheet hole) throws IOException {
		json.beginObject();
		json.name("place").value(hole.label()).name("line").value(hole.block().outermost().line() + 1);
		number("u", hole.u());
		number("v", hole.v());
		json.name("made").value(hole.made()).name("madeBy").value(hole.maker().isEmpty() ? null : hole.maker());
		number("drillMm", hole.drill());
		number("drillFullMm", hole.drillFull());
		number("drillTipMm", hole.drillTip());
		number("tipMm", hole.tip());
		number("fullThreadMm", hole.fullThread());
		number("clearanceMm", hole.clearance());
		number("startMm", hole.start());
		number("countersinkMm", hole.edge());
		json.endObject();
	}

	private void finding(Audited.Checked checked, ProgramThreads threads, Judged judged) throws IOException {
		Finding finding = judged.finding();
		json.beginObject();
		json.name("rule").value(finding.rule()).name("severity").value(finding.severity().name().toLowerCase(Locale.ROOT));
		json.name("file").value(checked.shown(finding.at()));
		json.name("line").value(finding.at().line() + 1).name("column").value(finding.at().span().start() + 1);
		json.name("endColumn").value(finding.at().span().end() + 1);
		json.name("message").value(finding.message());
		json.name("operation").value(threads.number(finding) < 0 ? null : threads.number(finding));
		json.name("fingerprint").value(judged.fingerprint());
		json.name("accepted").value(judged.acceptance().map(why -> why.reason()).orElse(null));
		json.name("known").value(judged.known());
		json.endObject();
	}

	private void number(String name, double value) throws IOException {
		json.name(name);
		if (Double.isNaN(value) || Double.isInfinite(value)) {
			json.nullValue();
		} else {
			json.value(Math.round(value * 1e6) / 1e6);
		}
	}

	@Override
	public void finish(Tally tally) throws IOException {
		json.endArray();
		json.name("notChecked").beginArray();
		for (Audited.Refused none : refused) {
			json.beginObject().name("file").value(none.source().shown()).name("reason").value(none.reason()).endObject();
		}
		json.endArray();
		json.name("remarks").beginArray();
		for (String remark : tally.remarks()) {
			json.value(remark);
		}
		json.endArray();
		json.name("summary").beginObject();
		json.name("programs").value(tally.programs()).name("blocks").value(tally.blocks()).name("operations").value(tally.operations());
		for (Severity severity : Severity.values()) {
			json.name(severity.name().toLowerCase(Locale.ROOT)).value(tally.count(severity));
		}
		json.name("notFollowed").value(tally.notFollowed()).name("accepted").value(tally.accepted()).name("known").value(tally.known());
		json.name("gone").value(tally.gone()).name("exitStatus").value(tally.status());
		json.endObject().endObject();
		json.flush();
	}
}
