package truelead.editor.hover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.swt.widgets.Display;
import truelead.checker.edit.WordMeaning;
import truelead.checker.machine.Budget;
import truelead.checker.machine.MachineProfile;
import truelead.checker.machine.ProgramFile;
import truelead.checker.summary.ThreadSummary;
import truelead.checker.thread.Callout;
import truelead.checker.thread.CalloutReader;
import truelead.editor.check.CheckedText;
import truelead.editor.check.LiveCheck;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;

/** What stands at a place of a program means: a callout its thread, a word what it does there and what is in force. */
final class Meaning {

	private static final int LONGEST = 4000;

	/** As far as a program is followed where the screen waits for the answer. */
	private static final int SHORT = 20_000;

	private Meaning() {
	}

	/** The callout or word at an offset, as a range of the document; null where there is none. */
	static IRegion regionAt(IDocument document, int offset) {
		try {
			IRegion line = document.getLineInformationOfOffset(offset);
			for (Found found : callouts(document, line)) {
				if (found.start <= offset && offset < found.end) {
					return new Region(found.start, found.end - found.start);
				}
			}
			if (line.getLength() <= LONGEST) {
				return WordMeaning.span(BlockReader.read(document.get(line.getOffset(), line.getLength())), offset - line.getOffset())
						.map(span -> new Region(line.getOffset() + span.start(), span.length())).orElse(null);
			}
		} catch (BadLocationException edited) {
			return null;
		}
		return null;
	}

	/** The meaning of what stands in a range, in lines; none where it has none of its own. */
	static List<String> of(LiveCheck check, IDocument document, IRegion region) {
		List<String> lines = new ArrayList<>();
		try {
			for (Found found : callouts(document, document.getLineInformationOfOffset(region.getOffset()))) {
				if (found.start < region.getOffset() + Math.max(1, region.getLength()) && region.getOffset() < found.end) {
					lines.addAll(ThreadSummary.of(found.callout.spec()));
					lines.addAll(found.callout.assumed());
				}
			}
			if (lines.isEmpty()) {
				lines.addAll(ofWord(check, document, region));
			}
		} catch (BadLocationException edited) {
			return List.of();
		}
		return lines;
	}

	private static List<String> ofWord(LiveCheck check, IDocument document, IRegion region) throws BadLocationException {
		Optional<CheckedText> checked = check.last();
		int line = document.getLineOfOffset(region.getOffset());
		if (checked.isEmpty() || document.getLineLength(line) > LONGEST) {
			return List.of();
		}
		MachineProfile machine = checked.get().result().work().shop().profile();
		Budget whole = Budget.forEditing(machine, () -> false);
		Budget budget = Display.getCurrent() == null ? whole : new Budget(Math.min(SHORT, whole.blocks()), whole.cancelled());
		ProgramFile program = new ProgramFile(checked.get().program().name(), check.textOf(document));
		return WordMeaning.of(program, checked.get().check().folder(), machine, line, region.getOffset() - document.getLineOffset(line), budget);
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
