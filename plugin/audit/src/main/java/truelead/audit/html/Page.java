package truelead.audit.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The frame of a page: head with the styles in it, so that the file needs nothing beside it; scripts and loads are forbidden to it. */
final class Page {

	private static final String STYLES = styles();

	private Page() {
	}

	/** Begin of a page up to and with the opening of {@code main}. */
	static String head(String title) {
		return new Html().raw("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"UTF-8\">"
				+ "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"><meta name=\"color-scheme\" "
				+ "content=\"light dark\">"
				+ "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\">")
				.element("title", "", title).raw("<style>\n" + STYLES + "</style></head><body><main>\n").toString();
	}

	/** End of a page. */
	static String foot() {
		return "<footer><p>Truelead checks what it can follow in the program text. It knows nothing of your clamping, of the tool as it "
				+ "stands in the" + " holder, or of how your control is set. Silence is no promise: prove the program out.</p></footer>\n"
				+ "</main></body></html>\n";
	}

	private static String styles() {
		try (InputStream in = Page.class.getResourceAsStream("report.css")) {
			return new String(in.readAllBytes(), StandardCharsets.UTF_8);
		} catch (IOException unreadable) {
			throw new UncheckedIOException(unreadable);
		}
	}
}
