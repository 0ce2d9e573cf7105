package truelead.checker.edit;

import java.util.ArrayList;
import java.util.List;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.grammar.Block;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/** What a person does to some lines at once: makes them comments and blocks again, marks them to be skipped, writes them in capitals. */
public final class Blocks {

	private Blocks() {
	}

	/**
	 * Makes the blocks of a range of lines comments, or, where all of them are, blocks again. A comment that holds no block stays one, and
	 * so does one that names a thread.
	 */
	public static Change toggleComment(ProgramText text, int first, int last) {
		List<Replacement> made = new ArrayList<>();
		List<Replacement> undone = new ArrayList<>();
		for (int line = first; line <= last; line++) {
			Block block = text.block(line);
			if (isCode(block)) {
				comment(made, block, text.lineStart(line));
			} else if (!block.elements().isEmpty() && block.elements().get(0) instanceof Element.Comment comment && hidesBlock(comment)) {
				int start = text.lineStart(line);
				undone.add(new Replacement(start + comment.span().start(), comment.textSpan().start() - comment.span().start(), ""));
				if (comment.span().end() > comment.textSpan().end()) {
					undone.add(new Replacement(start + comment.textSpan().end(), comment.span().end() - comment.textSpan().end(), ""));
				}
			}
		}
		return Change.of(made.isEmpty() ? undone : made);
	}

	private static void comment(List<Replacement> made, Block block, int start) {
		List<Element> elements = block.elements();
		int code = 0;
		while (code < elements.size() && !(elements.get(code) instanceof Element.Comment)) {
			code++;
		}
		boolean codeFirst = code > 0 && elements.subList(code, elements.size()).stream().allMatch(Element.Comment.class::isInstance);
		Span written = elements.get(0).span().to(elements.get(Math.max(0, code - 1)).span());
		String text = block.text().substring(written.start(), written.end());
		if (codeFirst && text.indexOf('(') < 0 && text.indexOf(')') < 0) {
			made.add(new Replacement(start + written.start(), 0, "("));
			made.add(new Replacement(start + written.end(), 0, ")"));
		} else {
			made.add(new Replacement(start + elements.get(0).span().start(), 0, ";"));
		}
	}

	private static boolean hidesBlock(Element.Comment comment) {
		Block inside = BlockReader.read(comment.text());
		return isCode(inside) && inside.problems().isEmpty()
				&& inside.elements().stream().noneMatch(element -> element instanceof Element.Opaque || element instanceof Element.Label
						|| element instanceof Element.Statement)
				&& inside.elements().stream().anyMatch(element -> !(element instanceof Element.Comment))
				&& CalloutReader.read(comment.text()).stream().noneMatch(Callout::certain);
	}

	/** Marks the blocks of a range of lines to be skipped, or, where all of them are, takes the mark away. */
	public static Change toggleBlockDelete(ProgramText text, int first, int last) {
		List<Replacement> made = new ArrayList<>();
		List<Replacement> undone = new ArrayList<>();
		for (int line = first; line <= last; line++) {
			Block block = text.block(line);
			if (!isCode(block)) {
				continue;
			}
			Element start = block.elements().get(0);
			int at = text.lineStart(line) + start.span().start();
			if (start instanceof Element.BlockDelete) {
				undone.add(new Replacement(at, start.span().length(), ""));
			} else {
				made.add(new Replacement(at, 0, "/"));
			}
		}
		return Change.of(made.isEmpty() ? undone : made);
	}

	/** Writes what is no comment, no text in quotation marks and no name in brackets in capitals; lengths stay. */
	public static Change upperCase(ProgramText text, int first, int last) {
		List<Replacement> replacements = new ArrayList<>();
		for (int line = first; line <= last; line++) {
			String written = text.line(line);
			char[] capitals = written.toCharArray();
			for (Element element : text.block(line).elements()) {
				if (!(element instanceof Element.Comment)) {
					capitals(capitals, element.span());
				}
			}
			String changed = new String(capitals);
			if (!changed.equals(written)) {
				replacements.add(new Replacement(text.lineStart(line), written.length(), changed));
			}
		}
		return Change.of(replacements);
	}

	private static void capitals(char[] line, Span span) {
		char closes = 0;
		for (int i = span.start(); i < span.end(); i++) {
			char c = line[i];
			if (closes != 0) {
				closes = c == closes ? 0 : closes;
			} else if (c == '"') {
				closes = '"';
			} else if (c == '<') {
				closes = '>';
			} else {
				line[i] = Character.toUpperCase(c);
			}
		}
	}

	/** Whether the block does something and is no head or tail of a program. */
	private static boolean isCode(Block block) {
		boolean code = false;
		for (Element element : block.elements()) {
			if (element instanceof Element.Percent || element instanceof Element.Word word && word.address() == 'O') {
				return false;
			}
			code |= !(element instanceof Element.Comment);
		}
		return code;
	}
}
