package truelead.help;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.eclipse.help.IHelpContentProducer;

/** Hands the platform's help the pages of the guide when it asks for {@code NAME.html}. */
public final class BookProducer implements IHelpContentProducer {

	@Override
	public InputStream getInputStream(String bundle, String path, Locale locale) {
		int query = path.indexOf('?');
		String file = query < 0 ? path : path.substring(0, query);
		if (!file.endsWith(".html")) {
			return null;
		}
		return HelpBook.named(file.substring(0, file.length() - ".html".length()))
				.map(page -> new ByteArrayInputStream(PageHtml.of(page).getBytes(StandardCharsets.UTF_8))).orElse(null);
	}
}
