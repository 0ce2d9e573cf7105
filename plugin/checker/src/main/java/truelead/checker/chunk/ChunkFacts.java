package truelead.checker.chunk;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntPredicate;
import truelead.grammar.Block;
import truelead.grammar.BlockCursor;
import truelead.grammar.ChannelHeader;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.ProgramText;

/**
 * What the text of a chunk tells by itself, read once: which lines need a look by those who go through a program for something other than
 * its motions, and where plain contours and rows of places are. Lines count from the start of the chunk.
 */
public final class ChunkFacts {

	private final Chunk chunk;
	/** By whether plain moves and chords stand in the chunks before and behind. */
	private final Contour[][] contours = new Contour[16][];
	private final boolean chordsAtHead;
	private final boolean chordsAtTail;
	private final PlaceRun[] places;
	private final Refrain.Turn[] refrains;
	private final boolean plainHead;
	private final boolean plainTail;
	private int blocks;
	private int[] noted = {};
	private int notes;
	private int[] spoken = {};
	private int spokenLines;
	private int[] codes = {};
	private int[] headers = {};
	private boolean changesTool;

	private ChunkFacts(Chunk chunk) {
		this.chunk = chunk;
		PlainLines lines = new PlainLines(chunk.lineEnds() + 1);
		PlainReader reader = new PlainReader(lines);
		BlockPrints prints = new BlockPrints();
		CycleBlocks cycles = new CycleBlocks();
		for (BlockCursor block = chunk.cursor(); block.next();) {
			reader.read(block);
			boolean arc = false;
			if (reader.bare()) {
				blocks++;
				arc = lines.codes[block.line()] > 1;
			} else if (block.plain()) {
				arc = plain(block);
				cycles.read(block);
			} else {
				read(block.line(), block.block());
			}
			if (arc && reader.otherArc(block) || prints.going()) {
				prints.read(block, reader.motion(), arc);
			}
		}
		noted = Arrays.copyOf(noted, notes);
		spoken = Arrays.copyOf(spoken, spokenLines);
		places = PlaceRun.find(lines, cycles);
		refrains = RefrainFinder.find(prints);
		plainHead = ContourFinder.plainHead(lines);
		plainTail = ContourFinder.plainTail(lines);
		int[] chords = ChordLines.find(lines, false, false);
		chordsAtHead = chords.length > 0 && chords[0] == 0;
		chordsAtTail = chords.length > 0 && chords[chords.length - 1] == lines.lines();
		System.arraycopy(ContourFinder.findEach(chunk, lines, chords), 0, contours, 0, 4);
	}

	/** The facts of a chunk. */
	public static ChunkFacts of(Chunk chunk) {
		return chunk.derived(ChunkFacts.class, ChunkFacts::new);
	}

	/**
	 * Reads the facts of all chunks on as many cores as there are: each depends on the text of its chunk alone, so the order makes no
	 * difference.
	 */
	public static void readAll(ProgramText text) {
		text.chunks().parallelStream().forEach(ChunkFacts::of);
	}

	/** A plain block; whether it says G2 or G3. */
	private boolean plain(BlockCursor block) {
		boolean ordinary = true;
		boolean arc = false;
		boolean speaks = false;
		boolean code = false;
		boolean header = false;
		for (int part = 0; part < block.parts(); part++) {
			switch (block.mark(part)) {
				case 'X', 'Y', 'Z', 'I', 'J', 'K', 'F', 'N', 'A', 'B', 'C', 'r', 't', 'v' -> code = true;
				case 'G' -> {
					code = true;
					boolean motion = block.number(part) >= 0 && block.number(part) <= 3;
					ordinary &= motion;
					arc |= block.number(part) == 2 || block.number(part) == 3;
					if (!motion) {
						code((int) Math.round(block.number(part) * 10));
					}
				}
				case 'M' -> {
					code = true;
					ordinary = false;
					changesTool |= block.number(part) == 6;
					// behind a program's end something else begins
					speaks |= block.number(part) == 2 || block.number(part) == 30;
				}
				case 'O' -> {
					code = true;
					ordinary = false;
					header = true;
					speaks = true;
				}
				case '(', ';' -> {
					ordinary = false;
					speaks = true;
				}
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
		take(block.line(), code, !ordinary, speaks, header);
		return arc;
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
				if (word.address() == 'G' && word.value() instanceof Expression.Number number && !ordinary(word)) {
					code((int) Math.round(number.value() * 10));
				}
			}
			head |= element instanceof Element.Percent || element instanceof Element.OStatement;
			code |= !(element instanceof Element.Comment) && !(element instanceof Element.Percent);
		}
		take(line, code, !ordinary, !ordinary, head || ChannelHeader.is(block));
	}

