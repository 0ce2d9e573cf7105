package truelead.grammar;

import static org.assertj.core.api.Assertions.assertThat;

/** Checks that the elements of a block stand in order and leave out nothing but white space. */
final class Coverage {

	private Coverage() {
	}

	static void check(Block block) {
		String text = block.text();
		int at = 0;
		for (Element element : block.elements()) {
			assertThat(element.span().start()).as(text).isGreaterThanOrEqualTo(at);
			blank(text, at, element.span().start());
			at = element.span().end();
		}
		assertThat(at).isLessThanOrEqualTo(text.length());
		blank(text, at, text.length());
		for (Problem problem : block.problems()) {
			assertThat(problem.span().end()).as(problem.message()).isLessThanOrEqualTo(text.length());
		}
	}

	private static void blank(String text, int from, int to) {
		for (int i = from; i < to; i++) {
			char c = text.charAt(i);
			assertThat(c <= ' ' || c >= 0x7F && c <= 0xA0 || c == 0x1680 || c >= 0x2000 && c <= 0x200F || c >= 0x2028 && c <= 0x202F
					|| c >= 0x205F && c <= 0x206F || c == 0x3000 || c == 0xFEFF || c == 0xFFFE).as("character %s at %s of %s", (int) c, i,
							text).isTrue();
		}
	}
}
