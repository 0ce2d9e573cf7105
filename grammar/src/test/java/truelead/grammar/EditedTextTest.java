package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** A text that has been edited is the same as one made afresh of the same characters. */
class EditedTextTest {

	private record Edit(int at, int length, String text) {
	}

	@Property(tries = 300)
	void anEditedTextIsTheSameAsAFreshOne(@ForAll("texts") String text, @ForAll("edits") List<Edit> edits) {
		ProgramText edited = ProgramText.of(text);
		String plain = text;
		for (Edit edit : edits) {
			int at = edit.at() % (plain.length() + 1);
			int length = Math.min(edit.length(), plain.length() - at);
			plain = plain.substring(0, at) + edit.text() + plain.substring(at + length);
			ProgramText changed = edited.changedTo(plain);
			edited = edited.edit(at, length, edit.text());
			assertSame(edited, plain);
			assertSame(changed, plain);
		}
	}

	private static void assertSame(ProgramText edited, String plain) {
		ProgramText fresh = ProgramText.of(plain);
		assertThat(edited.toString()).isEqualTo(plain);
		assertThat(edited.length()).isEqualTo(plain.length());
		assertThat(edited.lineCount()).isEqualTo(fresh.lineCount());
		for (int line = 0; line < fresh.lineCount(); line++) {
			assertThat(edited.line(line)).isEqualTo(fresh.line(line));
			assertThat(edited.lineStart(line)).isEqualTo(fresh.lineStart(line));
			assertThat(edited.lineOf(edited.lineStart(line))).isEqualTo(line);
		}
	}

	@Test
	void linesAreThoseOfThePlatformsDocuments() {
		ProgramText text = ProgramText.of("A\r\nB\rC\nD\r\r\n");
		assertThat(text.lineCount()).isEqualTo(6);
		assertThat(List.of(text.line(0), text.line(1), text.line(2), text.line(3), text.line(4), text.line(5)))
				.containsExactly("A", "B", "C", "D", "", "");
		assertThat(IntStream.range(0, 6).mapToObj(text::lineEnd)).containsExactly("\r\n", "\r", "\n", "\r", "\r\n", "");
		assertThat(ProgramText.of("").lineCount()).isEqualTo(1);
	}

	@Test
	void anEditSharesTheChunksItDoesNotTouch() {
		ProgramText text = ProgramText.of("G1 X1. Y2.\n".repeat(10_000));
		ProgramText edited = text.edit(text.lineStart(5000) + 4, 2, "7.");
		assertThat(edited.line(5000)).isEqualTo("G1 X7. Y2.");
		assertThat(edited.chunks()).hasSameSizeAs(text.chunks());
		assertThat(edited.chunks().stream().filter(chunk -> !text.chunks().contains(chunk))).hasSize(1);
	}

	@Test
	void aTextWithAnotherOneInItsPlaceSharesWhatIsTheSame() {
		ProgramText text = ProgramText.of("G1 X1. Y2.\n".repeat(10_000));
		ProgramText changed = text.changedTo(text.toString().substring(0, 50_000) + "M1" + text.toString().substring(50_000));
		assertThat(changed.chunks().stream().filter(chunk -> !text.chunks().contains(chunk)).count()).isBetween(1L, 3L);
		assertThat(text.changedTo(text.toString())).isSameAs(text);
	}

	@Test
	void aLineFeedTypedBehindACarriageReturnJoinsIt() {
		ProgramText text = ProgramText.of("G1\r".repeat(2048) + "G2\r".repeat(2048));
		ProgramText edited = text.edit(text.lineStart(2048), 0, "\n");
		assertSame(edited, text.toString().substring(0, 6144) + "\n" + text.toString().substring(6144));
	}

	@Test
	void theNextLineWithACharacterIsFoundAcrossChunks() {
		ProgramText text = ProgramText.of("G1\n".repeat(3000) + "O5\nG1\n");
		assertThat(text.nextLineWith("Oo", 10)).isEqualTo(3000);
		assertThat(text.nextLineWith("Oo", 3001)).isEqualTo(text.lineCount());
	}

	@Provide
	Arbitrary<String> texts() {
		Arbitrary<String> small = pieces().list().ofMaxSize(30).map(list -> String.join("", list));
		Arbitrary<String> large = Combinators.combine(small, Arbitraries.of("G1\r", "\r\n", "X\n", "\r"),
				Arbitraries.integers().between(2044, 2054)).as((text, line, count) -> text + line.repeat(count) + text);
		return Arbitraries.frequencyOf(net.jqwik.api.Tuple.of(3, small), net.jqwik.api.Tuple.of(1, large));
	}

	@Provide
	Arbitrary<List<Edit>> edits() {
		return Combinators.combine(Arbitraries.integers().between(0, 5000), Arbitraries.integers().between(0, 40),
				pieces().list().ofMaxSize(4).map(list -> String.join("", list))).as(Edit::new).list().ofMinSize(1).ofMaxSize(6);
	}

	private static Arbitrary<String> pieces() {
		return Arbitraries.of("G1 X1", "\n", "\r", "\r\n", " ", "M6", "(note)");
	}
}
