package truelead.audit.run;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;
import truelead.audit.source.Source;
import truelead.audit.standing.Standing;

/**
 * Has programs checked on all cores, judges what was found, and hands it to the reports one by one in order. The command and the workbench
 * share it.
 */
public final class Audit {

	private final Function<Source, Audited> examination;
	private final List<Standing> standings;
	private final Tally tally;

	/** {@code examination} is asked on several threads at once; {@code standings} say what is accepted or known; {@code tally} counts. */
	public Audit(Function<Source, Audited> examination, List<Standing> standings, Tally tally) {
		this.examination = examination;
		this.standings = List.copyOf(standings);
		this.tally = tally;
	}

	/** Runs to the end; {@code watcher} sees every program, on the caller's thread, before the reports do. What it throws ends the run. */
	public void run(List<Source> sources, Consumer<Audited> watcher, Reports reports) {
		Order.forEach(sources, Runtime.getRuntime().availableProcessors(), examination, audited -> {
			Audited judged = judged(audited);
			tally.add(judged);
			watcher.accept(judged);
			reports.add(judged);
		});
		standings.forEach(standing -> standing.remarks().forEach(tally::remark));
		reports.finish(tally);
	}

	private Audited judged(Audited audited) {
		Audited judged = audited;
		for (Standing standing : standings) {
			judged = judged instanceof Audited.Checked checked ? standing.judge(checked) : judged;
		}
		return judged;
	}
}
