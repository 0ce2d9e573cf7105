package truelead.editor.check;

import java.util.List;
import java.util.Locale;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Fix;

/** Findings in words for a hover. */
final class FindingText {

	private FindingText() {
	}

	/** In the few marks of HTML that the platform's hovers show. */
	static String html(List<FindingAnnotation> annotations) {
		StringBuilder html = new StringBuilder();
		for (FindingAnnotation annotation : annotations) {
			if (!html.isEmpty()) {
				html.append("<br><br>");
			}
			append(html, annotation.finding());
		}
		return html.toString();
	}

	private static void append(StringBuilder html, Finding finding) {
		html.append("<b>").append(finding.severity().name().toLowerCase(Locale.ROOT)).append(' ').append(escape(finding.rule())).append("</b><br>");
		html.append(escape(finding.message()));
		if (!finding.evidence().isEmpty()) {
			html.append("<ul>");
			for (Evidence evidence : finding.evidence()) {
				html.append("<li>").append(escape(evidence.name())).append(' ').append(escape(evidence.value())).append(": ")
						.append(escape(evidence.origin())).append("</li>");
			}
			html.append("</ul>");
		}
		for (Fix fix : finding.fixes()) {
			html.append("<br>").append(escape(fix.title())).append(fix.safe() ? "" : " (" + escape(fix.why()) + ")");
		}
	}

	/** The text with what HTML would take for its own marks written out. */
	static String escape(String text) {
		return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\n", "<br>");
	}
}
