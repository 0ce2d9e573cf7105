package truelead.audit.source;

import java.nio.charset.StandardCharsets;
import truelead.grammar.Block;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;

/** Whether a file without extension begins like a program, by its first blocks as the grammar reads them. */
final class ProgramLook {

	private static final int LINES = 60;
	private static final int LONGEST = 400;

	private ProgramLook() {
	}

	/** {@code first} is the start of the file; a {@code %} or O number line, or mostly readable blocks with G, M, X, Y, Z or T words, makes a program. */
	static boolean of(byte[] first) {
		if (ByteCensus.of(first).binary()) {
			return false;
		}
		String[] lines = new String(first, StandardCharsets.ISO_8859_1).split("\r\n|\r|\n", LINES + 1);
		int good = 0;
		int bad = 0;
		for (int i = 0; i < Math.min(lines.length, LINES); i++) {
			String line = lines[i].length() > LONGEST ? lines[i].substring(0, LONGEST) : lines[i];
			if (line.isBlank()) {
				continue;
			}
			Block block = BlockReader.read(line);
			if (i == 0 && block.elements().stream().anyMatch(Element.Percent.class::isInstance)) {
				return true;
			}
			if (!block.problems().isEmpty()) {
				bad++;
			} else if (block.words().stream().anyMatch(word -> "GMXYZTO".indexOf(word.address()) >= 0)) {
				good++;
			}
		}
		return good > 0 && good > 2 * bad;
	}
}
