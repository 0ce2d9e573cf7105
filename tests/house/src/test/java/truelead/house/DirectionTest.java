package truelead.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Data flows one way: a package leans on those before it and knows nothing of those behind. */
class DirectionTest {

	/** All packages that ship, each before all that may lean on it. */
	private static final List<String> ORDER = List.of("truelead.grammar",
			"truelead.checker.program", "truelead.checker.profile", "truelead.checker.chunk", "truelead.checker.arithmetic",
			"truelead.checker.machine",
			"truelead.checker.thread", "truelead.checker.callout", "truelead.checker.job",
			"truelead.checker.comment", "truelead.checker.tool", "truelead.checker.hole", "truelead.checker.run",
			"truelead.checker.pass", "truelead.checker.stroke", "truelead.checker.wanted", "truelead.checker.turn", "truelead.checker.work",
			"truelead.checker.rule", "truelead.checker.rule.tapping", "truelead.checker.rule.hole", "truelead.checker.rule.milling",
			"truelead.checker.rule.method",
			"truelead.checker.rule.program", "truelead.checker.rulebook", "truelead.checker",
			"truelead.checker.drawing", "truelead.checker.sheet", "truelead.checker.summary", "truelead.checker.plan",
			"truelead.checker.lesson", "truelead.checker.edit",
			"truelead.audit.terminal", "truelead.audit.source", "truelead.audit.result", "truelead.audit.report", "truelead.audit.sarif",
			"truelead.audit.standing",
			"truelead.audit.data", "truelead.audit.gauge", "truelead.audit.html", "truelead.audit.run", "truelead.audit.compare",
			"truelead.audit.plan",
			"truelead.audit.lesson", "truelead.audit.thread", "truelead.audit", "truelead.help",
			"truelead.editor", "truelead.editor.text", "truelead.editor.demo", "truelead.editor.look", "truelead.editor.page",
			"truelead.editor.settings",
			"truelead.editor.check", "truelead.editor.settings.page", "truelead.editor.bracket", "truelead.editor.folding",
			"truelead.editor.inline", "truelead.editor.outline",
			"truelead.editor.complete", "truelead.editor.command", "truelead.editor.navigate", "truelead.editor.lesson",
			"truelead.editor.fix", "truelead.editor.hover",
			"truelead.editor.plan", "truelead.editor.thread", "truelead.editor.audit", "truelead.editor.guide", "truelead.editor.walk",
			"truelead.editor.start",
			"truelead.editor.program");

	@Test
	void noPackageLeansOnOneBehindIt() {
		List<String> backwards = new ArrayList<>();
		for (JavaSource source : House.shipped()) {
			int place = ORDER.indexOf(source.packageName());
			for (String other : source.leansOn()) {
				if (place >= 0 && ORDER.indexOf(other) > place) {
					backwards.add(source.path() + " leans on " + other);
				}
			}
		}
		assertThat(backwards).as("data flows one way, grammar, machine, work, rule and on to what a person sees: "
				+ "move what is leant on into a package before, or hand it in from behind as a value or a function").isEmpty();
	}

	@Test
	void everyPackageHasItsPlace() {
		TreeSet<String> packages = new TreeSet<>();
		House.shipped().stream().filter(source -> source.in("grammar/", "plugin/")).forEach(source -> packages.add(source.packageName()));
		assertThat(ORDER).as("a new package stands in ORDER behind all that it leans on; one that is gone does not")
				.containsExactlyInAnyOrderElementsOf(packages);
	}

	@Test
	void eclipseIsKnownToTheEditorAndItsTestsAlone() {
		assertThat(House.JAVA.stream().filter(source -> !source.in("plugin/editor/", "plugin/help/", "tests/workbench/")
				&& source.code().contains("org.eclipse."))).extracting(JavaSource::path)
				.as("the platform is for plugin/editor, plugin/help and tests/workbench; what is of use without it belongs into checker")
				.isEmpty();
	}
}
