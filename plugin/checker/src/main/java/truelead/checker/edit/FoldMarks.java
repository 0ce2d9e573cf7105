package truelead.checker.edit;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.chunk.ChunkFacts;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** The lines of a chunk where something begins or ends that can be folded; read once for each chunk. Lines count from its start. */
final class FoldMarks {

	/** What begins or ends. */
	enum What {
		PROGRAM, END, PERCENT, SUB, ENDSUB, LOOP, ENDLOOP
	}

	/** @param name of a subprogram or loop, to find its end */
	record Mark(int line, What what, String name) {
	}

	private final List<Mark> marks = new ArrayList<>();

	private FoldMarks(Chunk chunk, ChunkFacts facts) {
		for (int line : facts.noted()) {
			for (Element element : chunk.block(line).elements()) {
				read(line, element);
			}
		}
	}

	/** The marks of a chunk in the order they stand. */
	static List<Mark> of(Chunk chunk) {
		ChunkFacts facts = ChunkFacts.of(chunk);
		return chunk.derived(FoldMarks.class, fresh -> new FoldMarks(fresh, facts)).marks;
	}

	private void read(int line, Element element) {
		if (element instanceof Element.Percent) {
			marks.add(new Mark(line, What.PERCENT, ""));
		} else if (element instanceof Element.Word word && word.address() == 'O') {
			marks.add(new Mark(line, What.PROGRAM, ""));
		} else if (element instanceof Element.Word word && word.address() == 'M' && word.value() instanceof Expression.Number number
				&& (number.value() == 2 || number.value() == 30 || number.value() == 99)) {
			marks.add(new Mark(line, What.END, ""));
		} else if (element instanceof Element.LoopStart loop && loop.number() instanceof Expression.Number number) {
			marks.add(new Mark(line, What.LOOP, "do " + number.value()));
		} else if (element instanceof Element.LoopEnd end && end.number() instanceof Expression.Number number) {
			marks.add(new Mark(line, What.ENDLOOP, "do " + number.value()));
		} else if (element instanceof Element.Control control) {
			switch (control.keyword()) {
				case FOR, WHILE, LOOP, REPEAT, IF -> marks.add(new Mark(line, What.LOOP, "control " + control.keyword()));
				case ENDFOR, ENDWHILE, ENDLOOP,
						ENDIF -> marks.add(new Mark(line, What.ENDLOOP, "control " + control.keyword().name().substring(3)));
				case UNTIL -> marks.add(new Mark(line, What.ENDLOOP, "control " + Element.ControlKeyword.REPEAT));
				default -> {
					// divides a branch
				}
			}
		} else if (element instanceof Element.OStatement statement) {
			switch (statement.keyword()) {
				case SUB -> marks.add(new Mark(line, What.SUB, "sub " + statement.name()));
				case ENDSUB -> marks.add(new Mark(line, What.ENDSUB, "sub " + statement.name()));
				case WHILE, REPEAT -> marks.add(new Mark(line, What.LOOP, "o " + statement.name()));
				case ENDWHILE, ENDREPEAT -> marks.add(new Mark(line, What.ENDLOOP, "o " + statement.name()));
				default -> {
					// neither begins nor ends lines of their own
				}
			}
		}
	}
}
