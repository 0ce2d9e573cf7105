package truelead.editor.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.jface.viewers.ISelection;
import org.eclipse.jface.viewers.IStructuredSelection;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.handlers.HandlerUtil;
import org.eclipse.ui.ide.IDE;
import truelead.audit.report.ReportFormat;

/**
 * Audits what is selected, or the program in the editor, and says where that is no program; the second of its two commands writes the page
 * too.
 */
public final class AuditHandler extends AbstractHandler {

	/** The command that asks for a report at once. */
	private static final String WITH_REPORT = "truelead.editor.audit.report";

	@Override
	public Object execute(ExecutionEvent event) throws ExecutionException {
		List<IResource> chosen = chosen(event);
		IWorkbenchPage page = HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage();
		if (!chosen.isEmpty() && !IDE.saveAllEditors(chosen.toArray(IResource[]::new), true)) {
			return null;
		}
		AuditScope scope = AuditScope.of(chosen);
		try {
			AuditView view = (AuditView) page.showView(AuditView.ID);
			if (scope.programs().isEmpty()) {
				view.nothingIn(chosen.isEmpty() ? "what is chosen" : scope.name());
				return null;
			}
			if (event.getCommand().getId().equals(WITH_REPORT)) {
				AuditActions.ask(HandlerUtil.getActiveShellChecked(event), scope, ReportFormat.HTML)
						.ifPresent(request -> view.audit(scope, Optional.of(request)));
			} else {
				view.audit(scope, Optional.empty());
			}
		} catch (PartInitException cannotOpen) {
			throw new ExecutionException(cannotOpen.getMessage(), cannotOpen);
		}
		return null;
	}

	private static List<IResource> chosen(ExecutionEvent event) {
		ISelection selection = HandlerUtil.getCurrentSelection(event);
		List<IResource> chosen = new ArrayList<>();
		if (selection instanceof IStructuredSelection some) {
			for (Object element : some.toList()) {
				Optional.ofNullable(Adapters.adapt(element, IResource.class)).ifPresent(chosen::add);
			}
		}
		IEditorPart editor = HandlerUtil.getActiveEditor(event);
		if (chosen.isEmpty() && editor != null) {
			Optional.ofNullable(Adapters.adapt(editor.getEditorInput(), IFile.class)).ifPresent(chosen::add);
		}
		return chosen;
	}
}
