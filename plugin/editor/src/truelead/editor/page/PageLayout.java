package truelead.editor.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import truelead.editor.page.Passage.Style;
import truelead.help.HelpBook;
import truelead.help.HelpPage;
import truelead.help.Table;

/** Lays a page of the guide out as text: names of pages become links, samples stand as in the editor, tables become lists. */
public final class PageLayout extends AbstractVisitor {

	private static final int STEP = 3;

	private final StringBuilder text = new StringBuilder();
	private final List<Passage.Look> looks = new ArrayList<>();
	private final List<Passage.Indent> lines = new ArrayList<>();
	private final Consumer<HelpPage> open;
	private int line;

	private PageLayout(Consumer<HelpPage> open) {
		this.open = open;
	}

	/** Lays out what is to be read. */
	public static Passage of(Reading reading, Consumer<HelpPage> open) {
		PageLayout layout = new PageLayout(open);
		Node title = reading.page().tree().getFirstChild();
		layout.blocks(title, title.getNext());
		layout.above(reading);
		layout.blocks(title.getNext(), null);
		return new Passage(layout.text.toString().stripTrailing() + "\n", layout.looks, layout.lines);
	}

	/** What the page has to do with the finding that led to it, and the way to its lesson. */
	private void above(Reading reading) {
		if (!reading.finding().isEmpty()) {
			put(reading.finding(), Style.STRONG);
			end(2);
		}
		reading.why().ifPresent(why -> {
			put(why.words(), Style.LINK, why.show());
			end(2);
		});
	}

	private void blocks(Node first, Node end) {
		for (Node block = first; block != end; block = block.getNext()) {
			block.accept(this);
		}
	}

	@Override
	public void visit(Heading heading) {
		put(words(heading), heading.getLevel() == 1 ? Style.TITLE : Style.HEADING);
		end(heading.getLevel() == 1 ? 2 : 1);
	}

	@Override
	public void visit(Paragraph paragraph) {
		visitChildren(paragraph);
		end(paragraph.getParent() instanceof ListItem ? 1 : 2);
	}

	@Override
	public void visit(BulletList list) {
		visitChildren(list);
		end(1);
	}

	@Override
	public void visit(OrderedList list) {
		visitChildren(list);
		end(1);
	}

	@Override
	public void visit(ListItem item) {
		lines.add(new Passage.Indent(line, STEP - 1, false));
		text.append("\u2022 ");
		visitChildren(item);
	}

	@Override
	public void visit(CustomBlock block) {
		List<Table.Row> rows = ((Table) block).rows();
		for (Table.Row row : rows.subList(Math.min(1, rows.size()), rows.size())) {
			lines.add(new Passage.Indent(line, STEP, false));
			for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
				if (cell == row.getFirstChild()) {
					put(words(cell), Style.STRONG);
				} else if (cell.getFirstChild() != null) {
					text.append(" \u2014 ");
					visitChildren(cell);
				}
			}
			end(1);
		}
		end(1);
	}

	@Override
	public void visit(FencedCodeBlock block) {
		program(block.getLiteral());
	}

	@Override
	public void visit(IndentedCodeBlock block) {
		program(block.getLiteral());
	}

	/** A program's lines; under them, in the pages' own form, lines of circumflexes that point at what is found, and what is said of it. */
	private void program(String literal) {
		int above = text.length();
		for (String block : literal.lines().toList()) {
			if (block.strip().startsWith("^")) {
				int from = block.indexOf('^');
				int to = from;
				while (to < block.length() && block.charAt(to) == '^') {
					to++;
				}
				looks.add(new Passage.Look(above + from, to - from, Style.MARKED, () -> {
				}));
				lines.add(new Passage.Indent(line, 2 * STEP, true));
				put(block.substring(to).strip(), Style.SAID);
			} else {
				above = text.length();
				lines.add(new Passage.Indent(line, STEP, true));
				put(block, Style.PROGRAM);
			}
			end(1);
		}
		end(1);
	}

	@Override
	public void visit(HtmlBlock remark) {
		// remarks for those who write the README
	}

	@Override
	public void visit(Text words) {
		text.append(words.getLiteral());
	}

	@Override
	public void visit(SoftLineBreak end) {
		text.append(' ');
	}

	@Override
	public void visit(HardLineBreak end) {
		end(1);
	}

	@Override
	public void visit(StrongEmphasis strong) {
		put(words(strong), Style.STRONG);
	}

	@Override
	public void visit(Code code) {
		HelpBook.named(code.getLiteral()).filter(PageLayout::isRule)
				.ifPresentOrElse(page -> put(code.getLiteral(), Style.LINK, () -> open.accept(page)),
						() -> put(code.getLiteral(), Style.CODE));
	}

	/** A chapter's name is an ordinary word, such as the lesson or the machine; a rule's name is not. */
	private static boolean isRule(HelpPage page) {
		return !page.group().equals(HelpBook.CHAPTERS);
	}

	private static String words(Node node) {
		StringBuilder words = new StringBuilder();
		node.accept(new AbstractVisitor() {
			@Override
			public void visit(Text text) {
				words.append(text.getLiteral());
			}

			@Override
			public void visit(Code code) {
				words.append(code.getLiteral());
			}

			@Override
			public void visit(SoftLineBreak end) {
				words.append(' ');
			}
		});
		return words.toString();
	}

	private void put(String words, Style style) {
		put(words, style, () -> {
			// only links lead anywhere
		});
	}

	private void put(String words, Style style, Runnable link) {
		if (!words.isEmpty()) {
			looks.add(new Passage.Look(text.length(), words.length(), style, link));
			text.append(words);
		}
	}

	private void end(int count) {
		text.append("\n".repeat(count));
		line += count;
	}
}
