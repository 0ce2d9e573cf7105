package truelead.audit.source;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import truelead.audit.terminal.Complaint;

/**
 * Paths and their text, the same in every locale. In a locale without UTF-8 Java's own conversion loses characters; a file URI keeps the
 * bytes.
 */
public final class Paths {

	private Paths() {
	}

	/** The path a person typed. A text that can be no path ends the command with a complaint. */
	public static Path of(String typed) {
		if (typed.isEmpty()) {
			throw new Complaint("an empty file name");
		}
		try {
			if (ascii(typed) || !foreignLocale()) {
				return Path.of(typed);
			}
			Path folder = Path.of("").toAbsolutePath();
			String base = typed.startsWith("/") ? "" : folder.toUri().getRawPath();
			return Path.of(URI.create("file://" + base + (base.isEmpty() || base.endsWith("/") ? "" : "/") + percent(typed)));
		} catch (IllegalArgumentException notAPath) {
			throw new Complaint("not a file name: " + typed);
		}
	}

	/** The last name of a path as text. */
	public static String name(Path path) {
		Path name = path.getFileName();
		if (name == null) {
			return path.toString();
		}
		String text = name.toString();
		if (!foreignLocale() || ascii(text) && text.indexOf('?') < 0) {
			return text;
		}
		String raw = path.toAbsolutePath().toUri().getRawPath();
		String trimmed = raw.endsWith("/") ? raw.substring(0, raw.length() - 1) : raw;
		return unpercent(trimmed.substring(trimmed.lastIndexOf('/') + 1));
	}

	private static boolean foreignLocale() {
		return !"UTF-8".equalsIgnoreCase(System.getProperty("sun.jnu.encoding")) && java.io.File.separatorChar == '/';
	}

	private static boolean ascii(String text) {
		for (int i = 0; i < text.length(); i++) {
			if (text.charAt(i) >= 0x80) {
				return false;
			}
		}
		return true;
	}

	private static String percent(String path) {
		StringBuilder uri = new StringBuilder();
		for (byte b : path.getBytes(StandardCharsets.UTF_8)) {
			char c = (char) (b & 0xFF);
			if (c == '/' || c == '.' || c == '-' || c == '_' || c < 0x80 && Character.isLetterOrDigit(c)) {
				uri.append(c);
			} else {
				uri.append('%').append(Character.forDigit(c >> 4, 16)).append(Character.forDigit(c & 15, 16));
			}
		}
		return uri.toString();
	}

	private static String unpercent(String raw) {
		byte[] bytes = new byte[raw.length()];
		int count = 0;
		for (int i = 0; i < raw.length(); i++) {
			if (raw.charAt(i) == '%' && i + 2 < raw.length()) {
				bytes[count++] = (byte) Integer.parseInt(raw.substring(i + 1, i + 3), 16);
				i += 2;
			} else {
				bytes[count++] = (byte) raw.charAt(i);
			}
		}
		return new String(bytes, 0, count, StandardCharsets.UTF_8);
	}
}
