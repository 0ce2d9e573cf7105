package truelead.checker;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import truelead.checker.job.Job;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.program.ProgramFolder;
import truelead.checker.rule.Finding;
import truelead.checker.rule.RuleSettings;
import truelead.grammar.ProgramText;

/**
 * Some systems write the whole cycle at every hole: it is one operation, gone over in one step, and every hole is judged by the words of
 * its own block.
 */
class CycleAtEveryHoleTest {

	private static final String HEAD = "O1 (COVER)\nG21 G90 G17 G40 G49 G80 G54\n";

	@Test
	void isOneOperation() {
		CheckResult result = check(plate(30, "G81 Z-18. R2. F400.", "G84 Z-12. R4. F500."));
		assertThat(result.operations()).isEqualTo(1);
		assertThat(result.work().tappings().get(0).holes()).hasSize(30);
	}

	@Test
	void isAnOperationByItselfBehindG80() {
		CheckResult result = check(HEAD + "T3 M6 (M6X1 TAP)\nS500 M3\nG43 H3 Z25.\n"
				+ "G84 X0. Y0. Z-12. R4. F500.\nG80\nG0 X30.\n".repeat(3) + "M30\n");
		assertThat(result.operations()).isEqualTo(3);
	}

	@Test
	void aWrongFeedIsPutRightInEveryBlock() {
		Finding wrong = check(plate(30, "G81 Z-18. R2. F400.", "G84 Z-12. R4. F520.")).findings().stream()
				.filter(one -> one.rule().equals("feed-off-pitch")).findFirst().orElseThrow();
		assertThat(wrong.message()).contains("the same in 29 more blocks of this cycle");
		assertThat(wrong.fixes().get(0).edits()).hasSize(30).allMatch(edit -> edit.text().equals("F500."))
				.extracting(edit -> edit.at().line()).doesNotHaveDuplicates();
	}

	@Test
	void oneWrongFeedAmongThemIsFoundInItsOwnBlock() {
		String right = plate(30, "G81 Z-18. R2. F400.", "G84 Z-12. R4. F500.");
		String wrong = right.replace("F500. X240. Y0.", "F550. X240. Y0.");
		List<Finding> found = check(wrong).findings().stream().filter(one -> one.rule().equals("feed-off-pitch")).toList();
		assertThat(found).hasSize(1);
		assertThat(found.get(0).at().file().text().line(found.get(0).at().line())).contains("F550. X240.");
		assertThat(found.get(0).message()).doesNotContain("more");
	}

	@Test
	void aDwellInOneOfThemIsFound() {
		String wrong = plate(30, "G81 Z-18. R2. F400.", "G84 Z-12. R4. F500.").replace("F500. X240. Y0.", "P9000 F500. X240. Y0.");
		assertThat(check(wrong).findings()).anyMatch(one -> one.rule().equals("dwell-at-bottom"));
	}

	/** A row of places under a cycle whose F is its lead a turn reads F as the first place does. */
	@Test
	void aRowOfPlacesUnderALeadATurnIsFedAsTheFirstPlace() {
		String text = HEAD + "T2 M6 (DRILL 5.0)\nS900 M3\nG43 H2 Z25.\nG81 X0. Y0. Z-18. R2. F200.\nX15.\nX30.\nX45.\nX60.\nX75.\nG80\n"
				+ "T3 M6 (M6X1 TAP)\nS500 M3\nG43 H3 Z25.\nG95 G84 X0. Y0. Z-12. R4. F1.\nX15.\nX30.\nX45.\nX60.\nX75.\nG80\nG94\nM30\n";
		assertThat(check(text).findings()).noneMatch(one -> one.rule().equals("feed-off-pitch"));
	}

	/** With an empty line between the blocks each is followed by itself. */
	@Property(tries = 150)
	void isFoundAsBlockByBlock(@ForAll Random random) {
		String text = program(random);
		String apart = text.replace("\n", "\n\n");
		assertThat(said(check(text), 1)).isEqualTo(said(check(apart), 2));
	}

