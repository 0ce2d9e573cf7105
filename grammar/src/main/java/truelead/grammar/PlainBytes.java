package truelead.grammar;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Optional;

/** Looks eight bytes at a time where lines start in a program of ASCII characters alone, as far most are, before there is a text of it. */
final class PlainBytes {

	private static final VarHandle EIGHT = MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
	private static final long ONES = 0x0101010101010101L;
	/** The sign of each of eight bytes. */
	private static final long SIGNS = 0x80 * ONES;

	private int[] starts;
	/** Number of starts, that of the first line among them. */
	private int count = 1;
	/** The first byte of the next eight is to be a line feed, as a carriage return stands before it. */
	private long due;

	private PlainBytes(int length) {
		starts = new int[length / 16 + 16];
	}

	/**
	 * Starts of the lines, and one more behind the last line end; empty where a byte is no ASCII character or a CR stands without an LF.
	 */
	static Optional<int[]> starts(byte[] bytes) {
		PlainBytes lines = new PlainBytes(bytes.length);
		int whole = bytes.length & -Long.BYTES;
		for (int at = 0; at < whole; at += Long.BYTES) {
			if (!lines.take(at, (long) EIGHT.get(bytes, at))) {
				return Optional.empty();
			}
		}
		byte[] rest = Arrays.copyOf(Arrays.copyOfRange(bytes, whole, bytes.length), Long.BYTES);
		return lines.take(whole, (long) EIGHT.get(rest, 0)) && lines.due == 0 ? Optional.of(Arrays.copyOf(lines.starts, lines.count))
				: Optional.empty();
	}

	private boolean take(int at, long eight) {
		long feeds = signs(eight, '\n');
		long carriages = signs(eight, '\r');
		if ((eight & SIGNS | (carriages << Byte.SIZE | due) & ~feeds) != 0) {
			return false;
		}
		due = carriages >>> Long.SIZE - Byte.SIZE;
		if (count + Long.BYTES > starts.length) {
			starts = Arrays.copyOf(starts, starts.length * 2);
		}
		// whether a line ends here is anybody's guess, that two do is rare
		starts[count] = at + behind(feeds);
		count += (int) ((feeds | -feeds) >>> Long.SIZE - 1);
		for (long more = feeds & feeds - 1; more != 0; more &= more - 1) {
			starts[count++] = at + behind(more);
		}
		return true;
	}

	/** The place behind the first of eight bytes whose sign is set. */
	private static int behind(long signs) {
		return (Long.numberOfTrailingZeros(signs) >>> 3) + 1;
	}

	/** The signs of those of eight ASCII characters that are one. */
	private static long signs(long eight, char wanted) {
		return ~((eight ^ wanted * ONES) + 0x7F * ONES) & SIGNS;
	}
}
