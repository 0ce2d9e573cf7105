package truelead.audit.run;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ArrayList;
import truelead.checker.machine.Location;
import truelead.checker.rule.Evidence;
import truelead.checker.rule.Finding;
import truelead.grammar.Block;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;
import truelead.grammar.Span;

/**
 * A mark by which the same finding is known again in a later state of the program. It is made of the rule, the words it points at and the numbers
 * of the finding. It holds no path, no line, no sequence number, no comment and no jump target, so it survives inserted lines,
 * renumbering and a move to another folder. Equal findings of one program are told apart by their order.
 */
public final class Fingerprint {

	/** Name of this way of making the mark; another way gets another name. */
	public static final String NAME = "truelead/block/v1";

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
		StringBuilder base = new StringBuilder(finding.rule()).append('\n').append(words(finding.at())).append('\n');
		for (Evidence evidence : finding.evidence()) {
			base.append(evidence.name()).append('=').append(evidence.value()).append('\n');
		}
		int order = seen.merge(base.toString(), 1, Integer::sum);
		return hash(base.append(order).toString());
	}

	/** The words of the block that the finding points at, without blanks, comments, N words and jump targets. */
	static String words(Location at) {
		ProgramText text = at.file().text();
		if (at.line() >= text.lineCount()) {
			return "";
		}
		Block block = text.block(at.line());
		StringBuilder words = new StringBuilder();
		for (Element element : block.elements()) {
			Span span = element.span();
			boolean meant = span.start() < at.span().end() && span.end() > at.span().start();
			if (!meant || element instanceof Element.Comment || element instanceof Element.Word word && word.address() == 'N') {
				continue;
			}
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
