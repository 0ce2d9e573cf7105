package truelead.audit.source;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.function.Supplier;
import truelead.grammar.ProgramText;

/**
 * The SHA-256 of a program's bytes, worked out when it is first asked for: most runs never ask, and it costs as much as reading the file.
 */
public final class ContentHash {

	private final Supplier<String> source;
	private String hex = "";

	private ContentHash(Supplier<String> source) {
		this.source = source;
	}

	/** Of a program's text, which gives the bytes it was read from. */
	public static ContentHash of(ProgramText text) {
		return new ContentHash(() -> digest(text.bytes()));
	}

	/** One that is known. */
	public static ContentHash known(String hex) {
		return new ContentHash(() -> hex);
	}

	/** Lower-case hexadecimal. */
	public synchronized String hex() {
		if (hex.isEmpty()) {
			hex = source.get();
		}
		return hex;
	}

	private static String digest(byte[] bytes) {
		try {
			return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
		} catch (NoSuchAlgorithmException absent) {
			throw new IllegalStateException(absent);
		}
	}
}
