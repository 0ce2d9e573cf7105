package truelead.editor.look;

import java.util.ArrayList;
import java.util.List;
import truelead.grammar.Block;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.Span;

/** Cuts a block into pieces to be coloured, from the grammar's tree of it. A function of the line's text alone. */
public final class BlockLook {

	/** Longer lines than this are no blocks of a program; they are left without colours so that they cost nothing. */
	private static final int LONGEST = 4000;

	/** A range of characters and what it is. */
	public record Piece(Span span, Kind kind, boolean skipped) {
	}

	private BlockLook() {
	}

	/** The pieces of a line in the order they stand; white space belongs to none. */
	public static List<Piece> of(String line) {
		List<Piece> pieces = new ArrayList<>();
		if (line.isBlank() || line.length() > LONGEST) {
			return pieces;
		}
		Block block = BlockReader.read(line);
		boolean skipped = false;
		for (Element element : block.elements()) {
			skipped |= element instanceof Element.BlockDelete;
			pieces.add(new Piece(element.span(), kindOf(element), skipped));
		}
		return pieces;
	}

	private static Kind kindOf(Element element) {
		if (element instanceof Element.Word word) {
			return kindOf(word);
		}
		if (element instanceof Element.Comment comment) {
			return Callouts.in(comment.text()) ? Kind.CALLOUT : Kind.COMMENT;
		}
		if (element instanceof Element.BlockDelete) {
			return Kind.SKIPPED;
		}
		if (element instanceof Element.Percent || element instanceof Element.Label) {
			return Kind.NUMBERING;
		}
		return element instanceof Element.Unread ? Kind.UNREAD : Kind.VARIABLE;
	}

	private static Kind kindOf(Element.Word word) {
		return switch (word.address()) {
			case 'G' -> isCycle(word.value()) ? Kind.CYCLE : Kind.MOTION;
			case 'M' -> Kind.MACHINE;
			case 'F', 'S' -> Kind.RATE;
			case 'T', 'H', 'D' -> Kind.TOOL;
			case 'N', 'O' -> Kind.NUMBERING;
			default -> Kind.PLACE;
		};
	}

	private static boolean isCycle(Expression value) {
		if (!(value instanceof Expression.Number number)) {
			return false;
		}
		int code = (int) Math.round(number.value() * 10);
		return code == 330 || code == 331 || code == 320 || code == 730 || code == 740 || code == 760 || code >= 810 && code <= 899;
	}
}
