package truelead.audit.source;

import java.nio.charset.StandardCharsets;
import java.util.List;
import truelead.grammar.Block;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;

/** Whether a file whose name does not tell begins like a program, by its first blocks as the grammar reads them. */
final class ProgramLook {

	private static final int LINES = 60;
	private static final int LONGEST = 400;
	/** Blocks with a G word that a text of people does not have. */
	private static final int CODES = 2;

	private ProgramLook() {
	}

	/**
	 * {@code first} is the start of the file; a {@code %} or O number line, or mostly readable blocks with G, M, X, Y, Z or T words, makes
	 * a program.
	 */
	static boolean of(byte[] first) {
		if (ByteCensus.of(first).binary()) {
			return false;
		}
		String[] lines = lines(first);
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

	/**
	 * The same for what may be notes of people, a list of tools for instance: most lines are blocks of words alone, and some of them say a
	 * G.
	 */
	static boolean ofText(byte[] first) {
		if (ByteCensus.of(first).binary()) {
			return false;
		}
		int written = 0;
		int blocks = 0;
		int codes = 0;
		String[] lines = lines(first);
		for (int i = 0; i < Math.min(lines.length, LINES); i++) {
			if (lines[i].isBlank() || lines[i].length() > LONGEST) {
				continue;
			}
			Block block = BlockReader.read(lines[i]);
			List<Element.Word> words = block.words();
			boolean alone = block.problems().isEmpty() && block.elements().stream().noneMatch(element -> element instanceof Element.Opaque
					|| element instanceof Element.Unread);
			written += words.isEmpty() && alone ? 0 : 1;
			blocks += alone && !words.isEmpty() ? 1 : 0;
			codes += words.stream().anyMatch(word -> word.address() == 'G' && word.literal()) ? 1 : 0;
		}
		return codes >= CODES && 2 * blocks > written;
	}

	private static String[] lines(byte[] first) {
		return new String(first, StandardCharsets.ISO_8859_1).split("\r\n|\r|\n", LINES + 1);
	}
}
