package truelead.audit.terminal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What could not be written is said, unless nobody reads on. */
class OutletTest {

	private static Outlet failing(String why) {
		Outlet outlet = new Outlet(new OutputStream() {
			@Override
			public void write(int one) throws IOException {
				throw new IOException(why);
			}
		});
		PrintStream out = new PrintStream(outlet, false, StandardCharsets.UTF_8);
		out.println("cap.nc:42:20 error");
		out.flush();
		assertThat(out.checkError()).isTrue();
		return outlet;
	}

	@Test
	void aFullDiskIsSaid() {
		assertThat(failing("No space left on device").lost()).hasValue("No space left on device");
	}

	@Test
	void aReaderThatHasReadEnoughIsNoFault() {
		assertThat(failing("Broken pipe").lost()).isEmpty();
	}

	@Test
	void allGoesThrough() {
		ByteArrayOutputStream bytes = new ByteArrayOutputStream();
		Outlet outlet = new Outlet(bytes);
		new PrintStream(outlet, true, StandardCharsets.UTF_8).print("Ø6.8");
		assertThat(bytes.toString(StandardCharsets.UTF_8)).isEqualTo("Ø6.8");
		assertThat(outlet.lost()).isEmpty();
	}
}
