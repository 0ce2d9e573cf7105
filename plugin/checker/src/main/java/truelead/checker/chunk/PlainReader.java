package truelead.checker.chunk;

import static truelead.checker.chunk.PlainLines.said;

import truelead.grammar.BlockCursor;
import truelead.grammar.MotionWords;

/** Reads the blocks of a chunk in order into {@link PlainLines}, and tells of the one read last what others who go along ask. */
final class PlainReader {

	private final PlainLines lines;
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

	PlainReader(PlainLines lines) {
		this.lines = lines;
	}

	/**
	 * Whether the block read last is an arc that shows by the text before it that it is no flat part of a circle: a helix, a full circle,
	 * an open one.
	 */
	boolean otherArc(BlockCursor block) {
		return lines.other(block) && !fromAnywhere;
	}

	/** Whether the block read last is nothing but a motion, so that the words of the cursor tell of it. */
	boolean motion() {
		return motion;
	}

	/** Whether the block read last is nothing but block number, axis words, feed and plain motion codes, and at least one of them. */
	boolean bare() {
		return bare;
	}

	/** Takes the blocks in order. */
	void read(BlockCursor block) {
		fromAnywhere = false;
		motion = block.moves();
		if (motion) {
			MotionWords words = block.words();
			lines.write(block.line(), words.x(), words.y(), words.z(), words.feed(), words.code());
			bare = !said(words.r());
			boolean turned = words.turns();
			for (int axis = 0; turned && axis < 3; axis++) {
				lines.turn(block.line(), axis, words.turned(axis));
			}
			take(block.line(), words.i(), words.j(), words.r(), words.decimals(), turned);
		} else {
			parts(block);
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
		boolean turned = false;
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
				case 'A', 'B', 'C' -> {
					turned = true;
					lines.turn(block.line(), block.mark(part) - 'A', value);
				}
				case 'I' -> wordI = value;
				case 'J' -> wordJ = value;
				case 'R', 'r' -> wordR = value;
				case 't' -> plain = value == 0;
				case '(', ';' -> remarked = true;
				case 'N', 'v' -> {
					// moves nothing
				}
				default -> plain = false;
			}
		}
		int line = block.line();
		lines.write(line, wordX, wordY, wordZ, wordF, code);
		bare = plain && !remarked && !said(wordR);
		if (plain) {
			take(line, wordI, wordJ, wordR, Math.max(decimalsX, decimalsY), turned);
		} else {
			doubt = otherCode || doubt && code < 0;
			open &= code < 0 && !otherCode;
			turn = otherCode || code == 0 || code == 1 ? 0 : code < 0 ? turn : code;
			lines.place(line, false, 0);
			otherwise(line);
		}
	}

	/** A block with nothing but plain words, the others of them being written. */
	private void take(int line, double i, double j, double r, int decimals, boolean turned) {
		int code = lines.codes[line];
		if (code >= 0) {
			doubt = false;
			open = false;
			turn = code <= 1 ? 0 : code;
		}
		boolean sayX = said(lines.x[line]);
		boolean sayY = said(lines.y[line]);
		boolean sayZ = said(lines.z[line]);
		boolean bent = said(i) || said(j) || said(r);
		boolean place = (open || doubt) && !turned && !bent && turn == 0 && code < 0 && !sayZ && !said(lines.feeds[line]) && (sayX || sayY);
		lines.place(line, place, decimals);
		if (!doubt && !turned && turn != 0 && (bent || sayX || sayY || sayZ)) {
			arc(line, i, j, r);
		} else if (!doubt && !bent && !(turned && turn != 0)) {
			straight(line, sayX, sayY, sayZ);
		} else {
			otherwise(line);
		}
	}

	/** An arc; what is no flat one, or lacks its centre, is not plain. */
	private void arc(int line, double i, double j, double r) {
		double toX = said(lines.x[line]) ? lines.x[line] : lastX;
		double toY = said(lines.y[line]) ? lines.y[line] : lastY;
		double gap = said(lines.z[line]) ? Double.NaN : arcs.gap(turn, lastX, lastY, toX - lastX, toY - lastY, i, j, r);
		fromAnywhere = !said(lines.z[line]) && !(said(lastX) && said(lastY));
		if (!said(gap)) {
			otherwise(line);
			return;
		}
		lines.arc(line, gap);
		lastX = toX;
		lastY = toY;
	}

	private void otherwise(int line) {
		lines.otherwise(line);
		lastX = Double.NaN;
		lastY = Double.NaN;
		lastZ = Double.NaN;
	}

	private void straight(int line, boolean sayX, boolean sayY, boolean sayZ) {
		double x = lines.x[line];
		double y = lines.y[line];
		double z = lines.z[line];
		boolean aside = sayX && said(lastX) && x != lastX || sayY && said(lastY) && y != lastY;
		byte kind = aside ? PlainLines.ASIDE : sayX && !said(lastX) ? PlainLines.ASIDE_BY_X : sayY && !said(lastY) ? PlainLines.ASIDE_BY_Y
				: sayX || sayY || sayZ ? PlainLines.MOVE : PlainLines.BLANK;
		if (kind != PlainLines.BLANK) {
			arcs.interrupt();
		}
		byte level = !sayZ || z == lastZ ? PlainLines.LEVEL : said(lastZ) ? PlainLines.CHANGED : PlainLines.FIRST;
		if (kind == PlainLines.MOVE && level == PlainLines.CHANGED) {
			// not asked of moves aside: on a surface the answer is anybody's guess, which costs the processor time
			level = z < lastZ ? PlainLines.LOWERED : PlainLines.RAISED;
		}
		lines.straight(line, kind, level);
		lastX = sayX ? x : lastX;
		lastY = sayY ? y : lastY;
		lastZ = sayZ ? z : lastZ;
	}
}
