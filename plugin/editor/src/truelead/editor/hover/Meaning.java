package truelead.editor.hover;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import truelead.checker.summary.ThreadSummary;
import truelead.checker.thread.Callout;
import truelead.checker.thread.CalloutReader;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;

/** What stands at a place of a program means: a callout its thread. */
final class Meaning {

	private static final int LONGEST = 4000;

	private Meaning() {
	}

	/** The callout at an offset, as a range of the document; null where there is none. */
	static IRegion regionAt(IDocument document, int offset) {
		try {
			IRegion line = document.getLineInformationOfOffset(offset);
			for (Found found : callouts(document, line)) {
				if (found.start <= offset && offset < found.end) {
					return new Region(found.start, found.end - found.start);
				}
			}
		} catch (BadLocationException edited) {
			return null;
		}
		return null;
	}

	/** The meaning of what stands in a range, in lines; none where it has none of its own. */
	static List<String> of(IDocument document, IRegion region) {
		List<String> lines = new ArrayList<>();
		try {
			for (Found found : callouts(document, document.getLineInformationOfOffset(region.getOffset()))) {
				if (found.start < region.getOffset() + Math.max(1, region.getLength()) && region.getOffset() < found.end) {
					lines.addAll(ThreadSummary.of(found.callout.spec()));
					lines.addAll(found.callout.assumed());
				}
			}
		} catch (BadLocationException edited) {
			return List.of();
		}
		return lines;
	}

	private record Found(Callout callout, int start, int end) {
	}

	private static List<Found> callouts(IDocument document, IRegion line) throws BadLocationException {
		List<Found> found = new ArrayList<>();
		if (line.getLength() > LONGEST) {
			return found;
		}
		for (Element.Comment comment : BlockReader.read(document.get(line.getOffset(), line.getLength())).comments()) {
			int start = line.getOffset() + comment.textSpan().start();
			for (Callout callout : CalloutReader.read(comment.text())) {
				found.add(new Found(callout, start + callout.start(), start + callout.end()));
			}
		}
		return found;
	}
}
