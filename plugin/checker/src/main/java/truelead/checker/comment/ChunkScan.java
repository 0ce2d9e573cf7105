package truelead.checker.comment;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.callout.CommentReading;
import truelead.checker.callout.ToolListLine;
import truelead.checker.callout.ToolListParts;
import truelead.checker.chunk.ChunkFacts;
import truelead.checker.job.NoteReader;
import truelead.grammar.Block;
import truelead.grammar.BlockCursor;
import truelead.grammar.Chunk;
import truelead.grammar.Element;
import truelead.grammar.Expression;
import truelead.grammar.KnownBlocks;
import truelead.grammar.Problem;
import truelead.grammar.Span;

/**
 * One reading of a chunk's lines for what is not motion; kept beside the chunk, so that an edit reads only what it changed. Lines count
 * from 0.
 */
final class ChunkScan {

	/** A comment that may speak of threads and tools. */
	record Remark(int line, Span span, String text, int tool, boolean name, boolean code) {
	}

	/** A part of a block that could not be read. */
	record Unread(int line, Problem problem) {
	}

	private static final String MESSAGE = "MSG";
	private static final int TOOL_CHANGE = 6;
	private static final Set<Double> PROGRAM_END = Set.of(2.0, 30.0);

	final List<Remark> remarks = new ArrayList<>();
	final List<Unread> unread = new ArrayList<>();
	/** Lines at which programs and subprograms begin, and those behind a program's end, where local ones stand without a name. */
	final List<Integer> programStarts = new ArrayList<>();
	/** G codes times ten, plain motions left out; -1 for one whose number is computed. */
	final Set<Integer> gCodes = new HashSet<>();
	/** Names of statements of richer languages. */
	final Set<String> statements = new HashSet<>();
	final int blocks;

	private ChunkScan(Chunk chunk, ChunkFacts facts) {
		blocks = facts.blocks();
		for (int code : facts.codes()) {
			gCodes.add(code);
		}
		BlockCursor cursor = chunk.cursor();
		KnownBlocks known = new KnownBlocks();
		for (int line : facts.spoken()) {
			cursor.goTo(line);
			read(line, known.at(cursor));
		}
	}

	/** The scan of a chunk: only the lines that say more than numbers are looked at. */
	static ChunkScan of(Chunk chunk) {
		return chunk.derived(ChunkScan.class, fresh -> new ChunkScan(fresh, ChunkFacts.of(fresh)));
	}

	/** Whether nothing but plain motion stands in the chunk. */
	boolean silent() {
		return remarks.isEmpty() && unread.isEmpty() && programStarts.isEmpty() && gCodes.isEmpty() && statements.isEmpty();
	}

	/** Whether another text of these lines says the same besides its motions. */
	boolean same(ChunkScan other) {
		return blocks == other.blocks && remarks.equals(other.remarks) && unread.equals(other.unread)
				&& programStarts.equals(other.programStarts) && gCodes.equals(other.gCodes) && statements.equals(other.statements);
	}

	private void statement(int line, Element element) {
		if (element instanceof Element.Statement statement) {
			statements.add(statement.name());
			if (statement.name().equals(MESSAGE) && statement.arguments().size() == 1
					&& statement.arguments().get(0) instanceof Expression.Text shown) {
				message(line, shown);
			}
		} else if (element instanceof Element.ModalCall call) {
			statements.add(call.name());
		}
	}

	/** What a program shows to people at the machine is as good as a comment. */
	private void message(int line, Expression.Text shown) {
		if (CalloutReader.mayHoldCallout(shown.text())) {
			int start = shown.span().start() + 1;
			remarks.add(new Remark(line, new Span(start, start + shown.text().length()), shown.text(), -1, false, false));
		}
	}

	/** A tool that is called by its name, TAP_M8 or DRILL_D6.8, says there what it is. */
	private void named(int line, Expression.Text name) {
		String said = name.text().replace('_', ' ');
		CommentReading reading = CalloutReader.readComment(said);
		// GEWINDE_M8 names no tool, and a thread without doubt
		boolean threading = reading.tool().map(tool -> tool.kind().threading()).orElseGet(() -> reading.callouts().stream()
				.anyMatch(Callout::certain));
		said = threading ? said : withoutBareNumbers(said);
		if (threading || CalloutReader.readComment(said).tool().isPresent() || CalloutReader.sizeInName(said)) {
			remarks.add(new Remark(line, new Span(name.span().start() + 1, name.span().start() + 1 + said.length()), said, -1, true, true));
		}
	}

