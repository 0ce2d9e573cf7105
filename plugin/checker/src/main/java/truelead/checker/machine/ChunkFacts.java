package truelead.checker.machine;

import java.util.Arrays;
import truelead.grammar.Block;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * What the text of a chunk tells by itself, read once: which lines need a look by those who go through a program for something other than its
 * motions, and where plain contours are. Lines count from the start of the chunk.
 */
public final class ChunkFacts {

	private final int blocks;
	private final int[] noted;
	private final int[] headers;
	private final boolean changesTool;
	private final Contour[][] contours = new Contour[4][];
	private final boolean plainHead;
	private final boolean plainTail;

	private ChunkFacts(Chunk chunk) {
		int lines = chunk.lineEnds() + 1;
		ContourFinder finder = new ContourFinder(lines);
		int[] lookAt = new int[lines];
		int[] starts = new int[lines];
		int looks = 0;
		int heads = 0;
		int counted = 0;
		boolean change = false;
		for (int line = 0; line < lines; line++) {
			Block block = chunk.block(line);
			finder.read(line, block);
			boolean plain = block.problems().isEmpty();
			boolean head = false;
			boolean code = false;
			for (Element element : block.elements()) {
				boolean word = element instanceof Element.Word;
				boolean comment = element instanceof Element.Comment;
				head |= element instanceof Element.Percent || element instanceof Element.OStatement || word && ((Element.Word) element).address() == 'O';
				plain &= word && ordinary((Element.Word) element);
				code |= !comment && !(element instanceof Element.Percent);
				change |= word && changes((Element.Word) element);
			}
			counted += code ? 1 : 0;
			if (!plain) {
				lookAt[looks++] = line;
			}
			if (head) {
				starts[heads++] = line;
			}
		}
		blocks = counted;
		noted = Arrays.copyOf(lookAt, looks);
		headers = Arrays.copyOf(starts, heads);
		changesTool = change;
		plainHead = finder.plainHead();
		plainTail = finder.plainTail();
		for (int i = 0; i < contours.length; i++) {
			contours[i] = finder.contours((i & 1) != 0, (i & 2) != 0);
		}
	}

	/** The facts of a chunk. */
	public static ChunkFacts of(Chunk chunk) {
		return chunk.derived(ChunkFacts.class, ChunkFacts::new);
	}

	private static boolean ordinary(Element.Word word) {
		return switch (word.address()) {
			case 'X', 'Y', 'Z', 'I', 'J', 'K', 'F', 'N', 'A', 'B', 'C' -> true;
			case 'G' -> word.value() instanceof Expression.Number number && number.value() >= 0 && number.value() <= 3;
			default -> false;
		};
	}

	private static boolean changes(Element.Word word) {
		return word.address() == 'M' && word.value() instanceof Expression.Number number && number.value() == 6;
	}

	/** Lines with words or statements. */
	public int blocks() {
		return blocks;
	}

	/** Lines that have a comment, a problem, or anything but axis words, feeds and plain motion codes. */
	public int[] noted() {
		return noted.clone();
	}

	/** Lines with a program number, a statement that begins with an O word, or a percent sign. */
	int[] headers() {
		return headers;
	}

	/** Whether a block changes the tool by M6. */
	boolean changesTool() {
		return changesTool;
	}

	/** The plain contours, in order, by whether the chunks before and behind go on plainly. */
	Contour[] contours(boolean before, boolean behind) {
		return contours[(before ? 1 : 0) + (behind ? 2 : 0)];
	}

	/** Whether it begins with plain moves, as many as have to stand beside a contour. */
	boolean plainHead() {
		return plainHead;
	}

	/** Whether it ends with plain moves. */
	boolean plainTail() {
		return plainTail;
	}
}
