package truelead.audit.result;

import java.util.ArrayList;
import java.util.List;
import truelead.audit.terminal.ExitStatus;
import truelead.checker.rule.Severity;

/** Counts over a run; only findings that are neither accepted nor known from the baseline count by severity. */
public final class Tally {

	private final Severity limit;
	private int programs;
	private int refused;
	private long blocks;
	private long operations;
	private final long[] bySeverity = new long[Severity.values().length];
	private long notFollowed;
	private long accepted;
	private long known;
	private long gone;
	private boolean overLimit;
	private boolean trouble;
	private final List<String> remarks = new ArrayList<>();

	/** {@code limit} is the severity from which findings make the run fail. */
	public Tally(Severity limit) {
		this.limit = limit;
	}

	/** Counts one program. */
	public void add(Audited audited) {
		if (audited instanceof Audited.Refused) {
			refused++;
			trouble = true;
		} else if (audited instanceof Audited.Checked checked) {
			programs++;
			blocks += checked.result().blocks();
			operations += checked.result().operations();
			gone += checked.gone().size();
			checked.findings().forEach(this::add);
		}
	}

	private void add(Judged judged) {
		if (judged.acceptance().isPresent()) {
			accepted++;
		} else if (judged.known()) {
			known++;
		} else {
			bySeverity[judged.finding().severity().ordinal()]++;
			overLimit |= judged.openAtLeast(limit);
			notFollowed += judged.openNotFollowed() ? 1 : 0;
		}
	}

	/** Something outside the programs went wrong; the run ends with {@link ExitStatus#TROUBLE}. */
	public void trouble() {
		trouble = true;
	}

	/** A sentence about the run as a whole, for the end of reports. */
	public void remark(String sentence) {
		remarks.add(sentence);
	}

	/** Sentences about the run as a whole. */
	public List<String> remarks() {
		return List.copyOf(remarks);
	}

	/** The status to end with. */
	public int status() {
		if (trouble) {
			return ExitStatus.TROUBLE;
		}
		if (overLimit) {
			return ExitStatus.FINDINGS;
		}
		return notFollowed > 0 ? ExitStatus.NOT_FOLLOWED : ExitStatus.CLEAN;
	}

	/** The severity from which findings make the run fail. */
	public Severity limit() {
		return limit;
	}

	/** Programs checked. */
	public int programs() {
		return programs;
	}

	/** Files that could not be checked. */
	public int refused() {
		return refused;
	}

	/** Blocks in all programs. */
	public long blocks() {
		return blocks;
	}

	/** Threading operations in all programs. */
	public long operations() {
		return operations;
	}

	/** Open findings of that severity. */
	public long count(Severity severity) {
		return bySeverity[severity.ordinal()];
	}

	/** Open findings that say a part was not checked. */
	public long notFollowed() {
		return notFollowed;
	}

	/** Accepted findings. */
	public long accepted() {
		return accepted;
	}

	/** Findings known from the baseline. */
	public long known() {
		return known;
	}

	/** Findings of the baseline that are no longer there. */
	public long gone() {
		return gone;
	}
}
