package truelead.checker.machine;

import java.util.List;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/** Tells whether it matters for threads which way a jump goes whose condition is not known. */
final class Detour {

	private static final int MOST_LINES = 2000;
	private static final int ALARM = 3000;

	private Detour() {
	}

	/** Whether the jump from behind a line to another one leaves out nothing that threads depend on, or ends in an alarm, which no good part meets. */
	static boolean harmless(Source source, int from, int to, MachineProfile profile) {
		if (alarm(source, to)) {
			return true;
		}
		if (to < from || to - from > MOST_LINES) {
			return false;
		}
		for (int line = from; line < to; line++) {
			if (matters(source.file().text().block(line), profile)) {
				return false;
			}
		}
		return true;
	}

	/** Whether the first block with anything in it from a line on raises an alarm. */
	private static boolean alarm(Source source, int from) {
		for (int line = from; line < Math.min(source.lines(), from + MOST_LINES); line++) {
			for (Element element : source.file().text().block(line).elements()) {
				if (element instanceof Element.Assignment assignment) {
					return assignment.target() instanceof Expression.NumberedVariable variable && variable.index() instanceof Expression.Number number
							&& number.value() == ALARM;
				} else if (!(element instanceof Element.Comment) && !(element instanceof Element.Word word && word.address() == 'N')) {
					return false;
				}
			}
		}
		return false;
	}

	private static boolean matters(Block block, MachineProfile profile) {
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				if (word.address() == 'G' && matters(profile.gCode(code(word))) || word.address() == 'M' && matters(profile.mCode(code(word)))
						|| "XYZABCUVWTFS".indexOf(word.address()) >= 0) {
					return true;
				}
			} else if (!(element instanceof Element.Comment || element instanceof Element.Percent || element instanceof Element.BlockDelete)) {
				return true;
			}
		}
		return false;
	}

	private static int code(Element.Word word) {
		return word.value() instanceof Expression.Number number ? CodeTable.tenfold(number.value()) : -1;
	}

	/** Stops, coolant and dwells matter to no thread. */
	private static boolean matters(List<Meaning> meanings) {
		return meanings.stream().anyMatch(meaning -> switch (meaning) {
			case NONE, DWELL, STOP, OPTIONAL_STOP, COOLANT_ON, COOLANT_OFF -> false;
			default -> true;
		});
	}
}
