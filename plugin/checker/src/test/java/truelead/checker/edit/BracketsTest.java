package truelead.checker.edit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import truelead.grammar.BlockReader;

/** The other bracket of a block's brackets. */
class BracketsTest {

	@ParameterizedTest
	@CsvSource({"G0 (CLEAR),3,9", "G0 (CLEAR),9,3", "X[1+[2*3]],1,9", "X[1+[2*3]],4,8", "X[1 (]) ],1,8", "G0 (OPEN,3,-1", "X[1,1,-1",
			"(A (B) C),0,8", "X1,0,-1", "; (A),2,-1"})
	void isFoundInItsBlock(String block, int column, int other) {
		assertThat(Brackets.partner(BlockReader.read(block), column).orElse(-1)).isEqualTo(other);
	}
}
