package truelead.checker.chunk;

import java.util.Arrays;
import truelead.grammar.BlockCursor;
import truelead.grammar.MotionWords;

/**
 * Prints of the blocks of a chunk: two blocks of one print have the same words but for N, X and Y, so that they do the same, perhaps at
 * another place. Taken from an arc on, up to a block that no refrain has in it; that one is the last of a stretch. The blocks taken are
 * numbered from 0, without those between stretches.
 */
final class BlockPrints {

	/** The print of a block that is more than motions in the XY plane, and that no refrain has in it. */
	static final long NONE = 0;

	/** The print of no words. */
	private static final long EMPTY = 17;

	private static final int PLACING = 1;
	private static final int ABSOLUTE = 2;
	private static final int INCREMENTAL = 4;
	private static final int ARC = 8;
	/** Beside the words: which of X and Y are there. */
	private static final long WITH_X = 0x51L;
	private static final long WITH_Y = 0x1F3L;

	private static final int FIRST_ROOM = 32;

	private boolean going;
	private int count;
	private int[] lines = {};
	private long[] prints = {};
	private byte[] flags = {};
	private byte[] decimals = {};
	private double[] x = {};
	private double[] y = {};

	/** Number of blocks taken; 0 where there is no arc. */
	int count() {
		return count;
	}

	/** The line of a block in the chunk. */
	int line(int block) {
		return lines[block];
	}

	/** Whether the next block is taken although it is no arc. */
	boolean going() {
		return going;
	}

	/** The print of a block. */
	long print(int block) {
		return prints[block];
	}

	/** Whether a block has X or Y, and nothing else but a rapid and the absolute distance mode, so that a refrain may begin with it. */
	boolean placing(int block) {
		return (flags[block] & PLACING) != 0;
	}

	/** Whether a block says G90. */
	boolean absolute(int block) {
		return (flags[block] & ABSOLUTE) != 0;
	}

	/** Whether a block says G91. */
	boolean incremental(int block) {
		return (flags[block] & INCREMENTAL) != 0;
	}

	/** Whether a block says G2 or G3. */
	boolean arc(int block) {
		return (flags[block] & ARC) != 0;
	}

	/** X, or Y, as written; NaN where it is not. */
	double word(int block, boolean first) {
		return first ? x[block] : y[block];
	}

	/** The most decimals that a word of the path is written with. */
	int decimals(int block) {
		return decimals[block];
	}

	/**
	 * Takes the blocks in order.
	 *
	 * @param motion whether the block is nothing but a motion
	 * @param arc    whether the block is plain and says G2 or G3
	 */
	void read(BlockCursor block, boolean motion, boolean arc) {
		if (!going && !arc) {
			return;
		}
		if (count == prints.length) {
			resize(Math.max(FIRST_ROOM, count * 2));
		}
		lines[count] = block.line();
		if (motion) {
			motion(block.words());
		} else if (block.plain()) {
			plain(block);
		}
		going = prints[count] != NONE;
		count++;
	}

	private void resize(int room) {
		lines = Arrays.copyOf(lines, room);
		prints = Arrays.copyOf(prints, room);
		flags = Arrays.copyOf(flags, room);
		decimals = Arrays.copyOf(decimals, room);
		x = Arrays.copyOf(x, room);
		y = Arrays.copyOf(y, room);
	}

	/** The words in an order of its own: a block that is more than a motion has them in that of the text, and its print is another one. */
	private void motion(MotionWords words) {
		if (words.turns()) {
			return;
		}
		long print = EMPTY;
		print = with(print, 'Z', words.z());
		print = with(print, 'I', words.i());
		print = with(print, 'J', words.j());
		print = with(print, 'R', words.r());
		boolean placing = print == EMPTY && !PlainLines.said(words.feed());
		if (PlainLines.said(words.feed())) {
			print = mixed(print, 'F', words.feed()) * 31 + words.feedDecimals();
		}
		int flag = placing ? PLACING : 0;
		if (words.code() >= 0) {
			print = mixed(print, 'G', words.code());
			flag = code(words.code(), flag);
		}
		take(print, flag, words.x(), words.y(), words.decimals());
	}

	private static long with(long print, char mark, double value) {
		return PlainLines.said(value) ? mixed(print, mark, value) : print;
	}

	private void plain(BlockCursor block) {
		double wordX = Double.NaN;
		double wordY = Double.NaN;
		long print = EMPTY;
		int most = 0;
		int flag = PLACING;
		for (int part = 0; part < block.parts(); part++) {
			char mark = block.mark(part);
			double value = block.number(part);
			switch (mark) {
				case 'N' -> {
					// numbers a block, whatever it does
				}
				case 'X', 'Y' -> {
					if (PlainLines.said(mark == 'X' ? wordX : wordY)) {
						return;
					}
					wordX = mark == 'X' ? value : wordX;
					wordY = mark == 'Y' ? value : wordY;
					most = Math.max(most, block.decimals(part));
				}
				case 'Z', 'I', 'J', 'K', 'R' -> {
					print = mixed(print, mark, value);
					most = Math.max(most, block.decimals(part));
					flag &= ~PLACING;
				}
				case 'F', 'D' -> {
					print = mixed(print, mark, value) * 31 + block.decimals(part);
					flag &= ~PLACING;
				}
				case 'G' -> {
					print = mixed(print, mark, value);
					flag = code(value, flag);
					if (flag < 0) {
						return;
					}
				}
				default -> {
					return;
				}
			}
		}
		take(print, flag, wordX, wordY, most);
	}

	private void take(long others, int flag, double wordX, double wordY, int most) {
		x[count] = wordX;
		y[count] = wordY;
		decimals[count] = (byte) most;
		boolean anywhere = (flag & PLACING) != 0 && (PlainLines.said(wordX) || PlainLines.said(wordY));
		flags[count] = (byte) (anywhere ? flag : flag & ~PLACING);
		long print = anywhere ? others : mixed(others, (PlainLines.said(wordX) ? WITH_X : 0) + (PlainLines.said(wordY) ? WITH_Y : 0));
		prints[count] = print == NONE ? 1 : print;
	}

	/** The flags with those of a G code; below 0 where the code is none of a path. */
	private static int code(double code, int flag) {
		return (int) code != code ? -1 : switch ((int) code) {
			case 0 -> flag;
			case 2, 3 -> (flag | ARC) & ~PLACING;
			case 1, 17, 40, 41, 42 -> flag & ~PLACING;
			case 90 -> flag | ABSOLUTE;
			case 91 -> (flag | INCREMENTAL) & ~PLACING;
			default -> -1;
		};
	}

	private static long mixed(long print, char mark, double value) {
		return mixed(mixed(print, mark), Double.doubleToLongBits(value));
	}

	private static long mixed(long print, long more) {
		long mixed = (print ^ more) * 0x9E3779B97F4A7C15L;
		return mixed ^ mixed >>> 29;
	}
}
