package truelead.editor.guide;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.core.resources.IMarker;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.text.BadLocationException;
import org.eclipse.jface.text.IDocument;
import org.eclipse.jface.text.IRegion;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IWorkbenchPart;
import truelead.checker.lesson.Lesson;
import truelead.checker.lesson.Lessons;
import truelead.editor.audit.AuditView;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.check.ShownFindings;
import truelead.editor.fix.MarkedFinding;
import truelead.editor.fix.WhyProposal;
import truelead.editor.lesson.LessonView;
import truelead.editor.page.Reading;
import truelead.help.HelpBook;

/** Finds out what a person asks about: the finding at the caret or selected in a view, else the part itself. */
final class Subject {

	private Subject() {
	}

	/** What the guide tells of a part and what is selected in it; the overview where there is nothing more particular. */
	static Reading of(IWorkbenchPart part, ISelection selection) {
		Optional<Reading> finding = part instanceof CheckedEditor editor ? atCaret(editor) : hasSelection(part) ? selected(selection)
				: Optional.empty();
		return finding.orElseGet(() -> new Reading(HelpBook.named(chapter(part)).orElseGet(HelpBook::overview), "", Optional.empty()));
	}

	/** A part that has none leaves the selection of the one before in force. */
	private static boolean hasSelection(IWorkbenchPart part) {
		return part != null && part.getSite().getSelectionProvider() != null;
	}

	private static String chapter(IWorkbenchPart part) {
		return part instanceof LessonView ? "lessons" : part instanceof AuditView ? "reports" : HelpBook.OVERVIEW;
	}

	/** The worst finding at the caret, else the worst one in its line. */
	private static Optional<Reading> atCaret(CheckedEditor editor) {
		IDocument document = editor.viewer().getDocument();
		Point selected = editor.viewer().getSelectedRange();
		var model = editor.viewer().getAnnotationModel();
		List<FindingAnnotation> found = ShownFindings.at(model, selected.x, selected.y);
		try {
			if (found.isEmpty()) {
				IRegion line = document.getLineInformationOfOffset(selected.x);
				found = ShownFindings.at(model, line.getOffset(), line.getLength());
			}
		} catch (BadLocationException edited) {
			return Optional.empty();
		}
		return found.stream().findFirst().flatMap(annotation -> reading(annotation.finding().rule(), annotation.finding().message(),
				WhyProposal.of(annotation.checked(), annotation.finding()).map(why -> new Reading.Why(why.getDisplayString(),
						() -> why.apply(document)))));
	}

	private static Optional<Reading> selected(ISelection selection) {
		return marked(selection).flatMap(finding -> reading(finding.rule(), finding.message(),
				finding.lesson().map(lesson -> why(lesson, finding::showWhy))));
	}

	/** The way to the lesson of a rule with usual numbers; empty where no lesson tells more about it. */
	static Optional<Reading.Why> lesson(String rule) {
		return Lessons.ofRule(rule).map(lesson -> why(lesson, Runnable::run));
	}

	/** @param show shows it with a finding's numbers, or does what it is given, which shows it with usual ones */
	private static Reading.Why why(Lesson lesson, Consumer<Runnable> show) {
		return new Reading.Why("Show me why: " + lesson.title(), () -> show.accept(() -> LessonView.show(lesson)));
	}

	/** The finding that is selected in a view. */
	static Optional<MarkedFinding> marked(ISelection selection) {
		if (!(selection instanceof IStructuredSelection some) || some.isEmpty()) {
			return Optional.empty();
		}
		Optional<MarkedFinding> audited = Optional.ofNullable(Adapters.adapt(some.getFirstElement(), MarkedFinding.class));
		return audited.or(() -> Optional.ofNullable(Adapters.adapt(some.getFirstElement(), IMarker.class)).flatMap(MarkedFinding::of));
	}

	private static Optional<Reading> reading(String rule, String message, Optional<Reading.Why> why) {
		return HelpBook.named(rule).map(page -> new Reading(page, message, why));
	}
}