	private static boolean ordinary(Element.Word word) {
		return "XYZIJKFNABC".indexOf(word.address()) >= 0
				|| word.address() == 'G' && word.value() instanceof Expression.Number number && number.value() >= 0 && number.value() <= 3;
	}

	private void take(int line, boolean code, boolean note, boolean speaks, boolean header) {
		blocks += code ? 1 : 0;
		if (note) {
			noted = with(noted, notes++, line);
		}
		if (speaks) {
			spoken = with(spoken, spokenLines++, line);
		}
		if (header) {
			headers = Arrays.copyOf(headers, headers.length + 1);
			headers[headers.length - 1] = line;
		}
	}

	private void code(int tenfold) {
		for (int known : codes) {
			if (known == tenfold) {
				return;
			}
		}
		codes = Arrays.copyOf(codes, codes.length + 1);
		codes[codes.length - 1] = tenfold;
	}

	private static int[] with(int[] lines, int count, int line) {
		int[] room = count == lines.length ? Arrays.copyOf(lines, Math.max(16, count * 2)) : lines;
		room[count] = line;
		return room;
	}

	/** Lines with words or statements. */
	public int blocks() {
		return blocks;
	}

	/** Lines that have a comment, a problem, or anything but axis words, feeds and plain motion codes. */
	public int[] noted() {
		return noted.clone();
	}

	/**
	 * Those of the {@link #noted()} lines that have a comment, a program number, a problem, or anything that is no word with a plain
	 * number.
	 */
	public int[] spoken() {
		return spoken.clone();
	}

	/** The G codes written as plain numbers, times ten, each once, G0 to G3 left out. */
	public int[] codes() {
		return codes.clone();
	}

	/** Whether one of the {@link #codes()} is as asked. */
	public boolean hasCode(IntPredicate asked) {
		for (int code : codes) {
			if (asked.test(code)) {
				return true;
			}
		}
		return false;
	}

	/** Lines with a program number, a statement that begins with an O word, or a percent sign. */
	public int[] headers() {
		return headers;
	}

	/** Whether a block changes the tool by M6. */
	public boolean changesTool() {
		return changesTool;
	}

	/** Blocks in a row that say nothing but places, or one canned cycle beside them, in order. */
	public PlaceRun[] places() {
		return places;
	}

	/** The first turns of what comes again and again, in order. */
	public Refrain.Turn[] refrains() {
		return refrains;
	}

	/** The plain contours, in order, of a chunk that stands between two others; none before the first one and behind the last one. */
	public Contour[] contours(Optional<ChunkFacts> before, Optional<ChunkFacts> behind) {
		boolean plainBefore = before.filter(ChunkFacts::plainTail).isPresent();
		boolean plainBehind = behind.filter(ChunkFacts::plainHead).isPresent();
		boolean chordsBefore = before.filter(facts -> facts.chordsAtTail).isPresent();
		boolean chordsBehind = behind.filter(facts -> facts.chordsAtHead).isPresent();
		int which = (plainBefore ? 1 : 0) + (plainBehind ? 2 : 0) + (chordsBefore ? 4 : 0) + (chordsBehind ? 8 : 0);
		Contour[] known = contours[which];
		if (known == null) {
			PlainLines lines = PlainLines.of(chunk);
			known = ContourFinder.find(chunk, lines, ChordLines.find(lines, chordsBefore, chordsBehind), plainBefore, plainBehind);
			contours[which] = known;
		}
		return known;
	}

	/** Whether it begins with plain moves, as many as have to stand beside a contour. */
	private boolean plainHead() {
		return plainHead;
	}

	/** Whether it ends with plain moves. */
	private boolean plainTail() {
		return plainTail;
	}
}
