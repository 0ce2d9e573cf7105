package truelead.help;

import java.util.Map;
import java.util.Set;
import org.commonmark.node.Code;
import org.commonmark.node.Node;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;

/** Pages as HTML for the platform's help: the name of a rule leads to its page. */
final class PageHtml {

	private static final HtmlRenderer RENDERER = HtmlRenderer.builder().escapeHtml(true).nodeRendererFactory(Nodes::new).build();

	private static final String STYLE = "body{font:13px/1.5 sans-serif;max-width:48em;margin:1.5em}pre,code{font:12px/1.45 monospace}"
			+ "pre{padding:.6em .8em;border:1px solid #8888;overflow:auto}td,th{padding:.2em .8em .2em "
			+ "0;text-align:left;vertical-align:top}";

	private PageHtml() {
	}

	static String of(HelpPage page) {
		return "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>" + page.title() + "</title><style>" + STYLE
				+ "</style></head>\n<body>\n" + RENDERER.render(page.tree()) + "</body></html>\n";
	}

	/** Tables and names of rules; everything else is drawn as Markdown usually is. */
	private static final class Nodes implements NodeRenderer {

		private final HtmlNodeRendererContext context;
		private final HtmlWriter html;

		Nodes(HtmlNodeRendererContext context) {
			this.context = context;
			html = context.getWriter();
		}

		@Override
		public Set<Class<? extends Node>> getNodeTypes() {
			return Set.of(Table.class, Code.class);
		}

		@Override
		public void render(Node node) {
			if (node instanceof Table table) {
				render(table);
			} else if (node instanceof Code code) {
				boolean page = HelpBook.named(code.getLiteral()).isPresent();
				if (page) {
					html.tag("a", Map.of("href", code.getLiteral() + ".html"));
				}
				html.tag("code");
				html.text(code.getLiteral());
				html.tag("/code");
				if (page) {
					html.tag("/a");
				}
			}
		}

		private void render(Table table) {
			html.line();
			html.tag("table");
			String kind = "th";
			for (Table.Row row : table.rows()) {
				html.tag("tr");
				for (Node cell = row.getFirstChild(); cell != null; cell = cell.getNext()) {
					html.tag(kind);
					for (Node inline = cell.getFirstChild(); inline != null; inline = inline.getNext()) {
						context.render(inline);
					}
					html.tag("/" + kind);
				}
				html.tag("/tr");
				html.line();
				kind = "td";
			}
			html.tag("/table");
			html.line();
		}
	}
}