	private static List<String> said(CheckResult result, int linesEach) {
		return result.findings().stream().map(one -> one.rule() + " " + one.severity() + " " + at(one.at(), linesEach)
				+ one.message().replaceAll("lines? \\d+", "line") + one.related().stream().map(other -> at(other.at(), linesEach)).toList()
				+ one.fixes().stream().map(fix -> fix.edits().stream().map(edit -> at(edit.at(), linesEach) + edit.text())
						.toList()).toList() + one.evidence().stream().map(number -> number.name() + number.value()
								+ number.at().map(place -> at(place, linesEach))).toList()).toList();
	}

	private static String at(Location place, int linesEach) {
		return place.line() / linesEach + ":" + place.span().start() + "-" + place.span().end() + " ";
	}

	private static String program(Random random) {
		StringBuilder text = new StringBuilder(HEAD);
		int holes = 8 + random.nextInt(20);
		String drill = random.nextInt(3) == 0 ? "G98 G83 Z-18. R2. Q3. F200." : random.nextInt(6) == 0 ? "G81 Z-13. R2. F400."
				: "G81 Z-18. R2. F400.";
		String tap = random.nextInt(6) == 0 ? "G84 Z-12. R4. F520." : random.nextInt(6) == 0 ? "G74 Z-12. R4. F500."
				: random.nextInt(3) == 0 ? "G99 G84 R4. Z-12. F500." : "G84 Z-12. R4. P100 F500.0";
		rows(text, random.nextInt(8) == 0 ? "T2 M6 (DRILL 5.4)" : "T2 M6 (DRILL 5.0)", drill, holes, random);
		rows(text, "T3 M6 (M6X1 TAP)", tap, holes, random);
		return text.append("M30\n").toString();
	}

	private static void rows(StringBuilder text, String tool, String cycle, int holes, Random random) {
		text.append(tool).append("\nS500 M3\nG43 H").append(tool.charAt(1)).append(" Z25.\n");
		int odd = random.nextInt(60);
		boolean numbered = random.nextBoolean();
		for (int hole = 0; hole < holes; hole++) {
			String said = hole != odd ? cycle : switch (random.nextInt(7)) {
				case 0 -> cycle.replace("F5", "F4");
				case 1 -> cycle.replace("Z-1", "Z-2");
				case 2 -> cycle.replaceFirst(" R[.0-9]+", " R7.");
				case 3 -> "G80\n" + cycle;
				case 4 -> "(HOLE)\n" + cycle;
				case 5 -> "";
				default -> cycle.replaceFirst(" F[.0-9]+", "");
			};
			text.append(numbered ? "N" + (10 + hole) + " " : "").append(said).append(random.nextInt(5) == 0 && hole % 6 != 0 ? ""
					: String.format(Locale.ROOT, " Y%d.", hole / 6 * 15))
					.append(String.format(Locale.ROOT, random.nextInt(9) == 0 ? " X%d.25" : " X%d.", hole % 6 * 15)).append('\n');
		}
		text.append("G80\n");
	}

	private static String plate(int holes, String drill, String tap) {
		StringBuilder text = new StringBuilder(HEAD);
		for (String tool : List.of("T2 M6 (DRILL 5.0)\nS2000", "T3 M6 (M6X1 TAP)\nS500")) {
			text.append(tool).append(" M3\nG43 H").append(tool.charAt(1)).append(" Z25.\n");
			for (int hole = 0; hole < holes; hole++) {
				text.append(tool.charAt(1) == '2' ? drill : tap)
						.append(String.format(Locale.ROOT, " X%d. Y%d.%n", hole % 10 * 30, hole / 10 * 30));
			}
			text.append("G80\n");
		}
		return text.append("M30\n").toString();
	}

	private static CheckResult check(String text) {
		return Checker.check(new ProgramFile("A.NC", ProgramText.of(text)), ProgramFolder.EMPTY, Job.EMPTY, MachineProfile.generic(),
				RuleSettings.DEFAULT);
	}
}