	/** Whether one or two digits stand alone behind a blank. */
	private static boolean parted(String said, int blank) {
		int end = blank + 1;
		while (end < said.length() && Character.isDigit(said.charAt(end))) {
			end++;
		}
		return blank < said.length() && said.charAt(blank) == ' ' && end > blank + 1 && end <= blank + 3
				&& (end == said.length() || said.charAt(end) == ' ');
	}

	/**
	 * Of other tools 68 may be 6.8, 68 or the sixty-eighth: blanks for numbers that have neither a point or stroke nor a letter right
	 * before them, and for D8_5, which may be 8.5 or the fifth of 8.
	 */
	private static String withoutBareNumbers(String said) {
		StringBuilder sure = new StringBuilder(said);
		for (int start = 0; start < said.length(); start++) {
			int end = start;
			while (end < said.length() && (Character.isDigit(said.charAt(end)) || ".,/-".indexOf(said.charAt(end)) >= 0)) {
				end++;
			}
			boolean letter = start > 0 && Character.isLetter(said.charAt(start - 1));
			boolean bare = end > start && said.substring(start, end).chars().allMatch(Character::isDigit);
			// the D of D8_5 by itself would be a drill by letter
			for (int at = letter ? start - 1 : start; at < end && bare && (!letter || parted(said, end)); at++) {
				sure.setCharAt(at, ' ');
			}
			start = Math.max(start, end - 1);
		}
		return sure.toString();
	}

	/** A label, or a word that a richer language has as a block's name (NAT02): nothing is done in its line. */
	private static boolean name(Element element, Block block) {
		return element instanceof Element.Label || element instanceof Element.Opaque opaque && block.text().substring(opaque.span().start(),
				opaque.span().end()).strip().chars().allMatch(Character::isLetterOrDigit);
	}

	/** A comment, in parts where it lists several tools. */
	private void remark(int line, Element.Comment comment, int tool, boolean code) {
		String text = comment.text();
		int start = comment.textSpan().start();
		List<Span> parts = ToolListParts.of(text);
		for (Span part : parts.size() > 1 && NoteReader.isNote(text) ? List.of(new Span(0, text.length())) : parts) {
			remarks.add(new Remark(line, new Span(start + part.start(), start + part.end()), text.substring(part.start(), part.end()), tool,
					false, code));
		}
	}

	/** Whether a program ends with a block in any case. */
	private static boolean ends(Block block) {
		boolean end = false;
		for (Element element : block.elements()) {
			if (element instanceof Element.Conditional || element instanceof Element.BlockDelete) {
				return false;
			}
			end |= element instanceof Element.Word word && word.address() == 'M' && word.value() instanceof Expression.Number number
					&& PROGRAM_END.contains(number.value());
		}
		return end;
	}

	/** (5) before (M6 TAP): the number of a line of a list, with another comment behind it. */
	private static boolean number(Element.Comment comment, Block block) {
		return ToolListLine.numberAlone(comment.text()).isPresent() && block.elements().stream().anyMatch(element ->
				element instanceof Element.Comment tool && tool.span().start() > comment.span().start());
	}

	private void read(int line, Block block) {
		boolean code = false;
		boolean change = false;
		int tool = -1;
		for (Element element : block.elements()) {
			if (element instanceof Element.Word word) {
				change |= word.address() == 'T' || word.address() == 'M' && word.value() instanceof Expression.Number number
						&& number.value() == TOOL_CHANGE;
				code |= word.address() != 'N' && word.address() != 'O';
				if (word.address() == 'T' && word.value() instanceof Expression.Number number) {
					tool = tool < 0 ? (int) number.value() : tool;
				} else if (word.address() == 'T' && word.value() instanceof Expression.Text name) {
					named(line, name);
				} else if (word.address() == 'O') {
					programStarts.add(line);
				} else if (word.address() == 'G') {
					gCodes.add(word.value() instanceof Expression.Number number ? (int) Math.round(number.value() * 10) : -1);
				}
			} else if (element instanceof Element.OStatement statement) {
				if (statement.keyword() == Element.OKeyword.SUB) {
					programStarts.add(line);
				}
			} else if (!(element instanceof Element.Comment) && !(element instanceof Element.Percent)) {
				code |= !name(element, block);
				statement(line, element);
			}
		}
		if (ends(block)) {
			programStarts.add(line + 1);
		}
		block.problems().forEach(problem -> unread.add(new Unread(line, problem)));
		for (Element element : block.elements()) {
			if (element instanceof Element.Comment comment
					&& (comment.text().indexOf(':') >= 0 || CalloutReader.mayHoldCallout(comment.text())
							|| change && CalloutReader.sizeAlone(comment.text()) || !code && number(comment, block))) {
				remark(line, comment, tool, code);
			}
		}
	}
}
