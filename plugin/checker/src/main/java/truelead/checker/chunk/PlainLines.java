package truelead.checker.chunk;

import java.util.Arrays;
import truelead.grammar.BlockCursor;
import truelead.grammar.Chunk;
import truelead.grammar.MotionWords;

/**
 * What the blocks of a chunk do to the axes, told from the text alone. A plain one has nothing but N, X, Y, Z, F and one G0 or G1 with plain
 * numbers, and comments, or is an arc of {@link FlatArcs}. Behind another G code none is before a G0, G1, G2 or G3: under a cycle Z is no place to go to.
 */
final class PlainLines {

	/** No plain block. */
	static final byte OTHER = 0;
	/** Moves nothing. */
	static final byte BLANK = 1;
	/** Moves, perhaps along Z alone or not at all. */
	static final byte MOVE = 2;
	/** A flat arc. */
	static final byte ARC = 3;
	/** Surely moves aside, straight. */
	static final byte ASIDE = 4;
	/** Moves aside if X, or Y, differs from where the tool stood behind the last block that is not plain. */
	static final byte ASIDE_BY_X = 5;
	static final byte ASIDE_BY_Y = 6;

	static final byte NO_PLACE = -1;

	/** The level stays. */
	static final byte LEVEL = 0;
	/** The first Z behind a block that is not plain. */
	static final byte FIRST = 1;
	/** A move aside changes the level. */
	static final byte CHANGED = 2;
	/** A move along Z alone goes down, or up. */
	static final byte LOWERED = 3;
	static final byte RAISED = 4;

	final byte[] kinds;
	final byte[] levels;
	/** 0 for G0 and so on up to 3 for G3, -1 for none. */
	final byte[] codes;
	/** The words, in program units; NaN where none is written. */
	final double[] x;
	final double[] y;
	final double[] z;
	final double[] feeds;
	/**
	 * Most decimals of the X and Y words of a block that has nothing else, and may be a place under a cycle: behind a code that is neither G0 nor
	 * G1, or before any code; else {@link #NO_PLACE}.
	 */
	final byte[] places;
	private int behindPlaces;
	/** By how much the radii of an arc at its ends differ; none where there is no arc. */
	private double[] gaps = {};
	private int[] others = new int[16];
	private int otherCount;
	private final LevelRuns levelRuns;
	/** Lines with a feed, and those whose code makes rapids of feeds, or feeds of rapids, or is the first one said. */
	private int[] paced = new int[16];
	private int pacedCount;
	private int paceInForce = -1;
	/** Whether the block read last is nothing but a motion. */
	private boolean motion;
	/** Whether the block read last is nothing but axis words, feed and plain motion codes. */
	private boolean bare;
	/** Whether the motion in force may be another than G0 to G3. */
	private boolean doubt;
	/** 2 or 3 where G2 or G3 is in force; else 0. */
	private int turn;
	private final FlatArcs arcs = new FlatArcs();
	/** Whether the block read last is an arc without a Z from a place that the text before it in the chunk does not tell. */
	private boolean fromAnywhere;
	/** Whether no block before has a G code. */
	private boolean open = true;
	private double lastX = Double.NaN;
	private double lastY = Double.NaN;
	private double lastZ = Double.NaN;

	PlainLines(int lines) {
		kinds = new byte[lines];
		levels = new byte[lines];
		codes = new byte[lines];
		x = new double[lines];
		y = new double[lines];
		z = new double[lines];
		feeds = new double[lines];
		places = new byte[lines];
		levelRuns = new LevelRuns(lines);
	}

	int lines() {
		return kinds.length;
	}

	/** Number of blocks that are not plain. */
	int others() {
		return otherCount;
	}

	/** Whether a block is not plain. */
	boolean other(BlockCursor block) {
		return kinds[block.line()] == OTHER;
	}

	/** Whether a block is an arc that shows by the text before it that it is no flat part of a circle: a helix, a full circle, an open one. */
	boolean otherArc(BlockCursor block) {
		return other(block) && !fromAnywhere;
	}

	/** Whether the block read last is nothing but a motion, so that the words of the cursor tell of it. */
	boolean motion() {
		return motion;
	}

