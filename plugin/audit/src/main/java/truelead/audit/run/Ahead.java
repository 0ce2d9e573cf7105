package truelead.audit.run;

import java.util.Optional;
import truelead.checker.job.NoteReader;
import truelead.checker.job.ProgramComment;
import truelead.checker.program.LengthUnit;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.rulebook.Rules;
import truelead.checker.thread.TapDrill;
import truelead.checker.thread.ThreadSpec;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/**
 * Loads what a check of a program with threads needs behind the reading of the program - words of comments, tables of threads, rules - on a
 * second core, while the first one reads machine profile and program. It changes nothing but when that is done.
 */
final class Ahead {

	private static final String NOTE = "THREAD: M6X1-6H, DEPTH 10";

	private Ahead() {
	}

	/** Begins, where there is a second core; the end of the process does not wait for it. */
	static void start() {
		if (Runtime.getRuntime().availableProcessors() > 1) {
			Thread thread = new Thread(Ahead::load, "truelead ahead");
			thread.setDaemon(true);
			thread.start();
		}
	}

	private static void load() {
		try {
			ProgramFile file = new ProgramFile("", ProgramText.of(NOTE));
			NoteReader.read(new ProgramComment(new Location(file, 0, new Span(0, NOTE.length())), NOTE), LengthUnit.MM);
			TapDrill.cutting(ThreadSpec.metric(6, 1));
			Optional.of(Rules.ALL);
		} catch (RuntimeException | LinkageError fault) {
			// whoever needs it meets the same fault and says it
		}
	}
}
