package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** What ANTLR learns from ever new blocks is thrown away in time. */
class CachesTest {

	private static final String[] PIECES = {"#1", "[", "]", "+", "-", "X", "5", "SIN[", "IF", "GOTO", "=", "(A)", "O", "/", "NAME", ",R1",
			"AND", "**", "MSG(", "\"A\""};

	@Test
	void theyStayNearTheirCap() {
		Random random = new Random(11);
		for (int block = 0; block < 6000; block++) {
			StringBuilder text = new StringBuilder();
			for (int piece = 0; piece < 12; piece++) {
				text.append(PIECES[random.nextInt(PIECES.length)]);
			}
			BlockReader.readByGrammar(text.toString());
		}
		assertThat(Caches.current().states()).isPositive().isLessThan(BlockReader.MAX_CACHED_STATES * 5 / 4);
	}
}
