package truelead.audit.report;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import truelead.audit.terminal.Complaint;
import truelead.audit.terminal.Terminal;

/**
 * What {@code --report FORMAT[:FILE]} asks of a command that writes one text.
 *
 * @param format one of those that the command has, in small letters
 * @param file   where it goes; without one to standard output
 */
public record TextRequest(String format, Optional<String> file) {

	/** Reads {@code html} or {@code html:plan.html}; anything but these formats ends the command with a complaint. */
	public static TextRequest of(String written, String... formats) {
		int colon = written.indexOf(':');
		String format = (colon < 0 ? written : written.substring(0, colon)).toLowerCase(Locale.ROOT);
		if (!List.of(formats).contains(format)) {
			throw new Complaint("--report takes " + String.join(", ", formats) + ", not \"" + written + "\"");
		}
		if (colon == written.length() - 1) {
			throw new Complaint("no file name behind --report " + written);
		}
		return new TextRequest(format, colon < 0 ? Optional.empty() : Optional.of(written.substring(colon + 1)));
	}

	/** Writes the text where it was asked for, a file whole or not at all; what hinders that ends the command with a complaint. */
	public void write(String text, Terminal terminal, Spared spared) {
		if (file.isEmpty()) {
			terminal.say(text);
			return;
		}
		try (WholeFile whole = WholeFile.at(spared.target(file.get()))) {
			whole.writer().write(text);
			whole.finish();
		} catch (IOException failed) {
			throw WholeFile.complaint(file.get(), failed);
		}
	}
}
