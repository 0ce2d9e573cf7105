package truelead.checker.rule.tapping;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import truelead.checker.Samples;
import truelead.checker.profile.MachineProfile;
import truelead.checker.rule.Finding;

/** The lead of threads that a lathe cuts by a single point, whatever names them. */
class SinglePointFeedTest {

	@Test
	void theToolsCommentNamesTheThread() {
		assertThat(inside("", "OD THREAD M30X1.5", "G0 X32. Z5.", "G92 X29.5 Z-30. F1.25", "X28.16"))
				.containsExactly("F1.25 cuts a lead of 1.250 mm, M30x1.5 has 1.500: 0.250 too little a turn, no gauge or screw goes in "
						+ "past the first turns; F1.5");
		assertThat(inside("", "OD THREAD M30X1.5", "G0 X32. Z5.", "G92 X29.5 Z-30. F1.5", "X28.16")).isEmpty();
	}

	@Test
	void theTitleNamesTheThreadOfThatDepthInside() {
		String[] passes = { "G0 X33. Z6.", "G76 P020060 Q50 R0.03", "G76 X36. Z-38. P812 Q200 F1.25" };
		assertThat(inside("RING M36X1.5 INTERNAL", "THREAD BAR", passes)).singleElement().asString().endsWith("; F1.5");
		assertThat(inside("RING M40X1.5 INTERNAL", "THREAD BAR", passes)).as("another thread, of another tool").isEmpty();
		assertThat(inside("RING M36X1.5 AND M36X3", "THREAD BAR", passes)).as("either may be meant").isEmpty();
	}

	@Test
	void theTitleNamesTheThreadOfThatDepthOutside() {
		assertThat(inside("PLUG M20X1.5", "THREAD TOOL", "G0 X22. Z5.", "G92 X19.4 Z-16. F1.", "X18.8", "X18.16")).singleElement()
				.asString().endsWith("; F1.5");
		assertThat(inside("PLUG M20X1.5", "THREAD TOOL", "G0 X22. Z5.", "G92 X19.4 Z-16. F1.5", "X18.8", "X18.16")).isEmpty();
		assertThat(inside("PLUG M20X1.5", "THREAD TOOL", "G0 X18. Z5.", "G92 X15.6 Z-16. F1.", "X14.77")).as("the smaller end").isEmpty();
	}

	private static List<String> inside(String title, String tool, String... passes) {
		String program =
				"(" + title + ")\nG21 G40 G99\nT0101 (TURNING TOOL)\nG97 S800 M3\nG0 X50. Z1.\nG1 Z-40. F.2\nG0 X100. Z100.\nT0303 (" + tool
				+ ")\nG97 S800 M3\n" + String.join("\n", passes) + "\nG0 X100. Z100.\nM30\n";
		return Samples.findings(MachineProfile.named("turning"), program).stream().filter(f -> f.rule().equals("feed-off-pitch"))
				.map(Finding::message).toList();
	}
}
