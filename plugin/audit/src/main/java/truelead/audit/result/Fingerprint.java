package truelead.audit.result;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import truelead.checker.program.Location;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.checker.rule.Related;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/**
 * A mark by which the same finding is known again in a later state of the program. It is made of the rule, the words it points at and the
 * numbers of the finding. Of a finding on a whole block only the words that say where the tool is count, and the tool: another feed in the
 * block does not make it a new one. It holds no path, no line, no sequence number, no comment and no jump target, so it survives inserted
 * lines, renumbering and a move to another folder. Equal findings of one program are told apart by their order.
 */
public final class Fingerprint {

	/** Name of this way of making the mark; another way gets another name. */
	public static final String NAME = "truelead/block/v2";

	private final Map<String, Integer> seen = new HashMap<>();

	/** The marks of a program's findings, in their order. */
	static List<String> of(List<Finding> findings) {
		Fingerprint marks = new Fingerprint();
		List<String> all = new ArrayList<>();
		for (Finding finding : findings) {
			all.add(marks.next(finding));
		}
		return all;
	}

	private String next(Finding finding) {
		StringBuilder base = new StringBuilder(finding.rule()).append('\n').append(place(finding)).append('\n');
		for (Evidence evidence : finding.evidence()) {
			base.append(evidence.name()).append('=').append(evidence.value()).append('\n');
		}
		int order = seen.merge(base.toString(), 1, Integer::sum);
		return hash(base.append(order).toString());
	}

	/** What the finding points at. Without numbers there are only the words to know a finding on a block by, so all of them count. */
	private static String place(Finding finding) {
		Location at = finding.at();
		ProgramText text = at.file().text();
		if (at.line() >= text.lineCount()) {
			return "";
		}
		Block block = text.block(at.line());
		List<Element> meant = block.elements().stream().filter(element -> means(at.span(), element)).toList();
		if (meant.size() < 2 || finding.evidence().isEmpty()) {
			return words(block, meant);
		}
		StringBuilder place = new StringBuilder(words(block, meant.stream().filter(Fingerprint::saysWhere).toList()));
		finding.related().stream().map(Related::what).filter(what -> what.startsWith(Related.TOOL_CHANGE))
				.forEach(what -> place.append('\n').append(what));
		return place.toString();
	}

	private static boolean means(Span at, Element element) {
		boolean inside = element.span().start() < at.end() && element.span().end() > at.start();
		return inside && !(element instanceof Element.Comment) && !(element instanceof Element.Word word && word.address() == 'N');
	}

	private static boolean saysWhere(Element element) {
		return element instanceof Element.Word word && (word.address() == 'X' || word.address() == 'Y');
	}

	/** The words without blanks and jump targets. */
	private static String words(Block block, List<Element> meant) {
		StringBuilder words = new StringBuilder();
		for (Element element : meant) {
			Span span = element.span();
			int end = element instanceof Element.Jump jump ? jump.target().span().start() : span.end();
			words.append(block.text(), span.start(), Math.max(span.start(), end));
		}
		return words.toString().replace(" ", "").replace("\t", "").toUpperCase(Locale.ROOT);
	}

	private static String hash(String base) {
		try {
			byte[] digest = MessageDigest.getInstance("SHA-256").digest(base.getBytes(StandardCharsets.UTF_8));
			return HexFormat.of().formatHex(digest, 0, 16);
		} catch (NoSuchAlgorithmException absent) {
			throw new IllegalStateException(absent);
		}
	}
}
