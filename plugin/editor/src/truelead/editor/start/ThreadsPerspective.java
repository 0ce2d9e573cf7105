package truelead.editor.start;

import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;
import org.eclipse.ui.IPlaceholderFolderLayout;
import truelead.editor.audit.AuditView;
import truelead.editor.guide.GuideView;
import truelead.editor.lesson.LessonView;
import truelead.editor.thread.ThreadView;
import truelead.editor.walk.WalkView;

/**
 * Programs and the walk on the left, the editor in the middle, findings and the audit below it, outline and the thread at the caret on the
 * right.
 */
public final class ThreadsPerspective implements IPerspectiveFactory {

	/** Its id in plugin.xml. */
	public static final String ID = "truelead.editor.perspective";

	@Override
	public void createInitialLayout(IPageLayout layout) {
		String middle = layout.getEditorArea();
		layout.addView(IPageLayout.ID_PROJECT_EXPLORER, IPageLayout.LEFT, 0.17f, middle);
		layout.addView(WalkView.ID, IPageLayout.BOTTOM, 0.25f, IPageLayout.ID_PROJECT_EXPLORER);
		layout.addView(IPageLayout.ID_OUTLINE, IPageLayout.RIGHT, 0.66f, middle);
		layout.addView(ThreadView.ID, IPageLayout.BOTTOM, 0.3f, IPageLayout.ID_OUTLINE);
		IFolderLayout below = layout.createFolder("truelead.editor.below", IPageLayout.BOTTOM, 0.72f, middle);
		below.addView(IPageLayout.ID_PROBLEM_VIEW);
		below.addPlaceholder(AuditView.ID);
		IPlaceholderFolderLayout beside = layout.createPlaceholderFolder("truelead.editor.lessons", IPageLayout.RIGHT, 0.45f, middle);
		beside.addPlaceholder(LessonView.ID);
		beside.addPlaceholder(GuideView.ID);
		layout.addNewWizardShortcut("org.eclipse.ui.wizards.new.file");
		layout.addNewWizardShortcut("org.eclipse.ui.wizards.new.folder");
		layout.addShowViewShortcut(IPageLayout.ID_PROBLEM_VIEW);
		layout.addShowViewShortcut(ThreadView.ID);
		layout.addShowViewShortcut(AuditView.ID);
		layout.addShowViewShortcut(LessonView.ID);
		layout.addShowViewShortcut(GuideView.ID);
		layout.addShowViewShortcut(WalkView.ID);
		layout.addShowViewShortcut(IPageLayout.ID_OUTLINE);
	}
}
