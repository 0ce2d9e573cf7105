package truelead.editor.start;

import org.eclipse.core.resources.IFile;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.IProduct;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IStartup;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.ide.IDE;
import org.osgi.service.prefs.BackingStoreException;
import truelead.editor.EditorIds;
import truelead.editor.ProgramEditor;
import truelead.editor.navigate.FirstError;

/** Opens the demo project when our stand-alone workbench starts on a new workspace. Does nothing inside another product. */
public final class FirstStart implements IStartup {

	private static final String PRODUCT = "truelead.editor.workbench";
	private static final String SHOWN = "demo.shown";

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

	private static void open(IFile program) {
		IWorkbenchPage page = PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
		try {
			page.showView(IPageLayout.ID_PROBLEM_VIEW, null, IWorkbenchPage.VIEW_VISIBLE);
			if (IDE.openEditor(page, program) instanceof ProgramEditor editor) {
				FirstError.show(editor);
			}
		} catch (PartInitException cannotOpen) {
			ILog.of(FirstStart.class).log(cannotOpen.getStatus());
		}
	}
}
