package truelead.editor.audit;

import java.io.File;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IResource;
import org.eclipse.core.resources.ResourcesPlugin;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IViewSite;
import truelead.audit.report.ReportFormat;
import truelead.audit.report.ReportRequest;
import truelead.editor.fix.AcceptDialog;
import truelead.editor.look.PlainAction;

/** What can be done in the audit view: again, stop, report, accept, open and close all. */
final class AuditActions {

	private final AuditView view;
	private final TreeViewer tree;

	AuditActions(AuditView view, TreeViewer tree) {
		this.view = view;
		this.tree = tree;
	}

	/** Puts the actions into the view's tool bar, its menu and the tree's context menu, and keeps them enabled as fits. */
	void fill(IViewSite site) {
		Action again = new PlainAction("Audit Again", ISharedImages.IMG_ELCL_SYNCED, () -> view.audit(view.scope(), Optional.empty()));
		Action stop = new PlainAction("Stop", ISharedImages.IMG_ELCL_STOP, view::stop);
		Action report = new PlainAction("Write Report\u2026", "", this::report);
		Action accept = new PlainAction("Accept\u2026", "", this::accept);
		Action close = new PlainAction("Collapse All", ISharedImages.IMG_ELCL_COLLAPSEALL, tree::collapseAll);
		Action open = new PlainAction("Expand All", "", tree::expandAll);
		Runnable enable = () -> {
			boolean idle = !view.running() && !view.scope().programs().isEmpty();
			again.setEnabled(idle);
			report.setEnabled(idle);
			stop.setEnabled(view.running());
			accept.setEnabled(idle && !AuditTree.findings(selected()).isEmpty());
		};
		List.of(again, stop, report, accept, close).forEach(site.getActionBars().getToolBarManager()::add);
		List.of(again, stop, report, accept, open, close).forEach(site.getActionBars().getMenuManager()::add);
		MenuManager menu = new MenuManager();
		List.of(accept, report).forEach(menu::add);
		menu.add(new Separator("additions"));
		Menu shown = menu.createContextMenu(tree.getControl());
		tree.getControl().setMenu(shown);
		tree.addSelectionChangedListener(changed -> enable.run());
		view.watch(enable::run);
		enable.run();
	}

	private List<?> selected() {
		return tree.getStructuredSelection().toList();
	}

	private void report() {
		ask(shell(), view.scope(), ReportFormat.HTML).ifPresent(request -> view.audit(view.scope(), Optional.of(request)));
	}

	/** Asks which report goes where; empty where the person thinks better of it. */
	static Optional<ReportRequest> ask(Shell shell, AuditScope scope, ReportFormat format) {
		ReportDialog dialog = new ReportDialog(shell, scope, format);
		return dialog.open() == Window.OK ? Optional.of(dialog.request()) : Optional.empty();
	}

	/** A report in a project is seen in the explorer at once; pages are shown by what the desktop opens them with. */
	static void show(ReportRequest request) {
		for (IFile written : ResourcesPlugin.getWorkspace().getRoot()
				.findFilesForLocationURI(new File(request.file().orElseThrow()).toURI())) {
			Job.createSystem("Report written", (ICoreRunnable) monitor -> written.refreshLocal(IResource.DEPTH_ZERO, monitor)).schedule();
		}
		boolean page = request.format().page();
		if (page) {
			Program.launch(request.file().orElseThrow());
		}
	}

	private void accept() {
		List<AuditedFinding> findings = AuditTree.findings(selected());
		AcceptDialog dialog = new AcceptDialog(shell(), findings.stream().map(AuditedFinding::marked).toList());
		if (dialog.open() == Window.OK) {
			new Accepting(dialog.acceptance()).accept(shell(), findings);
			findings.stream().map(AuditedFinding::program).distinct().forEach(view::again);
		}
	}

	private Shell shell() {
		return view.getSite().getShell();
	}
}
