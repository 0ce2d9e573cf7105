package truelead.checker.drawing;

/** Text of programs made fit for SVG, XML and HTML: no tag, no attribute's end, no character that XML cannot hold. */
public final class Markup {

	private Markup() {
	}

	/** The text escaped; safe between tags and inside quoted attributes. Characters that XML 1.0 cannot hold become a replacement sign. */
	public static String escape(String text) {
		StringBuilder out = new StringBuilder(text.length() + 16);
		text.codePoints().forEach(c -> {
			switch (c) {
				case '<' -> out.append("&lt;");
				case '>' -> out.append("&gt;");
				case '&' -> out.append("&amp;");
				case '"' -> out.append("&quot;");
				case '\'' -> out.append("&#39;");
				default -> out.appendCodePoint(holds(c) ? c : 0xFFFD);
			}
		});
		return out.toString();
	}

	private static boolean holds(int c) {
		boolean control = c < ' ' && c != '\t' && c != '\n' && c != '\r' || c >= 0x7F && c < 0xA0;
		boolean direction = c >= 0x202A && c <= 0x202E || c >= 0x2066 && c <= 0x2069;
		return !control && !direction && !(c >= 0xD800 && c < 0xE000) && c != 0xFFFE && c != 0xFFFF;
	}
}
