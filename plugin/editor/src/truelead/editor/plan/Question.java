package truelead.editor.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import truelead.checker.callout.Callout;
import truelead.checker.callout.HoleEnd;
import truelead.checker.edit.Sequence;
import truelead.checker.job.Fact;
import truelead.checker.job.Stock;
import truelead.checker.plan.Existing;
import truelead.checker.plan.ExistingReader;
import truelead.checker.plan.Figure;
import truelead.checker.plan.Request;
import truelead.checker.plan.Wish;
import truelead.checker.plan.Wish.Field;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.LengthUnit;
import truelead.checker.work.NearestOperation;
import truelead.checker.work.ThreadingOperation;
import truelead.checker.work.Work;
import truelead.editor.check.CheckedText;
import truelead.grammar.ProgramText;

/**
 * What the wizard starts with; made on any thread.
 *
 * @param work     the program's
 * @param existing the thread that the program makes at the caret; empty where it makes none there
 * @param fields   what stands in the fields at first
 * @param through  whether the hole goes through
 * @param line     line from 0 before which the blocks are put; -1 for the caret's
 */
record Question(Work work, Optional<Existing> existing, Map<Field, String> fields, boolean through, int line) {

	/** What else could make the thread at a line; empty where the program makes none or does not say which. */
	static Optional<Question> whatElse(CheckedText checked, int line) {
		Work work = checked.result().work();
		Optional<ThreadingOperation> operation = NearestOperation.to(work, line);
		return operation.flatMap(one -> ExistingReader.of(one, checked.result()))
				.map(existing -> of(work, existing, NearestOperation.start(work, operation.orElseThrow())));
	}

	/**
	 * A thread to be made at a line: that of the operation there, else the nearest callout above, else what the program says of stock and
	 * machine.
	 */
	static Question at(CheckedText checked, int line) {
		Work work = checked.result().work();
		Optional<Existing> here = NearestOperation.at(work, line).flatMap(one -> ExistingReader.of(one, checked.result()));
		if (here.isPresent()) {
			Question question = of(work, here.get(), -1);
			return new Question(work, Optional.empty(), question.fields, question.through, -1);
		}
		Map<Field, String> fields = new EnumMap<>(Field.class);
		Optional<Callout> callout = Sequence.callout(above(checked.program().text(), line));
		callout.ifPresent(found -> {
			LengthUnit unit = found.spec().unit();
			fields.put(Field.CALLOUT, found.spec().designation());
			found.depth().ifPresent(depth -> fields.put(Field.DEPTH, number(depth.mm(unit), unit)));
			found.count().ifPresent(count -> fields.put(Field.COUNT, Integer.toString(count)));
		});
		work.operations().stream().flatMap(one -> one.wanted().stock().map(Fact::value).stream()).findFirst()
				.or(() -> work.shop().job().stock().map(Fact::value)).ifPresent(stock -> stock(fields, stock));
		return new Question(work, Optional.empty(), fields, callout.flatMap(Callout::holeEnd).filter(HoleEnd.THROUGH::equals).isPresent(),
				-1);
	}

	private static Question of(Work work, Existing existing, int line) {
		Request request = existing.request();
		Map<Field, String> fields = new EnumMap<>(Field.class);
		fields.put(Field.CALLOUT, request.thread().designation());
		fields.put(Field.DEPTH, number(request.depth(), request.unit()));
		fields.put(Field.COUNT, Integer.toString(request.count()));
		if (request.through()) {
			fields.put(Field.THROUGH, number(request.wall(), request.unit()));
		}
		request.bottom().ifPresent(bottom -> fields.put(Field.BOTTOM, number(bottom, request.unit())));
		request.stock().ifPresent(stock -> stock(fields, stock));
		return new Question(work, Optional.of(existing), fields, request.through(), line);
	}

	/** The lines up to and with one, the last of which is the nearest. */
	private static ProgramText above(ProgramText text, int line) {
		int last = Math.min(line, text.lineCount() - 1);
		StringBuilder above = new StringBuilder();
		for (int i = Math.max(0, last - Sequence.NEAR); i <= last; i++) {
			above.append(text.line(i)).append('\n');
		}
		return ProgramText.of(above.toString());
	}

	/** Name and hardness in fields of their own; a name that the fields do not take is left to the program. */
	private static void stock(Map<Field, String> fields, Stock stock) {
		if (!stock.name().isEmpty()) {
			fields.put(Field.STOCK, stock.name());
		}
		stock.hardness().ifPresent(hardness -> fields.put(Field.HARDNESS, Figure.plain(hardness, 0) + " HRC"));
	}

	private static String number(double mm, LengthUnit unit) {
		return Figure.plain(mm / unit.mm(), unit == LengthUnit.MM ? 3 : 4);
	}

	/** The program's machine. */
	MachineProfile machine() {
		return work.shop().profile();
	}

	/** What is typed, read for a machine; what is left empty is as in the program's own operation. */
	Wish.Understood read(Map<Field, String> typed, MachineProfile machine) {
		Wish wish = new Wish(typed);
		return existing.map(Existing::request)
				.map(known -> wish.on(machine, new Request(known.thread(), known.stock(), known.depth(), OptionalDouble.empty(), false,
						known.count(), known.profile()))).orElseGet(() -> wish.on(machine));
	}
}