	/** Whether the block read last is nothing but block number, axis words, feed and plain motion codes, and at least one of them. */
	boolean bare() {
		return bare;
	}

	/** The line behind the last one that may be a place under a cycle. */
	int behindPlaces() {
		return behindPlaces;
	}

	/** Line of a block that is not plain. */
	int other(int index) {
		return others[index];
	}

	/** How many lines before a line say a feed, or change from rapids to feeds or back. */
	int pacesBefore(int line) {
		int found = Arrays.binarySearch(paced, 0, pacedCount, line);
		return found >= 0 ? found : -found - 1;
	}

	/** A line that says a feed, or changes from rapids to feeds or back, by how many do so before it; beyond all lines where there is none. */
	int pace(int number) {
		return number < pacedCount ? paced[number] : kinds.length;
	}

	/** The first line from one on that says a motion code; beyond all lines where there is none. */
	int coded(int from) {
		int line = from;
		while (line < codes.length && codes[line] < 0) {
			line++;
		}
		return line;
	}

	/** The most straight moves with a Z that follow each other and all lead up, or all lead down. */
	int mostOneWay() {
		return levelRuns.mostOneWay(z);
	}

	/** Whether a block changes the level that a block before it has said. */
	boolean changesLevel(int line) {
		return levels[line] >= CHANGED;
	}

	/** Whether a block moves, perhaps. */
	boolean moves(int line) {
		return kinds[line] >= MOVE;
	}

	/** By how much the radii of an arc at its ends differ; -1 for what is no arc. */
	double gap(int line) {
		return kinds[line] == ARC ? gaps[line] : -1;
	}

	/** Whether what a block does depends on where the tool stood behind the last block that is not plain. */
	boolean dependsOnEntry(int line) {
		return kinds[line] > ASIDE || levels[line] == FIRST;
	}

	/** All blocks of a chunk. */
	static PlainLines of(Chunk chunk) {
		PlainLines lines = new PlainLines(chunk.lineEnds() + 1);
		for (BlockCursor block = chunk.cursor(); block.next();) {
			lines.read(block);
		}
		return lines;
	}

	/** Takes the blocks in order. */
	void read(BlockCursor block) {
		fromAnywhere = false;
		motion = block.moves();
		if (motion) {
			MotionWords words = block.words();
			write(block.line(), words.x(), words.y(), words.z(), words.feed(), words.code());
			bare = !said(words.r());
			take(block.line(), words.i(), words.j(), words.r(), words.decimals());
		} else {
			parts(block);
		}
	}

	private void write(int line, double wordX, double wordY, double wordZ, double wordF, int code) {
		x[line] = wordX;
		y[line] = wordY;
		z[line] = wordZ;
		feeds[line] = wordF;
		codes[line] = (byte) code;
		int pace = code < 0 ? paceInForce : Math.min(code, 1);
		if (pace != paceInForce || said(wordF)) {
			paceInForce = pace;
			paced = pacedCount == paced.length ? Arrays.copyOf(paced, pacedCount * 2) : paced;
			paced[pacedCount++] = line;
		}
	}

	/** A block that is not nothing but a motion, or has words twice, of which the last one counts. */
	private void parts(BlockCursor block) {
		double wordX = Double.NaN;
		double wordY = Double.NaN;
		double wordZ = Double.NaN;
		double wordF = Double.NaN;
		double wordI = Double.NaN;
		double wordJ = Double.NaN;
		double wordR = Double.NaN;
		byte code = -1;
		int decimalsX = 0;
		int decimalsY = 0;
		boolean plain = block.plain();
		boolean otherCode = !plain;
		boolean remarked = plain && block.parts() == 0;
		for (int part = 0; plain && part < block.parts(); part++) {
			double value = block.number(part);
			switch (block.mark(part)) {
				case 'X' -> {
					wordX = value;
					decimalsX = block.decimals(part);
				}
				case 'Y' -> {
					wordY = value;
					decimalsY = block.decimals(part);
				}
				case 'Z' -> wordZ = value;
				case 'F' -> wordF = value;
				case 'G' -> {
					plain = code < 0 && (value == 0 || value == 1 || value == 2 || value == 3);
					otherCode |= !plain;
					code = (byte) value;
				}
				case 'I' -> wordI = value;
				case 'J' -> wordJ = value;
				case 'R' -> wordR = value;
				case '(', ';' -> remarked = true;
				case 'N' -> {
					// moves nothing
				}
				default -> plain = false;
			}
		}
		int line = block.line();
		write(line, wordX, wordY, wordZ, wordF, code);
		bare = plain && !remarked && !said(wordR);
		if (plain) {
			take(line, wordI, wordJ, wordR, Math.max(decimalsX, decimalsY));
		} else {
			doubt = otherCode || doubt && code < 0;
			open &= code < 0 && !otherCode;
			turn = otherCode || code == 0 || code == 1 ? 0 : code < 0 ? turn : code;
			places[line] = NO_PLACE;
			otherwise(line);
		}
	}

