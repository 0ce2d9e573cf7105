package truelead.audit.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class ArgumentsTest {

	private final byte[] commandLine = "java\0-jar\0truelead.jar\0check\0gr\u00f6\u00dfe.nc\0".getBytes(StandardCharsets.UTF_8);

	@Test
	void lostCharactersAreReadAgain() {
		assertThat(Arguments.restore(List.of("check", "gr????e.nc"), commandLine)).containsExactly("check", "gr\u00f6\u00dfe.nc");
	}

	@Test
	void aCommandLineThatIsNotOursIsLeftAlone() {
		assertThat(Arguments.restore(List.of("compare", "a??.nc"), commandLine)).containsExactly("compare", "a??.nc");
	}

	@Test
	void plainArgumentsStay() {
		assertThat(Arguments.asTyped(List.of("check", "a.nc"))).containsExactly("check", "a.nc");
	}
}
