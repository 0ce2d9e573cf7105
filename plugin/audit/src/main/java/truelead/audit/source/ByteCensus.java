package truelead.audit.source;

/**
 * What a file's bytes look like from afar.
 *
 * @param strange       control characters that no program has, the zero bytes of a blank tape leader at either end left out
 * @param visible       whether anything but blanks and control characters is there
 * @param longestLine   length of the longest line, bytes
 * @param lineOfLongest its number, from 1
 * @param length        bytes in all
 */
record ByteCensus(int strange, boolean visible, int longestLine, int lineOfLongest, int length) {

	private static final byte ORDINARY = 0;
	private static final byte LINE_END = 1;
	private static final byte STRANGE = 2;
	/** Any of these bits stands in bytes from the blank on; every byte of every program is asked, and few more. */
	private static final int ABOVE_CONTROLS = 0xE0;
	/** What the control characters are. */
	private static final byte[] KIND = new byte[' '];

	static {
		for (int b = 0; b < ' '; b++) {
			KIND[b] = b == '\n' || b == '\r' ? LINE_END : strange(b) ? STRANGE : ORDINARY;
		}
	}

	static ByteCensus of(byte[] bytes) {
		int head = 0;
		while (head < bytes.length && bytes[head] == 0) {
			head++;
		}
		int tail = bytes.length;
		while (tail > head && bytes[tail - 1] == 0) {
			tail--;
		}
		int strange = 0;
		int longest = 0;
		int lineOfLongest = 1;
		int line = 1;
		int lineStart = head;
		for (int i = head; i <= tail; i++) {
			while (i < tail && (bytes[i] & ABOVE_CONTROLS) != 0) {
				i++;
			}
			byte kind = i < tail ? KIND[bytes[i]] : LINE_END;
			if (kind == ORDINARY) {
				continue;
			}
			if (kind == STRANGE) {
				strange++;
				continue;
			}
			if (i - lineStart > longest) {
				longest = i - lineStart;
				lineOfLongest = line;
			}
			lineStart = i + 1;
			line += i + 1 < tail && bytes[i] == '\r' && bytes[i + 1] == '\n' ? 0 : 1;
		}
		return new ByteCensus(strange, visible(bytes, head, tail), longest, lineOfLongest, tail - head);
	}

	private static boolean visible(byte[] bytes, int head, int tail) {
		for (int i = head; i < tail; i++) {
			int b = bytes[i] & 0xFF;
			if (b > ' ' && b != 0x7F) {
				return true;
			}
		}
		return false;
	}

	/** More than one byte in fifty is a control character no program has. Pictures and compressed files have one in ten, programs none. */
	boolean binary() {
		return (long) strange * 50 > length;
	}

	boolean blank() {
		return !visible;
	}

	/** Tabs, form feeds, reader marks (DC1 to DC4) and the end mark of old systems are usual in programs. */
	private static boolean strange(int b) {
		return b < ' ' && b != '\t' && b != 0x0C && b != 0x1A && !(b >= 0x11 && b <= 0x14);
	}
}
