package truelead.checker.callout;

import java.util.List;
import java.util.Optional;
import truelead.checker.thread.Remembered;

/** Reads the threads and tools that a comment names. Any text may come; what is not understood says nothing. */
public final class CalloutReader {
	private static final int LONGEST = 4000;
	/** Comments up to this length are read once; people write the same ones again and again. */
	private static final int SHORT = 200;
	/** A size alone and the words beside it are no longer. */
	private static final int LONGEST_SIZE = 24;
	private static final Remembered<String, CommentReading> READ = new Remembered<>(4000, CalloutReader::readFresh);
	private static final Remembered<String, Boolean> LOOKED_AT = new Remembered<>(4000, Pretest::passes);

	private CalloutReader() {
	}

	/** The threads that a comment asks to be cut. */
	public static List<Callout> read(String commentText) {
		return readComment(commentText).callouts();
	}

	/**
	 * Threads and tools of a comment; cheap for the many comments that speak of neither. Of a text longer than 4,000 characters, which no
	 * person writes into one comment, the first 4,000 are read.
	 */
	public static CommentReading readComment(String commentText) {
		if (!mayHoldCallout(commentText)) {
			return CommentReading.NOTHING;
		}
		return commentText.length() <= SHORT ? READ.of(commentText) : readFresh(commentText);
	}

	private static CommentReading readFresh(String commentText) {
		List<Part> parts = CommentParts.of(shortened(commentText));
		List<ToolDescription> tools = new ToolWords(parts).read();
		boolean tap = tools.stream().findFirst().filter(tool -> tool.kind().tap()).isPresent();
		return new CommentReading(new CalloutJudge(parts, tools).callouts(), tools, HolderWords.read(parts, tap),
				WallWords.thickness(parts), WallWords.drillsThrough(parts, tools));
	}

	/** A callout that stands alone, such as an argument of a command: M6, G1 and 10-24 can be nothing else there. Empty when it is none. */
	public static Optional<Callout> readExactly(String callout) {
		return CalloutJudge.alone(CommentParts.of(shortened(callout)), callout);
	}

	/** The size that is all that a comment at a tool says of it, such as 3.3 HSS; empty where it says more, or none. */
	public static Optional<Dimension> bareSize(String commentText) {
		return BareSize.of(CommentParts.of(shortened(commentText)), false);
	}

	/** The same beside one word that nobody knows, {@code BORER 6.8}. */
	public static Optional<Dimension> sizeOfUnknown(String commentText) {
		return BareSize.of(CommentParts.of(shortened(commentText)), true);
	}

	/**
	 * Whether a comment is a size with decimals and nothing else, {@code D3.3} or {@code Ø 8,5}: no more than that is said of many a drill
	 * where it is changed to.
	 */
	public static boolean sizeAlone(String commentText) {
		return decimals(commentText) && bareSize(commentText).isPresent();
	}

	/** The same of the name of a tool, {@code SPB 5.0}: a word that nobody knows may stand beside the size. */
	public static boolean sizeInName(String name) {
		return decimals(name) && sizeOfUnknown(name).isPresent();
	}

	private static boolean decimals(String text) {
		return text.length() <= LONGEST_SIZE && (text.indexOf('.') >= 0 || text.indexOf(',') >= 0);
	}

	private static String shortened(String text) {
		return text.length() <= LONGEST ? text : text.substring(0, LONGEST);
	}

	/** Whether a comment could name a thread or tool: a look at its words and digits, without reading it. */
	public static boolean mayHoldCallout(String commentText) {
		return commentText.length() <= SHORT ? LOOKED_AT.of(commentText) : Pretest.passes(commentText);
	}
}
