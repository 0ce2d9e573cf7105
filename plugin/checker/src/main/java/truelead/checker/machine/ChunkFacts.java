package truelead.checker.machine;

import java.util.Arrays;
import truelead.grammar.Block;
import truelead.grammar.BlockCursor;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;

/**
 * What the text of a chunk tells by itself, read once: which lines need a look by those who go through a program for something other than its
 * motions, and where plain contours and rows of places are. Lines count from the start of the chunk.
 */
public final class ChunkFacts {

	private final Chunk chunk;
	private final Contour[][] contours = new Contour[4][];
	private final PlaceRun[] places;
	private final Refrain.Turn[] refrains;
	private final boolean plainHead;
	private final boolean plainTail;
	private int blocks;
	private int[] noted = new int[16];
	private int notes;
	private int[] headers = {};
	private boolean changesTool;

	private ChunkFacts(Chunk chunk) {
		this.chunk = chunk;
		PlainLines lines = new PlainLines(chunk.lineEnds() + 1);
		BlockPrints prints = new BlockPrints(chunk.lineEnds() + 1);
		for (BlockCursor block = chunk.cursor(); block.next();) {
			lines.read(block);
			if (lines.other(block) || prints.lines() > 0) {
				prints.read(block);
			}
			if (block.plain()) {
				plain(block);
			} else {
				read(block.line(), block.block());
			}
		}
		noted = Arrays.copyOf(noted, notes);
		places = PlaceRun.find(lines);
		refrains = RefrainFinder.find(prints);
		plainHead = ContourFinder.plainHead(lines);
		plainTail = ContourFinder.plainTail(lines);
		for (int i = 0; i < contours.length; i++) {
			// far most plain chunks stand among plain ones
			contours[i] = lines.others() > 0 || i == 3 ? ContourFinder.find(chunk, lines, (i & 1) != 0, (i & 2) != 0) : null;
		}
	}

	/** The facts of a chunk. */
	public static ChunkFacts of(Chunk chunk) {
		return chunk.derived(ChunkFacts.class, ChunkFacts::new);
	}

	private void plain(BlockCursor block) {
		boolean ordinary = true;
		boolean code = false;
		boolean header = false;
		for (int part = 0; part < block.parts(); part++) {
			switch (block.mark(part)) {
				case 'X', 'Y', 'Z', 'I', 'J', 'K', 'F', 'N', 'A', 'B', 'C' -> code = true;
				case 'G' -> {
					code = true;
					ordinary &= block.number(part) >= 0 && block.number(part) <= 3;
				}
				case 'M' -> {
					code = true;
					ordinary = false;
					changesTool |= block.number(part) == 6;
				}
				case 'O' -> {
					code = true;
					ordinary = false;
					header = true;
				}
				case '(', ';' -> ordinary = false;
				case '%' -> {
					ordinary = false;
					header = true;
				}
				default -> {
					code = true;
					ordinary = false;
				}
			}
		}
		take(block.line(), code, !ordinary, header);
	}

	private void read(int line, Block block) {
		boolean head = false;
		boolean code = false;
		boolean ordinary = block.problems().isEmpty();
		for (Element element : block.elements()) {
			ordinary &= element instanceof Element.Word word && ordinary(word);
			if (element instanceof Element.Word word) {
				head |= word.address() == 'O';
				changesTool |= word.address() == 'M' && word.value() instanceof Expression.Number number && number.value() == 6;
			}
			head |= element instanceof Element.Percent || element instanceof Element.OStatement;
			code |= !(element instanceof Element.Comment) && !(element instanceof Element.Percent);
		}
		take(line, code, !ordinary, head);
	}

	private static boolean ordinary(Element.Word word) {
		return "XYZIJKFNABC".indexOf(word.address()) >= 0
				|| word.address() == 'G' && word.value() instanceof Expression.Number number && number.value() >= 0 && number.value() <= 3;
	}

	private void take(int line, boolean code, boolean note, boolean header) {
		blocks += code ? 1 : 0;
		if (note) {
			noted = notes == noted.length ? Arrays.copyOf(noted, notes * 2) : noted;
			noted[notes++] = line;
		}
		if (header) {
			headers = Arrays.copyOf(headers, headers.length + 1);
			headers[headers.length - 1] = line;
		}
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
	public boolean changesTool() {
		return changesTool;
	}

	/** Blocks in a row that say nothing but places and may stand under a canned cycle, in order. */
	PlaceRun[] places() {
		return places;
	}

	/** The first turns of what comes again and again, in order. */
	Refrain.Turn[] refrains() {
		return refrains;
	}

	/** The plain contours, in order, by whether the chunks before and behind go on plainly. */
	Contour[] contours(boolean before, boolean behind) {
		int which = (before ? 1 : 0) + (behind ? 2 : 0);
		Contour[] known = contours[which];
		if (known == null) {
			known = ContourFinder.find(chunk, PlainLines.of(chunk), before, behind);
			contours[which] = known;
		}
		return known;
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
