package truelead.checker.rule;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import truelead.checker.program.BlockRef;
import truelead.checker.program.ProgramFile;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/**
 * The program or subprogram that a block stands in.
 *
 * @param first its first line
 * @param end   the line behind its last
 */
record PartOfProgram(ProgramFile file, int first, int end) {

	/** Lines above or below a block beyond which nothing is looked for. */
	private static final int FAR = 1500;

	/** The part that a block stands in; empty where it is long. */
	static Optional<PartOfProgram> of(BlockRef block) {
		ProgramText text = block.file().text();
		int first = block.line();
		while (first > 0 && !begins(text, first) && block.line() - first <= FAR) {
			first--;
		}
		int end = block.line() + 1;
		while (end < text.lineCount() && !begins(text, end) && end - block.line() <= FAR) {
			end++;
		}
		return end - first > FAR ? Optional.empty() : Optional.of(new PartOfProgram(block.file(), first, end));
	}

	private static boolean begins(ProgramText text, int line) {
		return text.block(line).elements().stream().anyMatch(element -> element instanceof Element.Word word && word.address() == 'O'
				|| element instanceof Element.OStatement o && o.keyword() == Element.OKeyword.SUB
				|| element instanceof Element.Procedure || element instanceof Element.Percent);
	}

	/** Whether whoever comes to a line has come over another one above it: no branch ends between them, and no jump leads over that one. */
	boolean leadsOn(int from, int to) {
		Set<String> targets = new HashSet<>();
		for (int line = from + 1; line <= to; line++) {
			for (Element element : file.text().block(line).elements()) {
				if (element instanceof Element.LoopEnd || element instanceof Element.Control control && ends(control.keyword().name())
						|| element instanceof Element.OStatement o && ends(o.keyword().name())) {
					return false;
				} else if (element instanceof Element.Label label) {
					targets.add(label.name());
				} else if (element instanceof Element.Word word && word.address() == 'N'
						&& word.value() instanceof Expression.Number number) {
					targets.add(String.valueOf((int) number.value()));
				}
			}
		}
		for (int line = first; line < from; line++) {
			for (Element element : file.text().block(line).elements()) {
				if (element instanceof Element.Choice || element instanceof Element.Jump jump && mayLeadTo(jump.target(), targets)) {
					return false;
				}
			}
		}
		return true;
	}

	private static boolean ends(String keyword) {
		return keyword.startsWith("END") || keyword.startsWith("ELSE") || keyword.equals("UNTIL");
	}

	private static boolean mayLeadTo(Expression target, Set<String> targets) {
		return target instanceof Expression.Number number ? targets.contains(String.valueOf((int) number.value()))
				: !(target instanceof Expression.NamedVariable name) || targets.contains(name.name().toUpperCase(Locale.ROOT));
	}

	/** The line behind the last one that may be done before a line of the main program: loops and jumps below it may lead back. */
	int endOfLoops(int line) {
		int last = line + 1;
		for (int below = line + 1; below < end; below++) {
			for (Element element : file.text().block(below).elements()) {
				boolean leads = element instanceof Element.Jump || element instanceof Element.LoopEnd || element instanceof Element.Control
						|| element instanceof Element.OStatement o && o.keyword() != Element.OKeyword.CALL;
				last = leads ? below + 1 : last;
			}
		}
		return last;
	}

	/** The block that says what this part is given where a block calls it: itself, or the last modal call of it above. */
	Optional<BlockRef> call(BlockRef caller) {
		if (isMacroCall(caller) || caller.file().text().block(caller.line()).elements().stream()
				.anyMatch(element -> !Spoken.arguments(element).isEmpty())) {
			return Optional.of(caller);
		}
		for (int line = caller.line(); line >= 0 && caller.line() - line < FAR; line--) {
			BlockRef above = new BlockRef(caller.file(), line, caller.caller());
			if (isMacroCall(above) && calls(above)) {
				return Optional.of(above);
			}
		}
		return Optional.empty();
	}

	/** Whether a call names this part by its number. */
	private boolean calls(BlockRef call) {
		double number = number(call, 'P');
		return file.text().block(first).words().stream().anyMatch(word -> word.address() == 'O'
				&& word.value() instanceof Expression.Number own && own.value() == number);
	}

	private static double number(BlockRef block, char address) {
		return block.file().text().block(block.line()).words().stream().filter(word -> word.address() == address
				&& word.value() instanceof Expression.Number).mapToDouble(word -> ((Expression.Number) word.value()).value())
				.findFirst().orElse(Double.NaN);
	}

	/** Whether a block calls a macro, once or behind every motion, with letters as its arguments. */
	boolean isMacroCall(BlockRef block) {
		return block.file().text().block(block.line()).words().stream().anyMatch(word -> word.address() == 'G'
				&& word.value() instanceof Expression.Number code && (code.value() == 65 || code.value() == 66 || code.value() == 66.1));
	}

	/** Whether a call gives this part variables of its own. */
	boolean ownVariables(BlockRef caller) {
		return call(caller).isPresent() || file.text().block(first).elements().stream()
				.anyMatch(element -> element instanceof Element.Procedure || element instanceof Element.OStatement);
	}

	/** The place, from 1, of a variable among the parameters of this part; 0 where it is none. */
	int parameter(Expression variable) {
		for (Element element : file.text().block(first).elements()) {
			if (element instanceof Element.Procedure head) {
				List<Expression> parameters = head.parameters();
				for (int i = 0; i < parameters.size(); i++) {
					if (Spoken.same(parameters.get(i), variable)) {
						return i + 1;
					}
				}
			}
		}
		return 0;
	}
}
