package truelead.editor.walk;

import java.util.Arrays;
import java.util.Iterator;
import java.util.Optional;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.text.Position;
import org.eclipse.jface.text.source.Annotation;
import org.eclipse.jface.text.source.IAnnotationModel;
import org.eclipse.swt.graphics.Point;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.IHandlerService;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.texteditor.ITextEditorActionConstants;
import truelead.editor.check.CheckedEditor;
import truelead.editor.check.FindingAnnotation;
import truelead.editor.check.ShownFindings;
import truelead.editor.demo.DemoProject;
import truelead.editor.navigate.FirstError;
import truelead.editor.thread.ThreadView;

/** Does a step of the walk for a person, the way the person would do it. */
final class Guidance {

	private final IWorkbenchPage page;

	Guidance(IWorkbenchPage page) {
		this.page = page;
	}

	/** Does the step and says whether it did; opens the demo program instead where no program is open. */
	boolean run(Step step) {
		Optional<CheckedEditor> open = program();
		if (step == Step.OPEN || open.isEmpty()) {
			openDemo();
			return step == Step.OPEN;
		}
		page.activate(open.get());
		if (step == Step.RULE || step == Step.FIX || step == Step.WHY) {
			toFinding(open.get());
		}
		try {
			if (step == Step.FIX) {
				IAction assist = open.get().getAction(ITextEditorActionConstants.QUICK_ASSIST);
				assist.run();
			} else if (step == Step.DRAWING) {
				page.showView(ThreadView.ID);
			} else {
				open.get().getSite().getService(IHandlerService.class).executeCommand(step.command(), null);
			}
			return true;
		} catch (PartInitException | CommandException cannot) {
			ILog.of(Guidance.class).error("The step " + step + " of the walk could not be done", cannot);
			return false;
		}
	}

	/** The program in front, else any that is open. */
	private Optional<CheckedEditor> program() {
		if (page.getActiveEditor() instanceof CheckedEditor editor) {
			return Optional.of(editor);
		}
		return Arrays.stream(page.getEditorReferences()).map((IEditorReference reference) -> reference.getEditor(false))
				.filter(CheckedEditor.class::isInstance).map(CheckedEditor.class::cast).findFirst();
	}

	private void openDemo() {
		Job.create("Demo project", (ICoreRunnable) monitor -> {
			var program = DemoProject.create(monitor).getFile(DemoProject.FIRST);
			page.getWorkbenchWindow().getShell().getDisplay().asyncExec(() -> {
				try {
					IEditorPart part = IDE.openEditor(page, program);
					if (part instanceof CheckedEditor editor) {
						FirstError.show(editor);
					}
				} catch (PartInitException cannotOpen) {
					ILog.of(Guidance.class).log(cannotOpen.getStatus());
				}
			});
		}).schedule();
	}

	/** Leaves the caret where a finding is, else selects the first finding of the program. */
	private static void toFinding(CheckedEditor editor) {
		IAnnotationModel model = editor.viewer().getAnnotationModel();
		Point selected = editor.viewer().getSelectedRange();
		if (ShownFindings.at(model, selected.x, selected.y).isEmpty()) {
			int first = Integer.MAX_VALUE;
			for (Iterator<Annotation> all = model.getAnnotationIterator(); all.hasNext();) {
				Annotation annotation = all.next();
				Position position = model.getPosition(annotation);
				if (annotation instanceof FindingAnnotation finding && finding.isQuickFixable() && position != null) {
					first = Math.min(first, position.getOffset());
				}
			}
			if (first < Integer.MAX_VALUE) {
				editor.selectAndReveal(first, 0);
			}
		}
	}
}
