package truelead.help;

import java.util.ArrayList;
import java.util.List;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Node;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;

/** A table in a page: rows of cells. Standard Markdown has none and reads it as a paragraph whose lines begin with an upright stroke. */
public final class Table extends CustomBlock {

	/** A row; its children are cells. */
	public static final class Row extends CustomNode {
	}

	/** A cell; its children are what stands in it. */
	public static final class Cell extends CustomNode {
	}

	private Table() {
	}

	/** Puts tables in the place of the paragraphs that are tables. */
	static void findIn(Node tree) {
		List<Paragraph> found = new ArrayList<>();
		tree.accept(new AbstractVisitor() {
			@Override
			public void visit(Paragraph paragraph) {
				if (paragraph.getFirstChild() instanceof Text text && text.getLiteral().startsWith("|")) {
					found.add(paragraph);
				}
			}
		});
		for (Paragraph paragraph : found) {
			paragraph.insertBefore(of(paragraph));
			paragraph.unlink();
		}
	}

	/** The rows of this table; the first one is its heading. */
	public List<Row> rows() {
		List<Row> rows = new ArrayList<>();
		for (Node child = getFirstChild(); child != null; child = child.getNext()) {
			rows.add((Row) child);
		}
		return rows;
	}

	private static Table of(Paragraph paragraph) {
		Table table = new Table();
		Row row = new Row();
		Node inline = paragraph.getFirstChild();
		while (inline != null) {
			Node next = inline.getNext();
			if (inline instanceof SoftLineBreak) {
				table.add(row);
				row = new Row();
			} else if (inline instanceof Text text) {
				add(row, text.getLiteral());
			} else {
				row.getLastChild().appendChild(inline);
			}
			inline = next;
		}
		table.add(row);
		return table;
	}

	/** The stroke at a line's start opens the first cell, the one at its end a cell that stays empty. */
	private static void add(Row row, String text) {
		String[] pieces = text.split("\\|", -1);
		for (int i = 0; i < pieces.length; i++) {
			if (i > 0) {
				row.appendChild(new Cell());
			}
			if (row.getLastChild() != null && !pieces[i].isBlank()) {
				row.getLastChild().appendChild(new Text(i > 0 ? pieces[i].stripLeading() : pieces[i]));
			}
		}
	}

	private void add(Row row) {
		Node last = row.getLastChild();
		if (last != null && last.getFirstChild() == null) {
			last.unlink();
		}
		boolean underline = row.getFirstChild() != null && row.getFirstChild().getFirstChild() instanceof Text text
				&& text.getLiteral().startsWith("---");
		if (!underline && row.getFirstChild() != null) {
			appendChild(row);
		}
	}
}
