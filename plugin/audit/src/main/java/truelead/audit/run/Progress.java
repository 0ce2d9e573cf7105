package truelead.audit.run;

import java.io.PrintStream;
import truelead.audit.terminal.Terminal;

/** A line that counts programs while a person watches; nothing where nobody does, or for a few programs. */
final class Progress implements AutoCloseable {

	private static final int WORTH_SHOWING = 8;
	private static final long PAUSE = 100_000_000L;

	private final PrintStream out;
	private final int total;
	private final boolean shown;
	private int done;
	private long last;

	Progress(Terminal terminal, int total) {
		this.out = terminal.err();
		this.total = total;
		this.shown = terminal.watched() && total >= WORTH_SHOWING;
	}

	/** One program more is done. */
	void step() {
		done++;
		if (shown && System.nanoTime() - last > PAUSE) {
			last = System.nanoTime();
			// The cursor goes back, so that whatever comes next, a finding or a complaint, writes over it.
			out.print(done + " of " + total + " programs\r");
			out.flush();
		}
		if (done == total) {
			close();
		}
	}

	@Override
	public void close() {
		if (shown) {
			out.print(" ".repeat(40) + "\r");
			out.flush();
		}
	}
}