	/** A block with nothing but plain words, the others of them being written. */
	private void take(int line, double i, double j, double r, int decimals) {
		int code = codes[line];
		if (code >= 0) {
			doubt = false;
			open = false;
			turn = code <= 1 ? 0 : code;
		}
		boolean sayX = said(x[line]);
		boolean sayY = said(y[line]);
		boolean sayZ = said(z[line]);
		boolean bent = said(i) || said(j) || said(r);
		boolean place = (open || doubt) && !bent && turn == 0 && code < 0 && !sayZ && !said(feeds[line]) && (sayX || sayY);
		places[line] = place ? (byte) decimals : NO_PLACE;
		behindPlaces = place ? line + 1 : behindPlaces;
		if (!doubt && turn != 0 && (bent || sayX || sayY || sayZ)) {
			arc(line, i, j, r);
		} else if (!doubt && !bent) {
			place(line, sayX, sayY, sayZ);
		} else {
			otherwise(line);
		}
	}

	/** An arc; what is no flat one, or lacks its centre, is not plain. */
	private void arc(int line, double i, double j, double r) {
		double toX = said(x[line]) ? x[line] : lastX;
		double toY = said(y[line]) ? y[line] : lastY;
		double gap = said(z[line]) ? Double.NaN : arcs.gap(turn, lastX, lastY, toX - lastX, toY - lastY, i, j, r);
		fromAnywhere = !said(z[line]) && !(said(lastX) && said(lastY));
		if (!said(gap)) {
			otherwise(line);
			return;
		}
		gaps = gaps.length == 0 ? new double[kinds.length] : gaps;
		gaps[line] = gap;
		kinds[line] = ARC;
		levelRuns.interrupt();
		lastX = toX;
		lastY = toY;
	}

	private void otherwise(int line) {
		kinds[line] = OTHER;
		levelRuns.interrupt();
		others = otherCount == others.length ? Arrays.copyOf(others, otherCount * 2) : others;
		others[otherCount++] = line;
		lastX = Double.NaN;
		lastY = Double.NaN;
		lastZ = Double.NaN;
	}

	private void place(int line, boolean sayX, boolean sayY, boolean sayZ) {
		boolean aside = sayX && said(lastX) && x[line] != lastX || sayY && said(lastY) && y[line] != lastY;
		kinds[line] = aside ? ASIDE : sayX && !said(lastX) ? ASIDE_BY_X : sayY && !said(lastY) ? ASIDE_BY_Y : sayX || sayY || sayZ ? MOVE : BLANK;
		if (kinds[line] != BLANK) {
			arcs.interrupt();
		}
		levelRuns.straight(line, sayZ);
		levels[line] = !sayZ || z[line] == lastZ ? LEVEL : said(lastZ) ? CHANGED : FIRST;
		if (kinds[line] == MOVE && levels[line] == CHANGED) {
			// not asked of moves aside: on a surface the answer is anybody's guess, which costs the processor time
			levels[line] = z[line] < lastZ ? LOWERED : RAISED;
		}
		lastX = sayX ? x[line] : lastX;
		lastY = sayY ? y[line] : lastY;
		lastZ = sayZ ? z[line] : lastZ;
	}

	/** Whether a word is written. */
	static boolean said(double word) {
		return word == word;
	}
}
