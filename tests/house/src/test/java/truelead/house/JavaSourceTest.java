package truelead.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The tests of the house see faults: they are held against sources that have some. */
class JavaSourceTest {

	private static final JavaSource SOURCE = JavaSource.of("plugin/checker/src/main/java/truelead/checker/hole/Cut.java", """
			package truelead.checker.hole;

			import java.util.List;
			import truelead.checker.work.Work;

			/* not truelead.checker.edit.Names, "quoted */
			class Cut { String s = "truelead.audit.Main // \\" no comment"; char c = '"';
				// truelead.checker.plan.Plan
				List<truelead.checker.rule.Rule> rules; String low = s.toLowerCase();
			}
			""");

	@Test
	void codeIsWhatIsNeitherCommentNorText() {
		assertThat(SOURCE.leansOn()).containsExactly("truelead.checker.work", "truelead.checker.rule");
		assertThat(SOURCE.imports()).extracting(JavaSource.Import::name).containsExactly("List", "Work");
		assertThat(SOURCE.packageName()).isEqualTo("truelead.checker.hole");
		assertThat(SOURCE.ships()).isTrue();
	}

	@Test
	void placesCountLinesAsTheFileDoes() {
		assertThat(SOURCE.places(Pattern.compile("toLowerCase\\(\\)")))
				.containsExactly("plugin/checker/src/main/java/truelead/checker/hole/Cut.java:9  List<truelead.checker.rule.Rule> rules; "
						+ "String low = s.toLowerCase();");
	}

	@Test
	void wideLinesAreFoundOutsideTextBlocks() {
		JavaSource source = JavaSource.of("A.java",
				"class A {\n\tint wide = 1234;\n\tString s = \"\"\"\n\t\t\t1234567890123456789\n\t\t\t\"\"\";\n}\n");
		assertThat(source.widerThan(18, 4)).containsExactly("A.java:2");
	}

	@Test
	void theWholeHouseIsLookedAt() {
		assertThat(House.JAVA).hasSizeGreaterThan(1_000);
		assertThat(House.shipped()).hasSizeGreaterThan(600);
	}
}
