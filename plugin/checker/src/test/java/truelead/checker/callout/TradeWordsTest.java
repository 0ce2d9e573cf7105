package truelead.checker.callout;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import truelead.checker.thread.DataFile;
import truelead.checker.thread.DataRow;

class TradeWordsTest {

	@Test
	void hasTheWordsOfTheTradeInCapitalsAndLatinOnesWithoutAccents() {
		for (DataRow row : DataFile.rows(TradeWords.class, "words.csv")) {
			for (String word : row.get("words").split(" ")) {
				boolean latin = TradeWords.fold(word).chars().allMatch(c -> c < 0x80);
				assertThat(!latin || TradeWords.fold(word).equals(word)).as(word).isTrue();
			}
		}
	}
}
