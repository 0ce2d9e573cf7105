package truelead.audit.terminal;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/** Standard output, which remembers why it could not be written: a print stream swallows it. */
public final class Outlet extends OutputStream {

	private final OutputStream to;
	private String fault = "";

	/** Writes to a stream. */
	public Outlet(OutputStream to) {
		this.to = to;
	}

	@Override
	public void write(int one) throws IOException {
		write(new byte[] {(byte) one}, 0, 1);
	}

	@Override
	public void write(byte[] bytes, int from, int length) throws IOException {
		try {
			to.write(bytes, from, length);
		} catch (IOException failed) {
			fault = fault.isEmpty() ? Printable.line(String.valueOf(failed.getMessage())) : fault;
			throw failed;
		}
	}

	/** Why something was lost, in the system's words; empty where nothing was, and where the reader had read enough, as head does. */
	public Optional<String> lost() {
		boolean enough = fault.toLowerCase(Locale.ROOT).contains("pipe");
		return fault.isEmpty() || enough ? Optional.empty() : Optional.of(fault);
	}
}
