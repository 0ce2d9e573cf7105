package truelead.workbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.eclipse.core.filebuffers.FileBuffers;
import org.eclipse.core.filebuffers.LocationKind;
import org.eclipse.core.runtime.Path;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.Document;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.ISynchronizable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A program's document tells of its lines what the platform's own document tells, edit by edit. */
class ProgramDocumentTest {

	private final IDocument ours = FileBuffers.getTextFileBufferManager().createEmptyDocument(new Path("/shop/lines.nc"),
			LocationKind.IFILE);
	private final IDocument platforms = new Document();

	@Test
	void isMadeForFilesOfPrograms() {
		assertThat(ours.getClass().getName()).isEqualTo("truelead.editor.text.ProgramDocument");
		assertThat(FileBuffers.getTextFileBufferManager().createEmptyDocument(new Path("/shop/lines.txt"), LocationKind.IFILE).getClass())
				.isNotEqualTo(ours.getClass());
	}

	@ParameterizedTest
	@ValueSource(longs = { 1, 2, 3, 4, 5, 6 })
	void linesAfterEditsAtRandom(long seed) throws BadLocationException {
		Random random = new Random(seed);
		both(pieces(random, seed % 2 == 0 ? 0 : 6000));
		replaceBoth(0, 0, "%\n");
		sameLines();
		for (int i = 0; i < 150; i++) {
			int length = ours.getLength();
			int offset = random.nextInt(length + 1);
			int gone = random.nextInt(10) == 0 ? random.nextInt(length - offset + 1) : Math.min(random.nextInt(4), length - offset);
			replaceBoth(offset, gone, random.nextInt(8) == 0 ? pieces(random, 4000) : pieces(random, random.nextInt(4)));
			sameLinesAround(offset, random);
		}
		sameLines();
		both(ours.get());
		sameLines();
	}

	@Test
	void carriageReturnAndLineFeedTakenApartAndPutTogether() throws BadLocationException {
		both("G0 X1.\r\nG1 X2.\r\n");
		replaceBoth(0, 0, " ");
		replaceBoth(8, 0, "F100");
		sameLines();
		replaceBoth(8, 4, "");
		sameLines();
		replaceBoth(7, 1, "");
		replaceBoth(7, 0, "\r");
		sameLines();
	}

	@Test
	void placesThatAreNotThere() {
		ours.set("G0\nG1\n");
		assertThat(ours.getNumberOfLines()).isEqualTo(3);
		for (int line : new int[] { -1, 3, Integer.MAX_VALUE }) {
			assertThatThrownBy(() -> ours.getLineOffset(line)).isInstanceOf(BadLocationException.class);
			assertThatThrownBy(() -> ours.getLineInformation(line)).isInstanceOf(BadLocationException.class);
			assertThatThrownBy(() -> ours.getLineDelimiter(line)).isInstanceOf(BadLocationException.class);
		}
		for (int offset : new int[] { -1, 7, Integer.MAX_VALUE }) {
			assertThatThrownBy(() -> ours.getLineOfOffset(offset)).isInstanceOf(BadLocationException.class);
		}
		assertThatThrownBy(() -> ours.replace(-1, 1, "X")).isInstanceOf(BadLocationException.class);
		assertThatThrownBy(() -> ours.replace(6, 1, "X")).isInstanceOf(BadLocationException.class);
		assertThat(ours.get()).isEqualTo("G0\nG1\n");
	}

	@Test
	void waitsForWhoeverHoldsItsLock() throws InterruptedException {
		ours.set("G0\n");
		Object lock = new Object();
		((ISynchronizable) ours).setLockObject(lock);
		CountDownLatch read = new CountDownLatch(1);
		Thread reader = new Thread(() -> {
			ours.get();
			read.countDown();
		});
		synchronized (lock) {
			reader.start();
			assertThat(read.await(200, TimeUnit.MILLISECONDS)).isFalse();
		}
		assertThat(read.await(10, TimeUnit.SECONDS)).isTrue();
	}

	private void both(String text) {
		ours.set(text);
		platforms.set(text);
	}

	private void replaceBoth(int offset, int length, String text) throws BadLocationException {
		ours.replace(offset, length, text);
		platforms.replace(offset, length, text);
	}

	private void sameLines() throws BadLocationException {
		assertThat(ours.get()).isEqualTo(platforms.get());
		assertThat(lines(ours, 0, ours.getNumberOfLines())).isEqualTo(lines(platforms, 0, platforms.getNumberOfLines()));
		for (int offset = 0; offset <= ours.getLength(); offset++) {
			assertThat(ours.getLineOfOffset(offset)).isEqualTo(platforms.getLineOfOffset(offset));
		}
	}

	private void sameLinesAround(int offset, Random random) throws BadLocationException {
		assertThat(ours.getNumberOfLines()).isEqualTo(platforms.getNumberOfLines());
		for (int place : new int[] { offset, ours.getLength(), random.nextInt(ours.getLength() + 1) }) {
			int line = ours.getLineOfOffset(Math.min(place, ours.getLength()));
			assertThat(line).isEqualTo(platforms.getLineOfOffset(Math.min(place, ours.getLength())));
			int from = Math.max(0, line - 3);
			int to = Math.min(ours.getNumberOfLines(), line + 4);
			assertThat(lines(ours, from, to)).isEqualTo(lines(platforms, from, to));
			int length = random.nextInt(ours.getLength() + 1);
			assertThat(ours.getNumberOfLines(ours.getLength() - length, length))
					.isEqualTo(platforms.getNumberOfLines(ours.getLength() - length, length));
		}
		String text = pieces(random, 3);
		assertThat(ours.computeNumberOfLines(text)).isEqualTo(platforms.computeNumberOfLines(text));
	}

	private static List<String> lines(IDocument document, int from, int to) throws BadLocationException {
		List<String> lines = new ArrayList<>();
		for (int line = from; line < to; line++) {
			lines.add(document.getLineOffset(line) + " " + document.getLineLength(line) + " " + document.getLineInformation(line) + " "
					+ document.getLineInformationOfOffset(document.getLineOffset(line)) + " " + printed(document.getLineDelimiter(line)));
		}
		return lines;
	}

	private static String printed(String delimiter) {
		return delimiter == null ? "none" : delimiter.replace("\r", "CR").replace("\n", "LF");
	}

	/** Blocks and ends of lines of all kinds. */
	private static String pieces(Random random, int count) {
		String[] pieces = { "G1 X1.5", " Y2.", "", "\n", "\n", "\r\n", "\r", "G0 Z25.\n", "X7. Y8.5\r\n", "(M6)\n" };
		StringBuilder text = new StringBuilder();
		for (int i = 0; i < count; i++) {
			text.append(pieces[random.nextInt(pieces.length)]);
		}
		return text.toString();
	}
}
