package truelead.editor.hover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.text.Region;
import org.eclipse.swt.widgets.Display;
import truelead.checker.callout.Callout;
import truelead.checker.callout.CalloutReader;
import truelead.checker.edit.WordMeaning;
import truelead.checker.machine.Budget;
import truelead.checker.profile.MachineProfile;
import truelead.checker.program.Location;
import truelead.checker.program.ProgramFile;
import truelead.checker.summary.ThreadNotes;
import truelead.checker.summary.ThreadSummary;
import truelead.editor.check.CheckedText;
import truelead.editor.check.LiveCheck;
import truelead.grammar.BlockReader;
import truelead.grammar.Element;
import truelead.grammar.ProgramText;

/** What stands at a place of a program means: a callout its thread, a word what it does there and what is in force. */
final class Meaning {

	private static final int LONGEST = 4000;

	/** Lines of a program that is followed while the screen waits for the answer, as it does for the key that shows a hover. */
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
		ProgramText text = check.textOf(document);
		int column = region.getOffset() - document.getLineOffset(line);
		if (Display.getCurrent() != null && text.lineCount() > SHORT) {
			return WordMeaning.brief(text.block(line), column, machine);
		}
		List<String> lines = new ArrayList<>(note(checked.get(), text, line));
		lines.addAll(WordMeaning.of(new ProgramFile(checked.get().program().name(), text), checked.get().check().folder(), machine, line,
				column, Budget.forEditing(machine, () -> false)));
		return lines;
	}

	/** The note that stands behind a threading block, for those who cannot see it there. */
	private static List<String> note(CheckedText checked, ProgramText text, int line) {
		if (checked.program().text() != text) {
			return List.of();
		}
		return ThreadNotes.of(checked.result().work(), block -> block.line() == line && checked.here(Location.of(block)))
				.map(ThreadNotes.Note::text).limit(1).toList();
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
