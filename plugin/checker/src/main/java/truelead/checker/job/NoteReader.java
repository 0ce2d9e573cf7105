package truelead.checker.job;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.antlr.v4.runtime.BaseErrorListener;
import org.antlr.v4.runtime.CharStreams;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Recognizer;
import org.antlr.v4.runtime.Token;
import truelead.checker.callout.CalloutReader;
import truelead.checker.program.LengthUnit;
import truelead.checker.thread.Remembered;

/** Reads our notes in comments. Never fails: what is not understood is a remark with its range. */
public final class NoteReader {

	private static final int LONGEST = 1_000;
	/** Of comments up to this length it is kept whether they are notes. */
	private static final int SHORT = 200;
	private static final Remembered<String, Boolean> NOTES = new Remembered<>(4_000, NoteReader::isNote);

	private NoteReader() {
	}

	/**
	 * Reads a comment.
	 *
	 * @param unit the program's unit, for lengths without one of their own
	 * @return empty where the comment does not begin like one of our notes, with its keyword and a colon, or is a remark on the material
	 *         that says nothing known
	 */
	public static Optional<NoteReading> read(ProgramComment comment, LengthUnit unit) {
		if (comment.text().length() > LONGEST || comment.text().indexOf(':') < 0 && !CalloutReader.mayHoldCallout(comment.text())) {
			return Optional.empty();
		}
		if (!(comment.text().length() <= SHORT ? NOTES.of(comment.text()) : isNote(comment.text()))) {
			return Optional.empty();
		}
		CommonTokenStream tokens = tokens(comment.text());
		tokens.fill();
		List<Remark> remarks = new ArrayList<>();
		NoteItems items = new NoteItems(comment, unit, remarks);
		NoteParser parser = new NoteParser(tokens);
		parser.removeErrorListeners();
		parser.addErrorListener(new Listener(items));
		NoteParser.NoteContext tree = parser.note();
		Optional<Note> note = remarks.isEmpty() ? items.read(tree) : Optional.empty();
		if (tokens.get(0).getType() == NoteLexer.MATERIAL) {
			return note.map(understood -> new NoteReading(Optional.of(understood), List.of()));
		}
		return note.isEmpty() && remarks.isEmpty() ? Optional.empty() : Optional.of(new NoteReading(note, remarks));
	}

	private static CommonTokenStream tokens(String text) {
		NoteLexer lexer = new NoteLexer(CharStreams.fromString(text));
		lexer.removeErrorListeners();
		return new CommonTokenStream(lexer);
	}

	/**
	 * Whether a comment begins like one of our notes. Reads only as many tokens as it takes to tell: far most comments are no notes, and
	 * their first word says so.
	 */
	public static boolean isNote(String text) {
		CommonTokenStream tokens = tokens(text);
		int first = tokens.LA(1);
		return switch (first) {
			case NoteLexer.MACHINE -> tokens.LA(2) == NoteLexer.PROFILE && tokens.LA(3) == NoteLexer.COLON;
			case NoteLexer.MATERIAL -> tokens.LA(2) != Token.EOF;
			case NoteLexer.THREAD, NoteLexer.HOLE, NoteLexer.TOOL, NoteLexer.STOCK, NoteLexer.SURFACE, NoteLexer.ALLOW ->
					tokens.LA(2) == NoteLexer.COLON;
			default -> false;
		};
	}

	/** Turns the parser's complaints, which are about missing items alone, into sentences of our own. */
	private static final class Listener extends BaseErrorListener {

		private final NoteItems items;

		Listener(NoteItems items) {
			this.items = items;
		}

		@Override
		public void syntaxError(Recognizer<?, ?> recognizer, Object symbol, int line, int column, String message,
				RecognitionException cause) {
			Token token = (Token) symbol;
			String keyword = ((NoteParser) recognizer).getInputStream().get(0).getText().toUpperCase(Locale.ROOT);
			String shown = token.getType() == Token.EOF ? "the end of the note" : "\"" + token.getText() + "\"";
			items.remark(token, token, NoteWords.expected(keyword) + " must stand before " + shown);
		}
	}
}
