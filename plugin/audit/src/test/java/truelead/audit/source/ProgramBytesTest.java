package truelead.audit.source;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16LE;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ProgramBytesTest {

	@Test
	void aBlankTapeLeaderIsNoBinaryFile() {
		assertThat(judge("\0".repeat(200) + "%\nG0 X1\nM30\n%\n" + "\0".repeat(200))).isInstanceOf(Reading.Program.class);
	}

	@Test
	void readerMarksAndTheOldEndMarkAreNoBinaryFile() {
		assertThat(judge("\u0012%\nG0 X1\n%\u0014\u001a")).isInstanceOf(Reading.Program.class);
	}

	@Test
	void aProgramInAnOldCodePageIsRead() {
		assertThat(judge("(L\u00f6cher)\nM30\n")).isInstanceOf(Reading.Program.class);
	}

	@Test
	void blanksAloneAreNothingToCheck() {
		assertThat(judge(" \r\n\t\r\n")).isEqualTo(new Reading.Refused("nothing but blanks, nothing to check"));
	}

	@Test
	void utf16IsNamed() {
		byte[] bytes = ("\uFEFFG0 X1\n").getBytes(UTF_16LE);
		assertThat(ProgramBytes.judge("a.nc", bytes))
				.isEqualTo(new Reading.Refused("UTF-16 text, which no control reads; save it as plain text or UTF-8"));
	}

	@Test
	void theLongLineIsCountedAsEditorsCount() {
		Reading reading = judge("G0\rG1\r\nG2\n" + "X".repeat(1_000_001) + "\nM30");
		assertThat(reading).isEqualTo(new Reading.Refused("line 4 is 1,000,001 characters long; no program has such a line"));
	}

	@Test
	void aFileThatIsStillBeingWrittenIsNoProgramYet() {
		byte[] half = "%\nG0 X1\n".getBytes(ISO_8859_1);
		assertThat(ProgramBytes.judge("a.nc", half, 300))
				.isEqualTo(new Reading.Refused("changed while it was read; check it when it is written"));
		assertThat(ProgramBytes.judge("a.nc", half, half.length)).isInstanceOf(Reading.Program.class);
	}

	private static Reading judge(String text) {
		return ProgramBytes.judge("a.nc", text.getBytes(ISO_8859_1));
	}
}
