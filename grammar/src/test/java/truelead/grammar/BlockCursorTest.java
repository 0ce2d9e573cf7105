package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;

/** A cursor tells of each line of a long piece of text what the line by itself says, in order or not. */
class BlockCursorTest {

	private static final List<String> LINES = List.of("X12.345 Y-6.7 Z-.125", "G1 F300", "", "(" + "NOTE ".repeat(70) + ")",
			"N10 G2 X1 Y2 I5 J0", "G3 X5 Y=2 CR=4. TURN=0", "#1=5", "(" + "LONG ".repeat(90) + ")", "/2 M98 P8001",
			"X1 ; behind", "T5 M6 (M8X1.25 TAP)", "%");
	private static final List<String> ENDS = List.of("\n", "\r\n", "\r");

	@Property(tries = 100)
	void itTellsOfEachLineWhatTheLineSays(@ForAll @LongRange(max = 1_000_000) long seed) {
		Random random = new Random(seed);
		StringBuilder text = new StringBuilder();
		for (int line = 0; line < 700; line++) {
			text.append(LINES.get(random.nextInt(LINES.size()))).append(ENDS.get(random.nextInt(ENDS.size())));
		}
		Chunk chunk = Chunk.cut(text + "X1 Y1").get(0);
		BlockCursor cursor = chunk.cursor();
		List<List<Element>> inOrder = new ArrayList<>();
		while (cursor.next()) {
			inOrder.add(cursor.block().elements());
		}
		assertThat(inOrder).isEqualTo(chunkLines(chunk));
		for (int i = 0; i < 50; i++) {
			int line = random.nextInt(chunk.lineEnds());
			cursor.goTo(line);
			assertThat(cursor.block().elements()).isEqualTo(inOrder.get(line));
		}
	}

	private static List<List<Element>> chunkLines(Chunk chunk) {
		List<List<Element>> blocks = new ArrayList<>();
		for (int line = 0; line <= chunk.lineEnds(); line++) {
			blocks.add(BlockReader.read(chunk.line(line)).elements());
		}
		return blocks;
	}
}
