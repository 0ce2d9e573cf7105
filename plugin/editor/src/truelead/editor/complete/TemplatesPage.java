package truelead.editor.complete;

import org.eclipse.ui.texteditor.templates.TemplatePreferencePage;

/** The templates for programs, to be changed and added to. */
public final class TemplatesPage extends TemplatePreferencePage {

	public TemplatesPage() {
		setPreferenceStore(ProgramTemplates.preferences());
		setTemplateStore(ProgramTemplates.store());
		setContextTypeRegistry(ProgramTemplates.types());
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
