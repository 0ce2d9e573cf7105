package truelead.editor.complete;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.texteditor.templates.TemplatePreferencePage;
import truelead.editor.page.PageTray;

/** The templates for programs, to be changed and added to. */
public final class TemplatesPage extends TemplatePreferencePage {

	public TemplatesPage() {
		setPreferenceStore(ProgramTemplates.preferences());
		setTemplateStore(ProgramTemplates.store());
		setContextTypeRegistry(ProgramTemplates.types());
	}

	@Override
	protected Control createContents(Composite parent) {
		Control page = super.createContents(parent);
		PageTray.install(page, "settings");
		return page;
	}

	@Override
	protected boolean isShowFormatterSetting() {
		return false;
	}

	@Override
	public boolean performOk() {
		boolean done = super.performOk();
		try {
			ProgramTemplates.preferences().save();
		} catch (java.io.IOException cannotSave) {
			setErrorMessage("The templates could not be saved: " + cannotSave.getMessage());
			return false;
		}
		return done;
	}
}
