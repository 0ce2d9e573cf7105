package truelead.grammar;

import java.util.Locale;
import java.util.Optional;

/**
 * The line before each program of a file that holds several by name: {@code %_N_BRACKET_MPF}.
 *
 * @param name       name of the program, in capitals
 * @param subprogram whether it is made to be called
 */
public record ArchiveHeader(String name, boolean subprogram) {

	private static final String MARK = "%_N_";
	private static final String MAIN = "_MPF";
	private static final String SUB = "_SPF";

	/** The header that a block is; empty for any other block. */
	public static Optional<ArchiveHeader> of(Block block) {
		String text = block.text().strip().toUpperCase(Locale.ROOT);
		boolean subprogram = text.endsWith(SUB);
		if (!text.startsWith(MARK) || !subprogram && !text.endsWith(MAIN) || text.length() <= MARK.length() + MAIN.length()) {
			return Optional.empty();
		}
		return Optional.of(new ArchiveHeader(text.substring(MARK.length(), text.length() - MAIN.length()), subprogram));
	}
}
