package truelead.editor.settings.page;

import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.CoreException;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import truelead.checker.profile.MachineProfile;
import truelead.checker.profile.ProfileEntry;
import truelead.checker.profile.ProfileKey;
import truelead.checker.profile.ProfileProblem;
import truelead.checker.profile.ProfileSheet;
import truelead.checker.program.ProgramFolder;

/** The machine that programs are for: a shipped profile, or one of one's own that is made from it key by key. */
public final class MachinePage extends ScopedPage {

	private ProfileSheet sheet = ProfileSheet.of("");
	private Combo base;
	private Sheet<ProfileEntry> keys;
	private Combo value;
	private Button inherit;
	private ProfileTextPart text;
	private String stored = "";
	private boolean showing;

	public MachinePage() {
		super("truelead.editor.machine");
	}

	@Override
	protected String chapter() {
		return "the-machine";
	}

	@Override
	protected Optional<String> ownSettings() {
		return Optional.of(project().isPresent() ? "&Enable project settings, kept in " + ProgramFolder.PROFILE
				: "&Enable a machine for programs whose folders name none");
	}

	@Override
	protected boolean hasOwn() {
		try {
			stored = new MachineFile(project()).read().orElse("");
		} catch (CoreException unreadable) {
			setErrorMessage(unreadable.getStatus().getMessage());
		}
		return !stored.isEmpty();
	}

	@Override
	protected void fill(Composite page) {
		sheet = ProfileSheet.of(stored.isEmpty() ? "base = milling-metric\n" : stored);
		Composite top = Layouts.columns(page, 2);
		new Label(top, SWT.NONE).setText("&Machine to start from:");
		base = new Combo(top, SWT.READ_ONLY);
		MachineProfile.shipped().forEach(base::add);
		base.addSelectionListener(SelectionListener.widgetSelectedAdapter(chosen ->
				change(sheet.with(ProfileKey.BASE.key(), base.getText()))));
		keys = new Sheet<>(page, "&Keys:", ProfileEntry.class);
		keys.column("Key", 220, ProfileEntry::key).column("Value", 150, ProfileEntry::value)
				.column("From", 110, entry -> entry.own() ? "this profile" : sheet.base())
				.column("What it is for", 420, ProfileEntry::purpose).strong(ProfileEntry::own).tell(MachinePage::words)
				.onSelect(this::showValue);
		Composite line = Layouts.columns(page, 3);
		new Label(line, SWT.NONE).setText("&Value:");
		value = new Combo(line, SWT.DROP_DOWN);
		GridDataFactory.fillDefaults().hint(200, SWT.DEFAULT).applyTo(value);
		value.addModifyListener(typed -> takeValue());
		inherit = Layouts.push(line, "&Inherit", this::takeBack);
		text = new ProfileTextPart(page, () -> change(ProfileSheet.of(text.text())));
		change(sheet);
		keys.select(entry -> true);
	}

	private static String words(ProfileEntry entry) {
		return entry.key() + ": " + entry.purpose() + (entry.takes().isEmpty() ? "" : "; takes " + entry.takes());
	}

	private void change(ProfileSheet fresh) {
		sheet = fresh;
		base.select(MachineProfile.shipped().indexOf(sheet.base()));
		keys.rows(sheet.entries(), ProfileEntry::key);
		if (!text.text().lines().toList().equals(sheet.text().lines().toList())) {
			text.show(sheet.text());
		}
		List<ProfileProblem> problems = sheet.problems();
		text.name(problems);
		setMessage(problems.isEmpty() ? null : ProfileTextPart.words(problems.get(0)), WARNING);
	}

	private Optional<ProfileEntry> chosen() {
		List<ProfileEntry> selected = keys.selected();
		return selected.size() == 1 ? Optional.of(selected.get(0)) : Optional.empty();
	}

	private void showValue() {
		if (showing) {
			return;
		}
		showing = true;
		Optional<ProfileEntry> entry = chosen();
		entry.filter(one -> !List.of(value.getItems()).equals(one.choices()))
				.ifPresent(one -> value.setItems(one.choices().toArray(String[]::new)));
		String fresh = entry.map(ProfileEntry::value).orElse("");
		if (!value.getText().equals(fresh)) {
			value.setText(fresh);
		}
		showing = false;
		enableValue();
	}

	private void enableValue() {
		value.setEnabled(own() && chosen().isPresent());
		inherit.setEnabled(own() && chosen().filter(ProfileEntry::own).isPresent());
	}

	private void takeValue() {
		if (!showing) {
			showing = true;
			chosen().ifPresent(entry -> change(sheet.with(entry.key(), value.getText())));
			showing = false;
			enableValue();
		}
	}

	private void takeBack() {
		List<ProfileEntry> taken = keys.selected();
		showing = true;
		taken.forEach(entry -> change(sheet.without(entry.key())));
		showing = false;
		showValue();
	}

	@Override
	protected void ownChanged() {
		super.ownChanged();
		enableValue();
	}

	@Override
	protected boolean save(boolean counts) {
		String fresh = counts ? sheet.text() : "";
		try {
			if (!fresh.equals(stored)) {
				new MachineFile(project()).write(fresh, getShell());
				stored = fresh;
			}
			return true;
		} catch (CoreException cannot) {
			setErrorMessage(cannot.getStatus().getMessage());
			return false;
		}
	}

	@Override
	protected void performDefaults() {
		change(ProfileSheet.of("base = milling-metric\n"));
		own(false);
		showValue();
		super.performDefaults();
	}
}
