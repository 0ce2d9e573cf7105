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
		boolean visible = false;
		int longest = 0;
		int lineOfLongest = 1;
		int line = 1;
		int lineStart = head;
		for (int i = head; i <= tail; i++) {
			int b = i < tail ? bytes[i] & 0xFF : '\n';
			if (b > ' ') {
				visible |= b != 0x7F;
			} else if (b == '\n' || b == '\r') {
				if (i - lineStart > longest) {
					longest = i - lineStart;
					lineOfLongest = line;
				}
				lineStart = i + 1;
				line += b == '\r' && i + 1 < tail && bytes[i + 1] == '\n' ? 0 : 1;
			} else if (strange(b)) {
				strange++;
			}
		}
		return new ByteCensus(strange, visible, longest, lineOfLongest, tail - head);
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
