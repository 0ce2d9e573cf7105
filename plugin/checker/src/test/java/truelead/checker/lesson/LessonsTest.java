package truelead.checker.lesson;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import truelead.checker.CheckResult;
import truelead.checker.Samples;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Rule;
import truelead.checker.rule.RulePage;
import truelead.checker.rulebook.Rules;

/** Lessons as a whole: their names, their sentences, and the way to them from a finding. */
class LessonsTest {

	@Test
	void aRulesPageNamesItsLessonAndNoOther() {
		for (Rule rule : Rules.ALL) {
			String page = RulePage.of(rule.name()).markdown();
			Optional<String> lesson = Lessons.ofRule(rule.name()).map(Lesson::name);
			assertThat(page.contains("The lesson `")).as(rule.name()).isEqualTo(lesson.isPresent());
			lesson.ifPresent(name -> assertThat(page).contains("The lesson `" + name + "` shows it"));
		}
	}

	@Test
	void everyNumberShownOrSaidIsThereAndSoIsEveryCurve() {
		for (Lesson lesson : Lessons.ALL) {
			Outcome outcome = lesson.outcome(Values.usual(lesson));
			lesson.readings().forEach(reading -> assertThat(outcome.numbers()).containsKey(reading.name()));
			lesson.plots().forEach(plot -> plot.curves().forEach(curve -> assertThat(outcome.tracks()).containsKey(curve.name())));
			for (String sentence : lesson.sentences()) {
				Matcher blanks = Lesson.BLANK.matcher(sentence);
				while (blanks.find()) {
					assertThat(outcome.numbers()).as(sentence).containsKey(blanks.group(1));
				}
			}
		}
	}

	@Test
	void curvesOfOnePlotAreToldApartWithoutColour() {
		Lessons.ALL.forEach(lesson -> lesson.plots().forEach(plot -> assertThat(plot.curves()).extracting(Plot.Curve::dash)
				.doesNotHaveDuplicates()));
	}

	@Test
	void aFeedFindingBringsItsNumbers() {
		CheckResult result = Samples.check(MachineProfile.generic(), Job.EMPTY, "G21 G90 G94", "(STOCK: STAINLESS)", "(M6X1 TAP)",
				"(TOOL: T3, TAP, M6X1, FLOATING HOLDER 4)", "T3 M6", "G0 X0 Y0 S520 M3", "G43 Z25. H3", "G84 Z-14.5 R5. F300",
				"G80", "M30");

		Filled filled = filled(result, "feed-off-pitch");

		assertThat(filled.lesson().name()).isEqualTo("feed");
		assertThat(filled.values().of("feed")).isEqualTo(300);
		assertThat(filled.values().of("speed")).isEqualTo(520);
		assertThat(filled.values().of("depth")).isEqualTo(14.5);
		assertThat(filled.values().of("height")).isEqualTo(5);
		assertThat(filled.values().of("holder")).isEqualTo(2);
		assertThat(filled.values().of("travel")).isEqualTo(4);
		assertThat(filled.values().of("force")).as("kc of the stock, from memory").isEqualTo(2600);
	}

	@Test
	void aHelixFindingBringsItsNumbers() {
		Exercise exercise = Exercise.of("helix", 1).orElseThrow();
		CheckResult result = Samples.check(MachineProfile.generic(), Job.EMPTY, exercise.program());

		Filled filled = filled(result, "helix-off-pitch");

		assertThat(filled.values().of("rise")).isCloseTo(1.75, org.assertj.core.api.Assertions.within(1e-9));
		assertThat(filled.values().of("radius")).isCloseTo(3.01, org.assertj.core.api.Assertions.within(1e-9));
		assertThat(filled.values().of("cutter")).isEqualTo(10);
		assertThat(filled.values().of("diameter")).isEqualTo(16);
	}

	@Test
	void aDepthFindingBringsItsNumbers() {
		Exercise exercise = Exercise.of("depth", 1).orElseThrow();
		Filled filled = filled(Samples.check(MachineProfile.generic(), Job.EMPTY, exercise.program()), "drill-too-shallow");

		assertThat(filled.values().of("drillTip")).isEqualTo(15);
		assertThat(filled.values().of("tapTip")).isEqualTo(14.5);
		assertThat(filled.values().of("wanted")).isEqualTo(10);
		assertThat(filled.lesson().said(filled.lesson().outcome(filled.values())).get(0))
				.startsWith("The tap meets the cone 0.60 mm before its depth");
	}

	private static Filled filled(CheckResult result, String rule) {
		Finding finding = result.findings().stream().filter(f -> f.rule().equals(rule)).findFirst().orElseThrow();
		return new Filling(result).of(finding).orElseThrow();
	}
}
