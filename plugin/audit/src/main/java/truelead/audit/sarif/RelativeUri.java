package truelead.audit.sarif;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * File names as URI references relative to the folder the command was called in, as RFC 3986 has them: parted by slashes, UTF-8
 * percent-encoded.
 */
public final class RelativeUri {

	private static final String PLAIN = "-._~!$&'()*+,;=@/";

	private RelativeUri() {
	}

	/** The reference for a shown name; an absolute name below the folder of the call becomes relative, another one a file URI. */
	public static String of(String shown) {
		String name = File.separatorChar == '\\' ? shown.replace('\\', '/') : shown;
		String here = slashed(System.getProperty("user.dir", "")) + "/";
		if (name.startsWith(here)) {
			name = name.substring(here.length());
		}
		boolean absolute = name.startsWith("/") || name.length() > 1 && name.charAt(1) == ':' && File.separatorChar == '\\';
		String encoded = encode(simplified(name));
		return absolute ? "file://" + (encoded.startsWith("/") ? "" : "/") + encoded : encoded;
	}

	/** The file name in a reference: what stands behind the last slash, decoded. */
	public static String fileName(String uri) {
		String last = uri.substring(uri.lastIndexOf('/') + 1);
		byte[] bytes = new byte[last.length() * 3];
		int count = 0;
		for (int i = 0; i < last.length(); i++) {
			int hex = last.charAt(i) == '%' && i + 2 < last.length() ? hex(last, i + 1) : -1;
			if (hex >= 0) {
				bytes[count++] = (byte) hex;
				i += 2;
			} else {
				for (byte b : last.substring(i, i + 1).getBytes(StandardCharsets.UTF_8)) {
					bytes[count++] = b;
				}
			}
		}
		return new String(bytes, 0, count, StandardCharsets.UTF_8);
	}

	private static int hex(String text, int at) {
		int high = Character.digit(text.charAt(at), 16);
		int low = Character.digit(text.charAt(at + 1), 16);
		return high < 0 || low < 0 ? -1 : high * 16 + low;
	}

	private static String slashed(String path) {
		return path.replace('\\', '/');
	}

	private static String simplified(String name) {
		Deque<String> parts = new ArrayDeque<>();
		boolean rooted = name.startsWith("/");
		for (String part : name.split("/")) {
			if (part.equals("..") && !parts.isEmpty() && !parts.peekLast().equals("..")) {
				parts.removeLast();
			} else if (!part.isEmpty() && !part.equals(".")) {
				parts.addLast(part);
			}
		}
		return (rooted ? "/" : "") + String.join("/", parts);
	}

	private static String encode(String name) {
		StringBuilder uri = new StringBuilder();
		for (byte b : name.getBytes(StandardCharsets.UTF_8)) {
			char c = (char) (b & 0xFF);
			if (c < 0x80 && (Character.isLetterOrDigit(c) || PLAIN.indexOf(c) >= 0)) {
				uri.append(c);
			} else {
				uri.append('%').append(Character.toUpperCase(Character.forDigit(c >> 4, 16)))
						.append(Character.toUpperCase(Character.forDigit(c & 15, 16)));
			}
		}
		return uri.toString();
	}
}
