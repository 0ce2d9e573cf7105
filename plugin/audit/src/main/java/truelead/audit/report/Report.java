package truelead.audit.report;

import java.io.IOException;
import truelead.audit.result.Audited;
import truelead.audit.result.Tally;

/** A report in the making. Programs come one by one in their order and are not kept. */
public interface Report {

	/** The next program. */
	void add(Audited audited) throws IOException;

	/** All programs are in; writes what comes after them. Does not close what it writes to. */
	void finish(Tally tally) throws IOException;

	/** The run is over, whether the report was completed or not: gives up what it keeps outside what it writes to. */
	default void close() throws IOException {
	}
}
