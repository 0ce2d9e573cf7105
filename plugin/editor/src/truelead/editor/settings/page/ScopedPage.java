package truelead.editor.settings.page;

import java.util.Map;
import java.util.Optional;
import org.eclipse.core.resources.IProject;
import org.eclipse.core.runtime.Adapters;
import org.eclipse.core.runtime.IAdaptable;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.preference.PreferencePage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.IWorkbenchPropertyPage;
import org.eclipse.ui.dialogs.PreferencesUtil;
import truelead.editor.page.PageTray;
import truelead.editor.settings.CheckSettings;

/** A page of settings: of the workspace among the preferences, of a project, which go before, among its properties. */
public abstract class ScopedPage extends PreferencePage implements IWorkbenchPreferencePage, IWorkbenchPropertyPage {

	private final String id;
	private IAdaptable element;
	private Button own;
	private Composite settings;

	/** @param id of the page among the preferences */
	protected ScopedPage(String id) {
		this.id = id;
	}

	@Override
	protected Control createContents(Composite parent) {
		Composite page = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(page);
		ownSettings().ifPresent(label -> {
			Composite line = Layouts.columns(page, 2);
			own = Layouts.check(line, label, this::ownChanged);
			own.setSelection(hasOwn());
			GridDataFactory.fillDefaults().grab(true, false).applyTo(own);
			if (project().isPresent()) {
				Link workspace = new Link(line, SWT.NONE);
				workspace.setText("<a>Workspace settings\u2026</a>");
				workspace.addSelectionListener(SelectionListener.widgetSelectedAdapter(
						pressed -> PreferencesUtil.createPreferenceDialogOn(getShell(), id, new String[] { id }, Map.of()).open()));
			}
		});
		settings = new Composite(page, SWT.NONE);
		GridLayoutFactory.fillDefaults().applyTo(settings);
		GridDataFactory.fillDefaults().grab(true, true).applyTo(settings);
		fill(settings);
		ownChanged();
		PageTray.install(page, chapter());
		return page;
	}

	/** The chapter of the guide that F1 opens. */
	protected String chapter() {
		return "settings";
	}

	/** What stands at the box that is ticked where these settings count; empty where they always do. */
	protected Optional<String> ownSettings() {
		return Optional.empty();
	}

	/** Whether these settings count now. */
	protected boolean hasOwn() {
		return true;
	}

	/** Puts what is set into the page. */
	protected abstract void fill(Composite page);

	/** Writes what was chosen; false where that cannot be done and the page says why. */
	protected abstract boolean save(boolean counts);

	/** The box was ticked, or not any more. */
	protected void ownChanged() {
		Layouts.enable(settings, own());
	}

	/** Whether these settings are to count. */
	protected final boolean own() {
		return own == null || own.getSelection();
	}

	/** Says whether these settings are to count. */
	protected final void own(boolean counts) {
		if (own != null) {
			own.setSelection(counts);
			ownChanged();
		}
	}

	/** The project whose properties these are; empty for the workspace's preferences. */
	protected final Optional<IProject> project() {
		return Optional.ofNullable(element).map(adaptable -> Adapters.adapt(adaptable, IProject.class));
	}

	/** Those of the project or of the workspace. */
	protected final CheckSettings settings() {
		return project().map(CheckSettings::of).orElseGet(CheckSettings::ofWorkspace);
	}

	@Override
	public final boolean performOk() {
		return save(own());
	}

	@Override
	public void init(IWorkbench workbench) {
		// nothing to prepare
	}

	@Override
	public final IAdaptable getElement() {
		return element;
	}

	@Override
	public final void setElement(IAdaptable element) {
		this.element = element;
	}
}
