package truelead.forms;

import java.util.List;

/** What is said of the job, the coolant or the time names no thread and no tool. */
final class RemarksBetween implements Form {

	private static final List<String> REMARKS = List.of("(CYCLE TIME 3:20)", "(PART 4711-03 REV B)", "( ------------ )",
			"(CHECK AFTER FIRST PART)", "(MIN Z -25.0 MAX Z 50.0)", "(USE SOLUBLE OIL 8%)", "(X0 Y0 LOWER LEFT CORNER)");

	@Override
	public List<String> rewrite(Program program) {
		List<String> lines = program.lines();
		int said = 0;
		for (int i = 0; i < lines.size(); i++) {
			if (Words.says(program.blocks().get(i), 'M', 3, 7, 8, 9)) {
				lines.set(i, lines.get(i) + "\n" + REMARKS.get(said++ % REMARKS.size()));
			}
		}
		return lines;
	}
}
