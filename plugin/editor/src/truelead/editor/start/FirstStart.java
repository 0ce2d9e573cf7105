package truelead.editor.start;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProduct;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.eclipse.ui.part.ISetSelectionTarget;
import org.osgi.service.prefs.BackingStoreException;
import truelead.editor.EditorIds;
import truelead.editor.check.CheckedEditor;
import truelead.editor.demo.DemoProject;
import truelead.editor.navigate.FirstError;

/** Opens the demo project when our stand-alone workbench starts on a new workspace. Does nothing inside another product. */
public final class FirstStart implements IStartup {

	private static final String PRODUCT = "truelead.editor.workbench";
	private static final String SHOWN = "demo.shown";

	/** Percent of the screen's width and height that the window takes at first. */
	private static final int SHARE = 94;

	@Override
	public void earlyStartup() {
		IProduct product = Platform.getProduct();
		IEclipsePreferences preferences = InstanceScope.INSTANCE.getNode(EditorIds.BUNDLE);
		if (product == null || !PRODUCT.equals(product.getId()) || preferences.getBoolean(SHOWN, false)) {
			return;
		}
		preferences.putBoolean(SHOWN, true);
		try {
			preferences.flush();
		} catch (BackingStoreException cannotSave) {
			ILog.of(FirstStart.class).error("Cannot save preferences", cannotSave);
		}
		Job.create("Demo project", (ICoreRunnable) monitor -> {
			IProject project = DemoProject.create(monitor);
			PlatformUI.getWorkbench().getDisplay().asyncExec(() -> open(project.getFile(DemoProject.FIRST)));
		}).schedule();
	}

	/** Nearly the whole screen: program, findings, drawing and outline need the room side by side. */
	private static void enlarge(Shell shell) {
		Rectangle screen = shell.getMonitor().getClientArea();
		int width = screen.width * SHARE / 100;
		int height = screen.height * SHARE / 100;
		if (shell.getSize().x < width) {
			shell.setBounds(screen.x + (screen.width - width) / 2, screen.y + (screen.height - height) / 2, width, height);
		}
	}

	private static void open(IFile program) {
		IWorkbenchWindow window = PlatformUI.getWorkbench().getWorkbenchWindows()[0];
		enlarge(window.getShell());
		IWorkbenchPage page = window.getActivePage();
		if (page.findView(IPageLayout.ID_PROJECT_EXPLORER) instanceof ISetSelectionTarget explorer) {
			explorer.selectReveal(new StructuredSelection(program));
		}
		try {
			OpenedProblems.soon(page.showView(IPageLayout.ID_PROBLEM_VIEW, null, IWorkbenchPage.VIEW_VISIBLE));
			if (IDE.openEditor(page, program) instanceof CheckedEditor editor) {
				FirstError.show(editor);
			}
		} catch (PartInitException cannotOpen) {
			ILog.of(FirstStart.class).log(cannotOpen.getStatus());
		}
	}
}
