package truelead.checker.chunk;

import java.util.Arrays;
import truelead.grammar.BlockCursor;
import truelead.grammar.Chunk;

/**
 * What the blocks of a chunk do to the axes, line by line, as {@link PlainReader} has read them from the text alone. A plain one has
 * nothing but N, X, Y, Z, A, B, C, F and one G0 or G1 with plain numbers, and comments, or is an arc of {@link FlatArcs}. Behind another G
 * code none is before a G0, G1, G2 or G3: under a cycle Z is no place to go to.
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
	/** The words of the rotary axes A, B and C, degrees; null for an axis before its first word. */
	private final double[][] turned = new double[3][];
	/**
	 * Most decimals of the X and Y words of a block that has nothing else, and may be a place under a cycle: behind a code that is neither
	 * G0 nor G1, or before any code; else {@link #NO_PLACE}.
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

	/**
	 * A line that says a feed, or changes from rapids to feeds or back, by how many do so before it; beyond all lines where there is none.
	 */
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
		PlainReader reader = new PlainReader(lines);
		for (BlockCursor block = chunk.cursor(); block.next();) {
			reader.read(block);
		}
		return lines;
	}

	/** Writes the words of a line. */
	void write(int line, double wordX, double wordY, double wordZ, double wordF, int code) {
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

	/** Writes the word of a rotary axis of a line: 0 A, 1 B, 2 C; degrees. */
	void turn(int line, int axis, double degrees) {
		if (said(degrees)) {
			if (turned[axis] == null) {
				turned[axis] = new double[kinds.length];
				Arrays.fill(turned[axis], Double.NaN);
			}
			turned[axis][line] = degrees;
		}
	}

	/** The words of a rotary axis, line by line, degrees, NaN where none is written; null for an axis that is never turned. */
	double[] turned(int axis) {
		return turned[axis];
	}

	/** Whether a line may be a place under a cycle, and then with how many decimals. */
	void place(int line, boolean place, int decimals) {
		places[line] = place ? (byte) decimals : NO_PLACE;
		behindPlaces = place ? line + 1 : behindPlaces;
	}

	/** A line that is not plain. */
	void otherwise(int line) {
		kinds[line] = OTHER;
		levelRuns.interrupt();
		others = otherCount == others.length ? Arrays.copyOf(others, otherCount * 2) : others;
		others[otherCount++] = line;
	}

	/** A flat arc whose radii at its ends differ by so much. */
	void arc(int line, double gap) {
		gaps = gaps.length == 0 ? new double[kinds.length] : gaps;
		gaps[line] = gap;
		kinds[line] = ARC;
		levelRuns.interrupt();
	}

	/** A straight move, or none. */
	void straight(int line, byte kind, byte level) {
		kinds[line] = kind;
		levels[line] = level;
		levelRuns.straight(line, said(z[line]));
	}

	/** Whether a word is written. */
	static boolean said(double word) {
		return word == word;
	}
}
